package fettle.workshop;

import fettle.engine.outing.Choice;
import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.Outing;
import fettle.engine.units.InputException;
import fettle.workshop.outing.DayTimes;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What is settled, as people write it: {@code Harrier 1 with P07}, {@code Harrier 2 at 10:30}, {@code no Harrier 3},
 * {@code not P07}, or the name of a planned charge for its time.
 */
public final class ChoiceText {
    private static final Pattern WITH = Pattern.compile("(.+?)\\s+with\\s+(.+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern AT = Pattern.compile("(.+?)\\s+at\\s+(.*\\d:\\d.*)", Pattern.CASE_INSENSITIVE);
    private static final Pattern WITHOUT_RUN = Pattern.compile("no\\s+(.+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern WITHOUT_PACK = Pattern.compile("not\\s+(\\S+)", Pattern.CASE_INSENSITIVE);

    private final Outing outing;
    private final @Nullable KeptPlan plan;

    ChoiceText(OutingState state) {
        this.outing = state.outing();
        this.plan = state.plan();
    }

    Choice read(String typed) {
        String text = typed.strip();
        Optional<Choice> charge = charge(text);
        if (charge.isPresent()) {
            return charge.get();
        }
        Matcher matcher = WITHOUT_PACK.matcher(text);
        if (matcher.matches()) {
            return new Choice(Choice.Kind.PACK_OUT, "", List.of(pack(matcher.group(1))), null);
        }
        matcher = WITHOUT_RUN.matcher(text);
        if (matcher.matches()) {
            return new Choice(Choice.Kind.RUN_OUT, run(matcher.group(1)), List.of(), null);
        }
        matcher = WITH.matcher(text);
        if (matcher.matches()) {
            List<String> packs = Arrays.stream(matcher.group(2).split("[,\\s]+|\\band\\b"))
                    .filter(tag -> !tag.isBlank())
                    .map(this::pack)
                    .toList();
            return new Choice(Choice.Kind.RUN_PACKS, run(matcher.group(1)), packs, null);
        }
        matcher = AT.matcher(text);
        if (matcher.matches()) {
            Instant at = Outings.times(outing).read("what", "time", matcher.group(2));
            return new Choice(Choice.Kind.RUN_START, run(matcher.group(1)), List.of(), at);
        }
        throw new InputException(
                "what",
                "\"" + text + "\"; expected e.g. Harrier 1 with P07, Harrier 2 at 10:30, no Harrier 3, not P07, or a"
                        + " planned charge by its name.");
    }

    /** A settled choice as it would be typed. */
    public static String write(Choice choice, DayTimes day) {
        Instant at = choice.at();
        String time = at == null ? "" : day.write(at);
        return switch (choice.kind()) {
            case RUN_PACKS -> choice.subject() + " with " + String.join(" and ", choice.packs());
            case RUN_START -> choice.subject() + " at " + time;
            case RUN_OUT -> "no " + choice.subject();
            case PACK_OUT -> "not " + String.join(" and ", choice.packs());
            case CHARGE_START -> choice.subject();
        };
    }

    private Optional<Choice> charge(String text) {
        List<KeptPlan.PlannedCharge> charges = plan == null ? List.of() : plan.charges();
        return charges.stream()
                .filter(charge -> charge.way().equalsIgnoreCase(text))
                .findFirst()
                .map(charge -> new Choice(Choice.Kind.CHARGE_START, charge.way(), charge.packs(), charge.begins()));
    }

    private String run(String typed) {
        return outing.runs().stream()
                .map(Outing.NamedRun::name)
                .filter(name -> name.equalsIgnoreCase(typed.strip()))
                .findFirst()
                .orElseThrow(() -> new InputException(
                        "what",
                        "\"" + typed.strip() + "\" is no run of " + outing.name() + "; its runs are "
                                + String.join(
                                        ", ",
                                        outing.runs().stream()
                                                .map(Outing.NamedRun::name)
                                                .toList())
                                + "."));
    }

    private String pack(String typed) {
        return outing.packs().stream()
                .filter(tag -> tag.equalsIgnoreCase(typed.strip()))
                .findFirst()
                .orElseThrow(() -> new InputException(
                        "what", typed.strip() + " is not among the packs of " + outing.name() + "."));
    }
}
