package fettle.engine.charge.answer;

import fettle.engine.pack.model.PackModel;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import java.util.List;

/** Refuses to join packs that must never be joined. */
final class AlikePacks {
    private AlikePacks() {}

    static void refuseUnlessAlike(List<JoinAnswer.Joined> joined) {
        Faults faults = new Faults();
        if (joined.size() < 2) {
            faults.add("packs", "there is " + joined.size() + " pack; expected at least two to join.");
            faults.refuse();
        }
        PackModel first = joined.get(0).pack();
        for (JoinAnswer.Joined other : joined) {
            check(faults, first, other);
        }
        faults.refuse();
    }

    private static void check(Faults faults, PackModel first, JoinAnswer.Joined joined) {
        PackModel other = joined.pack();
        if (other.chemistry() != first.chemistry()) {
            faults.add(
                    "chemistry",
                    other.name() + " is " + other.chemistry().label() + ", " + first.name() + " is "
                            + first.chemistry().label()
                            + "; packs of unlike chemistry are never joined. Charge them apart.");
        }
        if (other.cells().size() != first.cells().size()) {
            faults.add(
                    "cells",
                    other.name() + " has " + other.cells().size() + " cells, " + first.name() + " has "
                            + first.cells().size()
                            + "; packs of unlike cell count are never joined. Charge them apart.");
        }
        faults.range(
                "charge_amps",
                other.name() + ": largest charge current",
                joined.chargeAmps(),
                TradeUnit.AMPERE,
                0.01,
                500,
                "Give it in A, off its label; where unknown its capacity in Ah.");
    }
}
