package fettle.engine.pack.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.assertj.core.api.SoftAssertions;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every key figure of the circuits solved by ngspice 39, within the tolerance stated with them
 * (battery/circuits/README.md and MORE.md), and the result series. Circuits are built from the netlists themselves.
 */
class CircuitsAgainstReferenceTest {
    private static final double STEP_SECONDS = 1;
    private static final double SAMPLE_SECONDS = 1;

    @Test
    void pulsedCellMatchesWithinOneMillivoltAndAHundredThousandthOfCharge() {
        ReferenceCircuit circuit = ReferenceCircuit.read("pulsed");
        Samples samples = new Samples(Moment::volts, now -> now.cellCharge(0));
        Summary summary = run(circuit.onePack(), pulses(circuit), samples);
        Map<String, Double> ours = new LinkedHashMap<>();
        ours.put("min_V", summary.lowestVolts().value());
        ours.put("t_min", summary.lowestVolts().seconds());
        ours.put("end_V", summary.lastStep().last().volts());
        ours.put("end_soc", summary.cells().get(0).chargeFraction());
        compare(circuit.keyFigures(), ours, Map.of("_V", within(1e-3), "soc", within(1e-5), "t_min", within(0.01)));
        compareSeries(circuit, samples, new double[] {1e-3, 1e-5});
    }

    /** PULSE(low high delay rise fall width period), its ramps replaced by jumps at their middle. */
    private static Protocol pulses(ReferenceCircuit circuit) {
        double[] p = circuit.numbers("PULSE\\(# # # #m #m # #\\)");
        double end = circuit.numbers("^tran \\S+ #")[0];
        double ramp = 1e-3 * p[3];
        double on = p[5] + ramp;
        List<ProtocolStep> steps = new ArrayList<>();
        steps.add(held(p[0], p[2] + ramp / 2));
        for (double at = p[2] + ramp / 2; at < end; at += p[6]) {
            steps.add(held(p[1], Math.min(on, end - at)));
            double off = Math.min(p[6] - on, end - at - on);
            if (off > 0) {
                steps.add(held(p[0], off));
            }
        }
        return new Protocol(steps);
    }

    private static ProtocolStep held(double amps, double seconds) {
        return ProtocolStep.of(amps + " A", new Demand.Current(amps), STEP_SECONDS, End.after(seconds));
    }

    @Test
    void chargeOfUnequalCellsMatchesWithinAFifthOfAPercentAndTwoMillivolts() {
        ReferenceCircuit circuit = ReferenceCircuit.read("cccv");
        double[] source = circuit.numbers("^Bch 0 p I=max\\(0,min\\(#,\\(#-V\\(p\\)\\)\\*#\\)\\)");
        ProtocolStep charge = ProtocolStep.of(
                "charge",
                new Demand.Charge(source[1], source[0], Double.POSITIVE_INFINITY, 1 / source[2]),
                STEP_SECONDS,
                new End(EndKind.CURRENT_AT_MOST, 0.25));
        Samples samples = new Samples(
                Moment::volts,
                now -> -now.amps(),
                now -> now.cellCharge(0),
                now -> now.cellCharge(1),
                now -> now.cellCharge(2),
                now -> now.cellVolts(0),
                now -> now.cellVolts(1),
                now -> now.cellVolts(2));
        Summary summary = run(circuit.onePack(), Protocol.of(charge), samples);
        Map<String, Double> ours = new LinkedHashMap<>();
        ours.put("cc_end_s", summary.lastStep().limits().get(1).seconds());
        ours.put("end_s", summary.seconds());
        ours.put("charge_Ah", TradeUnit.AMPERE_HOUR.fromSi(summary.passed().inCoulombs()));
        cellEnds(summary, "cell%d_soc", "cell%d_V", ours);
        compare(
                circuit.keyFigures(),
                ours,
                Map.of("_s", percent(0.2), "_Ah", percent(0.2), "_soc", percent(0.2), "_V", within(2e-3)));
        // the taper: 2 mV of the source's 1 mΩ would be 2 A, so the current is held to 0.2 % of its range
        compareSeries(circuit, samples, new double[] {2e-3, 0.01, 2e-3, 2e-3, 2e-3, 2e-3, 2e-3, 2e-3});
    }

    @Test
    void bledCellsMatchWithinOnePercentOfTimeAndATenThousandthOfCharge() {
        ReferenceCircuit circuit = ReferenceCircuit.read("bleed");
        Samples samples = new Samples(
                now -> now.cellVolts(0),
                now -> now.cellVolts(1),
                now -> now.cellVolts(2),
                now -> now.cellVolts(3),
                now -> now.cellCharge(0),
                now -> now.cellCharge(1),
                now -> now.cellCharge(2),
                now -> now.cellCharge(3),
                now -> now.cellVolts(0) - now.cellVolts(3),
                now -> now.cellVolts(1) - now.cellVolts(3),
                now -> now.cellVolts(2) - now.cellVolts(3));
        double end = circuit.numbers("^tran \\S+ #")[0];
        Summary summary = run(
                circuit.bled(),
                Protocol.of(ProtocolStep.of("rest", new Demand.Rest(), STEP_SECONDS, End.after(end))),
                samples);
        Map<String, Double> ours = new LinkedHashMap<>();
        ours.put("spread_60s_V", samples.at(60, 9));
        for (int cell = 1; cell <= 3; cell++) {
            ours.put("cell" + cell + "_within_5mV_s", samples.firstAtMost(5e-3, 8 + cell));
        }
        cellEnds(summary, "cell%d_soc_end", "", ours);
        compare(
                circuit.keyFigures(),
                ours,
                Map.of("spread", percent(1), "_within_", percent(1), "soc_end", within(1e-4)));
        compareSeries(circuit, samples, new double[] {1e-4, 1e-4, 1e-4, 1e-4, 1e-4, 1e-4, 1e-4, 1e-4});
    }

    @Test
    void joinedPacksMatchWithinOnePercentOfCurrentAndTime() {
        ReferenceCircuit circuit = ReferenceCircuit.read("parallel");
        Samples samples = new Samples(
                now -> now.packAmps(0),
                now -> now.packAmps(1),
                now -> now.packAmps(2),
                now -> now.cellCharge(2),
                now -> now.cellCharge(5),
                now -> now.cellCharge(8),
                Moment::volts,
                now -> IntStream.range(0, now.packs())
                        .mapToDouble(pack -> Math.abs(now.packAmps(pack)))
                        .max()
                        .orElseThrow());
        double end = circuit.numbers("^tran \\S+ #")[0];
        Summary summary = run(
                circuit.joined(),
                Protocol.of(ProtocolStep.of("joined", new Demand.Rest(), STEP_SECONDS, End.after(end))),
                samples);
        Map<String, Double> ours = new LinkedHashMap<>();
        List<Double> first = summary.lastStep().first().packAmps();
        for (int pack = 0; pack < first.size(); pack++) {
            ours.put("pack" + (pack + 1) + "_I0_A", first.get(pack));
            ours.put(
                    "pack" + (pack + 1) + "_soc_end",
                    summary.cells().get(3 * pack + 2).chargeFraction());
        }
        ours.put("t_below_1A_s", samples.firstAtMost(1, 8));
        ours.put("bus_end_V", summary.lastStep().last().volts());
        compare(
                circuit.keyFigures(),
                ours,
                Map.of("_I0_", percent(1), "_1A_", percent(1), "soc", within(1e-4), "bus", within(1e-3)));
        compareSeries(circuit, samples, new double[] {0.02, 0.02, 0.02, 1e-4, 1e-4, 1e-4, 1e-3});
    }

    @ParameterizedTest
    @ValueSource(strings = {"constant_power", "constant_power_cold"})
    void constantPowerWithHeatMatchesWithinTheStatedTolerances(String name) {
        ReferenceCircuit circuit = ReferenceCircuit.read(name);
        double watts = circuit.parameter("P");
        Samples samples = new Samples(
                Moment::volts,
                Moment::amps,
                now -> now.cellCharge(0),
                now -> now.cellKelvins(0) - TradeUnit.CELSIUS.toSi(circuit.parameter("TA")));
        Summary summary = run(
                circuit.warm(),
                Protocol.of(ProtocolStep.of(
                        "load", new Demand.Power(watts), STEP_SECONDS, new End(EndKind.VOLTS_AT_MOST, 3.3))),
                samples);
        StepOutcome load = summary.lastStep();
        CellEnd cell = summary.cells().get(0);
        double rise = cell.kelvins() - TradeUnit.CELSIUS.toSi(circuit.parameter("TA"));
        SoftAssertions softly = new SoftAssertions();
        near(softly, "first V", load.first().volts(), circuit.more("first V")[0], 1e-3);
        relative(softly, "first A", load.first().amps(), circuit.more("first V")[1], 1e-3);
        relative(softly, "time to 3.300 V", summary.seconds(), circuit.more("time")[0], 2e-3);
        double coulombs = summary.passed().outCoulombs();
        relative(softly, "charge out", TradeUnit.AMPERE_HOUR.fromSi(coulombs), circuit.more("charge out")[0], 2e-3);
        double joules = summary.passed().outJoules();
        relative(softly, "energy out", TradeUnit.WATT_HOUR.fromSi(joules), circuit.more("energy")[0], 2e-3);
        near(softly, "charge left", cell.chargeFraction(), circuit.more("charge left")[0], 1e-3);
        near(softly, "rise at cut-off", rise, circuit.more("temperature")[0], 0.1);
        relative(softly, "heat", summary.passed().cellHeatJoules(), circuit.more("heat")[0], 0.01);
        relative(softly, "current at cut-off", load.last().amps(), circuit.more("current")[0], 1e-3);
        softly.assertAll();
        compareSeries(circuit, samples, new double[] {1e-3, 0.018, 1e-3, 0.1});
    }

    private static Summary run(Bench bench, Protocol protocol, Samples samples) {
        return Simulation.run(bench, protocol, samples, SAMPLE_SECONDS, Progress.silent());
    }

    private static void cellEnds(Summary summary, String charge, String volts, Map<String, Double> ours) {
        for (int cell = 1; cell <= summary.cells().size(); cell++) {
            CellEnd end = summary.cells().get(cell - 1);
            ours.put(String.format(charge, cell), end.chargeFraction());
            if (!volts.isEmpty()) {
                ours.put(String.format(volts, cell), end.volts());
            }
        }
    }

    /** Tolerances are found by the part of the name they stand for. */
    private static void compare(
            Map<String, Double> expected, Map<String, Double> ours, Map<String, DoubleUnaryOperator> tolerances) {
        assertThat(ours.keySet()).containsAll(expected.keySet());
        assertThat(expected).hasSizeGreaterThan(3);
        SoftAssertions softly = new SoftAssertions();
        expected.forEach((figure, value) -> {
            double tolerance = tolerances.entrySet().stream()
                    .filter(entry -> figure.contains(entry.getKey()))
                    .mapToDouble(entry -> entry.getValue().applyAsDouble(value))
                    .findFirst()
                    .orElseThrow();
            near(softly, figure, ours.get(figure), value, tolerance);
        });
        softly.assertAll();
    }

    private static DoubleUnaryOperator within(double tolerance) {
        return value -> tolerance;
    }

    private static DoubleUnaryOperator percent(double percent) {
        return value -> TradeUnit.PERCENT.toSi(percent) * Math.abs(value);
    }

    /** Rows up to where we ended; the columns of the file are those of the samples, in the same order. */
    private static void compareSeries(ReferenceCircuit circuit, Samples samples, double[] tolerances) {
        double end = samples.rows().get(samples.rows().size() - 1)[0];
        SoftAssertions softly = new SoftAssertions();
        int compared = 0;
        for (double[] row : circuit.series()) {
            for (int column = 1; column <= tolerances.length && row[0] > 0 && row[0] <= end; column++) {
                near(
                        softly,
                        "column " + column + " at " + row[0] + " s",
                        samples.at(row[0], column),
                        row[column],
                        tolerances[column - 1]);
                compared++;
            }
        }
        softly.assertAll();
        assertThat(compared).as("rows compared").isGreaterThan(40 * tolerances.length);
    }

    private static void relative(SoftAssertions softly, String figure, double ours, double theirs, double tolerance) {
        near(softly, figure, ours, theirs, Math.abs(theirs) * tolerance);
    }

    private static void near(SoftAssertions softly, String figure, double ours, double theirs, double tolerance) {
        softly.assertThat(ours).as(figure).isCloseTo(theirs, Offset.offset(tolerance));
    }
}
