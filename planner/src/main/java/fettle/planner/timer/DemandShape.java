package fettle.planner.timer;

import fettle.engine.pack.power.LoadAnswer;
import fettle.engine.pack.power.ProfilePart;
import java.util.List;

/** How a craft's current runs within a run: its latest logged run, else a burst of its peak now and then, else steady. */
final class DemandShape {
    private static final double ROUND_SECONDS = 30;
    private static final double BURST_SECONDS = 2; // two seconds at full power twice a minute; from memory

    private final List<ProfilePart> ofUnitMean;

    private DemandShape(List<ProfilePart> ofUnitMean) {
        this.ofUnitMean = ofUnitMean;
    }

    static DemandShape of(TimerQuestion question, double meanAmps) {
        for (int i = question.runs().size() - 1; i >= 0; i--) {
            RunDemand run = question.runs().get(i);
            if (!run.profile().isEmpty()) {
                return new DemandShape(scaled(run.profile(), 1 / mean(run.profile())));
            }
        }
        Double peak = question.peakAmps();
        if (peak == null || peak <= meanAmps) {
            return new DemandShape(List.of());
        }
        double burst = Math.min(BURST_SECONDS, ROUND_SECONDS * meanAmps / peak);
        double between = (meanAmps * ROUND_SECONDS - peak * burst) / (ROUND_SECONDS - burst);
        return new DemandShape(scaled(
                List.of(new ProfilePart(Math.max(0, between), ROUND_SECONDS - burst), new ProfilePart(peak, burst)),
                1 / meanAmps));
    }

    /** What a run of this shape and a mean current does to the pack, until its first limit. */
    LoadAnswer load(TimerQuestion question, double meanAmps) {
        return ofUnitMean.isEmpty()
                ? LoadAnswer.ofCurrent(question.pack(), question.limits(), meanAmps)
                : LoadAnswer.ofProfile(question.pack(), question.limits(), scaled(ofUnitMean, meanAmps));
    }

    private static double mean(List<ProfilePart> parts) {
        double coulombs =
                parts.stream().mapToDouble(part -> part.amps() * part.seconds()).sum();
        return coulombs / parts.stream().mapToDouble(ProfilePart::seconds).sum();
    }

    private static List<ProfilePart> scaled(List<ProfilePart> parts, double factor) {
        return parts.stream()
                .map(part -> new ProfilePart(part.amps() * factor, part.seconds()))
                .toList();
    }
}
