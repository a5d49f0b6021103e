package fettle.engine.pack.assessment;

import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Cells whose resistance has doubled since their own first reading by the same method, both brought to 25 °C.
 *
 * <p>Formula: R25 = R · exp(−(Ea/Rg)(1/T − 1/298.15 K)), Ea = 22 kJ/mol, the middle of 20 to 25 kJ/mol seen in whole cells
 * near room temperature. Readings without a temperature are taken as at 25 °C.
 */
final class ResistanceInspection implements Inspection {
    private static final double ACTIVATION_KELVINS = 22_000 / 8.314462618;
    private static final double REFERENCE_KELVINS = TradeUnit.CELSIUS.toSi(25);
    private static final double DOUBLED = 2.0;
    private static final Citation SOURCE = Citation.published(
            "end of life at doubled resistance (industry practice, reported by TWAICE); activation energy as measured on an 18650 "
                    + "cell (P. Kollmeyer, doi:10.17632/wykht8y7tg.1) and a 33 Ah pouch cell (doi:10.5281/zenodo.2580327)");

    @Override
    public String passes() {
        return "no cell's resistance has doubled";
    }

    @Override
    public boolean canBeAsked(PackCase packCase) {
        return pair(packCase).isPresent();
    }

    @Override
    public List<Finding> inspect(PackCase packCase) {
        return pair(packCase).map(ResistanceInspection::findings).orElse(List.of());
    }

    private static List<Finding> findings(Pair pair) {
        List<Finding> findings = new ArrayList<>();
        int cells = Math.min(
                pair.first().cellResistanceOhms().size(),
                pair.last().cellResistanceOhms().size());
        for (int cell = 0; cell < cells; cell++) {
            double then = at25(pair.first(), cell);
            double now = at25(pair.last(), cell);
            if (now >= DOUBLED * then) {
                findings.add(finding(cell + 1, then, now));
            }
        }
        return findings;
    }

    private static Finding finding(int cell, double then, double now) {
        String statement = "resistance of cell " + cell + " is " + TradeUnit.MILLIOHM.print(now, 1) + " at 25 °C, "
                + String.format(Locale.ROOT, "%.1f", now / then) + " times its first reading of "
                + TradeUnit.MILLIOHM.print(then, 1);
        return new Finding(
                "resistance",
                Standing.LIMITED,
                statement,
                "Read it again by the same method at room temperature; if it holds, retire the pack from hard use.",
                Working.of(new Step(
                        "resistance at 25 °C",
                        "R25 = R · exp(−(Ea/Rg)(1/T − 1/298.15 K)), Ea = 22 kJ/mol; end of life at twice the first",
                        List.of(
                                "first = " + TradeUnit.MILLIOHM.print(then, 2),
                                "latest = " + TradeUnit.MILLIOHM.print(now, 2)),
                        statement,
                        SOURCE)));
    }

    private static double at25(Check check, int cell) {
        Double kelvins = check.temperatureKelvins();
        double temperature = kelvins == null ? REFERENCE_KELVINS : kelvins;
        return check.cellResistanceOhms().get(cell)
                * Math.exp(-ACTIVATION_KELVINS * (1 / temperature - 1 / REFERENCE_KELVINS));
    }

    private static Optional<Pair> pair(PackCase packCase) {
        List<Check> read = packCase.history().checks().stream()
                .filter(check -> !check.cellResistanceOhms().isEmpty())
                .toList();
        if (read.size() < 2) {
            return Optional.empty();
        }
        Check last = read.get(read.size() - 1);
        return read.stream()
                .filter(check -> check.resistanceMethod().equals(last.resistanceMethod()))
                .findFirst()
                .filter(first -> first != last)
                .map(first -> new Pair(first, last));
    }

    private record Pair(Check first, Check last) {}
}
