package fettle.desk.fit;

import fettle.desk.frame.Back;
import fettle.desk.kit.FormPage;
import fettle.engine.pack.Standing;
import fettle.engine.pack.fit.CraftFit;
import fettle.engine.pack.fit.Fit;
import fettle.engine.pack.fit.Misfit;
import fettle.engine.units.TradeUnit;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The packs for one craft.
 *
 * @param craft its name
 * @param rows what suits it, the best first
 * @param misfits the others
 * @param remarks what is known of the craft, and what is not
 * @param lines the form
 * @param faults sentences that belong to no field
 */
public record FitPage(
        String craft,
        List<Row> rows,
        List<Misfit> misfits,
        List<String> remarks,
        List<FormPage.Line> lines,
        List<String> faults) {
    /** The address of a craft's page. */
    public static String href(String craft) {
        return "/kit/fit?name=" + Back.encode(craft);
    }

    static FitPage of(String craft, CraftFit fit, List<FormPage.Line> lines) {
        return new FitPage(
                craft, fit.fits().stream().map(Row::of).toList(), fit.misfits(), fit.remarks(), lines, List.of());
    }

    static FitPage refused(String craft, List<FormPage.Line> lines, List<String> faults) {
        return new FitPage(craft, List.of(), List.of(), List.of(), lines, faults);
    }

    /** A misfit's packs in words. */
    public static String packs(List<String> tags) {
        return String.join(" and ", tags);
    }

    /**
     * One that suits.
     *
     * @param packs its packs
     * @param joining how they are joined; empty for one alone
     * @param standing its standing
     * @param time how long it lasts; empty if not known
     * @param current what it surely carries
     * @param mass its mass; empty if not weighed
     * @param age its age; empty if not known
     * @param doubts what to mind
     */
    public record Row(
            String packs,
            String joining,
            Standing standing,
            String time,
            String current,
            String mass,
            String age,
            List<String> doubts) {
        static Row of(Fit fit) {
            Double kilograms = fit.kilograms();
            return new Row(
                    FitPage.packs(fit.tags()),
                    fit.joining() == Fit.Joining.ALONE ? "" : fit.joining().label(),
                    fit.standing(),
                    figure("%.1f min", fit.seconds(), 1.0 / 60),
                    TradeUnit.AMPERE.print(fit.surelyAmps(), 0),
                    kilograms == null ? "" : TradeUnit.GRAM.print(kilograms, 0),
                    figure("%.1f years", fit.ageYears(), 1),
                    fit.doubts());
        }

        private static String figure(String format, @Nullable Double value, double factor) {
            return value == null ? "" : String.format(Locale.ROOT, format, value * factor);
        }
    }
}
