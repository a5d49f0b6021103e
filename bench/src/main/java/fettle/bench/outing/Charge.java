package fettle.bench.outing;

import fettle.planner.problem.ChargeCurve;
import fettle.planner.problem.ChargeCurve.Piece;
import fettle.planner.problem.ChargeWay;
import fettle.planner.problem.OutingProblem;
import java.util.Arrays;

/** One charge on a curve in steps: its minutes, and the most power of each step at the source. */
record Charge(ChargeWay way, double from, double to, int minutes, int[] sourceWatts) {
    static Charge of(OutingProblem problem, ChargeWay way, double from, double to) {
        int step = problem.time().stepMinutes();
        double efficiency = problem.means()
                .charger(problem.means().port(way.port()).charger())
                .efficiency();
        boolean filling = way.curve().direction() == ChargeCurve.Direction.FILLING;
        int[] watts = new int[2000 / step];
        double time = 0;
        int size = way.curve().pieces().size();
        for (int i = 0; i < size; i++) {
            Piece piece = way.curve().pieces().get(filling ? i : size - 1 - i);
            double within = Math.min(Math.max(from, to), piece.highFraction())
                    - Math.max(Math.min(from, to), piece.lowFraction());
            double end = time + Math.max(0, within) / (piece.highFraction() - piece.lowFraction()) * piece.minutes();
            for (int at = (int) (time / step); at * step < end - 1e-9 && end > time; at++) {
                watts[at] = Math.max(watts[at], (int) Math.ceil(piece.watts() / efficiency - 1e-9));
            }
            time = end;
        }
        int minutes = (int) Math.ceil(time - 1e-9);
        return new Charge(way, from, to, minutes, Arrays.copyOf(watts, (minutes + step - 1) / step));
    }

    int steps() {
        return sourceWatts.length;
    }
}
