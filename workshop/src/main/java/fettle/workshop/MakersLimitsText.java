package fettle.workshop;

import fettle.engine.cell.Chemistry;
import fettle.engine.rule.RuleOverride;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.engine.units.QuantityText;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Limits a pack's maker states, as typed: a rule's key, a figure and, where it is looser than the rule, why.
 *
 * <p>One a line or separated by semicolons: {@code charge-limit 4.15 V; storage-time 48 h because the label says so}.
 */
final class MakersLimitsText {
    private static final Pattern LIMIT = Pattern.compile("(\\S+)\\s+(.*?)(?:\\s+because\\s+(.*))?");

    private MakersLimitsText() {}

    /** The limits, or {@link InputException} with the faults of all of them. */
    static List<RuleOverride> parse(String typed, Chemistry chemistry) {
        List<RuleOverride> limits = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (String written : typed.split("[;\n]")) {
            if (written.isBlank()) {
                continue;
            }
            try {
                limits.add(limit(written.strip(), chemistry));
            } catch (InputException refused) {
                faults.addAll(refused.faults());
            }
        }
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
        return limits;
    }

    static String write(List<RuleOverride> limits) {
        return limits.stream().map(MakersLimitsText::write).collect(Collectors.joining("; "));
    }

    private static RuleOverride limit(String written, Chemistry chemistry) {
        Matcher matcher = LIMIT.matcher(written);
        if (!matcher.matches()) {
            throw new InputException(
                    "limits",
                    "maker's limit is \"" + written + "\"; expected a rule and a figure, e.g. charge-limit 4.15 V.");
        }
        String reason = matcher.group(3) == null ? "" : matcher.group(3);
        return new RuleForm(chemistry.label(), matcher.group(1), matcher.group(2), "", reason).toOverride();
    }

    private static String write(RuleOverride limit) {
        String figure = QuantityText.write(limit.valueSi(), limit.quantity().unit());
        return limit.quantity().key() + " " + figure + (limit.reason().isBlank() ? "" : " because " + limit.reason());
    }
}
