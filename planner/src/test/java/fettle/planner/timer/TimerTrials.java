package fettle.planner.timer;

import fettle.engine.pack.power.ProfilePart;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Predicts each run of generated seasons from the earlier ones, and counts how it went. */
final class TimerTrials {
    /**
     * What came out.
     *
     * @param predictions runs predicted
     * @param medianError median of (time of the middle run − truth) / truth, without sign
     * @param early share of runs that came to the limit before the timer
     * @param meanShare setting over truth, mean
     */
    record Outcome(int predictions, double medianError, double early, double meanShare) {}

    private TimerTrials() {}

    static Outcome of(int seasons, int runs, int fewest, boolean bursts, boolean logged) {
        List<Double> errors = new ArrayList<>();
        int early = 0;
        double shares = 0;
        for (int number = 0; number < seasons; number++) {
            Season season = new Season(9_000L + number, bursts);
            List<RunDemand> known = new ArrayList<>();
            for (int run = 0; run < runs; run++) {
                List<ProfilePart> truth = season.nextRun();
                double limit = season.secondsToLimit(truth, run);
                if (run >= fewest) {
                    // nobody typed a peak: bursts are told by the logged first run, or not at all
                    TimerAnswer answer =
                            TimerAnswer.of(new TimerQuestion(season.told(), Season.LIMITS, known, null, 0.05));
                    errors.add(Math.abs(answer.typicalSeconds().value() / limit - 1));
                    early += answer.settingSeconds() > limit ? 1 : 0;
                    shares += answer.settingSeconds() / limit;
                }
                known.add(noted(season, truth, 0.8 * limit, logged && run == 0));
            }
        }
        double[] sorted = errors.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        int count = sorted.length;
        return new Outcome(count, sorted[count / 2], early / (double) count, shares / count);
    }

    private static RunDemand noted(Season season, List<ProfilePart> truth, double seconds, boolean logged) {
        RunDemand noted = season.noted(truth, seconds);
        return logged
                ? new RunDemand(noted.coulombs(), seconds, truth.subList(0, (int)
                        (seconds / truth.get(0).seconds())))
                : noted;
    }

    public static void main(String[] args) {
        int seasons = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        print("steady, put-back only", of(seasons, 10, 3, false, false));
        print("steady, from 1 run", of(seasons, 3, 1, false, false));
        print("bursts, first run logged", of(seasons / 4, 8, 3, true, true));
        print("bursts, put-back only", of(seasons, 10, 3, true, false));
    }

    private static void print(String what, Outcome outcome) {
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %.1f %% | %.1f %% | %.0f %% |%n",
                what,
                outcome.predictions(),
                100 * outcome.medianError(),
                100 * outcome.early(),
                100 * outcome.meanShare());
    }
}
