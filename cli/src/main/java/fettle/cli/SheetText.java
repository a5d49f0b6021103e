package fettle.cli;

import fettle.engine.control.setup.Difference;
import fettle.engine.control.setup.FirstRunCheck;
import fettle.engine.control.setup.LinkageText;
import fettle.engine.control.setup.Rate;
import fettle.engine.control.setup.SurfaceSetting;
import fettle.engine.units.TradeUnit;
import fettle.workshop.KeptSheet;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A set-up sheet as text, with the check list before the first run. */
final class SheetText {
    private SheetText() {}

    static String of(KeptSheet kept) {
        List<String> lines = new ArrayList<>();
        lines.add(kept.sheet().craft() + ", set " + kept.sheet().date());
        if (!kept.sheet().note().isEmpty()) {
            lines.addAll(Wrapped.lines("note", kept.sheet().note()));
        }
        for (SurfaceSetting setting : kept.sheet().surfaces()) {
            lines.add("");
            surface(setting, lines);
        }
        lines.add("");
        lines.add("since the sheet before:");
        if (kept.differences().isEmpty()) {
            lines.addAll(Wrapped.lines("·", "nothing differs, or this is the first"));
        }
        for (Difference difference : kept.differences()) {
            lines.addAll(Wrapped.lines(
                    "·",
                    difference.surface() + ", " + difference.what() + ": " + difference.before() + " → "
                            + difference.after()));
        }
        lines.add("");
        lines.add("before the first run, propeller off until the range check says otherwise:");
        for (FirstRunCheck check : FirstRunCheck.inOrder()) {
            lines.addAll(Wrapped.lines("[ ]", check.title() + ". " + check.instruction()));
        }
        return String.join(System.lineSeparator(), lines);
    }

    private static void surface(SurfaceSetting setting, List<String> lines) {
        lines.add(setting.surface() + " (" + setting.servo() + (setting.reversed() ? ", reversed" : "") + ")");
        lines.add("  " + TradeUnit.MICROSECOND.print(setting.lowestSeconds(), 0) + " · "
                + TradeUnit.MICROSECOND.print(setting.centreSeconds(), 0) + " · "
                + TradeUnit.MICROSECOND.print(setting.highestSeconds(), 0)
                + holes("arm", setting.armHoleMetres()) + holes("horn", setting.hornHoleMetres())
                + currents("at rest", setting.idleAmps()) + currents("at most", setting.largestAmps()));
        if (setting.linkage() != null) {
            lines.add("  " + LinkageText.of(setting.linkage()));
        }
        for (Rate rate : setting.rates()) {
            lines.add(String.format(
                    "  %-8s up %s, %s; down %s, %s",
                    rate.name(),
                    TradeUnit.DEGREE.print(rate.upRadians(), 1),
                    TradeUnit.MILLIMETRE.print(setting.upMetres(rate), 1),
                    TradeUnit.DEGREE.print(rate.downRadians(), 1),
                    TradeUnit.MILLIMETRE.print(setting.downMetres(rate), 1) + ", at "
                            + TradeUnit.MILLIMETRE.print(setting.chordMetres(), 0)
                            + setting.differentialWords(rate)));
        }
    }

    private static String holes(String which, @Nullable Double metres) {
        return metres == null ? "" : ", " + which + " " + TradeUnit.MILLIMETRE.print(metres, 1);
    }

    private static String currents(String when, @Nullable Double amps) {
        return amps == null ? "" : ", " + TradeUnit.AMPERE.print(amps, 2) + " " + when;
    }
}
