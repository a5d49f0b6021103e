package fettle.engine.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.reference.ReferenceFiles;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ratings and bands against standards/air_travel_cases.csv (computed there in exact decimal arithmetic). */
final class AirTravelAgainstWorkedCasesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final List<TravelTable> TABLES = List.of(TravelTable.UNITED_STATES, TravelTable.ICAO_IATA);

    @Test
    void everyWorkedRatingAndBandIsMetExactly() {
        List<String[]> cases = ReferenceFiles.rows("standards/air_travel_cases.csv");
        assertThat(cases).hasSizeGreaterThan(30);
        for (String[] row : cases) {
            Chemistry chemistry = Chemistry.parse(row[0].replace(" 3.6", ""));
            TravelPack pack = spare(pack(chemistry, Integer.parseInt(row[1]), Double.parseDouble(row[2])));
            PackingLine line = line(pack);
            assertThat(pack.wattHours()).as(String.join(",", row)).isEqualByComparingTo(new BigDecimal(row[5]));
            RatingBand band = switch (row[6].charAt(0)) {
                case 'A' -> RatingBand.FREE;
                case 'B' -> RatingBand.WITH_APPROVAL;
                default -> RatingBand.TOO_LARGE;
            };
            assertThat(line.band()).as(String.join(",", row)).isEqualTo(band);
            assertThat(line.carriage()).as(row[7]).isEqualTo(carriage(row[7]));
            assertThat(CargoAnswer.of(pack, ShippedAs.WITH_EQUIPMENT).chargeIsRule())
                    .as("over 2.7 Wh: " + String.join(",", row))
                    .isEqualTo("yes".equals(row[8]));
        }
    }

    private static Carriage carriage(String spareRule) {
        if (spareRule.startsWith("not permitted")) {
            return Carriage.NOT_BY_AIR;
        }
        return spareRule.contains("operator approval") ? Carriage.CABIN_WITH_APPROVAL : Carriage.CABIN;
    }

    @Test
    void hundredWattHoursTypedAsSuchAreNotPushedOverTheLimit() {
        // 4 x 3.2 V x 7812.5 mAh is 100 Wh to the last digit
        assertThat(line(spare(pack(Chemistry.LIFEPO4, 4, 7812.5))).band()).isEqualTo(RatingBand.FREE);
        assertThat(line(spare(pack(Chemistry.LIFEPO4, 4, 7812.6))).band()).isEqualTo(RatingBand.WITH_APPROVAL);
    }

    @Test
    void wattHoursPrintedOnTheLabelCount() {
        Pack pack = pack(Chemistry.LIPO, 6, 4500);
        TravelPack printed =
                new TravelPack(pack, Standing.READY, CarriedAs.SPARE, TradeUnit.WATT_HOUR.toSi(100.5), null);
        assertThat(line(printed).band()).isEqualTo(RatingBand.WITH_APPROVAL);
    }

    @Test
    void aPackOfUnconfirmedChemistryIsJudgedByTheHighestNominalVolts() {
        Pack pack = unconfirmed(Chemistry.LIPO, 6, 4400); // 97.68 Wh at 3.7 V, 100.32 Wh at 3.8 V
        PackingLine line = line(spare(pack));
        assertThat(line.band()).isEqualTo(RatingBand.WITH_APPROVAL);
        assertThat(line.first()).anyMatch(step -> step.contains("Confirm chemistry"));
    }

    @Test
    void groundedAndRetiredPacksNeverFlyInAnyWay() {
        for (Standing standing : List.of(Standing.GROUNDED, Standing.RETIRED)) {
            for (CarriedAs as : CarriedAs.values()) {
                TravelPack pack = new TravelPack(pack(Chemistry.LIPO, 1, 300), standing, as, null, 0.2);
                assertThat(line(pack).carriage()).isEqualTo(Carriage.NOT_BY_AIR);
                assertThat(line(pack).first()).isEmpty();
            }
            TravelPack pack = new TravelPack(pack(Chemistry.LIPO, 1, 300), standing, CarriedAs.SPARE, null, 0.2);
            for (ShippedAs how : ShippedAs.values()) {
                assertThat(CargoAnswer.of(pack, how).maySend()).isFalse();
            }
        }
    }

    @Test
    void threeLargeSparesAreTooManyForOneAndFewEnoughForTwo() {
        List<TravelPack> packs = Collections.nCopies(3, spare(pack(Chemistry.LIPO, 6, 5000)));
        assertThat(PackingList.of(packs, 1, TABLES, DAY).counts())
                .singleElement()
                .asString()
                .contains("at most 2");
        assertThat(PackingList.of(packs, 2, TABLES, DAY).counts()).isEmpty();
    }

    @Test
    void twentyOneSmallSparesPassIataButNotTheTableWithoutANumber() {
        List<TravelPack> packs = Collections.nCopies(21, spare(pack(Chemistry.LIPO, 3, 2200)));
        assertThat(PackingList.of(packs, 1, List.of(TravelTable.ICAO_IATA), DAY).counts())
                .hasSize(1);
        assertThat(PackingList.of(packs, 1, List.of(TravelTable.UNITED_STATES), DAY)
                        .counts())
                .isEmpty();
    }

    @Test
    void everyListSaysToConfirmWithTheDatesOfItsTables() {
        PackingList list = PackingList.of(List.of(spare(pack(Chemistry.LIPO, 3, 2200))), 1, TABLES, DAY);
        assertThat(list.confirm()).contains("Confirm with the carrier; rules change", "2026-03-27", "2020-02-04");
        assertThat(list.confirm()).contains("more than a year older");
    }

    @Test
    void leadAcidNeedsToBeSmallAndOfTwelveVolts() {
        assertThat(line(spare(pack(Chemistry.LEAD_ACID, 6, 7000))).carriage()).isEqualTo(Carriage.CABIN);
        assertThat(line(spare(pack(Chemistry.LEAD_ACID, 6, 12000))).carriage()).isEqualTo(Carriage.NOT_BY_AIR);
        assertThat(line(spare(pack(Chemistry.LEAD_ACID, 12, 2000))).carriage()).isEqualTo(Carriage.NOT_BY_AIR);
    }

    @Test
    void cargoAloneAsksForThirtyPercentAndSaysHowMuchToDraw() {
        TravelPack pack = new TravelPack(pack(Chemistry.LIPO, 4, 5000), Standing.READY, CarriedAs.SPARE, null, 0.5);
        CargoAnswer answer = CargoAnswer.of(pack, ShippedAs.ALONE);
        assertThat(answer.goods()).isEqualTo("UN3480");
        // air_travel.md: 30 % of rated capacity of a 5000 mAh pack is 1500 mAh; one maker delivers at 3.7 to 3.8 V
        assertThat(TradeUnit.MILLIAMPERE_HOUR.fromSi(answer.drawCoulombs().orElseThrow()))
                .isCloseTo(2500 - 1500, within(1e-6));
        assertThat(answer.restVolts()).isBetween(3.65, 3.8);
    }

    @Test
    void noPacksNoPeopleAndNoTablesAreRefusedTogether() {
        assertThatThrownBy(() -> PackingList.of(new ArrayList<>(), 0, List.of(), DAY))
                .isInstanceOfSatisfying(
                        InputException.class,
                        refused -> assertThat(refused.faults()).hasSize(3));
    }

    private static PackingLine line(TravelPack pack) {
        return PackingList.of(List.of(pack), 1, TABLES, DAY).lines().get(0);
    }

    private static TravelPack spare(Pack pack) {
        return new TravelPack(pack, Standing.READY, CarriedAs.SPARE, null, null);
    }

    private static Pack pack(Chemistry chemistry, int cells, double milliampereHours) {
        return pack(chemistry, cells, milliampereHours, Pack.Identity.CONFIRMED);
    }

    private static Pack unconfirmed(Chemistry chemistry, int cells, double milliampereHours) {
        return pack(chemistry, cells, milliampereHours, Pack.Identity.UNCONFIRMED);
    }

    private static Pack pack(Chemistry chemistry, int cells, double milliampereHours, Pack.Identity identity) {
        return new Pack(
                "P01",
                chemistry,
                cells,
                1,
                TradeUnit.MILLIAMPERE_HOUR.toSi(milliampereHours),
                null,
                null,
                null,
                "",
                null,
                "",
                identity,
                List.of(),
                "");
    }
}
