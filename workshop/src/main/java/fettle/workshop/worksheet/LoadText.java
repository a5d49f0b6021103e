package fettle.workshop.worksheet;

import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.power.LoadAnswer;
import fettle.engine.pack.power.ProfilePart;
import fettle.engine.rule.Limits;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A load as typed: {@code 30 A}, {@code 400 W}, or a profile such as {@code 60 A 20 s; 20 A 3 min}. */
final class LoadText {
    private static final Pattern PART = Pattern.compile("(.*?[aA])\\s+(.+)");

    private LoadText() {}

    /** Works out a load of a pack. */
    @FunctionalInterface
    interface Load {
        LoadAnswer on(PackModel pack, Limits limits);
    }

    static Load parse(String typed) {
        if (typed.contains(";")) {
            List<ProfilePart> parts = Arrays.stream(typed.split(";"))
                    .map(String::strip)
                    .filter(part -> !part.isEmpty())
                    .map(LoadText::part)
                    .toList();
            return (pack, limits) -> LoadAnswer.ofProfile(pack, limits, parts);
        }
        if (QuantityText.measures(typed, Measure.POWER)) {
            double watts = positive(QuantityText.si("load", "load", typed, Measure.POWER, null));
            return (pack, limits) -> LoadAnswer.ofPower(pack, limits, watts);
        }
        double amps = positive(QuantityText.si("load", "load", typed, Measure.CURRENT, TradeUnit.AMPERE));
        return (pack, limits) -> LoadAnswer.ofCurrent(pack, limits, amps);
    }

    private static ProfilePart part(String written) {
        Matcher matcher = PART.matcher(written);
        if (!matcher.matches()) {
            throw new InputException(
                    "load",
                    "\"" + written + "\" is not a part of a profile; expected a current and a time, e.g. 60 A 20 s.");
        }
        return new ProfilePart(
                QuantityText.si("load", "current", matcher.group(1), Measure.CURRENT, TradeUnit.AMPERE),
                QuantityText.si("load", "time", matcher.group(2), Measure.DURATION, null));
    }

    private static double positive(double load) {
        if (load <= 0) {
            throw new InputException("load", "load is " + load + "; expected more than 0, e.g. 30 A or 400 W.");
        }
        return load;
    }
}
