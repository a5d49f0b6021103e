package fettle.planner.timer;

import fettle.engine.rule.Quantity;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import java.util.List;

/**
 * A run beside what its timer said, and the timer corrected by it.
 *
 * @param expectedCoulombs what a run of that length was to put back [C]
 * @param actualCoulombs what was put back [C]
 * @param left charge left in the weakest cell when it ended, a fraction of full
 * @param keptReserve whether that is at or above the reserve
 * @param surprise how many standard deviations it was off; above 0 it drew more than expected
 * @param statement what to make of it
 * @param corrected the timer with this run among the earlier ones
 */
public record TimerReview(
        Estimate expectedCoulombs,
        double actualCoulombs,
        Estimate left,
        boolean keptReserve,
        double surprise,
        String statement,
        TimerAnswer corrected) {
    private static final double SURPRISING = 2;

    /** Compares a run with the timer it was run by. */
    public static TimerReview of(TimerAnswer answer, RunDemand run) {
        TimerQuestion question = answer.question();
        Estimate expected = answer.amps().times(run.seconds());
        double surprise = (run.coulombs() - expected.value()) / expected.standardDeviation();
        double least = question.pack().leastCapacityCoulombs();
        double capacityShare = question.pack().doubt().capacityShare();
        double value = (question.pack().leastChargeCoulombs() - run.coulombs()) / least;
        double taken = run.coulombs() / least;
        double deviation = Math.hypot(question.pack().doubt().charge(), taken * capacityShare);
        Estimate left = new Estimate(value, deviation, List.of());
        double reserve = question.limits().si(Quantity.RESERVE);
        TimerAnswer corrected = TimerAnswer.of(question.with(run));
        return new TimerReview(
                expected,
                run.coulombs(),
                left,
                value >= reserve,
                surprise,
                statement(surprise, value >= reserve, left, answer, corrected),
                corrected);
    }

    private static String statement(
            double surprise, boolean kept, Estimate left, TimerAnswer before, TimerAnswer corrected) {
        String drew = Math.abs(surprise) <= SURPRISING
                ? "It drew what was to be expected"
                : surprise > 0
                        ? "It drew more than expected: look for what changed, wind, load, propeller or a worn drive"
                        : "It drew less than expected";
        String reserve = kept ? ", and kept the reserve, " : ", and went below the reserve, ";
        return drew + reserve + TradeUnit.PERCENT.print(left, 0) + " left. Timer from "
                + TradeUnit.MINUTE.print(before.settingSeconds(), 1) + " to "
                + TradeUnit.MINUTE.print(corrected.settingSeconds(), 1) + ".";
    }
}
