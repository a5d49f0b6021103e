package fettle.workshop.outing;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.model.Circuits;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.End;
import fettle.engine.pack.simulation.EndKind;
import fettle.engine.pack.simulation.Progress;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.ProtocolStep;
import fettle.engine.pack.simulation.Simulation;
import fettle.engine.rule.Quantity;
import fettle.engine.units.TradeUnit;
import fettle.planner.problem.ChargeCurve;
import fettle.planner.problem.ChargeCurve.Direction;
import fettle.planner.problem.ChargeCurve.Piece;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Time and power of charges from the engine's simulation, in straight pieces. One per planning; keeps what it simulated.
 *
 * <p>Cells of a pack are taken as alike, so one cell is simulated: constant current, then constant volts until the current falls
 * to a twentieth. Between the ends of a piece time is straight, its power is the most within it. Full is where the charge ends.
 */
final class ChargeCurves {
    /** Ends of the pieces; close together where the current tapers. */
    private static final double[] ENDS = {
        0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.84, 0.88, 0.91, 0.93, 0.95, 0.965, 0.98, 0.99, 1
    };

    /** A pack put on at this charge is cooler than one charged up to it, and its taper longer: the longer time counts. */
    private static final double TOP_UP_FRACTION = 0.8;

    private static final double STEP_SECONDS = 5;
    private static final double TAPER_END = 0.05;
    private static final double LONGEST_SECONDS = 86_400;

    /** NiMH takes 1.5 times what it gives back, at up to 1.6 V a cell. From memory. */
    private static final double NIMH_FACTOR = 1.5;

    private static final double NIMH_VOLTS = 1.6;

    private final double kelvins;
    private final Map<Key, ChargeCurve> known = new HashMap<>();

    /** @param kelvins temperature of packs and air while charging [K] */
    ChargeCurves(double kelvins) {
        this.kelvins = kelvins;
    }

    private record Key(Chemistry chemistry, int cells, double coulombs, double ohms, double limitVolts, double amps) {}

    /** A charge to full at a current. */
    ChargeCurve filling(PackAtHand hand, double amps) {
        Key key = new Key(
                hand.pack().chemistry(),
                hand.pack().cellsInSeries(),
                hand.capacityCoulombs(),
                hand.stepOhms(),
                hand.limits().si(Quantity.CHARGE_LIMIT),
                amps);
        return known.computeIfAbsent(key, this::simulated);
    }

    /** A discharge at a current. */
    static ChargeCurve emptying(PackAtHand hand, double amps) {
        return ChargeCurve.even(Direction.EMPTYING, TradeUnit.MINUTE.fromSi(hand.capacityCoulombs() / amps), 0);
    }

    private ChargeCurve simulated(Key key) {
        if (key.chemistry() == Chemistry.NIMH) {
            double minutes = TradeUnit.MINUTE.fromSi(NIMH_FACTOR * key.coulombs() / key.amps());
            return ChargeCurve.even(Direction.FILLING, minutes, key.amps() * NIMH_VOLTS * key.cells());
        }
        List<Sample> whole = samples(key, 0);
        List<Sample> topUp = samples(key, TOP_UP_FRACTION);
        List<Piece> pieces = new ArrayList<>();
        for (int end = 1; end < ENDS.length; end++) {
            Piece piece = piece(whole, ENDS[end - 1], ENDS[end], key.cells());
            pieces.add(
                    piece.lowFraction() < TOP_UP_FRACTION
                            ? piece
                            : longer(piece, piece(topUp, ENDS[end - 1], ENDS[end], key.cells())));
        }
        return new ChargeCurve(Direction.FILLING, pieces);
    }

    private static Piece longer(Piece one, Piece other) {
        return new Piece(
                one.lowFraction(),
                one.highFraction(),
                Math.max(one.minutes(), other.minutes()),
                Math.max(one.watts(), other.watts()),
                Math.max(one.wattHours(), other.wattHours()));
    }

    private List<Sample> samples(Key key, double from) {
        PackModel cell = PackModel.uniform("cell", key.chemistry(), 1, key.coulombs(), from, key.ohms())
                .at(kelvins, kelvins);
        ProtocolStep charge = ProtocolStep.of(
                "charge",
                new Demand.Charge(key.limitVolts(), key.amps(), Double.POSITIVE_INFINITY, 0),
                STEP_SECONDS,
                new End(EndKind.CURRENT_AT_MOST, TAPER_END * key.amps()),
                End.after(LONGEST_SECONDS));
        List<Sample> samples = new ArrayList<>();
        Simulation.run(
                Circuits.bench(cell, Optional.empty()),
                Protocol.of(charge),
                now -> samples.add(new Sample(now.seconds(), now.cellCharge(0), -now.volts() * now.amps())),
                STEP_SECONDS,
                Progress.silent());
        return samples;
    }

    /** One piece of a simulated charge; its ends are shares of the charge at which it ended. */
    private static Piece piece(List<Sample> samples, double low, double high, int cells) {
        double full = samples.get(samples.size() - 1).charge();
        double seconds = 0;
        double joules = 0;
        double most = 0;
        for (int at = 1; at < samples.size(); at++) {
            Sample before = samples.get(at - 1);
            Sample after = samples.get(at);
            double passed = after.charge() - before.charge();
            double within = Math.min(after.charge(), high * full) - Math.max(before.charge(), low * full);
            if (within <= 0 || passed <= 0) {
                continue;
            }
            double share = Math.min(1, within / passed);
            double span = share * (after.seconds() - before.seconds());
            seconds += span;
            joules += 0.5 * (before.watts() + after.watts()) * span;
            most = Math.max(most, Math.max(before.watts(), after.watts()));
        }
        return new Piece(
                low,
                high,
                TradeUnit.MINUTE.fromSi(Math.max(1, seconds)),
                most * cells,
                TradeUnit.WATT_HOUR.fromSi(joules) * cells);
    }

    private record Sample(double seconds, double charge, double watts) {}
}
