package fettle.workshop.outing;

import fettle.engine.cell.Chemistry;
import fettle.engine.charge.answer.ChargeMeans;
import fettle.engine.pack.model.PackModel;
import fettle.engine.rule.Quantity;
import fettle.engine.units.TradeUnit;
import fettle.planner.curve.CurveFitter;
import fettle.planner.curve.FittedCurve;
import fettle.planner.problem.ChargeCurve;
import fettle.planner.problem.ChargeCurve.Direction;
import fettle.planner.problem.ChargeCurve.Piece;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Time and power of charges, fitted to the engine's simulation. One per planning; keeps what it fitted.
 *
 * <p>Cells of a pack are taken as alike, so one cell is simulated and its power taken as often as the pack has cells.
 */
final class ChargeCurves {
    /** NiMH takes 1.5 times what it gives back, at up to 1.6 V a cell. From memory. */
    private static final double NIMH_FACTOR = 1.5;

    private static final double NIMH_VOLTS = 1.6;

    private final double kelvins;
    private final Map<Key, FittedCurve> known = new HashMap<>();

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
        return known.computeIfAbsent(key, this::fitted).curve();
    }

    /** The largest error of a whole charge's time against its simulation, as a share; 0 if nothing was fitted. */
    double greatestErrorFraction() {
        return known.values().stream()
                .mapToDouble(FittedCurve::greatestErrorFraction)
                .max()
                .orElse(0);
    }

    /** A discharge at a current. */
    static ChargeCurve emptying(PackAtHand hand, double amps) {
        return ChargeCurve.even(Direction.EMPTYING, TradeUnit.MINUTE.fromSi(hand.capacityCoulombs() / amps), 0);
    }

    private FittedCurve fitted(Key key) {
        if (key.chemistry() == Chemistry.NIMH) {
            double minutes = TradeUnit.MINUTE.fromSi(NIMH_FACTOR * key.coulombs() / key.amps());
            return new FittedCurve(
                    ChargeCurve.even(Direction.FILLING, minutes, key.amps() * NIMH_VOLTS * key.cells()), 0);
        }
        PackModel cell = PackModel.uniform("cell", key.chemistry(), 1, key.coulombs(), 0, key.ohms())
                .at(kelvins, kelvins);
        FittedCurve ofCell = CurveFitter.filling(List.of(cell), key.limitVolts(), ChargeMeans.ofAmps(key.amps()));
        List<Piece> pieces = ofCell.curve().pieces().stream()
                .map(piece -> new Piece(
                        piece.lowFraction(),
                        piece.highFraction(),
                        piece.minutes(),
                        piece.watts() * key.cells(),
                        piece.wattHours() * key.cells()))
                .toList();
        return new FittedCurve(new ChargeCurve(Direction.FILLING, pieces), ofCell.greatestErrorFraction());
    }
}
