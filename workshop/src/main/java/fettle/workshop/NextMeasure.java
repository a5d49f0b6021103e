package fettle.workshop;

import fettle.engine.pack.Check;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.rule.Quantity;
import fettle.engine.units.TradeUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * One thing worth measuring next of a pack that is unproven.
 *
 * @param what what to measure
 * @param why what it will tell
 * @param begin the beginning of the entry line that takes it; empty where it is not one
 */
public record NextMeasure(String what, String why, String begin) {
    private static final Duration SHORT_REST = Duration.ofMinutes(30);
    private static final int MOST = 3;

    /** What to measure next, the most telling first; nothing for a pack that is not unproven. */
    public static List<NextMeasure> of(PackFile file, Instant now) {
        if (file.retired() || file.review().assessment().standing() != Standing.UNPROVEN) {
            return List.of();
        }
        Pack pack = file.review().assessment().pack();
        List<NextMeasure> next = new ArrayList<>();
        if (pack.identity() == Pack.Identity.UNCONFIRMED) {
            next.add(new NextMeasure(
                    "read chemistry and cell count off the pack and confirm them",
                    "until a person has, no limit for it can be trusted",
                    ""));
        }
        volts(file, pack, now, next);
        if (file.history().checks().stream()
                .allMatch(check -> check.cellResistanceOhms().isEmpty())) {
            next.add(new NextMeasure(
                    "resistance of each cell, as your charger or meter shows it",
                    "it tells ageing and a weak cell before capacity does",
                    pack.tag() + " ir "));
        }
        if (file.health().capacity().influences().isEmpty()) {
            next.add(new NextMeasure(
                    "what the next charge puts back, with the cells read at rest before it",
                    "it tells what the pack holds, against its label",
                    pack.tag() + " charged "));
        }
        return next.stream().limit(MOST).toList();
    }

    private static void volts(PackFile file, Pack pack, Instant now, List<NextMeasure> next) {
        String begin = pack.tag() + " ";
        String cells = pack.cellsInSeries() == 1
                ? "the volts of its cell"
                : "the volts of each of its " + pack.cellsInSeries() + " cells";
        if (file.history().checks().isEmpty()) {
            next.add(new NextMeasure(
                    cells + ", after an hour of rest or longer",
                    "it tells charge and balance, the base of all else",
                    begin));
            return;
        }
        Check latest = file.history().checks().get(file.history().checks().size() - 1);
        if (latest.cellRestVolts().isEmpty()) {
            next.add(new NextMeasure(
                    cells + " at the balance lead", "the volts of the whole pack hide a weak cell", begin));
        } else if (latest.restSeconds() == null || latest.restSeconds() < SHORT_REST.toSeconds()) {
            next.add(new NextMeasure(
                    cells + " again after an hour of rest, and say so: rest 1h",
                    "volts still move after a load or a charge",
                    begin));
        } else if (isOld(file, latest, now)) {
            next.add(new NextMeasure(
                    cells + " again: the last check is "
                            + Duration.between(latest.takenAt(), now).toDays() + " days old",
                    "a check is trusted for a time only",
                    begin));
        }
    }

    private static boolean isOld(PackFile file, Check latest, Instant now) {
        double age =
                TradeUnit.SECOND.toSi(Duration.between(latest.takenAt(), now).toSeconds());
        return file.rules().stream()
                .filter(rule -> rule.quantity() == Quantity.CHECK_AGE)
                .anyMatch(rule -> age > rule.valueSi());
    }
}
