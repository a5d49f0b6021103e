package fettle.engine.working;

import java.util.List;

/**
 * One step of a calculation, ready to be shown.
 *
 * @param title what the step finds, e.g. {@code charge of cell 3}
 * @param formula the formula in symbols, or the rule in words
 * @param inputs the symbols with their values, e.g. {@code rest volts = 3.840 V ± 5 mV}
 * @param result the outcome with its unit
 * @param citation where formula or limit comes from
 */
public record Step(String title, String formula, List<String> inputs, String result, Citation citation) {
    public Step {
        inputs = List.copyOf(inputs);
    }
}
