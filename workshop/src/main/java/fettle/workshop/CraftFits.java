package fettle.workshop;

import fettle.engine.pack.Assessment;
import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import fettle.engine.pack.fit.CraftFit;
import fettle.engine.pack.fit.FitPack;
import fettle.engine.pack.fit.FitWishes;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.power.SustainableCurrent;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which packs of the shelf suit a craft. */
public final class CraftFits {
    private static final double DAYS_OF_YEAR = 365.25;

    private final Workshop workshop;
    private final Ledger ledger;

    CraftFits(Workshop workshop, Ledger ledger) {
        this.workshop = workshop;
        this.ledger = ledger;
    }

    /**
     * Ranks the packs in use for a craft, at 25 °C.
     *
     * @param craftName the craft, in any case
     * @param typed what else is asked: {@code lightest} and {@code heaviest} in g, least {@code capacity} in mAh; each may be
     *     left out
     * @throws UnknownNameException if there is no such craft
     * @throws fettle.engine.units.InputException with every fault at its field
     */
    public CraftFit of(String craftName, Map<String, String> typed) {
        FitWishes wishes = wishes(typed);
        Craft craft = workshop.craft().find(craftName).item();
        List<KnownPack> packs = workshop.review().inUse();
        Optional<CraftDemand> demand = CraftDemand.of(
                craft.name(), packs.stream().map(KnownPack::history).toList());
        CraftFit fit = CraftFit.of(
                demand.map(found -> drawing(craft, found.amps())).orElse(craft),
                wishes,
                packs.stream().map(this::pack).toList());
        List<String> remarks = new ArrayList<>(fit.remarks());
        demand.ifPresent(found -> remarks.add(0, said(craft, found)));
        return new CraftFit(fit.fits(), fit.misfits(), remarks);
    }

    private static FitWishes wishes(Map<String, String> typed) {
        TypedFields fields = new TypedFields();
        Double lightest = optional(fields, "lightest", "lightest pack", typed, Measure.MASS, TradeUnit.GRAM);
        Double heaviest = optional(fields, "heaviest", "heaviest pack", typed, Measure.MASS, TradeUnit.GRAM);
        Double capacity =
                optional(fields, "capacity", "least capacity", typed, Measure.CHARGE, TradeUnit.MILLIAMPERE_HOUR);
        return fields.make(() -> new FitWishes(lightest, heaviest, capacity), Map.of());
    }

    private static @Nullable Double optional(
            TypedFields fields, String key, String what, Map<String, String> typed, Measure measure, TradeUnit bare) {
        return fields.optional(key, what, typed.getOrDefault(key, ""), measure, bare);
    }

    private static Craft drawing(Craft craft, double amps) {
        return new Craft(
                craft.name(),
                craft.kind(),
                craft.cellsInSeries(),
                craft.connector(),
                amps,
                craft.peakAmps(),
                craft.keeper(),
                craft.note());
    }

    private static String said(Craft craft, CraftDemand demand) {
        Double entered = craft.typicalAmps();
        return String.format(
                Locale.ROOT,
                "%s draws %.1f ± %.1f A by what was put back after %d runs%s",
                craft.name(),
                demand.amps(),
                demand.spreadAmps(),
                demand.runs(),
                entered == null ? "" : String.format(Locale.ROOT, "; entered are %.1f A", entered));
    }

    private FitPack pack(KnownPack known) {
        Assessment assessment = known.assessment();
        Pack pack = assessment.pack();
        Limits limits = workshop.rules().limits(pack);
        double coulombs = assessment.capacity().plannedCoulombs();
        double ohms = CellOhms.of(known.history());
        Double label = pack.dischargeRatingAmps();
        SustainableCurrent current = SustainableCurrent.of(
                PackModel.uniform(pack.tag(), pack.chemistry(), pack.cellsInSeries(), coulombs, 1, ohms),
                limits,
                label == null ? Double.NaN : label);
        return new FitPack(
                pack,
                assessment.standing(),
                coulombs,
                limits.si(Quantity.RESERVE),
                ohms * pack.cellsInSeries(),
                current.amps(),
                years(pack.bought()));
    }

    private @Nullable Double years(@Nullable LocalDate bought) {
        if (bought == null) {
            return null;
        }
        LocalDate today = ledger.now().atZone(ZoneOffset.UTC).toLocalDate();
        return Math.max(0, ChronoUnit.DAYS.between(bought, today) / DAYS_OF_YEAR);
    }
}
