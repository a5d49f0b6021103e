package fettle.engine.health.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.RestCurve;
import fettle.engine.reference.ReferenceFiles;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Capacity from partial discharges between rests of a measured 18650 cell, Kollmeyer 2018, doi:10.17632/wykht8y7tg.1: the rests
 * before each group of pulses, charge out by the tester's counter, curve from the C/20 discharge of the same cell.
 */
class CapacityAgainstOpenDataTest {
    private static final double REST_DEVIATION_VOLTS = 0.005;

    @Test
    void restsBetweenPulseGroupsGiveTheCapacity() {
        RestCurve curve = curve();
        List<double[]> rests = rests(curve);
        List<CapacityPair> pairs = new ArrayList<>();
        for (int k = 1; k < rests.size(); k++) {
            double change = rests.get(k)[0] - rests.get(0)[0];
            double slope = Math.min(curve.slopeVolts(rests.get(k)[0]), curve.slopeVolts(rests.get(0)[0]));
            pairs.add(new CapacityPair(
                    Instant.EPOCH.plusSeconds(k),
                    change,
                    Math.sqrt(2) * REST_DEVIATION_VOLTS / slope,
                    0,
                    -rests.get(k)[1],
                    10,
                    "rest to rest"));
        }
        assertThat(pairs).hasSize(12);
        Estimate capacity = CapacityEstimator.ofPairsAlone(pairs);
        // The same cell gave 2.995 Ah at C/20 and 2.80 Ah at 1C in the same month: it must lie between.
        assertThat(TradeUnit.AMPERE_HOUR.fromSi(capacity.value())).isCloseTo(2.88, within(0.03));
    }

    /** (charge, coulombs out) of the first pulse of each group above 5 % of charge. */
    private static List<double[]> rests(RestCurve curve) {
        List<double[]> rests = new ArrayList<>();
        double last = -1;
        for (String[] pulse : ReferenceFiles.rows("battery/panasonic-18650pf/hppc_25C_pulses_timed.csv")) {
            double out = Double.parseDouble(pulse[3]);
            boolean firstOfGroup = out > last + 0.1 && out < 2.7;
            if (firstOfGroup) {
                rests.add(new double[] {curve.charge(Double.parseDouble(pulse[5])), TradeUnit.AMPERE_HOUR.toSi(out)});
                last = out;
            }
        }
        return rests;
    }

    private static RestCurve curve() {
        List<double[]> knots = new ArrayList<>();
        for (String[] row : ReferenceFiles.rows("battery/panasonic-18650pf/pseudo_ocv_c20_discharge_25C.csv")) {
            double volts = Double.parseDouble(row[1]) + 0.0065; // 0.145 A through 45 mΩ
            if (knots.isEmpty() || volts > knots.get(knots.size() - 1)[1]) {
                knots.add(new double[] {Double.parseDouble(row[0]) / 100, volts});
            }
        }
        knots.get(knots.size() - 1)[0] = 1;
        return RestCurve.of(
                knots.stream().mapToDouble(knot -> knot[0]).toArray(),
                knots.stream().mapToDouble(knot -> knot[1]).toArray(),
                new double[knots.size()],
                Citation.published("Kollmeyer 2018, C/20 discharge"));
    }
}
