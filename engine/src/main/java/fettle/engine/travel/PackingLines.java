package fettle.engine.travel;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.units.TradeUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What to do with each pack, one by one. */
final class PackingLines {
    private static final BigDecimal LEAD_ACID_WATT_HOURS = BigDecimal.valueOf(100);
    private static final double LEAD_ACID_VOLTS = 12;
    private static final String PROTECT =
            "Protect its terminals: tape them, or give the pack a bag, case or pouch of its own.";
    private static final String SWITCH_OFF =
            "Switch the craft fully off and guard it against starting; take the pack out if it can be.";
    private static final String STORAGE = "Bring it to storage charge (advice, not a rule for passengers).";

    private PackingLines() {}

    static PackingLine of(TravelPack pack, List<TravelTable> tables) {
        RatingBand band = band(pack.mostWattHours(), tables);
        List<String> why = new ArrayList<>();
        Carriage carriage = carriage(pack, band, why);
        return new PackingLine(
                pack.pack().tag(),
                pack.carriedAs(),
                TradeUnit.WATT_HOUR.toSi(pack.wattHours().doubleValue()),
                band,
                carriage,
                carriage == Carriage.NOT_BY_AIR ? List.of() : first(pack, carriage),
                why);
    }

    /** The band by the strictest of the tables, without rounding. */
    static RatingBand band(BigDecimal wattHours, List<TravelTable> tables) {
        double joules = TradeUnit.WATT_HOUR.toSi(wattHours.doubleValue());
        double free = tables.stream().mapToDouble(TravelTable::freeJoules).min().orElseThrow();
        double approval =
                tables.stream().mapToDouble(TravelTable::approvalJoules).min().orElseThrow();
        if (joules <= free) {
            return RatingBand.FREE;
        }
        return joules <= approval ? RatingBand.WITH_APPROVAL : RatingBand.TOO_LARGE;
    }

    private static Carriage carriage(TravelPack pack, RatingBand band, List<String> why) {
        if (pack.standing() == Standing.GROUNDED || pack.standing() == Standing.RETIRED) {
            why.add("It is " + pack.standing().word()
                    + ": damaged or doubtful packs fly neither in the cabin nor in the hold.");
            return Carriage.NOT_BY_AIR;
        }
        if (!pack.pack().chemistry().isLithium()) {
            return withoutLithium(pack, why);
        }
        why.add(rating(pack) + ": " + band.label() + ".");
        if (pack.mostWattHours().compareTo(pack.wattHours()) > 0) {
            why.add("Nobody has confirmed its chemistry; as LiHV it would be " + print(pack.mostWattHours())
                    + ", and that is what it is judged by.");
        }
        if (pack.pack().chemistry() == Chemistry.LI_ION && pack.printedJoules() == null) {
            why.add("Some makers rate Li-ion cells at 3.7 V; watt-hours printed on the label count.");
        }
        return lithium(pack, band, why);
    }

    private static Carriage lithium(TravelPack pack, RatingBand band, List<String> why) {
        if (band == RatingBand.TOO_LARGE) {
            why.add("Neither a spare nor a pack in a craft may be that large.");
            return Carriage.NOT_BY_AIR;
        }
        if (pack.carriedAs() != CarriedAs.INSTALLED) {
            why.add("Spares travel in the cabin only, never in the hold.");
        }
        if (band == RatingBand.WITH_APPROVAL) {
            return Carriage.CABIN_WITH_APPROVAL;
        }
        return pack.carriedAs() == CarriedAs.INSTALLED ? Carriage.CABIN_OR_HOLD : Carriage.CABIN;
    }

    private static Carriage withoutLithium(TravelPack pack, List<String> why) {
        if (pack.pack().chemistry() == Chemistry.NIMH) {
            why.add("No limit of rating for NiMH in these tables (from memory: not restricted while its terminals are"
                    + " protected).");
            return Carriage.CABIN;
        }
        why.add(rating(pack) + "; only non-spillable lead-acid of at most 12 V and 100 Wh may be carried.");
        boolean small = pack.wattHours().compareTo(LEAD_ACID_WATT_HOURS) <= 0 && pack.nominalVolts() <= LEAD_ACID_VOLTS;
        return small ? Carriage.CABIN : Carriage.NOT_BY_AIR;
    }

    private static List<String> first(TravelPack pack, Carriage carriage) {
        List<String> first = new ArrayList<>();
        if (carriage == Carriage.CABIN_WITH_APPROVAL) {
            first.add("Ask the carrier for its approval, in writing, and carry it with you.");
        }
        if (pack.pack().identity() == Pack.Identity.UNCONFIRMED) {
            first.add("Confirm chemistry and cells from its label.");
        }
        if (pack.pack().chemistry().isLithium()) {
            first.add(STORAGE);
        }
        if (pack.pack().chemistry() == Chemistry.LEAD_ACID) {
            first.add("Make sure it is marked non-spillable.");
        }
        first.add(pack.carriedAs() == CarriedAs.INSTALLED ? SWITCH_OFF : PROTECT);
        if (pack.pack().chemistry().isLithium()) {
            first.add("Make sure its maker states the UN 38.3 test.");
        }
        return first;
    }

    private static String rating(TravelPack pack) {
        return pack.printedJoules() != null
                ? "Its label prints " + print(pack.wattHours())
                : "Rated " + print(pack.wattHours());
    }

    static String print(BigDecimal wattHours) {
        return wattHours.stripTrailingZeros().toPlainString() + " Wh";
    }
}
