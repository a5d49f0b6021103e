package fettle.desk.setup;

import fettle.desk.frame.Figures;
import fettle.engine.control.linkage.Linkage;
import fettle.engine.control.setup.FirstRunCheck;
import fettle.engine.control.setup.LinkageText;
import fettle.engine.control.setup.Rate;
import fettle.engine.control.setup.SurfaceSetting;
import fettle.engine.units.TradeUnit;
import fettle.workshop.KeptSheet;
import fettle.workshop.SetUps;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Makes the page of a craft's set-up sheet. */
final class CraftSheets {
    private final SetUps setUps;
    private final Figures figures;

    CraftSheets(SetUps setUps, Figures figures) {
        this.setUps = setUps;
        this.figures = figures;
    }

    CraftSheetPage of(String craft) {
        Optional<KeptSheet> latest = setUps.of(craft).stream().findFirst();
        String typed = latest.map(sheet -> String.join("\n", sheet.typed())).orElse("");
        return of(craft, latest, typed, "", List.of(), CraftSheetPage.SweepForm.EMPTY);
    }

    /** The page with a sweep that was refused. */
    CraftSheetPage refused(String craft, CraftSheetPage.SweepForm sweep) {
        Optional<KeptSheet> latest = setUps.of(craft).stream().findFirst();
        String typed = latest.map(sheet -> String.join("\n", sheet.typed())).orElse("");
        return of(craft, latest, typed, "", List.of(), sweep);
    }

    /** The page with a form that was refused, kept as it was typed. */
    CraftSheetPage refused(String craft, String surfaces, String note, List<String> faults) {
        return of(craft, setUps.of(craft).stream().findFirst(), surfaces, note, faults, CraftSheetPage.SweepForm.EMPTY);
    }

    private CraftSheetPage of(
            String craft,
            Optional<KeptSheet> latest,
            String surfaces,
            String note,
            List<String> faults,
            CraftSheetPage.SweepForm sweep) {
        return new CraftSheetPage(
                craft,
                latest.map(sheet -> sheet.sheet().date().toString()).orElse(""),
                latest.map(sheet -> sheet.sheet().note()).orElse(""),
                latest.map(sheet -> sheet.sheet().surfaces().stream()
                                .map(setting -> surface(craft, setting))
                                .toList())
                        .orElse(List.of()),
                latest.map(KeptSheet::differences).orElse(List.of()),
                FirstRunCheck.inOrder(),
                new SweepPictures(figures).of(setUps.sweeps(craft, "")),
                surfaces,
                note,
                faults,
                sweep);
    }

    private static CraftSheetPage.Surface surface(String craft, SurfaceSetting setting) {
        List<String> parts = new ArrayList<>();
        add(parts, "arm ", setting.armHoleMetres(), TradeUnit.MILLIMETRE, 1);
        add(parts, "horn ", setting.hornHoleMetres(), TradeUnit.MILLIMETRE, 1);
        Linkage linkage = setting.linkage();
        if (linkage != null) {
            parts.add(LinkageText.of(linkage));
        }
        List<String> currents = new ArrayList<>();
        add(currents, "at rest ", setting.idleAmps(), TradeUnit.AMPERE, 2);
        add(currents, "at most ", setting.largestAmps(), TradeUnit.AMPERE, 2);
        return new CraftSheetPage.Surface(
                setting.surface(),
                setting.servo(),
                micros(setting.lowestSeconds()) + " · " + micros(setting.centreSeconds()) + " · "
                        + micros(setting.highestSeconds()),
                setting.reversed() ? "reversed" : "normal",
                String.join(", ", parts),
                String.join(", ", currents),
                setting.rates().stream().map(rate -> rate(setting, rate)).toList(),
                linkage == null ? "" : SetUpsPage.linkageHref(craft, setting.surface()),
                SetUpsPage.surfaceHref(craft, setting.surface()));
    }

    private static String rate(SurfaceSetting setting, Rate rate) {
        return rate.name() + ": up " + TradeUnit.MILLIMETRE.print(setting.upMetres(rate), 1) + " ("
                + TradeUnit.DEGREE.print(rate.upRadians(), 1) + "), down "
                + TradeUnit.MILLIMETRE.print(setting.downMetres(rate), 1) + " ("
                + TradeUnit.DEGREE.print(rate.downRadians(), 1) + "), at "
                + TradeUnit.MILLIMETRE.print(setting.chordMetres(), 0) + setting.differentialWords(rate);
    }

    private static void add(List<String> into, String what, @Nullable Double si, TradeUnit unit, int decimals) {
        if (si != null) {
            into.add(what + unit.print(si, decimals));
        }
    }

    private static String micros(double seconds) {
        return TradeUnit.MICROSECOND.print(seconds, 0);
    }
}
