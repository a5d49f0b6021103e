package fettle.desk.label;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.desk.PdfText;
import fettle.workshop.label.LabelGrid;
import fettle.workshop.label.LabelRun;
import fettle.workshop.label.PackLabel;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class LabelSheetsTest {
    private static PackLabel label(String tag, Double limit) {
        return new PackLabel(tag, "LiPo", "4S", 18_000, limit, "http://192.168.100.200:4150/kit/packs/" + tag);
    }

    private static String code(byte[] pdf, int page, LabelGrid grid, int place) {
        return PdfText.code(
                PdfText.page(pdf, page),
                grid.leftMillimetres(place),
                grid.topMillimetres(place),
                grid.widthMillimetres(),
                grid.heightMillimetres());
    }

    @ParameterizedTest
    @EnumSource(LabelGrid.class)
    void printsWhatCanBeReadBackByEyeAndByCamera(LabelGrid grid) {
        byte[] pdf =
                LabelSheets.pdf(new LabelRun(grid, 1, List.of(label("P07", 16.8), label("Wing-left.spare1", 16.74))));

        assertThat(PdfText.of(pdf))
                .contains("P07", "Wing-left.spare1", "LiPo 4S", "5000 mAh", "charge to 16.80 V", "charge to 16.74 V");
        assertThat(code(pdf, 0, grid, 0)).isEqualTo("http://192.168.100.200:4150/kit/packs/P07");
        assertThat(code(pdf, 0, grid, 1)).isEqualTo("http://192.168.100.200:4150/kit/packs/Wing-left.spare1");
    }

    @Test
    void saysThatChemistryIsNotConfirmedInPlaceOfALimit() {
        byte[] pdf = LabelSheets.pdf(new LabelRun(LabelGrid.USUAL, 1, List.of(label("P07", null))));

        assertThat(PdfText.of(pdf)).contains("not confirmed").doesNotContain("charge to");
    }

    @Test
    void usesUpABegunSheetAndGoesOnToTheNext() {
        List<PackLabel> labels = IntStream.rangeClosed(1, 5)
                .mapToObj(number -> label("P" + number, 16.8))
                .toList();
        byte[] pdf = LabelSheets.pdf(new LabelRun(LabelGrid.A4_105X74, 6, labels));

        assertThat(PdfText.pages(pdf)).isEqualTo(2);
        assertThat(code(pdf, 0, LabelGrid.A4_105X74, 4)).isEmpty();
        assertThat(code(pdf, 0, LabelGrid.A4_105X74, 5)).endsWith("/P1");
        assertThat(code(pdf, 0, LabelGrid.A4_105X74, 7)).endsWith("/P3");
        assertThat(code(pdf, 1, LabelGrid.A4_105X74, 1)).endsWith("/P5");
    }

    @ParameterizedTest
    @EnumSource(LabelGrid.class)
    void everythingStaysOnItsLabel(LabelGrid grid) {
        var sheet = LabelSheets.of(new LabelRun(grid, 1, List.of(label("Wing-left.spare1", 100.8))))
                .get(0);
        double right = grid.leftMillimetres(0) + grid.widthMillimetres();
        double bottom = grid.topMillimetres(0) + grid.heightMillimetres();

        assertThat(sheet.words()).hasSize(4).allSatisfy(words -> {
            assertThat(words.x()).isGreaterThan(grid.leftMillimetres(0));
            assertThat(words.y()).isBetween(grid.topMillimetres(0), bottom);
        });
        assertThat(sheet.blocks()).hasSizeGreaterThan(50).allSatisfy(block -> {
            assertThat(block.x() + block.width()).isLessThanOrEqualTo(right);
            assertThat(block.y()).isGreaterThanOrEqualTo(grid.topMillimetres(0));
            assertThat(block.y() + block.height()).isLessThanOrEqualTo(bottom);
        });
    }
}
