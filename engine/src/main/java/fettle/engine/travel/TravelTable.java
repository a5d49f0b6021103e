package fettle.engine.travel;

import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.CitationStatus;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/**
 * What one authority asks of passengers who carry packs for their own use.
 *
 * @param name whose rules they are
 * @param freeJoules largest rating that needs no approval [J]
 * @param approvalJoules largest rating an operator can approve [J]
 * @param largeSpares most spares a person above the free rating
 * @param smallSpares most spares a person up to the free rating; empty where the table states none
 * @param powerBanks most power banks a person; empty where the table states none
 * @param devices most devices with a pack in them a person; empty where the table states none
 * @param rules the rules in words, each with its date and source
 */
public record TravelTable(
        String name,
        double freeJoules,
        double approvalJoules,
        int largeSpares,
        OptionalInt smallSpares,
        OptionalInt powerBanks,
        OptionalInt devices,
        List<TravelRule> rules) {
    private static final double FREE = TradeUnit.WATT_HOUR.toSi(100);
    private static final double APPROVAL = TradeUnit.WATT_HOUR.toSi(160);
    private static final LocalDate CFR_EDITION = LocalDate.of(2018, 10, 1);
    private static final LocalDate FAA_NEWS = LocalDate.of(2020, 2, 4);
    private static final LocalDate IATA_EDITION = LocalDate.of(2026, 3, 12);
    private static final LocalDate ICAO_ADDENDUM = LocalDate.of(2026, 3, 27);
    private static final LocalDate ICAO_GUIDE = LocalDate.of(2024, 1, 1);

    /** 49 CFR 175.10(a)(18), as the authorities' own pages state it. */
    public static final TravelTable UNITED_STATES = new TravelTable(
            "United States, 49 CFR 175.10(a)(18)",
            FREE,
            APPROVAL,
            2,
            OptionalInt.empty(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            List.of(
                    read(
                            "up to 100 Wh: no approval for its rating; over 100 Wh up to 160 Wh: with the operator's"
                                    + " approval, at most two spares a person; over 160 Wh: not as baggage",
                            FAA_NEWS,
                            "FAA, batteries for personal electronic devices, citing 49 CFR 175.10(a)(18);"
                                    + " FAA newsroom, Lithium Batteries in Baggage"),
                    read(
                            "spares in the cabin only, each with its terminals protected; taken out of a bag that is"
                                    + " handed over at the gate",
                            FAA_NEWS,
                            "FAA newsroom, Lithium Batteries in Baggage, 4 February 2020"),
                    read(
                            "damaged, defective or recalled: neither cabin nor hold",
                            FAA_NEWS,
                            "FAA newsroom, Lithium Batteries in Baggage, 4 February 2020"),
                    read(
                            "what mainly powers another device counts as a spare; non-spillable lead-acid at most 12 V and"
                                    + " 100 Wh, two spares",
                            CFR_EDITION,
                            "49 CFR 175.10(a)(18)(iii)-(iv), edition of 1 October 2018")));

    /** ICAO Technical Instructions and IATA regulations, as trade and government pages set them out. */
    public static final TravelTable ICAO_IATA = new TravelTable(
            "ICAO Technical Instructions and IATA, 67th edition",
            FREE,
            APPROVAL,
            2,
            OptionalInt.of(20),
            OptionalInt.of(2),
            OptionalInt.of(15),
            List.of(
                    read(
                            "the same three bands of rating; at most 15 devices a person unless the operator allows more",
                            ICAO_GUIDE,
                            "RECHARGE, Lithium Batteries 2024, p. 35, ICAO passenger provisions"),
                    read(
                            "at most 20 spares up to 100 Wh a person unless the operator allows more",
                            IATA_EDITION,
                            "Qazinform, 12 March 2026, on the IATA 67th edition (second hand)"),
                    read(
                            "at most two power banks a person, in the cabin, not recharged on board",
                            ICAO_ADDENDUM,
                            "ICAO Doc 9284 2025-2026 Addendum 1, as UK CAA set it out for 27 March 2026")));

    public TravelTable {
        rules = List.copyOf(rules);
    }

    /** The day of the newest source in it. */
    public LocalDate dated() {
        return rules.stream()
                .map(TravelRule::dated)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static TravelRule read(String statement, LocalDate dated, String source) {
        return new TravelRule(statement, dated, new Citation(source, CitationStatus.PUBLISHED));
    }
}
