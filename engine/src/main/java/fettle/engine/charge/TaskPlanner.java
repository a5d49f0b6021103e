package fettle.engine.charge;

import fettle.engine.pack.Assessment;
import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Limits;
import fettle.engine.rule.RuleSet;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Source;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Turns an assessment into work, most urgent first. A grounded or unproven pack gets no charge, balance or storage task:
 * first someone must look. Stateless and thread-safe.
 */
public final class TaskPlanner {
    /** What a finding asks for; findings not named here are answered by charging, storage or balance. */
    private static final Map<String, TaskKind> ANSWERS = Map.ofEntries(
            Map.entry("swelling", TaskKind.RETIRE),
            Map.entry("damage", TaskKind.INSPECT),
            Map.entry("smell", TaskKind.INSPECT),
            Map.entry("contradiction", TaskKind.CONFIRM),
            Map.entry("identity", TaskKind.CONFIRM),
            Map.entry("over-discharge", TaskKind.INSPECT),
            Map.entry("over-charge", TaskKind.INSPECT),
            Map.entry("drifting-cell", TaskKind.INSPECT),
            Map.entry("resistance", TaskKind.INSPECT),
            Map.entry("leaking-cell", TaskKind.INSPECT),
            Map.entry("trace-under-voltage", TaskKind.INSPECT),
            Map.entry("trace-over-charge", TaskKind.INSPECT),
            Map.entry("trace-over-current", TaskKind.INSPECT),
            Map.entry("trace-over-charge-current", TaskKind.INSPECT),
            Map.entry("trace-over-temperature", TaskKind.INSPECT),
            Map.entry("trace-charged-cold", TaskKind.INSPECT),
            Map.entry("trace-charged-hot", TaskKind.INSPECT),
            Map.entry("trace-resistance-step", TaskKind.INSPECT),
            Map.entry("trace-cell-collapse", TaskKind.INSPECT),
            Map.entry("capacity-below-limit", TaskKind.RETIRE),
            Map.entry("never-checked", TaskKind.CHECK),
            Map.entry("check-old", TaskKind.CHECK),
            Map.entry("pack-volts-only", TaskKind.CHECK),
            Map.entry("charge-unknown", TaskKind.CHECK),
            Map.entry("too-warm", TaskKind.COOL),
            Map.entry("too-cold", TaskKind.COOL));

    private TaskPlanner() {}

    /** The tasks of one pack. */
    public static List<Task> plan(
            Assessment assessment, RuleSet rules, List<Charger> chargers, List<Source> sources, Instant now) {
        List<Task> tasks = new ArrayList<>();
        for (Finding finding : assessment.findings()) {
            answer(assessment, finding, now).ifPresent(tasks::add);
        }
        if (assessment.standing().compareTo(Standing.UNPROVEN) < 0) {
            Limits limits = rules.limitsFor(
                    assessment.pack().chemistry(),
                    assessment.pack().tag(),
                    assessment.pack().makersLimits());
            tasks.addAll(new ChargingTasks(assessment, limits, new Means(chargers, sources), now).tasks());
        }
        tasks.sort(Comparator.comparing(Task::kind));
        return tasks;
    }

    private static Optional<Task> answer(Assessment assessment, Finding finding, Instant now) {
        TaskKind kind = finding.id().equals("imbalance") && finding.standing() == Standing.GROUNDED
                ? TaskKind.INSPECT
                : ANSWERS.get(finding.id());
        return Optional.ofNullable(kind)
                .map(found -> new Task(
                        found,
                        assessment.pack().tag(),
                        finding.advice(),
                        finding.statement(),
                        now,
                        caution(found),
                        finding.working()));
    }

    private static String caution(TaskKind kind) {
        return switch (kind) {
            case INSPECT, RETIRE ->
                "Handle it outdoors or on a hard bare surface; stop at heat, hissing or smoke and keep away.";
            case CONFIRM -> "Do not charge until it is confirmed.";
            default -> "";
        };
    }
}
