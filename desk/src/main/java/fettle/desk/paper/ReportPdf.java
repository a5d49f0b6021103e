package fettle.desk.paper;

import fettle.desk.paper.Drawing.Words;
import fettle.desk.paper.Report.Fact;
import fettle.desk.paper.Report.Section;
import fettle.workshop.label.Paper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Sets a report as PDF: lines broken at words, pages at lines. Used once. */
public final class ReportPdf {
    private static final double MARGIN = 18;
    private static final double FOOT = 12;
    private static final double TITLE = 7;
    private static final double HEADING = 4.6;
    private static final double TEXT = 3.4;
    private static final double SMALL = 2.8;
    private static final double LEADING = 1.35;
    private static final double GUTTER = 3;
    private static final double NAMES = 0.36;

    private final Paper paper;
    private final List<List<Words>> pages = new ArrayList<>();
    private final List<List<Double>> rules = new ArrayList<>();
    private final PaperFont font;
    private double y;

    private ReportPdf(Paper paper, PaperFont font) {
        this.paper = paper;
        this.font = font;
        turn();
    }

    /** The report on A4 or letter paper. */
    public static byte[] of(Report report, Paper paper) {
        try (PDDocument document = new PDDocument()) {
            document.getDocumentInformation().setTitle(report.title());
            PaperFont font = PaperFont.in(document);
            ReportPdf setter = new ReportPdf(paper, font);
            setter.set(report);
            setter.draw(document, report.foot());
            return DrawingPdf.bytes(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void set(Report report) {
        lines(report.title(), MARGIN, width(), TITLE, true);
        lines(report.lead(), MARGIN, width(), TEXT, false);
        report.sections().stream().filter(section -> !section.isEmpty()).forEach(this::set);
    }

    private void set(Section section) {
        y += 2;
        makeRoom(4 * TEXT * LEADING);
        rules.get(rules.size() - 1).add(y);
        lines(section.heading(), MARGIN, width(), HEADING, true);
        section.paragraphs().forEach(text -> lines(text, MARGIN, width(), TEXT, false));
        section.facts().forEach(this::fact);
        if (section.table().size() > 1) {
            table(section.table());
        }
    }

    private void fact(Fact fact) {
        row(List.of(fact.name(), fact.value()), List.of(width() * NAMES, width() * (1 - NAMES)), TEXT, false);
        if (!fact.beside().isEmpty()) {
            lines("± from " + fact.beside(), MARGIN + width() * NAMES, width() * (1 - NAMES) - GUTTER, SMALL, false);
        }
    }

    private void table(List<List<String>> table) {
        List<Double> widths = widths(table);
        for (int row = 0; row < table.size(); row++) {
            row(table.get(row), widths, SMALL, row == 0);
        }
    }

    /** Columns as wide as their longest text, the widest of them cut to what is left over. */
    private List<Double> widths(List<List<String>> table) {
        int columns = table.get(0).size();
        double[] wanted = new double[columns];
        for (List<String> row : table) {
            for (int column = 0; column < columns; column++) {
                double text = font.width(font.settable(row.get(column)), SMALL, true) + GUTTER;
                wanted[column] = Math.max(wanted[column], text);
            }
        }
        double share = width() / columns;
        double narrow = 0;
        double wide = 0;
        for (double want : wanted) {
            narrow += want <= share ? want : 0;
            wide += want <= share ? 0 : want;
        }
        List<Double> widths = new ArrayList<>();
        for (double want : wanted) {
            widths.add(want <= share || narrow + wide <= width() ? want : want / wide * (width() - narrow));
        }
        return widths;
    }

    private void row(List<String> cells, List<Double> widths, double size, boolean bold) {
        List<List<String>> broken = new ArrayList<>();
        int most = 1;
        for (int cell = 0; cell < cells.size(); cell++) {
            broken.add(broken(cells.get(cell), widths.get(cell) - GUTTER, size, bold));
            most = Math.max(most, broken.get(cell).size());
        }
        for (int line = 0; line < most; line++) {
            makeRoom(size * LEADING);
            y += size * LEADING;
            double x = MARGIN;
            for (int cell = 0; cell < cells.size(); cell++) {
                if (line < broken.get(cell).size()) {
                    put(new Words(x, y, size, bold, broken.get(cell).get(line)));
                }
                x += widths.get(cell);
            }
        }
        y += size * 0.25;
    }

    private void lines(String text, double x, double width, double size, boolean bold) {
        for (String line : broken(text, width, size, bold)) {
            makeRoom(size * LEADING);
            y += size * LEADING;
            put(new Words(x, y, size, bold, line));
        }
        y += size * 0.3;
    }

    private List<String> broken(String text, double width, double size, boolean bold) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("[ \\n\\t]+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && font.width(font.settable(longer), size, bold) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private void makeRoom(double height) {
        if (y + height > paper.heightMillimetres() - MARGIN - FOOT) {
            turn();
        }
    }

    private void turn() {
        pages.add(new ArrayList<>());
        rules.add(new ArrayList<>());
        y = MARGIN;
    }

    private void put(Words words) {
        pages.get(pages.size() - 1).add(words);
    }

    private double width() {
        return paper.widthMillimetres() - 2 * MARGIN;
    }

    private void draw(PDDocument document, String foot) throws IOException {
        for (int page = 0; page < pages.size(); page++) {
            try (Pen pen = new Pen(document, font, paper.widthMillimetres(), paper.heightMillimetres())) {
                for (double rule : rules.get(page)) {
                    pen.rule(MARGIN, paper.widthMillimetres() - MARGIN, rule);
                }
                for (Words words : pages.get(page)) {
                    pen.words(words);
                }
                double bottom = paper.heightMillimetres() - FOOT;
                double line = bottom;
                for (String text : broken(foot, width() - 25, SMALL, false)) {
                    pen.words(new Words(MARGIN, line, SMALL, false, text));
                    line += SMALL * LEADING;
                }
                String number = "page " + (page + 1) + " of " + pages.size();
                double across = font.width(number, SMALL, false);
                pen.words(new Words(paper.widthMillimetres() - MARGIN - across, bottom, SMALL, false, number));
            }
        }
    }
}
