package fettle.engine.control.linkage;

import fettle.engine.control.Remark;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;

/** Doubts about a linkage at the ends of its travel. */
final class LinkageRemarks {
    /** Servo angle to keep from a toggle or dead centre [rad]; common practice, no source. */
    static final double MARGIN = TradeUnit.DEGREE.toSi(10);

    /** Smallest angle between rod and horn line [rad]; textbook habit, from memory. */
    static final double TRANSMISSION = TradeUnit.DEGREE.toSi(40);

    private LinkageRemarks() {}

    static List<Remark> of(Linkage linkage, List<TravelPoint> ends) {
        List<Remark> remarks = new ArrayList<>();
        for (TravelPoint end : ends) {
            double servo = end.position().servoRadians();
            String at = "at " + TradeUnit.MICROSECOND.print(end.pulseSeconds(), 0) + " ";
            double margin = linkage.range().marginRadians(servo);
            if (margin < MARGIN) {
                remarks.add(new Remark(
                        "near-limit",
                        at + "the servo is " + TradeUnit.DEGREE.print(margin, 1) + " from where "
                                + linkage.range()
                                        .ahead(servo)
                                        .orElseThrow()
                                        .alignment()
                                        .label()
                                + "; keep " + TradeUnit.DEGREE.print(MARGIN, 0),
                        "Less travel, a shorter servo arm or a longer horn."));
            }
            if (linkage instanceof FourBar bar) {
                transmission(bar, servo, at, remarks);
            }
        }
        return remarks;
    }

    private static void transmission(FourBar bar, double servo, String at, List<Remark> remarks) {
        double angle = bar.rodLine(servo).transmissionRadians();
        if (angle < TRANSMISSION || angle > Math.PI - TRANSMISSION) {
            remarks.add(new Remark(
                    "flat-rod",
                    at + "rod and horn meet at " + TradeUnit.DEGREE.print(angle, 0)
                            + "; 40° to 140° is the usual range (from memory)",
                    "Turn the horn or the arm nearer to a right angle with the rod."));
        }
    }
}
