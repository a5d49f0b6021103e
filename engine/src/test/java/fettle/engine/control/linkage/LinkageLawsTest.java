package fettle.engine.control.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Laws every linkage keeps, on two thousand random geometries; the seed is in each message. */
class LinkageLawsTest {
    private static final long SEED = 20_261_125;
    private static final int GEOMETRIES = 2000;

    @Test
    void torqueRatioByVirtualWorkIsTheDerivativeOfTheTravel() {
        Random random = new Random(SEED);
        int compared = 0;
        for (int count = 0; count < GEOMETRIES; count++) {
            FourBar linkage = any(random);
            double servo = inside(linkage, random);
            double step = 1e-5; // central difference: error of order step² and rounding / step
            double derivative = (linkage.at(servo + step).surfaceRadians()
                            - linkage.at(servo - step).surfaceRadians())
                    / (2 * step);
            double ratio = linkage.at(servo).ratio();
            assertThat(ratio)
                    .as("seed %d, %s at %s", SEED, linkage, servo)
                    .isCloseTo(derivative, within(1e-6 * (1 + Math.abs(ratio))));
            compared++;
        }
        assertThat(compared).isEqualTo(GEOMETRIES);
    }

    @Test
    void rodKeepsItsLengthAllTheWay() {
        Random random = new Random(SEED);
        for (int count = 0; count < GEOMETRIES; count++) {
            FourBar linkage = any(random);
            double servo = inside(linkage, random);
            assertThat(linkage.slackMetres(servo, linkage.at(servo).surfaceRadians()))
                    .as("seed %d, %s at %s", SEED, linkage, servo)
                    .isCloseTo(0, within(1e-12));
        }
    }

    @Test
    void rodEndsAreOneRodApart() {
        Random random = new Random(SEED);
        for (int count = 0; count < GEOMETRIES; count++) {
            FourBar linkage = any(random);
            Position position = linkage.at(inside(linkage, random));
            assertThat(linkage.rodEnds(position).rodMetres())
                    .as("seed %d, %s at %s", SEED, linkage, position)
                    .isCloseTo(linkage.rodMetres(), within(1e-12));
        }
    }

    @Test
    void inverseUndoesForward() {
        Random random = new Random(SEED);
        for (int count = 0; count < GEOMETRIES; count++) {
            FourBar linkage = any(random);
            double servo = inside(linkage, random);
            assertThat(linkage.servoRadians(linkage.at(servo).surfaceRadians()))
                    .as("seed %d, %s at %s", SEED, linkage, servo)
                    .isCloseTo(servo, within(1e-6));
        }
    }

    @Test
    void mirroredLinkageMovesTheOtherWay() {
        Random random = new Random(SEED);
        for (int count = 0; count < GEOMETRIES; count++) {
            FourBar linkage = any(random);
            FourBar mirrored = new FourBar(
                    linkage.armMetres(),
                    linkage.hornMetres(),
                    linkage.hingeXMetres(),
                    -linkage.hingeYMetres(),
                    -linkage.armNeutralRadians(),
                    -linkage.hornNeutralRadians());
            double servo = inside(linkage, random);
            assertThat(mirrored.at(-servo).surfaceRadians())
                    .as("seed %d, %s at %s", SEED, linkage, servo)
                    .isCloseTo(-linkage.at(servo).surfaceRadians(), within(1e-9));
        }
    }

    @Test
    void ratioPassesZeroAtADeadCentreAndGrowsWithoutBoundAtAToggle() {
        Random random = new Random(SEED);
        int deadCentres = 0;
        int toggles = 0;
        for (int count = 0; count < GEOMETRIES; count++) {
            FourBar linkage = any(random);
            for (TravelLimit limit : nearest(linkage)) {
                double just = limit.servoRadians() - Math.signum(limit.servoRadians()) * 1e-9;
                double ratio = Math.abs(linkage.at(just).ratio());
                if (limit.alignment().toggle()) {
                    assertThat(ratio).as("seed %d, %s", SEED, linkage).isGreaterThan(100);
                    toggles++;
                } else {
                    assertThat(ratio).as("seed %d, %s", SEED, linkage).isLessThan(1e-4);
                    deadCentres++;
                }
            }
        }
        assertThat(deadCentres).isGreaterThan(500);
        assertThat(toggles).isGreaterThan(500);
    }

    private static List<TravelLimit> nearest(FourBar linkage) {
        return Stream.of(1.0, -1.0)
                .flatMap(side -> linkage.range().ahead(side).stream())
                .toList();
    }

    /** A servo angle within the linkage's travel, a hundredth of it clear of the ends. */
    private static double inside(FourBar linkage, Random random) {
        double side = random.nextBoolean() ? 1 : -1;
        double end = linkage.range()
                .ahead(side)
                .map(limit -> Math.abs(limit.servoRadians()))
                .orElse(1.0);
        return side * Math.min(1.2, end) * 0.99 * random.nextDouble();
    }

    private static FourBar any(Random random) {
        double side = random.nextBoolean() ? 1 : -1;
        return new FourBar(
                0.005 + 0.025 * random.nextDouble(),
                0.008 + 0.032 * random.nextDouble(),
                0.05 + 0.25 * random.nextDouble(),
                0.03 * (random.nextDouble() - 0.5),
                Math.toRadians(90 + 60 * (random.nextDouble() - 0.5)),
                Math.toRadians(side * 90 + 60 * (random.nextDouble() - 0.5)));
    }
}
