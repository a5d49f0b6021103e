package fettle.engine.control.load;

import fettle.engine.units.InputException;

/**
 * A plain flap without gap on a thin aerofoil.
 *
 * <p>Formula, with cos φ = 2E − 1: C_hα = −(1/E²)·[(π − φ)(cos φ − ½) + sin φ − cos φ·sin φ + sin 2φ / 4];
 * C_hδ = −(1/(4πE²))·[(1 − cos 2φ) − 2(π − φ)²(1 − 2cos φ) + 4(π − φ)·sin φ]. Moment = C_h·q·c_f² per span, about the
 * hinge.
 * <p>Holds for: small angles, attached flow, no viscosity. Viscous panel values at Re 2e5 and 5e5 with tripped boundary
 * layer are 0.4 to 0.77 of it.
 *
 * @see "H. Glauert, Theoretical relationships for an aerofoil with hinged flap, R. & M. 1095 (1927), as given in E. L.
 *     Houghton and P. W. Carpenter, Aerodynamics for Engineering Students, eqs 4.49-4.57"
 */
public final class ThinAerofoil {
    private static final double SMALLEST = 0.05;
    private static final double LARGEST = 0.6;

    private ThinAerofoil() {}

    /** C_hα per radian of angle of attack; E from 0.05 to 0.6. */
    public static double momentPerAttack(double chordRatio) {
        double phi = phi(chordRatio);
        double bracket = (Math.PI - phi) * (Math.cos(phi) - 0.5)
                + Math.sin(phi)
                - Math.cos(phi) * Math.sin(phi)
                + Math.sin(2 * phi) / 4;
        return -bracket / (chordRatio * chordRatio);
    }

    /** C_hδ per radian of deflection; E from 0.05 to 0.6. */
    public static double momentPerDeflection(double chordRatio) {
        double phi = phi(chordRatio);
        double rest = Math.PI - phi;
        double bracket = 1 - Math.cos(2 * phi) - 2 * rest * rest * (1 - 2 * Math.cos(phi)) + 4 * rest * Math.sin(phi);
        return -bracket / (4 * Math.PI * chordRatio * chordRatio);
    }

    private static double phi(double chordRatio) {
        if (!(chordRatio >= SMALLEST && chordRatio <= LARGEST)) {
            throw new InputException(
                    "chordRatio",
                    "the surface is " + Math.round(100 * chordRatio)
                            + " % of the chord; expected 5 % to 60 %. Divide the chord behind the hinge by the whole chord"
                            + " there; an all-moving surface needs another sum.");
        }
        return Math.acos(2 * chordRatio - 1);
    }
}
