package fettle.planner.solve;

import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.Lock;
import fettle.planner.problem.OutingProblem;
import fettle.planner.problem.Place;
import fettle.planner.problem.PlanCharger;
import fettle.planner.problem.PlanPack;
import fettle.planner.problem.PlanPort;
import fettle.planner.problem.PowerSource;
import fettle.planner.problem.Target;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds the charges of one pack that a way to charge offers. */
final class ChargeOptions {
    private final ModelBuilder model;
    private final PlanPack pack;

    ChargeOptions(ModelBuilder model, PlanPack pack) {
        this.model = model;
        this.pack = pack;
    }

    /** None, one, or one more for every lock that demands one of its starts. */
    List<Option> of(int index, double fraction, int from, int to, Target target) {
        ChargeWay way = model.way(index);
        Optional<Double> start = startFraction(way, fraction);
        double end = target == Target.FULL
                ? pack.levels().fullFraction()
                : pack.levels().storageTarget();
        if (start.isEmpty() || !CurveTime.reaches(way.curve(), start.get(), end)) {
            return List.of();
        }
        CurveTime time = new CurveTime(way.curve(), start.get(), end);
        Option free = option(index, time, start.get(), from, to, target);
        if (free.starts().length == 0) {
            return List.of();
        }
        List<Option> found = new ArrayList<>(List.of(free));
        for (Lock lock : model.problem().locks()) {
            if (lock instanceof Lock.ChargeAt at && at.way().equals(way.name()) && at.target() == target) {
                found.add(locked(free, at));
            }
        }
        return found;
    }

    /** The lowest charge of packs charged together; nothing if they are too unlike or not to be charged. */
    private Optional<Double> startFraction(ChargeWay way, double fraction) {
        if (way.packs().size() == 1) {
            return Optional.of(fraction);
        }
        double low = 1;
        double high = 0;
        for (PlanPack other : model.problem().packs()) {
            if (way.packs().contains(other.tag())) {
                low = Math.min(low, other.chargeFraction());
                high = Math.max(high, other.chargeFraction());
            }
        }
        boolean joined = high - low <= way.alikeWithin() && way.packs().stream().noneMatch(model::isExcluded);
        return joined ? Optional.of(low) : Optional.empty();
    }

    private Option option(int index, CurveTime time, double start, int from, int to, Target target) {
        ChargeWay way = model.way(index);
        OutingProblem.Means means = model.problem().means();
        PlanPort port = means.port(way.port());
        PlanCharger charger = means.charger(port.charger());
        PowerSource source = means.source(charger.source());
        int step = model.stepMinutes();
        int ticks = Ticks.up(time.wholeMinutes(), step);
        List<Use> uses = List.of(
                new Use(model.resource(Model.Kind.CHARGER, charger.name()), time.watts(step, 1)),
                new Use(model.resource(Model.Kind.SOURCE, source.name()), time.watts(step, charger.efficiency())));
        int wattHours = time.sourceWattHours(charger.efficiency());
        boolean withinPort = Arrays.stream(time.watts(step, 1)).max().orElse(0) <= port.limitWatts();
        long[] counts = new long[Count.SIZE];
        counts[Count.STRESS] = way.stress();
        counts[Count.ENERGY] = source.place() == Place.FIELD ? wattHours : 0;
        return new Option(
                new Option.Key(way.name() + " " + target.label(), start, false),
                -1,
                List.of(new Option.Place(model.resource(Model.Kind.PORT, port.name()), index)),
                from,
                to,
                time.wholeMinutes(),
                ticks,
                Ticks.up(time.wholeMinutes() + pack.times().restMinutes(), step),
                uses,
                means.sources().indexOf(source),
                wattHours,
                counts,
                way.packs().size(),
                withinPort ? starts(source, time.wholeMinutes(), uses) : new int[0]);
    }

    private int[] starts(PowerSource source, int minutes, List<Use> uses) {
        boolean within = uses.stream()
                .allMatch(use -> Arrays.stream(use.amounts()).max().orElse(0) <= model.capacity(use.resource()));
        return IntStream.range(0, within ? model.ticks() : 0)
                .filter(tick -> isAttended(source, tick * model.stepMinutes(), tick * model.stepMinutes() + minutes))
                .toArray();
    }

    private boolean isAttended(PowerSource source, int start, int end) {
        return model.problem().presence().stream()
                        .anyMatch(here ->
                                here.place() == source.place() && here.span().covers(start, end))
                && (source.available().isEmpty()
                        || source.available().stream().anyMatch(span -> span.covers(start, end)));
    }

    private Option locked(Option free, Lock.ChargeAt lock) {
        int demanded = lock.startMinute() / model.stepMinutes();
        long[] counts = free.counts().clone();
        counts[Count.LOCKS] = -1;
        Option.Key key = new Option.Key(lock.label(), free.key().fromFraction(), true);
        return new Option(
                key,
                free.run(),
                free.places(),
                free.from(),
                free.to(),
                free.minutes(),
                free.ticks(),
                free.freeTicks(),
                free.uses(),
                free.source(),
                free.wattHours(),
                counts,
                free.share(),
                Arrays.stream(free.starts()).filter(tick -> tick == demanded).toArray());
    }
}
