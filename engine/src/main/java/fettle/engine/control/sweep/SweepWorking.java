package fettle.engine.control.sweep;

import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The steps behind a sweep's answer. */
final class SweepWorking {
    private static final Citation HUBER =
            Citation.published("least squares with a free break point; weights after P. J. Huber, Ann. Math. Stat. 35"
                    + " (1964) 73 (from memory)");

    private SweepWorking() {}

    static Working of(Sweep sweep, double noise, @Nullable Binding low, @Nullable Binding high) {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(
                "noise of one reading",
                "σ = median |y − line through both neighbours| / 0.6745, for equal steps / √1.5",
                List.of("readings = " + sweep.points().size()),
                TradeUnit.MILLIAMPERE.print(noise, 0),
                Citation.published("robust scatter by the median")));
        if (low != null) {
            steps.add(bend("binding at short pulses", low));
        }
        if (high != null) {
            steps.add(bend("binding at long pulses", high));
        }
        return new Working(steps);
    }

    private static Step bend(String title, Binding binding) {
        return new Step(
                title,
                "y = a + b·x + c·(x − t)₊, x outwards from the free middle; least squares over t",
                List.of(
                        String.format(
                                Locale.ROOT,
                                "slope beyond = %.1f mA/µs",
                                TradeUnit.MILLIAMPERE.fromSi(TradeUnit.MICROSECOND.toSi(binding.ampsPerSecond()))),
                        "rise = " + TradeUnit.MILLIAMPERE.print(binding.riseAmps(), 0)),
                TradeUnit.MICROSECOND.print(binding.pulseSeconds(), 1),
                HUBER);
    }
}
