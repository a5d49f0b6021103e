package fettle.engine.travel;

import fettle.engine.cell.DefaultCurves;
import fettle.engine.pack.Standing;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.CitationStatus;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What sending a lithium pack as air cargo asks for.
 *
 * @param goods UN number; empty if it may not be sent
 * @param maySend false for packs that never fly
 * @param mostCharge most charge it may hold, a fraction of rated capacity
 * @param chargeIsRule whether that is a rule, or a recommendation
 * @param restVolts about the rest volts of a cell at that charge [V]: an indication, never proof
 * @param drawCoulombs charge to draw first [C]; empty if its charge is not known or low enough
 * @param why the reasons, the binding one first
 * @param confirm that the carrier decides, with the date of the table
 * @param working the steps
 */
public record CargoAnswer(
        String goods,
        boolean maySend,
        double mostCharge,
        boolean chargeIsRule,
        double restVolts,
        OptionalDouble drawCoulombs,
        List<String> why,
        String confirm,
        Working working) {
    /** The newest source read: IATA guidance for 2026. */
    public static final LocalDate DATED = LocalDate.of(2026, 1, 1);

    private static final double MOST_CHARGE = 0.3;
    private static final double SMALL_JOULES = TradeUnit.WATT_HOUR.toSi(2.7);
    private static final Citation RULE = new Citation(
            "84 FR 8006 (HM-224I, 2019) and 87 FR 77995 (2022) for UN3480; IATA guidance for 2026 (second hand) for UN3481",
            CitationStatus.PUBLISHED);

    public CargoAnswer {
        why = List.copyOf(why);
    }

    /** What one pack asks for. */
    public static CargoAnswer of(TravelPack pack, ShippedAs how) {
        List<String> why = new ArrayList<>();
        boolean sound = pack.standing() != Standing.GROUNDED && pack.standing() != Standing.RETIRED;
        if (!sound) {
            why.add("It is " + pack.standing().word() + ": damaged or doubtful packs never go by air (from memory:"
                    + " 49 CFR 173.185(f), special provision A154).");
        }
        boolean lithium = pack.pack().chemistry().isLithium();
        if (!lithium) {
            why.add("These tables hold lithium packs only; ask the carrier about "
                    + pack.pack().chemistry().label() + ".");
        }
        boolean rule = ruled(pack, how);
        why.add(reason(how, rule));
        Double charge = pack.chargeFraction();
        double coulombs = pack.pack().ratedCapacityCoulombs();
        OptionalDouble draw = charge == null || charge <= MOST_CHARGE
                ? OptionalDouble.empty()
                : OptionalDouble.of((charge - MOST_CHARGE) * coulombs);
        double volts = DefaultCurves.of(pack.pack().chemistry()).volts(MOST_CHARGE);
        return new CargoAnswer(
                lithium ? how.number() : "",
                sound && lithium,
                MOST_CHARGE,
                rule,
                volts,
                draw,
                why,
                "Confirm with the carrier; rules change, and packing, marks and papers are asked for besides. Table as of "
                        + DATED + ".",
                Working.of(step(pack, volts)));
    }

    private static boolean ruled(TravelPack pack, ShippedAs how) {
        double joules = TradeUnit.WATT_HOUR.toSi(pack.mostWattHours().doubleValue());
        return switch (how) {
            case ALONE -> true;
            case WITH_EQUIPMENT -> joules > SMALL_JOULES;
            case IN_EQUIPMENT -> false;
        };
    }

    private static String reason(ShippedAs how, boolean rule) {
        return switch (how) {
            case ALONE -> "Sent alone: cargo aircraft only, at most 30 % of rated capacity.";
            case WITH_EQUIPMENT ->
                rule
                        ? "Packed with its craft and over 2.7 Wh: at most 30 % of rated capacity from 1 January 2026."
                        : "Packed with its craft, up to 2.7 Wh: 30 % of rated capacity is recommended.";
            case IN_EQUIPMENT -> "In its craft: 30 % of rated capacity is recommended.";
        };
    }

    private static Step step(TravelPack pack, double volts) {
        return new Step(
                "charge for cargo",
                "at most 30 % of rated capacity",
                List.of("rated capacity = "
                        + TradeUnit.MILLIAMPERE_HOUR.print(pack.pack().ratedCapacityCoulombs(), 0)),
                TradeUnit.MILLIAMPERE_HOUR.print(MOST_CHARGE * pack.pack().ratedCapacityCoulombs(), 0) + ", about "
                        + TradeUnit.VOLT.print(volts, 2) + " a cell at rest",
                RULE);
    }
}
