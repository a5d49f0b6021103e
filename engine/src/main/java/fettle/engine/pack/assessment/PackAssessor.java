package fettle.engine.pack.assessment;

import fettle.engine.pack.Assessment;
import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.PackHistory;
import fettle.engine.pack.PresentCapacity;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.CitationStatus;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Assesses a pack: asks every inspection and joins the answers. Stateless and thread-safe. */
public final class PackAssessor {
    private static final List<Inspection> INSPECTIONS = List.of(
            new SignInspection(),
            new ContradictionInspection(),
            new VoltsInspection(),
            new RecordInspection(),
            new ImbalanceInspection(),
            new DriftInspection(),
            new ResistanceInspection(),
            new TemperatureInspection(),
            new KeptFullInspection(),
            new ChargeLevelInspection());

    private PackAssessor() {}

    /** The state of a pack at an instant, from its record and the rules, its capacity by the label. */
    public static Assessment assess(PackHistory history, RuleSet rules, MeterAccuracy meter, Instant now) {
        return assess(history, PresentCapacity.ofLabel(history.pack()), rules, meter, now);
    }

    /** The same, with the capacity that its record was found to tell. */
    public static Assessment assess(
            PackHistory history, PresentCapacity capacity, RuleSet rules, MeterAccuracy meter, Instant now) {
        PackCase packCase = PackCase.of(history, capacity, rules, meter, now);
        List<Finding> findings = new ArrayList<>();
        List<String> passed = new ArrayList<>();
        for (Inspection inspection : INSPECTIONS) {
            List<Finding> found = inspection.inspect(packCase);
            findings.addAll(found);
            if (found.isEmpty() && inspection.canBeAsked(packCase)) {
                passed.add(inspection.passes());
            }
        }
        findings.sort(Comparator.comparing(Finding::standing).reversed());
        return joined(packCase, findings, passed);
    }

    private static Assessment joined(PackCase packCase, List<Finding> findings, List<String> passed) {
        Optional<Imbalance> imbalance = Imbalance.of(packCase);
        Estimate charge = packCase.charge();
        Estimate usable = charge == null ? null : usable(packCase, charge);
        Check latest = packCase.latest();
        List<Step> steps = new ArrayList<>();
        packCase.cells().forEach(cell -> steps.addAll(cell.working().steps()));
        imbalance.ifPresent(found -> steps.add(found.step()));
        if (charge != null && usable != null) {
            steps.add(chargeStep(packCase, charge));
            steps.add(usableStep(packCase, charge, usable));
        }
        return new Assessment(
                packCase.pack(),
                findings.isEmpty() ? Standing.READY : findings.get(0).standing(),
                packCase.cells(),
                charge,
                packCase.capacity(),
                usable,
                imbalance.map(Imbalance::volts).orElse(null),
                imbalance.map(Imbalance::coulombs).orElse(null),
                ChargeTimeline.fullSince(packCase.evidence()),
                latest == null ? null : latest.takenAt(),
                packCase.temperatureKelvins(),
                counts(packCase),
                findings,
                passed,
                new Working(steps));
    }

    private static @Nullable Estimate usable(PackCase packCase, Estimate charge) {
        PresentCapacity present = packCase.capacity();
        double capacity = present.plannedCoulombs();
        double above = Math.max(0, charge.value() - packCase.limit(Quantity.RESERVE));
        return Estimate.ofIndependent(
                above * capacity,
                List.of(
                        new Driver("charge of the weakest cell", charge.standardDeviation() * capacity),
                        new Driver(
                                present.measured() ? "measured capacity" : "label capacity not yet measured",
                                above * present.coulombs().standardDeviation())));
    }

    private static Step chargeStep(PackCase packCase, Estimate charge) {
        ChargeEvidence latest = packCase.evidence().get(packCase.evidence().size() - 1);
        return new Step(
                "charge now",
                "what the latest entry says; self-discharge since then is left out",
                List.of("latest entry = " + latest.how() + ", " + latest.at().truncatedTo(ChronoUnit.MINUTES)),
                TradeUnit.PERCENT.print(charge, 0),
                Citation.commonPractice("the latest entry that tells of charge stands for the pack"));
    }

    private static Step usableStep(PackCase packCase, Estimate charge, Estimate usable) {
        return new Step(
                "charge to use, above the reserve",
                "(z of the weakest cell − reserve) · capacity, never below 0",
                List.of(
                        "z = " + TradeUnit.PERCENT.print(charge, 0),
                        "reserve = " + packCase.limits().rule(Quantity.RESERVE).print(),
                        capacity(packCase.capacity())),
                TradeUnit.MILLIAMPERE_HOUR.print(usable, 0),
                new Citation("capacity by label until the pack's own record tells it", CitationStatus.FROM_MEMORY));
    }

    private static String capacity(PresentCapacity present) {
        String planned = "capacity = " + TradeUnit.MILLIAMPERE_HOUR.print(present.plannedCoulombs(), 0);
        if (!present.measured()) {
            return planned + " by its label, ± 5 %";
        }
        String measured =
                TradeUnit.MILLIAMPERE_HOUR.print(present.coulombs(), 0) + " measured from " + present.evidence();
        return present.coulombs().value() > present.labelCoulombs()
                ? planned + ", its label; " + measured + ", and no more than the label is planned with"
                : planned + "; " + measured;
    }

    private static Assessment.Counts counts(PackCase packCase) {
        PackHistory history = packCase.history();
        double limit = packCase.limit(Quantity.TEMPERATURE_LIMIT);
        return new Assessment.Counts(
                history.charges().size(),
                history.runs().size(),
                count(history, check -> VoltsInspection.isBelow(packCase, check)),
                count(history, check -> VoltsInspection.isAbove(packCase, check))
                        + (int) history.charges().stream()
                                .filter(charge -> VoltsInspection.isAbove(packCase, charge))
                                .count(),
                (int) TemperatureInspection.temperatures(packCase)
                        .filter(noted -> noted.kelvins() > limit)
                        .count());
    }

    private static int count(PackHistory history, Predicate<Check> condition) {
        return (int) history.checks().stream().filter(condition).count();
    }
}
