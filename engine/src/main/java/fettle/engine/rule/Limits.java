package fettle.engine.rule;

import java.util.List;

/** The rules that hold for one pack, one for every quantity. */
public record Limits(List<Rule> all) {
    public Limits {
        all = List.copyOf(all);
    }

    public Rule rule(Quantity quantity) {
        return all.get(quantity.ordinal());
    }

    /** The limit's value, SI. */
    public double si(Quantity quantity) {
        return rule(quantity).valueSi();
    }
}
