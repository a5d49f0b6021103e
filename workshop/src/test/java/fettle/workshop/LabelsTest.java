package fettle.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Pack;
import fettle.engine.units.InputException;
import fettle.workshop.label.LabelGrid;
import fettle.workshop.label.LabelRun;
import fettle.workshop.label.PackLabel;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class LabelsTest {
    @TempDir
    Path folder;

    private Workshop workshop;

    @BeforeEach
    void open() {
        Clock clock = Clock.fixed(Instant.parse("2026-05-09T08:00:00Z"), ZoneOffset.UTC);
        workshop = Workshop.open(folder.resolve("book"), clock, "Ada");
        add("P07", "LiPo", "4S", "CONFIRMED");
        add("P10", "LiFePO4", "2S2P", "CONFIRMED");
        add("P9", "LiPo", "3S", "UNCONFIRMED");
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private void add(String tag, String chemistry, String cells, String identity) {
        Pack.Identity known = Pack.Identity.valueOf(identity);
        String[] counts = cells.split("[SP]");
        workshop.packs()
                .add(new Pack(
                        tag,
                        Chemistry.parse(chemistry),
                        Integer.parseInt(counts[0]),
                        counts.length > 1 ? Integer.parseInt(counts[1]) : 1,
                        18_000,
                        null,
                        null,
                        null,
                        "",
                        null,
                        "",
                        known,
                        List.of(),
                        ""));
    }

    @Test
    void namesThePacksLimitAndCode() {
        LabelRun run = workshop.labels().of(List.of("p07"), "", 1, "");

        PackLabel label = run.labels().get(0);
        assertThat(label.tag()).isEqualTo("P07");
        assertThat(label.cells()).isEqualTo("4S");
        assertThat(label.chargeLimitVolts()).isEqualTo(4 * 4.20, within(1e-9));
        assertThat(label.code()).isEqualTo("fettle:P07");
    }

    @Test
    void namesNoLimitWhereNobodyConfirmedTheChemistry() {
        assertThat(workshop.labels()
                        .of(List.of("P9"), "", 1, "")
                        .labels()
                        .get(0)
                        .chargeLimitVolts())
                .isNull();
    }

    @Test
    void printsEveryPackInUseInOrderWhereNoneIsNamed() {
        workshop.packs().retire("P10", "sold");

        assertThat(workshop.labels().of(List.of(), "", 1, "").labels())
                .extracting(PackLabel::tag)
                .containsExactly("P07", "P9");
    }

    @Test
    void leadsToADesk() {
        assertThat(workshop.labels()
                        .of(List.of("P07"), "", 1, "http://192.168.1.20:4150/")
                        .labels()
                        .get(0)
                        .code())
                .isEqualTo("http://192.168.1.20:4150/kit/packs/P07");
    }

    @Test
    void refusesWhatCannotBePrinted() {
        assertThatThrownBy(() -> workshop.labels().of(List.of(), "a5", 1, ""))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("a4-63x38");
        assertThatThrownBy(() -> workshop.labels().of(List.of(), "a4-63x38", 22, "javascript:alert(1)"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("1 to 21")
                .hasMessageContaining("http://");
        assertThatThrownBy(() -> workshop.labels().of(List.of("P99"), "", 1, ""))
                .isInstanceOf(UnknownNameException.class);
    }

    @Test
    void needsAnotherSheetWhereABegunOneIsTooSmall() {
        assertThat(workshop.labels().of(List.of(), "a4-105x74", 6, "").sheets()).isEqualTo(1);
        assertThat(workshop.labels().of(List.of(), "a4-105x74", 7, "").sheets()).isEqualTo(2);
    }

    @ParameterizedTest
    @EnumSource(LabelGrid.class)
    void everyGridStaysOnItsPaperAndNoTwoLabelsTouch(LabelGrid grid) {
        for (int place = 0; place < grid.count(); place++) {
            assertThat(grid.leftMillimetres(place)).isGreaterThanOrEqualTo(0);
            assertThat(grid.topMillimetres(place)).isGreaterThanOrEqualTo(0);
            assertThat(grid.leftMillimetres(place) + grid.widthMillimetres())
                    .isLessThanOrEqualTo(grid.paper().widthMillimetres() + 1e-9);
            assertThat(grid.topMillimetres(place) + grid.heightMillimetres())
                    .isLessThanOrEqualTo(grid.paper().heightMillimetres() + 1e-9);
            for (int other = 0; other < place; other++) {
                boolean apart = Math.abs(grid.leftMillimetres(place) - grid.leftMillimetres(other))
                                >= grid.widthMillimetres() - 1e-9
                        || Math.abs(grid.topMillimetres(place) - grid.topMillimetres(other))
                                >= grid.heightMillimetres() - 1e-9;
                assertThat(apart).as("%s and %s", place, other).isTrue();
            }
        }
    }
}
