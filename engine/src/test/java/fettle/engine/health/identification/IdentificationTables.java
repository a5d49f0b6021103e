package fettle.engine.health.identification;

import fettle.engine.trace.Trace;
import java.util.List;
import java.util.Locale;

/** The tables of identification in docs/accuracy.md. */
public final class IdentificationTables {
    private static final double WITHIN = 0.05;

    private IdentificationTables() {}

    /** Every pulse against the timed resistances. */
    public static String pulses() {
        StringBuilder table = new StringBuilder("""
                | pulses | window | values | median error | within 5 % | worst |
                | --- | --- | ---: | ---: | ---: | ---: |
                """);
        MeasuredPulses pulses = new MeasuredPulses(MeasuredCell.slowCurve());
        for (String file : List.of("hppc_25C", "hppc_0C")) {
            for (double recovery : new double[] {MeasuredPulses.LOAD_ONLY, MeasuredPulses.WITH_RECOVERY}) {
                List<Double> errors = pulses.errors(file, recovery);
                table.append(String.format(
                        Locale.ROOT,
                        "| %s | %s | %d | %.1f %% | %d | %.1f %% |%n",
                        file.equals("hppc_25C") ? "25 °C" : "0 °C",
                        recovery > 0 ? "with 50 s of recovery" : "to load-off",
                        errors.size(),
                        100 * MeasuredPulses.median(errors),
                        errors.stream().filter(error -> error <= WITHIN).count(),
                        100 * errors.stream().max(Double::compare).orElseThrow()));
            }
        }
        return table.toString();
    }

    /** Drive profiles predicted by the circuit of the pulses. */
    public static String predictions() {
        SlowCurve slow = MeasuredCell.slowCurve();
        IdentifiedCell cell = MeasuredCell.identified(
                "hppc_25C", slow, MeasuredCell.CAPACITY_COULOMBS, new MeasuredPulses(slow).lawOfMidCharge());
        StringBuilder table = new StringBuilder("""
                | profile | above 10 % charge | whole | with the delay its own steps show, above 10 % |
                | --- | ---: | ---: | ---: |
                """);
        for (String name : List.of("us06_25C", "mixed1_25C")) {
            Trace trace = MeasuredCell.trace(name);
            double start = name.startsWith("us06") ? Math.min(1, slow.curve().charge(trace.packVolts()[0])) : 1;
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %.1f mV | %.1f mV | %.1f mV |%n",
                    name.startsWith("us06") ? "US06, to 20.8 A" : "mixed",
                    1e3 * MeasuredPulses.rmsVolts(cell, trace, start, 0.1),
                    1e3 * MeasuredPulses.rmsVolts(cell, trace, start, -1),
                    1e3 * MeasuredPulses.rmsVolts(cell.readBy(MeasuredPulses.whole(trace)), trace, start, 0.1)));
        }
        return table.toString();
    }

    /** Activation energies against the table's two-point values. */
    public static String temperatureLaw() {
        MeasuredPulses pulses = new MeasuredPulses(MeasuredCell.slowCurve());
        TemperatureLaw all = pulses.lawOfMidCharge();
        return String.format(
                Locale.ROOT,
                """
                | pulses, 0.57 to 1.5 Ah out | identified | two-point values of the table, mean |
                | --- | ---: | ---: |
                | 5.8 A | %.1f kJ/mol | 20.7 kJ/mol |
                | 1.45 A | %.1f kJ/mol | 22.4 kJ/mol |
                | all currents, 0.28 to 1.8 Ah | %.1f ± %.1f kJ/mol | – |
                """,
                1e-3 * pulses.law(0.57, 1.5, 5.7, 5.9).activationJoulesPerMole().value(),
                1e-3 * pulses.law(0.57, 1.5, 1.4, 1.5).activationJoulesPerMole().value(),
                1e-3 * all.activationJoulesPerMole().value(),
                1e-3 * all.activationJoulesPerMole().standardDeviation());
    }
}
