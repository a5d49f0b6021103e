package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/** One figure for all cells, or one for each, with spaces between. */
final class PerCell {
    private static final Pattern SPACE_BEFORE_UNIT = Pattern.compile("\\s+(?=(?:%|[mM]?[vV]\\b|[mM]?[oO]hm|m?[ΩΩ]))");
    private static final Pattern BETWEEN = Pattern.compile("[\\s;]+");

    private PerCell() {}

    /** Charge of each cell: shares such as {@code 40 %}, or rest volts such as {@code 3.84 3.83 3.85}. */
    static List<Double> charges(String typed, int cells, Chemistry chemistry) {
        return each("charge", "charge", typed, cells, one -> charge(one, chemistry));
    }

    /** Resistance of each cell [Ω]; bare numbers are milliohms. */
    static List<Double> ohms(String typed, int cells) {
        return each(
                "resistance",
                "resistance",
                typed,
                cells,
                one -> QuantityText.si("resistance", "resistance", one, Measure.RESISTANCE, TradeUnit.MILLIOHM));
    }

    private static double charge(String one, Chemistry chemistry) {
        if (QuantityText.measures(one, Measure.FRACTION)) {
            return QuantityText.si("charge", "charge", one, Measure.FRACTION, TradeUnit.PERCENT);
        }
        double volts = QuantityText.si("charge", "rest volts", one, Measure.VOLTAGE, TradeUnit.VOLT);
        double most = DefaultCurves.of(chemistry).volts(1) + 0.05;
        if (volts < 0.5 || volts > most) {
            throw new InputException(
                    "charge",
                    "rest volts are " + TradeUnit.VOLT.print(volts, 3) + " for one cell; expected 0.5 V to "
                            + TradeUnit.VOLT.print(most, 2) + " for " + chemistry.label()
                            + ". Give volts per cell, or a share such as 40 %.");
        }
        return Math.max(0, Math.min(1, DefaultCurves.of(chemistry).charge(volts)));
    }

    private static List<Double> each(
            String field, String what, String typed, int cells, ToDoubleFunction<String> reader) {
        if (typed.isBlank()) {
            throw new InputException(field, what + " is not stated. Give one figure for all cells, or one for each.");
        }
        String[] words = BETWEEN.split(SPACE_BEFORE_UNIT.matcher(typed.strip()).replaceAll(""));
        if (words.length != 1 && words.length != cells) {
            throw new InputException(
                    field,
                    what + " has " + words.length + " figures for " + cells
                            + " cells; give one for all, or one for each.");
        }
        List<Double> read = Arrays.stream(words).mapToDouble(reader).boxed().toList();
        return words.length == cells ? read : Collections.nCopies(cells, read.get(0));
    }
}
