package fettle.engine.control.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.reference.ReferenceFiles;
import fettle.engine.units.InputException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The four-bar against solutions found independently with 40-digit arithmetic (continuation and bisection on the closure
 * residual; reference folder, standards/linkage.md). Tolerances are half a unit of the last digit printed there, doubled.
 */
class FourBarAgainstReferenceTest {
    private static final double ANGLE_DEGREES = 1e-6;
    private static final double RATIO = 1e-6;
    private static final double ARM_MILLIMETRES = 1e-6;
    private static final double TRANSMISSION_DEGREES = 1e-4;
    private static final double LIMIT_DEGREES = 1e-6;

    @Test
    void reproducesEveryRowOfTheTable() {
        int rows = 0;
        for (String[] row : ReferenceFiles.rows("standards/linkage.csv")) {
            FourBar linkage = linkage(row);
            double servo = Math.toRadians(number(row[8]));
            assertThat(linkage.rodMetres() * 1000).as(row[0] + " rod").isCloseTo(number(row[7]), within(1e-6));
            if (row[14].equals("ok")) {
                assertPosition(row, linkage, servo);
            } else {
                assertThatThrownBy(() -> linkage.at(servo))
                        .as(String.join(",", row))
                        .isInstanceOf(InputException.class)
                        .hasMessageContaining("cannot close");
            }
            rows++;
        }
        assertThat(rows).isEqualTo(152);
    }

    @Test
    void findsEveryToggleOfTheTableAndNoOther() {
        Map<String, FourBar> linkages = ReferenceFiles.rows("standards/linkage.csv").stream()
                .collect(Collectors.toMap(row -> row[0], FourBarAgainstReferenceTest::linkage, (one, same) -> one));
        int rows = 0;
        for (String[] row : ReferenceFiles.rows("standards/linkage_limits.csv")) {
            List<TravelLimit> toggles = linkages.get(row[0]).limits().stream()
                    .filter(limit -> limit.alignment().toggle())
                    .toList();
            assertToggle(row[0], toggles, 1, row[1], row[2]);
            assertToggle(row[0], toggles, -1, row[3], row[4]);
            rows++;
        }
        assertThat(rows).isEqualTo(8);
    }

    private static void assertPosition(String[] row, FourBar linkage, double servo) {
        String where = row[0] + " at " + row[8];
        Position position = linkage.at(servo);
        RodLine rod = linkage.rodLine(servo);
        assertThat(Math.toDegrees(position.surfaceRadians()))
                .as(where)
                .isCloseTo(number(row[9]), within(ANGLE_DEGREES));
        assertThat(position.ratio()).as(where).isCloseTo(number(row[10]), within(RATIO));
        assertThat(rod.servoArmMetres() * 1000).as(where).isCloseTo(number(row[11]), within(ARM_MILLIMETRES));
        assertThat(rod.hingeArmMetres() * 1000).as(where).isCloseTo(number(row[12]), within(ARM_MILLIMETRES));
        assertThat(Math.toDegrees(rod.transmissionRadians()))
                .as(where)
                .isCloseTo(number(row[13]), within(TRANSMISSION_DEGREES));
        assertThat(Math.toDegrees(linkage.servoRadians(position.surfaceRadians())))
                .as(where + " and back")
                .isCloseTo(number(row[8]), within(1e-5));
    }

    private static void assertToggle(String id, List<TravelLimit> toggles, int side, String degrees, String kind) {
        List<TravelLimit> found = toggles.stream()
                .filter(limit -> limit.servoRadians() * side > 0)
                .toList();
        if (degrees.isBlank()) {
            assertThat(found).as(id).isEmpty();
            return;
        }
        assertThat(found).as(id).hasSize(1);
        assertThat(Math.toDegrees(found.get(0).servoRadians())).isCloseTo(number(degrees), within(LIMIT_DEGREES));
        assertThat(found.get(0).alignment().label()).isEqualTo(kind);
    }

    private static FourBar linkage(String[] row) {
        return new FourBar(
                number(row[1]) / 1000,
                number(row[2]) / 1000,
                number(row[3]) / 1000,
                number(row[4]) / 1000,
                Math.toRadians(number(row[5])),
                Math.toRadians(number(row[6])));
    }

    private static double number(String cell) {
        return Double.parseDouble(cell);
    }
}
