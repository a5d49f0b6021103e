package fettle.engine.control.setup;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.Linkage;
import fettle.engine.control.linkage.PullPull;
import fettle.engine.control.linkage.SurfaceDrive;
import fettle.engine.control.linkage.TrailingEdge;
import fettle.engine.control.servo.PulseScale;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One surface as it was set.
 *
 * @param surface its name, e.g. {@code left aileron}
 * @param servo the servo's name
 * @param lowestSeconds lower end point [s]
 * @param centreSeconds centre [s]
 * @param highestSeconds upper end point [s]
 * @param reversed whether the channel is reversed in the transmitter
 * @param chordMetres where throws are measured, hinge line to trailing edge [m]
 * @param rates throws by rate, the largest first, at least one
 * @param armHoleMetres hole of the servo arm [m]; {@code null} if not noted
 * @param hornHoleMetres hole of the horn [m]; {@code null} if not noted
 * @param idleAmps current at rest [A]; {@code null} if not measured
 * @param largestAmps largest current at either end [A]; {@code null} if not measured
 * @param linkage what joins servo and surface, at neutral when the pulse is the centre; {@code null} if not measured
 */
public record SurfaceSetting(
        String surface,
        String servo,
        double lowestSeconds,
        double centreSeconds,
        double highestSeconds,
        boolean reversed,
        double chordMetres,
        List<Rate> rates,
        @Nullable Double armHoleMetres,
        @Nullable Double hornHoleMetres,
        @Nullable Double idleAmps,
        @Nullable Double largestAmps,
        @Nullable Linkage linkage) {
    public SurfaceSetting {
        rates = List.copyOf(rates);
        Faults faults = new Faults();
        if (surface.isBlank()) {
            faults.add("surface", "the surface has no name. Say which one it is, e.g. left aileron.");
        }
        PulseScale.checkPulse(faults, "lowest", "lower end point of " + surface, lowestSeconds);
        PulseScale.checkPulse(faults, "centre", "centre of " + surface, centreSeconds);
        PulseScale.checkPulse(faults, "highest", "upper end point of " + surface, highestSeconds);
        if (!(lowestSeconds <= centreSeconds && centreSeconds <= highestSeconds)) {
            faults.add("centre", "the centre of " + surface + " must lie between its end points.");
        }
        faults.range("chord", "chord of " + surface, chordMetres, TradeUnit.MILLIMETRE, 2, 2000, "Hinge to edge.");
        if (rates.isEmpty()) {
            faults.add("rates", surface + " has no throws. Give at least one rate.");
        }
        for (Rate rate : rates) {
            String of = rate.name() + " rate of " + surface;
            faults.range("rates", "throw up, " + of, rate.upRadians(), TradeUnit.DEGREE, 0, 90, "Without sign.");
            faults.range("rates", "throw down, " + of, rate.downRadians(), TradeUnit.DEGREE, 0, 90, "Without sign.");
        }
        faults.range("armHole", "arm hole", armHoleMetres, TradeUnit.MILLIMETRE, 2, 100, "Shaft to hole.");
        faults.range("hornHole", "horn hole", hornHoleMetres, TradeUnit.MILLIMETRE, 2, 200, "Hinge to hole.");
        faults.range("idleAmps", "current at rest", idleAmps, TradeUnit.AMPERE, 0, 5, "Measure it.");
        faults.range("largestAmps", "current at the end", largestAmps, TradeUnit.AMPERE, 0, 50, "Measure it.");
        holes(linkage).ifPresent(bar -> {
            if (!same(armHoleMetres, bar.armMetres()) || !same(hornHoleMetres, bar.hornMetres())) {
                faults.add("linkage", "the linkage of " + surface + " has other holes than the sheet. Give them once.");
            }
        });
        faults.refuse();
    }

    private static Optional<FourBar> holes(@Nullable Linkage linkage) {
        if (linkage instanceof PullPull cables) {
            return Optional.of(cables.first());
        }
        return linkage instanceof FourBar bar ? Optional.of(bar) : Optional.empty();
    }

    private static boolean same(@Nullable Double noted, double metres) {
        return noted != null && Double.compare(noted, metres) == 0;
    }

    /**
     * The surface as its servo drives it; empty without a linkage.
     *
     * @param servo the servo's pulses and angles, of which the slope is used: neutral is the sheet's centre
     */
    public Optional<SurfaceDrive> drive(PulseScale servo) {
        return Optional.ofNullable(linkage)
                .map(known -> new SurfaceDrive(
                        known, new PulseScale(centreSeconds, servo.radiansPerPulseSecond()), chordMetres));
    }

    /** Movement of the trailing edge upwards [m]. */
    public double upMetres(Rate rate) {
        return TrailingEdge.movementMetres(chordMetres, rate.upRadians());
    }

    /** Movement of the trailing edge downwards [m]. */
    public double downMetres(Rate rate) {
        return TrailingEdge.movementMetres(chordMetres, rate.downRadians());
    }

    /** Up throw over down throw; infinite if it does not go down. */
    public double differential(Rate rate) {
        return rate.upRadians() == rate.downRadians() ? 1 : rate.upRadians() / rate.downRadians();
    }

    /** The differential as a sheet prints it behind the throws; nothing where both throws are the same. */
    public String differentialWords(Rate rate) {
        double differential = differential(rate);
        if (Double.compare(differential, 1) == 0) {
            return "";
        }
        return Double.isInfinite(differential)
                ? ", up only"
                : String.format(Locale.ROOT, ", up over down %.2f", differential);
    }
}
