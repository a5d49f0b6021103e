package fettle.engine.pack.assessment;

import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.List;

/** Whether there is enough charge to go out with. */
final class ChargeLevelInspection implements Inspection {
    /** Charge from which a pack goes out as it is. Common practice, no source. */
    private static final double ENOUGH_FRACTION = 0.90;

    @Override
    public String passes() {
        return "charged enough to use";
    }

    @Override
    public boolean canBeAsked(PackCase packCase) {
        return packCase.charge() != null;
    }

    @Override
    public List<Finding> inspect(PackCase packCase) {
        Estimate charge = packCase.charge();
        if (charge == null || charge.value() >= ENOUGH_FRACTION) {
            return List.of();
        }
        String now = TradeUnit.PERCENT.print(charge, 0);
        Rule reserve = packCase.limits().rule(Quantity.RESERVE);
        if (charge.value() < reserve.valueSi()) {
            return List.of(Inspection.against(
                    reserve,
                    "below-reserve",
                    Standing.TEND,
                    "at " + now + ", below the reserve of " + reserve.print(),
                    "Bring it to storage soon: left low it slides towards over-discharge.",
                    List.of("charge = " + now)));
        }
        return List.of(new Finding(
                "not-full",
                Standing.TEND,
                "at " + now + ": charge it before use",
                "Charge when it is wanted.",
                Working.of(new Step(
                        "enough to go out with",
                        "charge of the weakest cell at least " + TradeUnit.PERCENT.print(ENOUGH_FRACTION, 0),
                        List.of("charge = " + now),
                        "not yet",
                        Citation.commonPractice("packs go out full")))));
    }
}
