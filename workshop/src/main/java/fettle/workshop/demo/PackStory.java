package fettle.workshop.demo;

import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Pack;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Run;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * One pack's invented record, told forwards in time. Not thread-safe.
 *
 * <p>Cells follow the chemistry's rest curve at their charge, plus a fixed offset of their own and a meter's scatter.
 */
final class PackStory {
    static final double STORAGE_FRACTION = 0.50;
    private static final double REST_SECONDS = 7_200;
    private static final double ROOM_KELVINS = TradeUnit.CELSIUS.toSi(20);
    private static final double MILLIVOLT = 1e-3;

    private final Pack pack;
    private final Instant registered;
    private final String craft;
    private final double runSeconds;
    private final double cellOhms;
    private final RestCurve curve;
    private final List<Check> checks = new ArrayList<>();
    private final List<ChargeRecord> charges = new ArrayList<>();
    private final List<Run> runs = new ArrayList<>();
    private final double[] behindFraction;

    PackStory(Pack pack, Instant registered, String craft, Duration run, double cellMilliohms) {
        this.pack = pack;
        this.registered = registered;
        this.craft = craft;
        this.runSeconds = run.toSeconds();
        this.cellOhms = TradeUnit.MILLIOHM.toSi(cellMilliohms);
        this.curve = DefaultCurves.of(pack.chemistry());
        this.behindFraction = new double[pack.cellsInSeries()];
    }

    Pack pack() {
        return pack;
    }

    Instant registered() {
        return registered;
    }

    PackHistory history() {
        return new PackHistory(pack, checks, charges, runs);
    }

    /** Lets one cell fall behind the others by a share of capacity; negative catches up. */
    PackStory fallsBehind(int cell, double byFraction) {
        behindFraction[cell - 1] += byFraction;
        return this;
    }

    /** A usual check: every cell, resistance, two hours' rest. */
    PackStory checked(Instant at, double chargeFraction) {
        checks.add(new Check(
                at,
                IntStream.range(0, pack.cellsInSeries())
                        .mapToObj(cell -> cellVolts(cell, chargeFraction))
                        .toList(),
                null,
                REST_SECONDS,
                ROOM_KELVINS + scatter(7) * 2,
                IntStream.range(0, pack.cellsInSeries())
                        .mapToObj(this::cellOhms)
                        .toList(),
                "charger",
                Set.of(),
                ""));
        return this;
    }

    /** A check of pack volts alone. */
    PackStory checkedWhole(Instant at, double packVolts) {
        checks.add(new Check(at, List.of(), packVolts, REST_SECONDS, ROOM_KELVINS, List.of(), "", Set.of(), ""));
        return this;
    }

    /** A check that saw something. */
    PackStory seen(Instant at, double chargeFraction, Check.Sign sign, String note) {
        checked(at, chargeFraction);
        Check read = checks.remove(checks.size() - 1);
        checks.add(new Check(
                at,
                read.cellRestVolts(),
                null,
                REST_SECONDS,
                ROOM_KELVINS,
                read.cellResistanceOhms(),
                "charger",
                Set.of(sign),
                note));
        return this;
    }

    /** A charge from one share of capacity to another; 1 ends at the charge limit. */
    PackStory charged(Instant at, double from, double to) {
        double returned = (to - from) * pack.ratedCapacityCoulombs() * (1.01 + 0.01 * scatter(3));
        double endVolts = pack.cellsInSeries() * (to >= 1 ? curve.volts(1) : curve.volts(to));
        charges.add(new ChargeRecord(at, tens(returned), round(endVolts, 0.01), ROOM_KELVINS + 6 + scatter(5), ""));
        return this;
    }

    /** A run in the pack's craft. */
    PackStory ran(Instant at, double leftFraction) {
        runs.add(new Run(
                at,
                craft,
                Math.round(runSeconds + 20 * scatter(11)),
                round(leftFraction, 0.01),
                null,
                ROOM_KELVINS + 18 + 3 * scatter(13),
                ""));
        return this;
    }

    /** An outing: checked and charged the evening before, one run, back to storage at night. */
    PackStory outing(Instant noon) {
        double left = 0.28 + 0.04 * scatter(17);
        return checked(noon.minus(Duration.ofHours(18)), STORAGE_FRACTION)
                .charged(noon.minus(Duration.ofHours(16)), STORAGE_FRACTION, 1)
                .ran(noon, left)
                .charged(noon.plus(Duration.ofHours(8)), left, STORAGE_FRACTION);
    }

    /** The check as a person would have typed it. */
    static String typed(String tag, Check check) {
        List<String> words = new ArrayList<>(List.of(tag));
        check.cellRestVolts().forEach(volts -> words.add(String.format(Locale.ROOT, "%.3f", volts)));
        if (check.packRestVolts() != null) {
            words.add(String.format(Locale.ROOT, "%.2fV", check.packRestVolts()));
        }
        if (!check.cellResistanceOhms().isEmpty()) {
            words.add("ir");
            words.add(check.cellResistanceOhms().stream()
                    .map(ohms -> String.format(Locale.ROOT, "%.1f", TradeUnit.MILLIOHM.fromSi(ohms)))
                    .collect(Collectors.joining(" ")));
        }
        check.signs().forEach(sign -> words.add(sign.label()));
        return String.join(" ", words);
    }

    private double cellVolts(int cell, double chargeFraction) {
        double charge = Math.max(0, Math.min(1, chargeFraction - behindFraction[cell]));
        return round(curve.volts(charge) + MILLIVOLT * (cell % 3 - 1 + scatter(cell)), MILLIVOLT);
    }

    private double cellOhms(int cell) {
        double aged = 1 + 0.01 * checks.size();
        return round(cellOhms * aged * (1 + 0.04 * scatter(cell + 29)), 1e-4);
    }

    /** A meter's scatter, −1 … 1: the same for the same pack, entry and question. */
    private double scatter(int question) {
        int entry = checks.size() + charges.size() + runs.size();
        return Math.sin(12.9898 * (entry + 1)
                + 78.233 * (question + 1)
                + Math.abs(pack.tag().hashCode() % 97));
    }

    private static double tens(double coulombs) {
        return TradeUnit.MILLIAMPERE_HOUR.toSi(10 * Math.round(TradeUnit.MILLIAMPERE_HOUR.fromSi(coulombs) / 10));
    }

    private static double round(double value, double step) {
        return Math.round(value / step) * step;
    }
}
