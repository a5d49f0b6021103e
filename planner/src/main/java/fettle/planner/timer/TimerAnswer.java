package fettle.planner.timer;

import fettle.engine.pack.power.LoadAnswer;
import fettle.engine.units.Driver;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How long a timer is set.
 *
 * @param question what was asked
 * @param settingSeconds the setting [s], whole seconds, rounded down
 * @param typicalSeconds time until the limit in the middle run [s], ± one standard deviation of the next run
 * @param quantiles how the time of the next run is distributed, the shortest first
 * @param amps mean current of the next run [A], ± one standard deviation
 * @param putBackCoulombs charge to expect put back after a run of that length [C]
 * @param binding the limit met first, in words
 * @param remarks what the answer rests on and what would sharpen it
 * @param working the steps
 */
public record TimerAnswer(
        TimerQuestion question,
        int settingSeconds,
        Estimate typicalSeconds,
        List<Quantile> quantiles,
        Estimate amps,
        Estimate putBackCoulombs,
        String binding,
        List<String> remarks,
        Working working) {
    private static final double LEAST_SECONDS = 5;
    private static final int FEW = 6;
    private static final Citation STUDENT = Citation.published(
            "prediction interval of one further run: Hahn and Meeker, Statistical Intervals, 1991 (from memory);"
                    + " degrees of freedom by JCGM 100:2008, equation G.2b");

    public TimerAnswer {
        quantiles = List.copyOf(quantiles);
        remarks = List.copyOf(remarks);
    }

    /**
     * A point of the distribution.
     *
     * @param probability share of runs that come to the limit sooner
     * @param seconds the time [s]
     */
    public record Quantile(double probability, double seconds) {}

    /**
     * Works out the setting.
     *
     * @throws InputException if the pack is at a limit as soon as the load comes on
     */
    public static TimerAnswer of(TimerQuestion question) {
        LogSpread demand =
                LogSpread.of(question.runs().stream().map(RunDemand::meanAmps).toList());
        double middleAmps = Math.exp(demand.meanLog());
        DemandShape shape = DemandShape.of(question, middleAmps);
        LoadAnswer middle = shape.load(question, middleAmps);
        LoadAnswer harder = shape.load(question, middleAmps * Math.exp(demand.scale()));
        refuseUnlessRuns(harder);
        Estimate time = middle.runTime();
        // how far one predictive deviation of the current moves the time, with sag and heat in it
        double byDemand = Math.abs(Math.log(time.value() / harder.runTime().value()));
        double byPack = time.standardDeviation() / time.value();
        LogSpread times = new LogSpread(Math.log(time.value()), byDemand, demand.degrees()).plus(byPack);
        double setting = Math.floor(times.quantile(question.risk()));
        Estimate amps = new Estimate(
                middleAmps,
                middleAmps * demand.scale(),
                List.of(new Driver("what the run draws", middleAmps * demand.scale())));
        return new TimerAnswer(
                question,
                (int) setting,
                typical(time, byDemand),
                DoubleStream.of(0.05, 0.25, 0.5, 0.75, 0.95)
                        .mapToObj(share -> new Quantile(share, times.quantile(share)))
                        .toList(),
                amps,
                amps.times(setting),
                middle.binding(),
                remarks(question),
                working(question, demand, middle, setting));
    }

    private static void refuseUnlessRuns(LoadAnswer answer) {
        if (answer.runTime().value() < LEAST_SECONDS) {
            throw new InputException(
                    "charge",
                    "the pack is at a limit as soon as the load comes on: " + answer.binding()
                            + ". Charge it, warm it, or take one that carries more.");
        }
    }

    private static Estimate typical(Estimate time, double byDemand) {
        List<Driver> drivers = new ArrayList<>(time.drivers());
        drivers.add(new Driver("what the run draws", byDemand * time.value()));
        return Estimate.ofIndependent(time.value(), drivers);
    }

    private static List<String> remarks(TimerQuestion question) {
        List<String> remarks = new ArrayList<>();
        int runs = question.runs().size();
        remarks.add("From " + runs + (runs == 1 ? " earlier run." : " earlier runs."));
        if (runs < FEW) {
            remarks.add("Few runs: each further one with its put-back narrows the answer, most of all the next.");
        }
        if (question.runs().stream().allMatch(run -> run.profile().isEmpty()) && question.peakAmps() == null) {
            remarks.add("Neither a logged run nor a peak current: the current is taken as steady, which hides how far a"
                    + " burst near the end pulls the weakest cell down.");
        }
        return remarks;
    }

    private static Working working(TimerQuestion question, LogSpread demand, LoadAnswer middle, double setting) {
        List<Step> steps = new ArrayList<>(middle.working().steps());
        steps.add(
                0,
                new Step(
                        "current of the next run",
                        "mean of the logarithms ± s·√(1 + 1/n)",
                        question.runs().stream()
                                .map(run -> TradeUnit.MILLIAMPERE_HOUR.print(run.coulombs(), 0) + " in "
                                        + TradeUnit.MINUTE.print(run.seconds(), 1))
                                .toList(),
                        TradeUnit.AMPERE.print(Math.exp(demand.meanLog()), 2) + ", times or over "
                                + TradeUnit.PERCENT.print(Math.exp(demand.scale()), 0),
                        STUDENT));
        steps.add(new Step(
                "setting",
                "time of the middle run · exp(t · √(demand² + pack²)), rounded down",
                List.of(
                        "risk = " + TradeUnit.PERCENT.print(question.risk(), 1),
                        "pack = " + TradeUnit.MINUTE.print(middle.runTime(), 1)),
                TradeUnit.MINUTE.print(setting, 1),
                STUDENT));
        return new Working(steps);
    }
}
