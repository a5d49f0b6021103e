package fettle.engine.rule;

import fettle.engine.cell.Chemistry;
import fettle.engine.units.Faults;
import fettle.engine.units.InputException;

/** How far a person may change a rule: no reason reaches past these. */
final class RuleBounds {
    /** Some high-voltage polymer cells are specified to 4.45 V (a maker's text); no other chemistry goes above its rule. */
    private static final double LIHV_HIGHEST_VOLTS = 4.45;

    private static final double LEAST_SHARE = 0.1;
    private static final double MOST_SHARE = 10;

    private RuleBounds() {}

    /** Refuses a value that no reason allows. */
    static void refuse(RuleOverride override) {
        Quantity quantity = override.quantity();
        double value = override.valueSi();
        if (quantity == Quantity.CHARGE_LIMIT && value > highestChargeVolts(override.chemistry())) {
            throw new InputException(
                    "value",
                    "charge limit of " + override.chemistry().label() + " is "
                            + quantity.print(value) + " per cell; expected at most "
                            + quantity.unit().print(highestChargeVolts(override.chemistry()), 2)
                            + " (bound of the chemistry). If the label says more, choose the chemistry again.");
        }
        double usual = DefaultRules.of(override.chemistry(), quantity).valueSi();
        Faults faults = new Faults();
        switch (quantity.unit()) {
            case CELSIUS ->
                faults.range("value", quantity.meaning(), value, quantity.unit(), -20, 80, "Write it in °C.");
            case PERCENT ->
                faults.range(
                        "value",
                        quantity.meaning(),
                        value,
                        quantity.unit(),
                        0,
                        mostPerCent(quantity),
                        "Write it in %.");
            default ->
                faults.range(
                        "value",
                        quantity.meaning(),
                        value,
                        quantity.unit(),
                        quantity.unit().fromSi(usual * LEAST_SHARE),
                        quantity.unit().fromSi(usual * MOST_SHARE),
                        "Write it in " + quantity.unit().symbol() + ".");
        }
        faults.refuse();
    }

    /** A stored value, never above the charge volts of the chemistry, however it came into the book. */
    static double held(Chemistry chemistry, Quantity quantity, double valueSi) {
        return quantity == Quantity.CHARGE_LIMIT ? Math.min(valueSi, highestChargeVolts(chemistry)) : valueSi;
    }

    /** A share of something never passes 90 %; a growth may. */
    private static double mostPerCent(Quantity quantity) {
        return quantity == Quantity.RETIRE_RESISTANCE ? 1000 : 90;
    }

    private static double highestChargeVolts(Chemistry chemistry) {
        return chemistry == Chemistry.LIHV
                ? LIHV_HIGHEST_VOLTS
                : DefaultRules.of(chemistry, Quantity.CHARGE_LIMIT).valueSi();
    }
}
