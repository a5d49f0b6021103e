package fettle.engine.control.setup;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.Linkage;
import fettle.engine.control.linkage.PullPull;
import fettle.engine.control.linkage.TorqueRod;
import fettle.engine.units.TradeUnit;

/** A linkage in words, as a sheet prints it; its holes stand beside it. */
public final class LinkageText {
    private LinkageText() {}

    /** E.g. {@code pushrod, hinge 80.0 mm aft and 0.0 mm above, arm at 90.0°, horn at 90.0°}. */
    public static String of(Linkage linkage) {
        if (linkage instanceof FourBar bar) {
            return "pushrod, " + geometry(bar);
        }
        if (linkage instanceof PullPull cables) {
            return "cables, " + geometry(cables.first());
        }
        TorqueRod rod = (TorqueRod) linkage;
        return "torque rod, " + TradeUnit.MILLIMETRE.print(rod.lengthMetres(), 1) + " long, "
                + TradeUnit.MILLIMETRE.print(rod.diameterMetres(), 2) + " thick, "
                + (rod.turning() == TorqueRod.Turning.WITH_SERVO ? "with the servo" : "against the servo");
    }

    private static String geometry(FourBar bar) {
        return "hinge " + TradeUnit.MILLIMETRE.print(bar.hingeXMetres(), 1) + " aft and "
                + TradeUnit.MILLIMETRE.print(bar.hingeYMetres(), 1) + " above, arm at "
                + TradeUnit.DEGREE.print(bar.armNeutralRadians(), 1) + ", horn at "
                + TradeUnit.DEGREE.print(bar.hornNeutralRadians(), 1);
    }
}
