package fettle.engine.travel;

import java.util.List;

/**
 * What to do with one pack.
 *
 * @param tag the pack
 * @param carriedAs how it is carried
 * @param ratingJoules its rating [J]
 * @param band the band its rating falls in
 * @param carriage what may be done with it
 * @param first what to do before leaving, in order; empty if it stays at home
 * @param why the reasons, the binding one first
 */
public record PackingLine(
        String tag,
        CarriedAs carriedAs,
        double ratingJoules,
        RatingBand band,
        Carriage carriage,
        List<String> first,
        List<String> why) {
    public PackingLine {
        first = List.copyOf(first);
        why = List.copyOf(why);
    }
}
