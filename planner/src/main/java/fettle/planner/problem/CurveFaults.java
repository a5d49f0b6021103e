package fettle.planner.problem;

import fettle.engine.units.Faults;

/** Finds what is wrong with a way to charge. */
final class CurveFaults {
    private static final double SAME_FRACTION = 1e-9;

    private CurveFaults() {}

    static void check(ChargeWay way, Faults faults) {
        if (way.packs().isEmpty()
                || way.packs().stream().distinct().count() < way.packs().size()) {
            faults.add("ways", way.name() + " has no pack or one twice; expected each pack once.");
        }
        if (way.stress() < 0) {
            faults.add("ways", way.name() + ": stress is " + way.stress() + "; expected 0 or more.");
        }
        if (way.curve().pieces().isEmpty()) {
            faults.add("ways", way.name() + ": its curve has no piece; expected at least one.");
            return;
        }
        double reached = way.curve().lowFraction();
        for (ChargeCurve.Piece piece : way.curve().pieces()) {
            boolean follows = Math.abs(piece.lowFraction() - reached) < SAME_FRACTION
                    && piece.highFraction() > piece.lowFraction();
            boolean usable = piece.minutes() > 0
                    && Double.isFinite(piece.minutes())
                    && piece.watts() >= 0
                    && Double.isFinite(piece.watts())
                    && piece.wattHours() >= 0
                    && Double.isFinite(piece.wattHours());
            if (!follows || !usable) {
                faults.add(
                        "ways",
                        way.name() + ": the piece of its curve from " + piece.lowFraction() + " to "
                                + piece.highFraction()
                                + " does not follow the one before, takes no time or has a figure below"
                                + " 0; expected pieces in order with finite figures.");
                return;
            }
            reached = piece.highFraction();
        }
    }
}
