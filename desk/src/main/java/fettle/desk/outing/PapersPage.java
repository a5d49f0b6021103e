package fettle.desk.outing;

import fettle.desk.frame.Back;
import fettle.desk.frame.Figures;
import fettle.engine.units.TradeUnit;
import fettle.workshop.OutingPapers;
import fettle.workshop.OutingPapers.Packed;
import fettle.workshop.OutingPapers.RunTimer;
import java.util.List;

/**
 * What to take along on an outing, to print.
 *
 * @param name the outing
 * @param encoded its name in an address
 * @param timers a setting for every planned run
 * @param packing every pack as baggage
 * @param counts limits of number that are passed
 * @param confirm that the carrier decides, with the dates of the tables
 */
public record PapersPage(
        String name, String encoded, List<Timer> timers, List<Line> packing, List<String> counts, String confirm) {
    public PapersPage {
        timers = List.copyOf(timers);
        packing = List.copyOf(packing);
        counts = List.copyOf(counts);
    }

    /** The timer of one run; the setting is a dash where none can be told. */
    public record Timer(String run, String pack, String setting, String typical, String binding, String basis) {}

    /** One pack as baggage. */
    public record Line(String pack, String rating, String carriage, String first, String why) {}

    static PapersPage of(OutingPapers papers) {
        return new PapersPage(
                papers.outing(),
                Back.encode(papers.outing()),
                papers.timers().stream().map(PapersPage::timer).toList(),
                papers.packing().stream().map(PapersPage::line).toList(),
                papers.counts(),
                papers.confirm());
    }

    private static Timer timer(RunTimer timer) {
        boolean told = timer.settingSeconds() > 0;
        return new Timer(
                timer.run(),
                timer.pack(),
                told ? Figures.clock(timer.settingSeconds()) : Figures.NOT_KNOWN,
                told ? Figures.estimate(timer.typicalSeconds(), TradeUnit.MINUTE, 1) : Figures.NOT_KNOWN,
                timer.binding(),
                String.join(" ", timer.basis()));
    }

    private static Line line(Packed packed) {
        return new Line(
                packed.pack(),
                TradeUnit.WATT_HOUR.print(packed.ratingJoules(), 1),
                packed.carriage(),
                String.join("; ", packed.first()),
                String.join("; ", packed.why()));
    }
}
