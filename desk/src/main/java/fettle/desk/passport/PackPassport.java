package fettle.desk.passport;

import fettle.desk.frame.Figures;
import fettle.desk.pack.HealthSection;
import fettle.desk.pack.PackPage;
import fettle.desk.paper.Report;
import fettle.desk.paper.Report.Fact;
import fettle.desk.paper.Report.Section;
import fettle.desk.paper.ReportPdf;
import fettle.workshop.Workshop;
import fettle.workshop.label.Paper;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Writes a pack's passport from what its page shows: not one figure is worked out here. */
public final class PackPassport {
    private static final String FOOT =
            "Fettle reports which checks a pack passed; it was not opened. What is not in the"
                    + " record is not known here. The maker's instructions, club rules and local codes come first.";

    private PackPassport() {}

    /** A pack's passport as PDF; throws {@link fettle.workshop.UnknownNameException} where there is no such pack. */
    public static byte[] pdf(Workshop workshop, String tag, Paper paper, Clock clock) {
        return ReportPdf.of(of(workshop, tag, new Figures(clock)), paper);
    }

    static Report of(Workshop workshop, String tag, Figures figures) {
        PackPage page =
                PackPage.of(workshop.review().pack(tag), workshop.traces().ofPack(tag), figures);
        return new Report(
                "Passport of pack " + page.tag(),
                page.label() + ". Drawn from its record on " + figures.dated(figures.now())
                        + "; dates without a year are of that year.",
                sections(page),
                FOOT);
    }

    private static List<Section> sections(PackPage page) {
        List<Section> sections = new ArrayList<>();
        sections.add(standing(page));
        sections.add(Section.ofFacts("Numbers", List.of(), facts(page.figures())));
        sections.add(health(page.health()));
        sections.add(cells(page.health()));
        sections.add(Section.ofText(
                "Checks it passed",
                page.passed().stream().map(PackPassport::sentence).toList()));
        sections.add(traces(page));
        sections.add(Section.ofTable(
                "Rules it was judged by",
                List.of("Rule", "Limit", "Source"),
                page.rules().stream()
                        .map(rule -> List.of(
                                sentence(rule.meaning()),
                                rule.limit(),
                                (rule.loosened() ? "looser than usual: " : "") + rule.source() + " (" + rule.status()
                                        + ")"))
                        .toList()));
        sections.add(Section.ofTable(
                "Record, newest first",
                List.of("When", "What", "Recorded"),
                Stream.concat(page.past().stream(), page.earlier().stream())
                        .map(event -> List.of(event.date(), event.kind(), event.text()))
                        .toList()));
        return sections;
    }

    private static Section standing(PackPage page) {
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add(page.standing().word().toUpperCase(Locale.ROOT) + ". " + page.standingPhrase()
                + (page.retired() ? " It is retired." : ""));
        page.findings()
                .forEach(finding -> paragraphs.add(finding.standing().word() + ": " + sentence(finding.statement())
                        + ". " + sentence(finding.advice())));
        if (page.findings().isEmpty()) {
            paragraphs.add("Nothing was found against it.");
        }
        return Section.ofText("Standing", paragraphs);
    }

    private static Section health(HealthSection health) {
        return Section.ofFacts("Label versus measured", List.of(health.sentence()), facts(health.figures()));
    }

    private static Section cells(HealthSection health) {
        return Section.ofTable(
                "Cells",
                List.of("Cell", "Holds", "Loses at rest, a day"),
                health.cells().stream()
                        .map(cell -> List.of(
                                Integer.toString(cell.number()),
                                cell.capacity(),
                                (cell.alarm() ? "leaks: " : "") + cell.lossPerDay()))
                        .toList());
    }

    private static Section traces(PackPage page) {
        return Section.ofTable(
                "Logs",
                List.of("Log", "What passed", "Past a limit"),
                page.traces().stream()
                        .map(trace -> List.of(
                                trace.when(),
                                trace.passed(),
                                trace.exceptions().isEmpty() ? "nothing" : String.join("; ", trace.exceptions())))
                        .toList());
    }

    private static List<Fact> facts(List<PackPage.Figure> figures) {
        return figures.stream()
                .map(figure -> new Fact(sentence(figure.name()), figure.value(), figure.drivers()))
                .toList();
    }

    private static String sentence(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
