package fettle.engine.pack.assessment;

import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.List;

/** Cells further apart than the rules allow. */
final class ImbalanceInspection implements Inspection {
    /** 3.85 V − 3.83 V is a hair over 0.02 V in binary; no meter reads a nanovolt. */
    private static final double BINARY_VOLTS = 1e-9;

    @Override
    public String passes() {
        return "cells within the imbalance limit";
    }

    @Override
    public boolean canBeAsked(PackCase packCase) {
        return packCase.cells().size() > 1;
    }

    @Override
    public List<Finding> inspect(PackCase packCase) {
        return Imbalance.of(packCase)
                .map(imbalance -> findings(packCase, imbalance))
                .orElse(List.of());
    }

    private static List<Finding> findings(PackCase packCase, Imbalance imbalance) {
        if (exceeds(packCase, imbalance, Quantity.IMBALANCE_GROUND)) {
            return List.of(
                    finding(
                            packCase,
                            Quantity.IMBALANCE_GROUND,
                            Standing.GROUNDED,
                            imbalance,
                            "Do not charge: a cell this far off may be failing. Read it again at the balance lead, then inspect."));
        }
        if (exceeds(packCase, imbalance, Quantity.IMBALANCE_TEND)) {
            return List.of(finding(
                    packCase,
                    Quantity.IMBALANCE_TEND,
                    Standing.TEND,
                    imbalance,
                    "Balance at the next charge and read the cells again a day later."));
        }
        return List.of();
    }

    private static boolean exceeds(PackCase packCase, Imbalance imbalance, Quantity limit) {
        return imbalance.volts() > packCase.limit(limit) + BINARY_VOLTS;
    }

    private static Finding finding(
            PackCase packCase, Quantity quantity, Standing standing, Imbalance imbalance, String advice) {
        Rule rule = packCase.limits().rule(quantity);
        String statement = "cell " + imbalance.fullest().number() + " is above cell "
                + imbalance.weakest().number() + " by " + imbalance.print() + "; limit " + rule.print();
        return new Finding(
                "imbalance",
                standing,
                statement,
                advice,
                Working.of(
                        imbalance.step(),
                        new Step(
                                rule.quantity().meaning(),
                                "Δv against the limit " + rule.print(),
                                List.of("Δv and Δq = " + imbalance.print()),
                                statement,
                                rule.citation())));
    }
}
