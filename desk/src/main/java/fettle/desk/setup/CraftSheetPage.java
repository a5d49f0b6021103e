package fettle.desk.setup;

import fettle.desk.frame.Back;
import fettle.engine.control.setup.Difference;
import fettle.engine.control.setup.FirstRunCheck;
import java.util.List;

/**
 * A craft's set-up sheet.
 *
 * @param craft its name
 * @param date date of the sheet; empty if there is none yet
 * @param note its note
 * @param surfaces every surface
 * @param differences what differs from the sheet before
 * @param checks what to check before the first run
 * @param sweeps kept sweeps, the latest first
 * @param typedSurfaces the form's lines: as refused, or as on the latest sheet
 * @param typedNote the form's note
 * @param faults what was wrong with the form
 * @param sweepForm the form that takes a sweep
 */
public record CraftSheetPage(
        String craft,
        String date,
        String note,
        List<Surface> surfaces,
        List<Difference> differences,
        List<FirstRunCheck> checks,
        List<Sweep> sweeps,
        String typedSurfaces,
        String typedNote,
        List<String> faults,
        SweepForm sweepForm) {
    /**
     * The form that takes a sweep, as it was typed; a file must be chosen again.
     *
     * @param surface its surface
     * @param pulse column of the pulses; empty to find it
     * @param current column of the current; empty to find it
     * @param unit mA or A; empty for what the file says
     * @param idle current at rest
     * @param points readings typed instead of a file
     * @param faults what was wrong
     */
    public record SweepForm(
            String surface,
            String pulse,
            String current,
            String unit,
            String idle,
            String points,
            List<String> faults) {
        static final SweepForm EMPTY = new SweepForm("", "", "", "", "", "", List.of());

        SweepForm refused(List<String> why) {
            return new SweepForm(surface, pulse, current, unit, idle, points, why);
        }
    }

    /** Where the craft's servo and receiver power is worked out. */
    public String powerHref() {
        return SetUpsPage.POWER + Back.encode(craft);
    }

    /**
     * One surface, its figures in trade units.
     *
     * @param name its name
     * @param servo its servo
     * @param pulses lowest, centre and highest
     * @param direction normal or reversed
     * @param parts arm and horn holes, and the linkage
     * @param currents at rest and at most
     * @param rates throws by rate
     * @param drawn where its linkage is drawn; empty without one
     * @param workedOut where it is worked out
     */
    public record Surface(
            String name,
            String servo,
            String pulses,
            String direction,
            String parts,
            String currents,
            List<String> rates,
            String drawn,
            String workedOut) {}

    /**
     * One kept sweep.
     *
     * @param surface its surface
     * @param href its linkage, drawn with this sweep
     * @param when when it was taken
     * @param verdict suggested end points
     * @param figures what was found, with its unit
     * @param remarks what stands out
     * @param since what changed since the earlier sweep of that surface; empty without one
     * @param panels current, and angle where there is one, over the pulse
     * @param bracket the usable span
     */
    public record Sweep(
            String surface,
            String href,
            String when,
            String verdict,
            List<String> figures,
            List<String> remarks,
            List<String> since,
            List<Panel> panels,
            Bracket bracket) {}
}
