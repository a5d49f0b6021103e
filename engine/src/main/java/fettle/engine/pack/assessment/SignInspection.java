package fettle.engine.pack.assessment;

import fettle.engine.pack.Check;
import fettle.engine.pack.Finding;
import fettle.engine.pack.Standing;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Swelling, damage and smell: no later reading takes them back; only withdrawing the entry does. */
final class SignInspection implements Inspection {
    private static final Citation SOURCE = Citation.published(
            "Scottish Fire and Rescue Service, lithium-ion batteries; University of Maryland robotics facility, Li-Po batteries");

    @Override
    public String passes() {
        return "no swelling, damage or smell noted";
    }

    @Override
    public List<Finding> inspect(PackCase packCase) {
        List<Finding> findings = new ArrayList<>();
        for (Check.Sign sign : Check.Sign.values()) {
            packCase.history().checks().stream()
                    .filter(check -> check.signs().contains(sign))
                    .findFirst()
                    .ifPresent(check -> findings.add(finding(sign, check)));
        }
        return findings;
    }

    private static Finding finding(Check.Sign sign, Check check) {
        LocalDate day = check.takenAt().atOffset(ZoneOffset.UTC).toLocalDate();
        String statement = "noted " + sign.label() + " on " + day;
        String advice = sign == Check.Sign.SWELLING
                ? "Do not charge or use. Set it outdoors away from anything that burns and take it to a battery collection point."
                : "Do not charge or use until someone who knows packs has inspected it. If in doubt, take it to a battery collection point.";
        return new Finding(
                sign.name().toLowerCase(Locale.ROOT),
                Standing.GROUNDED,
                statement,
                advice,
                Working.of(
                        new Step("signs", "any sign grounds the pack", List.of("check of " + day), statement, SOURCE)));
    }
}
