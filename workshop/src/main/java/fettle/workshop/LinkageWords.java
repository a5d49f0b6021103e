package fettle.workshop;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.Linkage;
import fettle.engine.control.linkage.PullPull;
import fettle.engine.control.linkage.TorqueRod;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A linkage as part of a surface's line: {@code pushrod aft 80 above 0 arm 90 horn 90}, {@code cables aft 80}, or
 * {@code torque-rod length 120 diameter 3 against}. Lengths in mm, directions in degrees; what is left out of a pushrod or
 * cables is level and square.
 */
final class LinkageWords {
    private static final String FIELD = "surfaces";
    private static final List<String> BAR = List.of("aft", "above", "arm", "horn");
    private static final List<String> ROD = List.of("length", "diameter");

    private LinkageWords() {}

    /**
     * The linkage of a line's parts.
     *
     * @param parts what follows each word of the line
     * @param armMetres hole of the arm [m]; {@code null} if not given
     * @param hornMetres hole of the horn [m]; {@code null} if not given
     */
    static @Nullable Linkage linkage(
            Map<String, String> parts, @Nullable Double armMetres, @Nullable Double hornMetres) {
        List<String> kinds = List.of("pushrod", "cables", "torque-rod").stream()
                .filter(parts::containsKey)
                .toList();
        if (kinds.size() > 1) {
            throw new InputException(
                    FIELD, "a surface has one linkage; " + String.join(" and ", kinds) + " are given.");
        }
        if (kinds.isEmpty()) {
            return null;
        }
        String typed = parts.get(kinds.get(0));
        if (kinds.get(0).equals("torque-rod")) {
            return torqueRod(typed);
        }
        if (armMetres == null || hornMetres == null) {
            throw new InputException(
                    FIELD, "a " + kinds.get(0) + " needs both holes. Give them, e.g. arm 10; horn 15.");
        }
        FourBar bar = bar(typed, armMetres, hornMetres);
        return kinds.get(0).equals("cables") ? PullPull.straight(bar) : bar;
    }

    static String write(@Nullable Linkage linkage) {
        if (linkage instanceof FourBar bar) {
            return "; pushrod " + write(bar);
        }
        if (linkage instanceof PullPull cables) {
            return "; cables " + write(cables.first());
        }
        if (linkage instanceof TorqueRod rod) {
            return "; torque-rod length " + millimetres(rod.lengthMetres()) + " diameter "
                    + millimetres(rod.diameterMetres())
                    + (rod.turning() == TorqueRod.Turning.WITH_SERVO ? "" : " against");
        }
        return "";
    }

    private static String write(FourBar bar) {
        return "aft " + millimetres(bar.hingeXMetres()) + " above " + millimetres(bar.hingeYMetres()) + " arm "
                + QuantityText.writeBare(bar.armNeutralRadians(), TradeUnit.DEGREE) + " horn "
                + QuantityText.writeBare(bar.hornNeutralRadians(), TradeUnit.DEGREE);
    }

    private static FourBar bar(String typed, double armMetres, double hornMetres) {
        Map<String, String> figures = figures(typed, BAR, "pushrod aft 80 above 0 arm 90 horn 90");
        return new FourBar(
                armMetres,
                hornMetres,
                length("aft", figures.getOrDefault("aft", "")),
                length("above", figures.getOrDefault("above", "0")),
                angle("arm direction", figures.getOrDefault("arm", "90")),
                angle("horn direction", figures.getOrDefault("horn", "90")));
    }

    private static TorqueRod torqueRod(String typed) {
        boolean against = typed.endsWith("against");
        String rest = against ? typed.substring(0, typed.length() - "against".length()) : typed;
        Map<String, String> figures = figures(rest, ROD, "torque-rod length 120 diameter 3 against");
        return new TorqueRod(
                against ? TorqueRod.Turning.AGAINST_SERVO : TorqueRod.Turning.WITH_SERVO,
                length("length", figures.getOrDefault("length", "")),
                length("diameter", figures.getOrDefault("diameter", "")),
                TorqueRod.STEEL_SHEAR_PASCALS);
    }

    /** Pairs of a word and what follows it up to the next word. */
    private static Map<String, String> figures(String typed, List<String> words, String example) {
        Map<String, String> figures = new HashMap<>();
        String word = "";
        for (String token : typed.strip().split("\\s+")) {
            if (words.contains(token)) {
                word = token;
            } else if (word.isEmpty()) {
                throw new InputException(
                        FIELD,
                        "\"" + token + "\" is none of " + String.join(", ", words) + "; expected e.g. " + example
                                + ".");
            } else {
                figures.merge(word, token, (one, other) -> one + " " + other);
            }
        }
        return figures;
    }

    private static double length(String what, String typed) {
        return QuantityText.si(FIELD, what, typed, Measure.LENGTH, TradeUnit.MILLIMETRE);
    }

    private static double angle(String what, String typed) {
        return QuantityText.si(FIELD, what, typed, Measure.ANGLE, TradeUnit.DEGREE);
    }

    private static String millimetres(double metres) {
        return QuantityText.writeBare(metres, TradeUnit.MILLIMETRE);
    }
}
