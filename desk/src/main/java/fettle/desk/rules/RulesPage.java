package fettle.desk.rules;

import fettle.desk.frame.Figures;
import fettle.engine.cell.Chemistry;
import fettle.engine.rule.Rule;
import fettle.engine.units.Fault;
import fettle.engine.working.CitationStatus;
import fettle.workshop.RuleForm;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The rules in force for one chemistry, and for one pack where a tag is given.
 *
 * @param chemistries what can be chosen, the one shown marked
 * @param chemistry the one shown
 * @param packTag the pack; empty for the whole book
 * @param rules what holds
 */
public record RulesPage(List<Choice> chemistries, String chemistry, String packTag, List<Row> rules) {
    private static final Set<CitationStatus> CHANGED = Set.of(CitationStatus.YOUR_OWN, CitationStatus.MAKERS_LIMIT);

    /** A chemistry to choose. */
    public record Choice(String label, boolean shown) {}

    /**
     * One rule.
     *
     * @param changed whether a person changed it, so that it can be taken back
     * @param open whether its form is open, because a change was refused
     * @param value what stands in its form
     * @param reason what stands in its form
     * @param valueFaults what is wrong with the value just tried
     * @param reasonFaults what is wrong with the reason just tried
     */
    public record Row(
            String key,
            String meaning,
            String limit,
            String source,
            String status,
            boolean changed,
            boolean loosened,
            boolean open,
            String value,
            String reason,
            List<String> valueFaults,
            List<String> reasonFaults) {}

    /** True if a change just tried was refused. */
    public boolean refused() {
        return rules.stream().anyMatch(Row::open);
    }

    static RulesPage of(Chemistry chemistry, String packTag, List<Rule> rules) {
        return of(chemistry, packTag, rules, new RuleForm("", "", "", "", ""), List.of());
    }

    /** The page after a change was refused: what was typed is kept. */
    static RulesPage of(Chemistry chemistry, String packTag, List<Rule> rules, RuleForm tried, List<Fault> faults) {
        List<Choice> choices = Arrays.stream(Chemistry.values())
                .map(each -> new Choice(each.label(), each == chemistry))
                .toList();
        return new RulesPage(
                choices,
                chemistry.label(),
                packTag,
                rules.stream().map(rule -> row(rule, tried, faults)).toList());
    }

    private static Row row(Rule rule, RuleForm tried, List<Fault> faults) {
        boolean open = rule.quantity().key().equals(tried.quantity());
        return new Row(
                rule.quantity().key(),
                rule.quantity().meaning(),
                rule.print(),
                Figures.unbroken(rule.citation().text()),
                rule.citation().status().label(),
                CHANGED.contains(rule.citation().status()),
                rule.loosened(),
                open,
                open ? tried.value() : "",
                open ? tried.reason() : "",
                open ? sentences(faults, fault -> !atReason(fault)) : List.of(),
                open ? sentences(faults, RulesPage::atReason) : List.of());
    }

    private static boolean atReason(Fault fault) {
        return fault.field().equals("reason");
    }

    private static List<String> sentences(List<Fault> faults, Predicate<Fault> which) {
        return faults.stream().filter(which).map(Fault::sentence).toList();
    }
}
