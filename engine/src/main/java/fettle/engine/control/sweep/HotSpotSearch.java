package fettle.engine.control.sweep;

import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;

/** Stretches of three readings or more above the running median of the travel around them. */
final class HotSpotSearch {
    private static final double AROUND = TradeUnit.MICROSECOND.toSi(300);
    private static final double NOISES = 3;
    private static final double LEAST = 0.05;
    private static final int READINGS = 3;

    /** Samples looked at; the running median of more would take too long. */
    private static final int MOST = 2000;

    private HotSpotSearch() {}

    /** Hot spots of the free travel; both ends of it are left to the search for binding. */
    static List<HotSpot> of(Samples all, double noise) {
        Samples free = all.thinned(MOST);
        List<HotSpot> spots = new ArrayList<>();
        if (free.size() < 2 * READINGS) {
            return spots;
        }
        double[] local = free.smoothed(READINGS);
        double spacing = (free.pulses()[free.size() - 1] - free.pulses()[0]) / (free.size() - 1);
        double[] around = free.smoothed(2 * (int) Math.ceil(AROUND / spacing / 2) + 1);
        double least = Math.max(LEAST, NOISES * noise);
        int start = -1;
        for (int at = 0; at < free.size(); at++) {
            boolean hot = local[at] - around[at] > least;
            if (hot && start < 0) {
                start = at;
            } else if (!hot && start >= 0) {
                add(spots, free, start, at - 1, local, around);
                start = -1;
            }
        }
        return List.copyOf(spots);
    }

    private static void add(List<HotSpot> spots, Samples free, int from, int to, double[] local, double[] around) {
        if (to - from + 1 < READINGS) {
            return;
        }
        double rise = 0;
        for (int at = from; at <= to; at++) {
            rise = Math.max(rise, local[at] - around[at]);
        }
        spots.add(new HotSpot(free.pulses()[from], free.pulses()[to], rise));
    }
}
