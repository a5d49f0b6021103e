package fettle.desk.setup;

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
        List<String> faults) {
    /**
     * One surface, its figures in trade units.
     *
     * @param name its name
     * @param servo its servo
     * @param pulses lowest, centre and highest
     * @param direction normal or reversed
     * @param parts arm and horn holes
     * @param currents at rest and at most
     * @param rates throws by rate
     */
    public record Surface(
            String name,
            String servo,
            String pulses,
            String direction,
            String parts,
            String currents,
            List<String> rates) {}

    /**
     * One kept sweep.
     *
     * @param surface its surface
     * @param href its linkage, drawn with this sweep
     * @param when when it was taken
     * @param verdict suggested end points
     * @param remarks what stands out
     */
    public record Sweep(String surface, String href, String when, String verdict, List<String> remarks) {}
}
