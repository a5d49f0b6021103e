package fettle.engine.health.capacity;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.Packs;
import fettle.engine.pack.Run;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Charges noted by hand, of made-up packs whose capacity is known. */
class NotedChargesTest {
    private static final RestCurve CURVE = DefaultCurves.of(Chemistry.LIPO);
    private static final Instant START = Instant.parse("2026-03-01T10:00:00Z");
    private static final int PACKS = 1000;
    private static final long SEED = 20_260_103;

    @Test
    void intervalsCoverTheTrueCapacity() {
        Random random = new Random(SEED);
        int inside = 0;
        double lean = 0;
        for (int i = 0; i < PACKS; i++) {
            double truth = TradeUnit.AMPERE_HOUR.toSi(5.0 * (1 + 0.15 * random.nextGaussian()));
            PackHistory history = history(truth, random);
            CapacityReport report = CapacityEstimator.of(
                    NotedCharges.of(history, CURVE, 4.20, MeterAccuracy.USUAL).pairs(),
                    CapacityPrior.ofLabel(history.pack()));
            inside += report.lowCoulombs() <= truth && truth <= report.highCoulombs() ? 1 : 0;
            lean += (report.capacity().value() - truth) / (report.highCoulombs() - report.lowCoulombs());
        }
        assertThat(inside / (double) PACKS).as("coverage, seed %d", SEED).isBetween(0.93, 0.97);
        assertThat(Math.abs(lean / PACKS)).as("lean").isLessThan(0.1);
    }

    @Test
    void chargeWithARunBetweenIsNoEvidence() {
        PackHistory history = history(TradeUnit.AMPERE_HOUR.toSi(5), new Random(1));
        List<Run> runs = List.of(new Run(START.plus(Duration.ofMinutes(90)), "", 300, null, null, null, ""));
        PackHistory spoiled = new PackHistory(history.pack(), history.checks(), history.charges(), runs);
        int whole = NotedCharges.of(history, CURVE, 4.20, MeterAccuracy.USUAL)
                .pairs()
                .size();
        assertThat(whole).isEqualTo(history.charges().size());
        assertThat(NotedCharges.of(spoiled, CURVE, 4.20, MeterAccuracy.USUAL).pairs())
                .hasSize(whole - 1);
    }

    @Test
    void weakCellShowsInItsOwnPairs() {
        Random random = new Random(7);
        double[] capacities = {5.0, 5.0, 4.0, 5.0};
        List<Check> checks = new ArrayList<>();
        List<ChargeRecord> charges = new ArrayList<>();
        for (int day = 0; day < 12; day++) {
            Instant when = START.plus(Duration.ofDays(4L * day));
            double out = TradeUnit.AMPERE_HOUR.toSi(2.5 + 0.8 * random.nextDouble());
            List<Double> volts = new ArrayList<>();
            for (double capacity : capacities) {
                volts.add(CURVE.volts(1 - out / TradeUnit.AMPERE_HOUR.toSi(capacity)) + 0.003 * random.nextGaussian());
            }
            checks.add(new Check(when, volts, null, 7200.0, null, List.of(), "", Set.of(), ""));
            charges.add(new ChargeRecord(when.plus(Duration.ofHours(2)), out, 16.80, null, ""));
        }
        PackHistory history = new PackHistory(Packs.lipo(4, 5000), checks, charges, List.of());
        NotedCharges noted = NotedCharges.of(history, CURVE, 4.20, MeterAccuracy.USUAL);
        CapacityPrior label = CapacityPrior.ofLabel(history.pack());
        CapacityReport pack = CapacityEstimator.of(noted.pairs(), label);
        Estimate weak = CapacityEstimator.ofCell(noted.pairsOfCell(3), noted.pairs(), pack);
        Estimate good = CapacityEstimator.ofCell(noted.pairsOfCell(1), noted.pairs(), pack);
        assertThat(weak.value() / good.value()).isBetween(0.77, 0.83);
        double truth = TradeUnit.AMPERE_HOUR.toSi(4);
        assertThat(weak.value()).isBetween(truth - 2 * weak.standardDeviation(), truth + 2 * weak.standardDeviation());
    }

    /** Eight charges from a rest in the middle to full, noted as people note them; curve and charger err for each pack. */
    private static PackHistory history(double capacity, Random random) {
        double gain = 1 + 0.02 * random.nextGaussian();
        double bend = random.nextGaussian();
        List<Check> checks = new ArrayList<>();
        List<ChargeRecord> charges = new ArrayList<>();
        for (int day = 0; day < 8; day++) {
            Instant when = START.plus(Duration.ofDays(5L * day));
            double before = 0.25 + 0.35 * random.nextDouble();
            double volts = CURVE.volts(before) + bend * CURVE.bandVolts(before);
            List<Double> cells = new ArrayList<>(Collections.nCopies(4, 0.0));
            cells.replaceAll(none -> volts + 0.005 * random.nextGaussian());
            double end = 0.97 + 0.03 * random.nextDouble();
            double returned = (end - before) * capacity * gain * (1 + 0.01 * random.nextGaussian());
            checks.add(new Check(when, cells, null, 7200.0, null, List.of(), "", Set.of(), ""));
            charges.add(new ChargeRecord(when.plus(Duration.ofHours(2)), returned, 16.80, null, ""));
        }
        return new PackHistory(Packs.lipo(4, 5000), checks, charges, List.of());
    }
}
