package fettle.workshop;

import fettle.book.record.Row;
import fettle.book.record.Shapes;
import fettle.book.store.Items;
import fettle.book.store.Stored;
import fettle.engine.control.setup.SetUpSheet;
import fettle.engine.control.setup.SurfaceSetting;
import fettle.engine.control.sweep.SurfaceSweep;
import fettle.engine.control.sweep.Sweep;
import fettle.engine.pack.Craft;
import fettle.engine.units.Counted;
import fettle.engine.units.InputException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Set-up sheets and sweeps of craft. Every change is journalled and can be undone. Thread-safe. */
public final class SetUps {
    private final Ledger ledger;
    private final Shelf<Craft> craft;
    private final Items<SetUpSheet> sheets;
    private final Items<SurfaceSweep> sweeps;

    SetUps(Ledger ledger, Shelf<Craft> craft) {
        this.ledger = ledger;
        this.craft = craft;
        this.sheets = ledger.book().items(Shapes.SET_UP_SHEET);
        this.sweeps = ledger.book().items(Shapes.SURFACE_SWEEP);
    }

    /**
     * Keeps a new sheet of a craft.
     *
     * @param surfaces one a line, as {@link SurfaceText} reads them
     * @param date when it was set; {@code null} for today
     * @throws fettle.engine.units.InputException with the number of every faulty line
     * @throws UnknownNameException if there is no such craft
     */
    public JournalEntry add(String craftName, String surfaces, @Nullable LocalDate date, String note) {
        String known = craft.find(craftName).name();
        LocalDate day = date == null ? ledger.now().atZone(ZoneOffset.UTC).toLocalDate() : date;
        SetUpSheet sheet = new SetUpSheet(known, day, SurfaceText.parse(surfaces), note.strip());
        String sentence = "set up " + known + ": " + Counted.of(sheet.surfaces().size(), "surface");
        return ledger.use(() -> Ledger.fresh(sheets.add(sheet, Row.empty(), ledger.note(sentence, known))));
    }

    /** The sheets of a craft, the latest first, each with what differs from the one before. */
    public List<KeptSheet> of(String craftName) {
        String known = craft.find(craftName).name();
        List<Stored<SetUpSheet>> rising = ledger.use(sheets::all).stream()
                .filter(stored -> stored.item().craft().equals(known))
                .sorted(Comparator.comparing(
                                (Stored<SetUpSheet> stored) -> stored.item().date())
                        .thenComparingLong(Stored::id))
                .toList();
        List<KeptSheet> kept = new ArrayList<>();
        for (int at = rising.size() - 1; at >= 0; at--) {
            SetUpSheet sheet = rising.get(at).item();
            kept.add(new KeptSheet(
                    rising.get(at).id(),
                    sheet,
                    sheet.surfaces().stream().map(SurfaceText::write).toList(),
                    at == 0 ? List.of() : sheet.since(rising.get(at - 1).item())));
        }
        return kept;
    }

    /**
     * A craft's latest sheet.
     *
     * @throws UnknownNameException if there is no such craft, or it has no sheet yet
     */
    public KeptSheet latest(String craftName) {
        return of(craftName).stream()
                .findFirst()
                .orElseThrow(() -> new UnknownNameException(
                        craftName + " has no set-up sheet yet. Add one: fettle setup add, or the place Set-ups."));
    }

    /**
     * A surface of a craft's latest sheet, its name in any case.
     *
     * @throws UnknownNameException if there is no such craft, sheet or surface; says which surfaces there are
     */
    public SurfaceSetting surface(String craftName, String surface) {
        SetUpSheet sheet = latest(craftName).sheet();
        return surface(sheet, surface)
                .orElseThrow(() -> new UnknownNameException(craftName + " has no surface \"" + surface.strip()
                        + "\" on its latest sheet; there are "
                        + sheet.surfaces().stream().map(SurfaceSetting::surface).collect(Collectors.joining(", "))
                        + "."));
    }

    /**
     * The same; empty where the craft has no sheet, or no such surface on it.
     *
     * @throws UnknownNameException if there is no such craft
     */
    public Optional<SurfaceSetting> surfaceIfAny(String craftName, String surface) {
        return of(craftName).stream().findFirst().flatMap(kept -> surface(kept.sheet(), surface));
    }

    private static Optional<SurfaceSetting> surface(SetUpSheet sheet, String surface) {
        return sheet.surfaces().stream()
                .filter(setting -> setting.surface().equalsIgnoreCase(surface.strip()))
                .findFirst();
    }

    /**
     * A day as typed; {@code null} where nothing was.
     *
     * @throws InputException if it is no day
     */
    public static @Nullable LocalDate day(String typed) {
        try {
            return typed.isBlank() ? null : LocalDate.parse(typed.strip());
        } catch (DateTimeParseException wrong) {
            throw new InputException("date", "date is \"" + typed + "\"; expected year-month-day, e.g. 2026-05-16.");
        }
    }

    /**
     * Keeps a sweep of a craft's surface, taken now.
     *
     * @throws UnknownNameException if there is no such craft
     */
    public JournalEntry keep(String craftName, String surface, String fileName, Sweep sweep) {
        String known = craft.find(craftName).name();
        SurfaceSweep taken = new SurfaceSweep(known, surface.strip(), ledger.now(), fileName, sweep);
        String sentence = "swept " + taken.surface() + " of " + known + ": "
                + Counted.of(sweep.points().size(), "reading");
        return ledger.use(() -> Ledger.fresh(sweeps.add(taken, Row.empty(), ledger.note(sentence, known))));
    }

    /** The sweeps of a craft's surface in any case, the latest first; all surfaces if it is empty. */
    public List<KeptSweep> sweeps(String craftName, String surface) {
        String known = craft.find(craftName).name();
        return ledger.use(sweeps::all).stream()
                .filter(stored -> stored.item().craft().equals(known))
                .filter(stored -> surface.isBlank() || stored.item().surface().equalsIgnoreCase(surface.strip()))
                .sorted(Comparator.comparing(
                                (Stored<SurfaceSweep> stored) -> stored.item().takenAt())
                        .thenComparingLong(Stored::id)
                        .reversed())
                .map(stored -> new KeptSweep(stored.id(), stored.item()))
                .toList();
    }

    /** The latest sweep of a surface, if there is one. */
    public Optional<KeptSweep> latestSweep(String craftName, String surface) {
        return sweeps(craftName, surface).stream().findFirst();
    }
}
