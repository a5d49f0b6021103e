package fettle.engine.pack.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.Resistances;
import fettle.engine.cell.circuit.ThermalNode;
import fettle.engine.reference.ReferenceFiles;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * Measured cells: identified from one record, predicted in another the identification never saw (battery/pouch-discharge,
 * battery/pouch-33ah-pulses, battery/panasonic-18650pf). The figures reached are in the messages and in docs/accuracy.md;
 * the limits here are those figures with a fifth to spare, so that a change for the worse is seen.
 */
class MeasuredDischargesReferenceTest {
    private static final double AMBIENT = TradeUnit.CELSIUS.toSi(25);

    /** Time constants of the pairs where the record used cannot tell them: within a pulse, and over minutes. */
    private static final double FAST_SECONDS = 10;

    private static final double SLOW_SECONDS = 120;

    private static final double DIFFUSION_SECONDS = 600;

    private static final int REFINEMENTS = 20;

    /** Ai et al. 2020: curve and resistance from C/10 and C/2, heat from C/2; predicted: 1C. */
    @Test
    void oneCOfALcoPouchIsPredictedFromItsSlowerRates() {
        MeasuredRecord tenth = MeasuredRecord.read("battery/pouch-discharge/lco2p28_0p1C.csv", 0, 1, 1, 2, -1);
        MeasuredRecord half = MeasuredRecord.read("battery/pouch-discharge/lco2p28_0p5C.csv", 0, 1, 1, 2, 3);
        MeasuredRecord one = MeasuredRecord.read("battery/pouch-discharge/lco2p28_1C.csv", 0, 1, 1, 2, 3);
        MeasuredRecord cooling =
                MeasuredRecord.read("battery/pouch-discharge/lco2p28_0p5C_temperature.csv", 0, 0, 1, 0, 1);
        Guess guess = fromTwoRates(tenth, half, 3.0);
        CellCircuit cell =
                identified(guess, half, 3.0, coolingSeconds(cooling, half.endSeconds(3.0)), half.largestRise());
        Outcome outcome = discharge(cell, one, 3.0);
        outcome.isWithin("LCO pouch 2.28 Ah, 1C from C/10 and C/2", 8, 0.6, 13);
    }

    /** Wiggins et al.: curve from one-hour rests, resistance from pulses and the 1C discharge; predicted: 2C. */
    @Test
    void twoCOfALargePouchIsPredictedFromRestsPulsesAndOneC() {
        MeasuredRecord oneC = MeasuredRecord.read("battery/pouch-33ah-pulses/cycles_1C.csv", 0, 2, -1, 3, -1)
                .between(10_085, 13_655);
        MeasuredRecord twoC = MeasuredRecord.read("battery/pouch-33ah-pulses/cycles_2C.csv", 0, 2, -1, 3, -1)
                .between(11_846.5, 13_610);
        List<String[]> pulses = ReferenceFiles.rows("battery/pouch-33ah-pulses/hppc_25C_pulses.csv");
        double[] removed = pulses.stream()
                .mapToDouble(row -> TradeUnit.AMPERE_HOUR.toSi(Double.parseDouble(row[2])))
                .toArray();
        double[] rest = column(pulses, 4);
        double[] instant = column(pulses, 9);
        double[] pulse = column(pulses, 12);
        double capacity = TradeUnit.AMPERE_HOUR.toSi(33.1);
        int rows = removed.length;
        double[][] table = new double[4][rows];
        double[] volts = new double[rows];
        for (int level = 0; level < rows; level++) {
            int row = rows - 1 - level;
            // the very first level has had no time to settle in the 1C discharge: the next one's stands for it
            int settled = Math.max(level, 1);
            double whole = (rest[settled] - oneC.voltsAt(removed[settled])) / 30.6;
            table[0][row] = 1 - removed[level] / capacity;
            table[1][row] = 1e-3 * instant[level];
            table[2][row] = 1e-3 * (pulse[level] - instant[level]);
            table[3][row] = Math.max(0, whole - 1e-3 * pulse[level]);
            volts[row] = rest[level];
        }
        // below the last rest the curve follows the 1C discharge with the resistance of that rest
        double[] tailCharge = new double[6];
        double[] tailVolts = new double[6];
        double lowest = TradeUnit.AMPERE_HOUR.toSi(30.3);
        double ohms = table[1][0] + table[2][0] + table[3][0];
        for (int row = 0; row < tailCharge.length; row++) {
            double out = lowest - row * (lowest - removed[rows - 1]) / tailCharge.length;
            tailCharge[row] = 1 - out / capacity;
            tailVolts[row] = oneC.voltsAt(out) + 30.6 * ohms;
        }
        OpenCircuit curve = OpenCircuit.of(joined(tailCharge, table[0]), joined(tailVolts, volts));
        MeasuredRecord warming = MeasuredRecord.read("battery/pouch-33ah-pulses/temperature_1C.csv", 0, 0, 1, 0, 2)
                .between(10_080, 13_900);
        Guess guess = new Guess(capacity, curve, table, FAST_SECONDS, SLOW_SECONDS);
        CellCircuit cell = identified(guess, oneC, 3.0, 1000, warming.largestRise());
        MeasuredRecord middle = MeasuredRecord.read("battery/pouch-33ah-pulses/temperature_2C.csv", 0, 0, 1, 0, 2)
                .between(11_800, 13_900);
        Outcome outcome = discharge(cell, twoC, 3.0).withMeasuredRise(middle.largestRise());
        outcome.isWithin("Large pouch 33 Ah, 2C from rests, pulses and 1C", 21, 0.7, 10);
    }

    /**
     * Kollmeyer 2018: curve from C/20, resistances from 25 °C pulses, what builds up over minutes and heat from a 1C discharge;
     * predicted: 1C of the next day, which the cell itself ended 1.7 % earlier.
     */
    @Test
    void oneCOfARoundCellIsMetADayLater() {
        CellCircuit cell = roundCell();
        MeasuredRecord record = MeasuredRecord.read("battery/panasonic-18650pf/dis_1c_new_2.csv", 0, 2, -1, 1, 5);
        Outcome outcome = discharge(cell, record, 2.5);
        outcome.isWithin("18650 2.9 Ah, 1C of the next day from C/20, pulses and 1C", 28, 1.7, 20);
    }

    /** The same cell in two drive profiles; largest discharge 20.8 A. */
    @Test
    void driveProfilesOfARoundCellArePredictedFromPulsesAndTheSlowCurve() {
        CellCircuit cell = roundCell();
        for (String profile : List.of("us06_25C", "mixed1_25C")) {
            MeasuredRecord record =
                    MeasuredRecord.read("battery/panasonic-18650pf/" + profile + ".csv.gz", 0, 2, -1, 1, 3);
            double rms = profileError(cell, record); // us06 36 mV, mixed1 27 mV when this was written
            String told = String.format(Locale.ROOT, "18650 2.9 Ah, %s: RMS %.1f mV", profile, 1000 * rms);
            System.out.println(told);
            assertThat(rms).as(told).isLessThan(0.040);
        }
    }

    private static CellCircuit roundCell() {
        List<String[]> pulses = ReferenceFiles.rows("battery/panasonic-18650pf/hppc_25C_pulses_timed.csv").stream()
                .filter(row -> Math.abs(Double.parseDouble(row[2]) - 2.9) < 0.1 && !row[14].isBlank())
                .toList();
        List<String[]> slow = ReferenceFiles.rows("battery/panasonic-18650pf/pseudo_ocv_c20_discharge_25C.csv");
        double capacity = TradeUnit.AMPERE_HOUR.toSi(2.9973);
        double pulseSeconds = 35; // slow pair of the one- and two-pair fits in MORE.md: 22 to 44 s
        double built = -Math.expm1(-9.9 / pulseSeconds);
        int rows = pulses.size();
        double[][] table = new double[4][rows];
        for (int level = 0; level < rows; level++) {
            int row = rows - 1 - level;
            double instant = 1e-3 * Double.parseDouble(pulses.get(level)[11]);
            double ten = 1e-3 * Double.parseDouble(pulses.get(level)[14]);
            table[0][row] = 1 - TradeUnit.AMPERE_HOUR.toSi(Double.parseDouble(pulses.get(level)[3])) / capacity;
            table[1][row] = instant;
            table[2][row] = (ten - instant) / built;
        }
        double[] charge = slow.stream()
                .mapToDouble(row -> Double.parseDouble(row[0]) / 100)
                .toArray();
        double[] volts = column(slow, 1);
        Resistances resistances = Resistances.of(table[0], table[1], table[2], table[3]);
        for (int row = 0; row < volts.length; row++) {
            volts[row] += 0.145 * (resistances.ohms(0, charge[row]) + resistances.ohms(1, charge[row]));
        }
        MeasuredRecord record = MeasuredRecord.read("battery/panasonic-18650pf/dis_1c_new_1.csv", 0, 2, -1, 1, 5);
        Guess guess = new Guess(capacity, OpenCircuit.of(charge, volts), table, pulseSeconds, DIFFUSION_SECONDS);
        return identified(guess, record, 2.5, 900, record.largestRise());
    }

    /** What a prediction came to beside its measurement. */
    private record Outcome(double rmsVolts, double endSeconds, double measuredEnd, double rise, double measuredRise) {
        Outcome withMeasuredRise(double measured) {
            return new Outcome(rmsVolts, endSeconds, measuredEnd, rise, measured);
        }

        void isWithin(String what, double rmsMillivolts, double endPercent, double risePercent) {
            String told = String.format(
                    Locale.ROOT,
                    "%s: RMS %.1f mV; end %.0f s for %.0f s (%+.2f %%); rise %.2f K for %.2f K (%+.0f %%)",
                    what,
                    1000 * rmsVolts,
                    endSeconds,
                    measuredEnd,
                    100 * (endSeconds / measuredEnd - 1),
                    rise,
                    measuredRise,
                    100 * (rise / measuredRise - 1));
            System.out.println(told);
            assertThat(1000 * rmsVolts).as(told).isLessThan(rmsMillivolts);
            assertThat(100 * Math.abs(endSeconds / measuredEnd - 1)).as(told).isLessThan(endPercent);
            assertThat(100 * Math.abs(rise / measuredRise - 1)).as(told).isLessThan(risePercent);
        }
    }

    /** Simulates the record's constant current to the cut-off. */
    private static Outcome discharge(CellCircuit cell, MeasuredRecord record, double cutOff) {
        double amps = record.amps()[record.amps().length / 2];
        Samples samples = samples(cell, amps, cutOff);
        double[] last = samples.rows().get(samples.rows().size() - 1);
        double measuredEnd = record.endSeconds(cutOff);
        double both = Math.min(measuredEnd, last[0]);
        double squares = 0;
        int rows = 0;
        for (double time = 10; time < both; time += 5) {
            double error = samples.at(time, 1) - record.voltsAtSeconds(time);
            squares += error * error;
            rows++;
        }
        return new Outcome(
                Math.sqrt(squares / rows),
                last[0],
                measuredEnd,
                last[2] - AMBIENT,
                Double.isNaN(record.celsius()[0]) ? Double.NaN : record.largestRise());
    }

    /** Simulates a record's current row by row; RMS error of the volts [V]. */
    private static double profileError(CellCircuit cell, MeasuredRecord record) {
        List<ProtocolStep> steps = new ArrayList<>();
        for (int row = 1; row < record.seconds().length; row++) {
            double width = record.seconds()[row] - record.seconds()[row - 1];
            if (width > 0) {
                steps.add(ProtocolStep.of(
                        "row", new Demand.Current(record.amps()[row]), Math.min(width, 1), End.after(width)));
            }
        }
        double[] sum = new double[2];
        double[] squares = {0, 0};
        Simulation.run(
                alone(cell, 1),
                new Protocol(steps),
                now -> {
                    if (now.stepSeconds() > 0) {
                        double error = now.volts() - record.voltsAtSeconds(now.seconds());
                        squares[0] += error * error * now.stepSeconds();
                        squares[1] += now.stepSeconds();
                    }
                },
                Double.POSITIVE_INFINITY,
                Progress.silent());
        return Math.sqrt(squares[0] / squares[1]);
    }

    /** Curve and whole resistance from what two rates differ by at equal charge out. */
    private static Guess fromTwoRates(MeasuredRecord slow, MeasuredRecord fast, double cutOff) {
        int rows = 101;
        double capacity = slow.removed()[slow.removed().length - 1];
        double slowAmps = slow.amps()[0];
        double fastAmps = fast.amps()[0];
        double last = fastAmps * fast.endSeconds(cutOff);
        double[] charge = new double[rows];
        double[] volts = new double[rows];
        double[][] table = new double[4][rows];
        double settled = fastAmps * 5 * SLOW_SECONDS;
        double instant = (fast.volts()[0] - fast.volts()[1]) / fastAmps;
        double minute = (fast.volts()[1] - fast.voltsAtSeconds(30)) / fastAmps
                - (slow.voltsAt(0) - slow.voltsAt(30 * fastAmps)) / fastAmps;
        for (int row = 0; row < rows; row++) {
            double out = capacity * (1 - row / (rows - 1.0));
            double at = Math.max(settled, Math.min(last, out));
            double ohms = (slow.voltsAt(at) - fast.voltsAt(at)) / (fastAmps - slowAmps);
            charge[row] = 1 - out / capacity;
            volts[row] = row == rows - 1 ? slow.volts()[0] : slow.voltsAt(out) + slowAmps * ohms;
            table[0][row] = charge[row];
            table[1][row] = instant;
            table[2][row] = minute;
            table[3][row] = Math.max(0, ohms - instant - minute);
        }
        return new Guess(capacity, OpenCircuit.of(charge, volts), table, FAST_SECONDS, SLOW_SECONDS);
    }

    /**
     * What is known of a cell before it is simulated.
     *
     * @param table charge, then R0, R1, R2 [Ω]; R2 is put right in place
     */
    private record Guess(double capacity, OpenCircuit curve, double[][] table, double fastSeconds, double slowSeconds) {
        CellCircuit with(ThermalNode node) {
            return new CellCircuit(
                    capacity,
                    curve,
                    Resistances.of(table[0], table[1], table[2], table[3]),
                    farads(table[2], fastSeconds),
                    farads(table[3], slowSeconds),
                    Arrhenius.WHOLE_CELL,
                    node,
                    1);
        }

        private static double farads(double[] ohms, double seconds) {
            return seconds / Math.max(1e-6, Arrays.stream(ohms).average().orElseThrow());
        }
    }

    /**
     * Heat and slow resistance put right in turn until the record they are identified from is met: differences of two rates show
     * what has built up, which lags where the resistance changes, and at the temperature the cell had.
     */
    private static CellCircuit identified(
            Guess guess, MeasuredRecord record, double cutOff, double coolingSeconds, double measuredRise) {
        ThermalNode node = new ThermalNode(50, 50 / coolingSeconds);
        for (int round = 0; round < REFINEMENTS; round++) {
            double rise = discharge(guess.with(node), record, cutOff).rise();
            double joulesPerKelvin = node.joulesPerKelvin() * rise / measuredRise;
            node = new ThermalNode(joulesPerKelvin, joulesPerKelvin / coolingSeconds);
            refine(guess, node, record, cutOff);
        }
        return guess.with(node);
    }

    /** Half of each row's error in volts, as resistance. */
    private static void refine(Guess guess, ThermalNode node, MeasuredRecord record, double cutOff) {
        double amps = record.amps()[record.amps().length / 2];
        double[] removed = record.removed();
        Samples samples = samples(guess.with(node), amps, cutOff);
        double end = Math.min(
                record.endSeconds(cutOff), samples.rows().get(samples.rows().size() - 1)[0]);
        double first = guess.slowSeconds() * amps;
        double last = MeasuredRecord.between(record.seconds(), removed, end);
        double[] slow = guess.table()[3];
        for (int row = 0; row < slow.length; row++) {
            double out = Math.max(first, Math.min(last, guess.capacity() * (1 - guess.table()[0][row])));
            double error = samples.at(MeasuredRecord.between(removed, record.seconds(), out), 1) - record.voltsAt(out);
            slow[row] = Math.max(0, slow[row] + error / (2 * amps));
        }
    }

    private static Samples samples(CellCircuit cell, double amps, double cutOff) {
        Samples samples = new Samples(Moment::volts, now -> now.hottestKelvins());
        Simulation.run(
                alone(cell, 1),
                Protocol.of(ProtocolStep.of(
                        "discharge", new Demand.Current(amps), 1, new End(EndKind.VOLTS_AT_MOST, cutOff))),
                samples,
                5,
                Progress.silent());
        return samples;
    }

    /** Time constant of the cooling from half a minute after the end to where a third is left [s]. */
    private static double coolingSeconds(MeasuredRecord record, double end) {
        double[] rise = record.celsius();
        double from = MeasuredRecord.between(record.seconds(), rise, end + 30);
        for (int row = 0; row < rise.length; row++) {
            if (record.seconds()[row] > end + 30 && rise[row] <= from / 3) {
                return (record.seconds()[row] - end - 30) / Math.log(3);
            }
        }
        throw new IllegalStateException("never cools");
    }

    private static Bench alone(CellCircuit cell, double charge) {
        return Bench.of(PackCircuit.series("cell", 0, new CellAt(cell, charge, AMBIENT)), AMBIENT);
    }

    private static double[] column(List<String[]> rows, int column) {
        return rows.stream().mapToDouble(row -> Double.parseDouble(row[column])).toArray();
    }

    private static double[] joined(double[] first, double[] second) {
        double[] both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }
}
