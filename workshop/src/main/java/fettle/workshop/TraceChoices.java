package fettle.workshop;

/**
 * What a person says about a log before it is read; each may be empty, to go by the log itself.
 *
 * @param columns which column is what, e.g. {@code time=1:s,volts=Pack:mV,cell1=4:V}
 * @param positive what a positive current means: {@code discharge} or {@code charge}
 * @param zone zone of clocks that name none, e.g. {@code Europe/Zurich}; empty for UTC
 * @param note free text kept with the trace
 * @param packs {@code one} if it is all of one pack although the volts look as if another had been put in; else empty
 */
public record TraceChoices(String columns, String positive, String zone, String note, String packs) {
    public static final TraceChoices NONE = new TraceChoices("", "", "", "", "");
}
