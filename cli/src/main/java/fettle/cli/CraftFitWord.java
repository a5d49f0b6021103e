package fettle.cli;

import fettle.engine.pack.fit.CraftFit;
import fettle.engine.pack.fit.Fit;
import fettle.engine.pack.fit.Misfit;
import fettle.engine.units.TradeUnit;
import fettle.workshop.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fettle craft fit}. */
@Command(
        description =
                "Ranks the packs on the shelf, and pairs of them, for a craft, and says why the others do not suit it.",
        footer = {"", "For example:", "  fettle craft fit Harrier --heaviest 500g --capacity 2000mAh"})
final class CraftFitWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Parameters(paramLabel = "NAME", description = "The craft's name.")
    private String name = "";

    @Option(names = "--lightest", paramLabel = "MASS", description = "Lightest pack that balances it, e.g. 300 g.")
    private String lightest = "";

    @Option(names = "--heaviest", paramLabel = "MASS", description = "Heaviest pack it carries.")
    private String heaviest = "";

    @Option(names = "--capacity", paramLabel = "CHARGE", description = "Least capacity, e.g. 3000 mAh.")
    private String capacity = "";

    @Override
    public void run() {
        try (Workshop workshop = session.open()) {
            CraftFit fit =
                    workshop.fits().of(name, Map.of("lightest", lightest, "heaviest", heaviest, "capacity", capacity));
            session.print(fit, text(fit));
        }
    }

    private static String text(CraftFit fit) {
        List<String> lines = new ArrayList<>();
        if (fit.fits().isEmpty()) {
            lines.add("no pack on the shelf suits it");
        }
        fit.fits().forEach(one -> suits(one, lines));
        fit.remarks().forEach(remark -> lines.addAll(Wrapped.lines("note", remark)));
        lines.add("");
        lines.add("what does not suit it:");
        for (Misfit misfit : fit.misfits()) {
            lines.addAll(Wrapped.lines(
                    "·", String.join(" and ", misfit.tags()) + ": " + String.join("; ", misfit.reasons())));
        }
        lines.addAll(
                Wrapped.lines(
                        "caution",
                        "A first run with another pack: check balance, and end it early. The makers' instructions come first."));
        return String.join(System.lineSeparator(), lines);
    }

    private static void suits(Fit fit, List<String> lines) {
        String how =
                fit.joining() == Fit.Joining.ALONE ? "" : " " + fit.joining().label();
        lines.add(String.format(
                "%-18s %s %-8s %s",
                String.join(" and ", fit.tags()) + how,
                fit.standing().glyph(),
                fit.standing().word(),
                String.join(", ", fit.reasons())
                        + (fit.kilograms() == null ? "" : ", " + TradeUnit.GRAM.print(fit.kilograms(), 0))));
        fit.doubts().forEach(doubt -> lines.addAll(Wrapped.lines("→", doubt)));
    }
}
