package fettle.desk.outing;

import java.util.List;

/**
 * The day sheet: ports and craft as rows, time across, packs as bars, the power drawn from each source underneath. One panel
 * for each stretch of the day, so that a night between takes no room.
 *
 * @param panels the stretches in order
 */
public record DaySheet(List<Panel> panels) {
    public DaySheet {
        panels = List.copyOf(panels);
    }

    /**
     * One stretch of the day, in units of the drawing.
     *
     * @param title when and where
     * @param text what it shows, for those who do not see it
     * @param width of the drawing
     * @param height of the drawing
     * @param left where time begins
     * @param ticks full hours
     * @param lanes rows
     * @param shades times in which nobody is there
     * @param bars charges and runs
     * @param powers sources
     */
    public record Panel(
            String title,
            String text,
            double width,
            double height,
            double left,
            List<Tick> ticks,
            List<Lane> lanes,
            List<Shade> shades,
            List<Bar> bars,
            List<Power> powers) {
        public Panel {
            ticks = List.copyOf(ticks);
            lanes = List.copyOf(lanes);
            shades = List.copyOf(shades);
            bars = List.copyOf(bars);
            powers = List.copyOf(powers);
        }
    }

    /** A full hour. */
    public record Tick(double x, String label) {}

    /** A row. */
    public record Lane(double top, double height, String label) {}

    /** A time in which nobody is with the chargers of a row. */
    public record Shade(double x, double top, double width, double height) {}

    /**
     * A charge, a run or a time of cooling.
     *
     * @param kind its style: charge, to-storage, run or cooling
     * @param label what stands in it; empty where there is no room
     * @param title all of it, shown on pointing
     */
    public record Bar(String kind, double x, double top, double width, double height, String label, String title) {
        private static final double INSET = 4;

        /** Where its label begins: in it, but behind the short dark bar of a run. */
        public double labelX() {
            return kind.equals("run") ? x + width + INSET : x + INSET;
        }
    }

    /**
     * Power drawn from one source.
     *
     * @param label its name and the most drawn
     * @param top upper end of its row
     * @param height of its row
     * @param path the drawn steps
     * @param limitY where its limit lies
     * @param limitLabel the limit in words
     */
    public record Power(String label, double top, double height, String path, double limitY, String limitLabel) {}
}
