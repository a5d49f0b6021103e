package fettle.engine.pack.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Craft;
import fettle.engine.pack.CraftKind;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CraftFitTest {
    private static final Craft GLIDER = new Craft("Wren", CraftKind.GLIDER, 4, "plug", 30.0, 60.0, "", "");

    @Test
    void ranksByStandingThenRoomThenTimeThenYouth() {
        CraftFit fit = CraftFit.of(
                GLIDER,
                FitWishes.NONE,
                List.of(
                        pack("P01", 4, 4000, 100, Standing.UNPROVEN, 1.0),
                        pack("P02", 4, 3000, 100, Standing.READY, 1.0),
                        pack("P03", 4, 5000, 40, Standing.READY, 1.0),
                        pack("P04", 4, 3000, 100, Standing.READY, 0.5)));

        assertThat(fit.fits().stream()
                        .filter(one -> one.joining() == Fit.Joining.ALONE)
                        .map(Fit::tags))
                .containsExactly(List.of("P04"), List.of("P02"), List.of("P03"), List.of("P01"));
        // 5000 mAh · 80 % / 30 A = 8 min
        assertThat(fit.fits().stream()
                        .filter(one -> one.tags().equals(List.of("P03")))
                        .findFirst()
                        .orElseThrow()
                        .seconds())
                .isCloseTo(480, within(1e-9));
        assertThat(fit.remarks()).isEmpty();
    }

    @Test
    void refusesWithEveryReason() {
        CraftFit fit = CraftFit.of(
                GLIDER,
                new FitWishes(0.2, 0.45, TradeUnit.MILLIAMPERE_HOUR.toSi(3000)),
                List.of(pack("P05", 3, 2200, 25, Standing.GROUNDED, null, "other", 55.0, 0.5)));

        assertThat(fit.fits()).isEmpty();
        assertThat(fit.misfits())
                .singleElement()
                .satisfies(misfit -> assertThat(misfit.reasons())
                        .containsExactly(
                                "P05 is grounded",
                                "Wren takes 4S, this is 3S",
                                "Wren has a plug connector, P05 a other",
                                "holds 2200 mAh, asked are 3000 mAh",
                                "weighs 500 g, asked are at most 450 g",
                                "surely carries 23.0 A from full to reserve, Wren draws 30.0 A",
                                "its label allows 55.0 A, Wren peaks at 60.0 A"));
        assertThatThrownBy(() -> new FitWishes(0.5, 0.2, null)).hasMessageContaining("Swap them");
    }

    /** Shares of current side by side against a general-purpose solution of Kirchhoff's equations (Hipparchus 4.0.3). */
    @Test
    void packsSideBySideShareAsKirchhoffSays() {
        Random random = new Random(3);
        for (int count = 0; count < 200; count++) {
            double one = 0.01 + 0.02 * random.nextDouble();
            double other = one * (0.75 + 0.5 * random.nextDouble());
            FitPack first = withOhms(pack("P01", 4, 4000, 60, Standing.READY, 1.0), one);
            FitPack second = withOhms(pack("P02", 4, 4000, 60, Standing.READY, 1.0), other);
            PackSetMaker.Made made = PackSetMaker.parallel(first, second);

            // unknown: both currents at a total of what the set surely carries; equal drop, sum as given
            RealVector currents = new LUDecomposition(new Array2DRowRealMatrix(new double[][] {{one, -other}, {1, 1}}))
                    .getSolver()
                    .solve(new ArrayRealVector(new double[] {0, made.surelyAmps()}));
            double sure = first.surelyAmps();
            assertThat(Math.max(currents.getEntry(0), currents.getEntry(1))).isCloseTo(sure, within(1e-9));
            assertThat(made.surelyAmps()).isLessThanOrEqualTo(2 * sure + 1e-9);
            assertThat(made.usableCoulombs()).isLessThanOrEqualTo(2 * first.usableCoulombs() + 1e-6);
        }
    }

    @Test
    void pairsInSeriesGoByTheSmallerAndUnlikeOnesAreRefused() {
        Craft six = new Craft("Heron", CraftKind.PLANE, 6, "", 30.0, null, "", "");
        CraftFit fit = CraftFit.of(
                six,
                FitWishes.NONE,
                List.of(
                        pack("P01", 3, 3000, 60, Standing.READY, 1.0),
                        pack("P02", 3, 2900, 50, Standing.READY, 2.0),
                        pack("P03", 3, 2200, 60, Standing.READY, 1.0)));

        assertThat(fit.fits()).singleElement().satisfies(pair -> {
            assertThat(pair.tags()).containsExactly("P01", "P02");
            assertThat(pair.joining()).isEqualTo(Fit.Joining.SERIES);
            assertThat(pair.capacityCoulombs()).isCloseTo(0.8 * TradeUnit.MILLIAMPERE_HOUR.toSi(2900), within(1e-6));
            assertThat(pair.surelyAmps()).isCloseTo(48, within(1e-9));
            assertThat(pair.ageYears()).isEqualTo(2.0);
            assertThat(pair.doubts()).anyMatch(doubt -> doubt.contains("balanced"));
        });
        assertThat(fit.misfits())
                .anyMatch(misfit -> misfit.tags().equals(List.of("P01", "P03"))
                        && misfit.reasons().get(0).startsWith("capacities of P01 and P03 differ by 27 %"));
        assertThat(fit.remarks()).anyMatch(remark -> remark.contains("peak current of Heron"));
    }

    @Test
    void groundedPacksAreInNoPairAndUnlikeChemistryIsNeverJoined() {
        FitPack iron = new FitPack(
                registered("F01", Chemistry.LIFEPO4, 4, 4000, "", null, null),
                Standing.READY,
                TradeUnit.MILLIAMPERE_HOUR.toSi(4000),
                0.2,
                0.02,
                new Estimate(100, 1, List.of()),
                null);
        CraftFit fit = CraftFit.of(
                GLIDER,
                FitWishes.NONE,
                List.of(
                        pack("P01", 4, 4000, 100, Standing.READY, 1.0),
                        pack("P02", 4, 4000, 100, Standing.GROUNDED, 1.0),
                        iron));

        assertThat(fit.fits()).noneMatch(one -> one.tags().contains("P02"));
        assertThat(fit.misfits())
                .anyMatch(misfit -> misfit.tags().equals(List.of("P01", "F01"))
                        && misfit.reasons().get(0).contains("unlike chemistry"));
    }

    private static FitPack withOhms(FitPack pack, double ohms) {
        return new FitPack(
                pack.pack(),
                pack.standing(),
                pack.capacityCoulombs(),
                pack.reserveFraction(),
                ohms,
                pack.sustainableAmps(),
                pack.ageYears());
    }

    private static FitPack pack(
            String tag, int cells, double milliampHours, double amps, Standing standing, @Nullable Double years) {
        return pack(tag, cells, milliampHours, amps, standing, years, "", null, null);
    }

    private static FitPack pack(
            String tag,
            int cells,
            double milliampHours,
            double amps,
            Standing standing,
            @Nullable Double years,
            String connector,
            @Nullable Double rating,
            @Nullable Double kilograms) {
        return new FitPack(
                registered(tag, Chemistry.LIPO, cells, milliampHours, connector, rating, kilograms),
                standing,
                TradeUnit.MILLIAMPERE_HOUR.toSi(milliampHours),
                0.2,
                0.02,
                new Estimate(amps, 1, List.of()),
                years);
    }

    private static Pack registered(
            String tag,
            Chemistry chemistry,
            int cells,
            double milliampHours,
            String connector,
            @Nullable Double rating,
            @Nullable Double kilograms) {
        return new Pack(
                tag,
                chemistry,
                cells,
                1,
                TradeUnit.MILLIAMPERE_HOUR.toSi(milliampHours),
                null,
                rating,
                kilograms,
                connector,
                null,
                "",
                Pack.Identity.CONFIRMED,
                List.of(),
                "");
    }
}
