package fettle.engine.pack.assessment;

import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Working;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Whether the record is enough: checked at all, lately, cell by cell, and of a pack whose label a person has read. */
final class RecordInspection implements Inspection {
    @Override
    public String passes() {
        return "checked cell by cell within the time a check is trusted";
    }

    @Override
    public List<Finding> inspect(PackCase packCase) {
        List<Finding> findings = new ArrayList<>();
        if (packCase.pack().identity() == Pack.Identity.UNCONFIRMED) {
            findings.add(unproven(
                    "identity",
                    "chemistry and cell count (" + packCase.pack().chemistry().label() + " "
                            + packCase.pack().arrangement() + ") are not confirmed by a person",
                    "Read the label and count the balance-lead wires (cells + 1), then mark the pack confirmed."));
        }
        Check latest = packCase.latest();
        if (latest == null) {
            findings.add(unproven(
                    "never-checked",
                    "has never been checked",
                    "Read every cell after an hour's rest and enter the check."));
            return findings;
        }
        if (packCase.packVoltsOnly()) {
            findings.add(unproven(
                    "pack-volts-only",
                    "the latest check read pack volts alone: it cannot tell the cells apart, and a weak cell can hide",
                    "Read each cell at the balance lead."));
        }
        if (!packCase.evidence().isEmpty() && packCase.charge() == null) {
            findings.add(unproven(
                    "charge-unknown",
                    "the latest entry ("
                            + packCase.evidence()
                                    .get(packCase.evidence().size() - 1)
                                    .how() + ") does not tell the charge",
                    "Read every cell after an hour's rest."));
        }
        age(packCase, latest, findings);
        return findings;
    }

    private static void age(PackCase packCase, Check latest, List<Finding> findings) {
        Duration age = Duration.between(latest.takenAt(), packCase.now());
        Rule rule = packCase.limits().rule(Quantity.CHECK_AGE);
        if (age.toSeconds() > rule.valueSi()) {
            String days = TradeUnit.DAY.print(age.toSeconds(), 0);
            findings.add(Inspection.against(
                    rule,
                    "check-old",
                    Standing.UNPROVEN,
                    "last checked " + days + " ago; a check is trusted for " + rule.print(),
                    "Read every cell after an hour's rest.",
                    List.of("age = " + days)));
        }
    }

    private static Finding unproven(String id, String statement, String advice) {
        return new Finding(id, Standing.UNPROVEN, statement, advice, Working.NONE);
    }
}
