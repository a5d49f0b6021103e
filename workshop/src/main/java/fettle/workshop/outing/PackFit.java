package fettle.workshop.outing;

import fettle.engine.outing.RunWish;
import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import fettle.engine.pack.fit.ConnectorMatch;
import fettle.engine.units.InputException;
import fettle.planner.problem.PackSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Which packs can power a craft, and what a run takes from each. */
public final class PackFit {
    private PackFit() {}

    /**
     * The packs that fit, each alone.
     *
     * @throws InputException if there is no such craft, or nothing says what a run takes
     */
    static List<PackSet> sets(RunWish wish, DayKit kit, List<PackAtHand> packs) {
        Craft craft = kit.craft(wish.craft())
                .orElseThrow(() -> new InputException(
                        "runs", wish.craft() + " is no craft in use. Add it: craft add, or take it out of the runs."));
        return packs.stream()
                .filter(hand -> misfit(craft, hand.pack()).isEmpty())
                .map(hand -> PackSet.of(hand.tag(), takes(wish, craft, hand)))
                .toList();
    }

    /** Why a pack does not fit a craft; empty if it does. */
    static Optional<String> misfit(Craft craft, Pack pack) {
        Integer cells = craft.cellsInSeries();
        if (cells != null && cells != pack.cellsInSeries()) {
            return Optional.of(craft.name() + " takes " + cells + "S, " + pack.tag() + " is " + pack.arrangement());
        }
        Optional<String> connector = ConnectorMatch.misfit(craft, pack);
        if (connector.isPresent()) {
            return connector;
        }
        Double peak = craft.peakAmps();
        Double rating = pack.dischargeRatingAmps();
        if (peak != null && rating != null && rating < peak) {
            return Optional.of(String.format(
                    Locale.ROOT, "%s peaks at %.0f A, %s is rated %.0f A", craft.name(), peak, pack.tag(), rating));
        }
        return Optional.empty();
    }

    /** Share of its capacity a run takes from a pack. */
    public static double takes(RunWish wish, Craft craft, PackAtHand hand) {
        Double stated = wish.takesFraction();
        if (stated != null) {
            return stated;
        }
        Double amps = craft.typicalAmps();
        if (amps == null) {
            throw new InputException(
                    "runs",
                    "what a run of " + craft.name() + " takes is not known. Write what it takes, e.g. takes 70 %, or"
                            + " give the craft its typical current.");
        }
        double share = amps * wish.durationSeconds() / hand.capacityCoulombs();
        if (share > 1) {
            throw new InputException(
                    "runs",
                    String.format(
                            Locale.ROOT,
                            "a run of %s for %.0f min at %.0f A takes %.0f %% of %s. Plan %.0f min at most, or a larger pack.",
                            craft.name(),
                            wish.durationSeconds() / 60,
                            amps,
                            100 * share,
                            hand.tag(),
                            Math.floor(hand.capacityCoulombs() / amps / 60)));
        }
        return share;
    }
}
