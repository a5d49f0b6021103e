package fettle.engine.control.linkage;

import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.List;

/**
 * A rod that turns the surface directly, with the servo on its axis.
 *
 * <p>Formula: surface = servo (or minus servo), less the twist under load T·ℓ / (G·J), J = π·d⁴/32 for a round solid rod.
 * <p>Leaves out: bending, play in the servo coupling and in the surface's socket.
 *
 * @param turning whether the surface turns with the servo or against it
 * @param lengthMetres free length between servo and surface [m]
 * @param diameterMetres diameter of the round solid rod [m]
 * @param shearModulusPascals shear modulus of its material [Pa]
 */
public record TorqueRod(Turning turning, double lengthMetres, double diameterMetres, double shearModulusPascals)
        implements Linkage {
    /** Shear modulus of carbon steel wire [Pa]; from memory. */
    public static final double STEEL_SHEAR_PASCALS = 79.3e9;

    /** Which way the surface turns. */
    public enum Turning {
        WITH_SERVO,
        AGAINST_SERVO
    }

    public TorqueRod {
        Faults faults = new Faults();
        faults.range("length", "rod length", lengthMetres, TradeUnit.MILLIMETRE, 1, 3000, "Measure the free length.");
        faults.range("diameter", "rod diameter", diameterMetres, TradeUnit.MILLIMETRE, 0.3, 30, "Use a caliper.");
        if (!(shearModulusPascals >= 1e8 && shearModulusPascals <= 2e11)) {
            faults.add("shearModulus", "a rod's shear modulus lies between 0.1 and 200 GPa; steel has about 79 GPa.");
        }
        faults.refuse();
    }

    @Override
    public Position at(double servoRadians) {
        return new Position(servoRadians, sign() * servoRadians, sign());
    }

    @Override
    public double servoRadians(double surfaceRadians) {
        return sign() * surfaceRadians;
    }

    /** A torque rod has no rod joints. */
    @Override
    public double playRadians(double servoRadians, double jointPlayMetres) {
        return 0;
    }

    @Override
    public List<TravelLimit> limits() {
        return List.of();
    }

    /** Angle the rod gives way under a torque [rad]. */
    public double twistRadians(double torqueNewtonMetres) {
        double polarMoment = Math.PI * Math.pow(diameterMetres, 4) / 32;
        return torqueNewtonMetres * lengthMetres / (shearModulusPascals * polarMoment);
    }

    private double sign() {
        return turning == Turning.WITH_SERVO ? 1 : -1;
    }
}
