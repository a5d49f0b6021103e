package fettle.workshop;

import fettle.engine.cell.Chemistry;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.RuleOverride;
import fettle.engine.units.Faults;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A changed rule as typed by a person: the one place where typed words become a {@link RuleOverride}.
 *
 * @param chemistry its label, e.g. {@code LiPo}
 * @param quantity the rule's key, e.g. {@code storage-time}
 * @param value a figure in the rule's own unit, with or without the unit: {@code 48}, {@code 48 h}, {@code 4,15V}
 * @param packTag the pack it is for; empty for the whole book
 * @param reason why; needed where the new limit is looser
 */
public record RuleForm(String chemistry, String quantity, String value, String packTag, String reason) {
    /** The change, or {@link InputException} with every fault, each at its field's name here. */
    public RuleOverride toOverride() {
        Faults faults = new Faults();
        Optional<Chemistry> known = chemistry(faults);
        Optional<Quantity> limited = quantity(faults);
        Optional<Double> valueSi = limited.flatMap(found -> valueSi(found, faults));
        faults.refuse();
        return new RuleOverride(
                known.orElseThrow(), limited.orElseThrow(), valueSi.orElseThrow(), tagOrNull(), reason.strip());
    }

    private @Nullable String tagOrNull() {
        return packTag.isBlank() ? null : packTag.strip();
    }

    private Optional<Chemistry> chemistry(Faults faults) {
        try {
            return Optional.of(Chemistry.parse(chemistry));
        } catch (InputException refused) {
            refused.faults().forEach(fault -> faults.add("chemistry", fault.sentence()));
            return Optional.empty();
        }
    }

    private Optional<Quantity> quantity(Faults faults) {
        try {
            return Optional.of(parseQuantity(quantity));
        } catch (InputException refused) {
            refused.faults().forEach(fault -> faults.add("quantity", fault.sentence()));
            return Optional.empty();
        }
    }

    /** The quantity whose key a person wrote. */
    public static Quantity parseQuantity(String written) {
        return Arrays.stream(Quantity.values())
                .filter(candidate -> candidate.key().equalsIgnoreCase(written.strip()))
                .findFirst()
                .orElseThrow(() -> new InputException(
                        "quantity",
                        "rule is \"" + written + "\"; expected one of "
                                + Arrays.stream(Quantity.values())
                                        .map(Quantity::key)
                                        .collect(Collectors.joining(", "))
                                + "."));
    }

    private Optional<Double> valueSi(Quantity limited, Faults faults) {
        try {
            return Optional.of(QuantityText.si("value", "value", value, Measure.of(limited.unit()), limited.unit()));
        } catch (InputException refused) {
            refused.faults().forEach(fault -> faults.add("value", fault.sentence()));
            return Optional.empty();
        }
    }
}
