package fettle.desk.setup;

import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.desk.kit.Field;
import fettle.desk.kit.FormPage;
import fettle.desk.worksheet.WorksheetPage;
import fettle.engine.control.sweep.SurfaceSweep;
import fettle.engine.control.sweep.SweepAnalysis;
import fettle.engine.pack.Craft;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.JournalEntry;
import fettle.workshop.KeptSheet;
import fettle.workshop.KeptSweep;
import fettle.workshop.Registered;
import fettle.workshop.SetUps;
import fettle.workshop.Workshop;
import fettle.workshop.sweep.SweepChoices;
import fettle.workshop.sweep.SweepReading;
import fettle.workshop.sweep.TypedSweep;
import fettle.workshop.worksheet.CraftPower;
import fettle.workshop.worksheet.LinkageStudy;
import fettle.workshop.worksheet.SurfaceStudy;
import fettle.workshop.worksheet.Worksheet;
import fettle.workshop.worksheet.WorksheetField;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Shows set-up sheets, keeps new ones, and draws linkages. */
public final class SetUpsHandler {
    private static final String CRAFT_PATH = "/setups/craft";
    private static final long LARGEST_SWEEP_BYTES = 8L * 1024 * 1024;

    private final Workshop workshop;
    private final Pages pages;

    public SetUpsHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/setups", this::list);
        routes.get("/setups/linkage", this::linkage);
        routes.get(CRAFT_PATH, ctx -> sheet(ctx, sheets().of(known(ctx.queryParam("name")))));
        routes.post(CRAFT_PATH, this::keep);
        routes.post("/setups/sweeps", this::sweep);
        routes.get("/setups/surface", ctx -> study(ctx, SurfaceStudy.of(workshop, craft(ctx), part(ctx))));
        routes.get("/setups/power", ctx -> study(ctx, CraftPower.of(workshop, craft(ctx))));
    }

    private static String craft(Context ctx) {
        return typed(ctx.queryParam("name"));
    }

    private static String part(Context ctx) {
        return typed(ctx.queryParam("part"));
    }

    private void study(Context ctx, Worksheet worksheet) {
        Map<String, String> from = new LinkedHashMap<>();
        from.put("name", craft(ctx));
        if (!part(ctx).isEmpty()) {
            from.put("part", part(ctx));
        }
        WorksheetPage.From where =
                new WorksheetPage.From(ctx.path(), from, SetUpsPage.href(craft(ctx)), "Set-up of " + craft(ctx));
        WorksheetPage page = WorksheetPage.of(ctx, worksheet, where);
        pages.show(ctx, "worksheet/worksheet", Place.SETUPS, worksheet.title(), page);
    }

    private void list(Context ctx) {
        SetUps setUps = workshop.setUps();
        List<SetUpsPage.Line> lines = workshop.craft().list().stream()
                .filter(craft -> !craft.retired())
                .map(craft -> line(setUps, craft))
                .toList();
        pages.show(ctx, "setup/setups", Place.SETUPS, "Set-ups", new SetUpsPage(lines));
    }

    private static SetUpsPage.Line line(SetUps setUps, Registered<Craft> craft) {
        Optional<KeptSheet> latest = setUps.of(craft.name()).stream().findFirst();
        return new SetUpsPage.Line(
                craft.name(),
                latest.map(sheet -> sheet.sheet().date().toString()).orElse(""),
                latest.map(sheet -> sheet.sheet().surfaces().size()).orElse(0),
                setUps.sweeps(craft.name(), "").size());
    }

    private void keep(Context ctx) {
        String craft = known(ctx.formParam("name"));
        String surfaces = typed(ctx.formParam("surfaces"));
        String note = typed(ctx.formParam("note"));
        try {
            JournalEntry entry = workshop.setUps().add(craft, surfaces, null, note);
            Pages.sendOn(ctx, SetUpsPage.href(craft), entry);
        } catch (InputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            List<String> faults = refused.faults().stream().map(Fault::sentence).toList();
            sheet(ctx, sheets().refused(craft, surfaces, note, faults));
        }
    }

    private void sweep(Context ctx) throws IOException {
        String craft = known(ctx.formParam("name"));
        CraftSheetPage.SweepForm form = new CraftSheetPage.SweepForm(
                typed(ctx.formParam("swept")),
                typed(ctx.formParam("pulse")),
                typed(ctx.formParam("current")),
                typed(ctx.formParam("unit")),
                typed(ctx.formParam("idle")),
                typed(ctx.formParam("points")),
                List.of());
        try {
            SweepReading reading = reading(ctx, form);
            JournalEntry entry = workshop.setUps().keep(craft, form.surface(), reading.file(), reading.sweep());
            Pages.sendOn(ctx, SetUpsPage.href(craft), entry);
        } catch (InputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            List<String> faults = refused.faults().stream().map(Fault::sentence).toList();
            sheet(ctx, sheets().refused(craft, form.refused(faults)));
        }
    }

    private static SweepReading reading(Context ctx, CraftSheetPage.SweepForm form) throws IOException {
        UploadedFile file = ctx.uploadedFile("file");
        boolean none = file == null || file.size() == 0;
        if (none == form.points().isBlank()) {
            throw new InputException(
                    "file",
                    none
                            ? "no file was chosen and no reading typed. Choose a sweep, e.g. rudder.csv, or type one."
                            : "a file was chosen and readings typed. Give one of them.");
        }
        Double idle = QuantityText.siOrNull("idle", "current at rest", form.idle(), Measure.CURRENT, null);
        SweepChoices choices = new SweepChoices(form.pulse(), form.current(), "", "", form.unit(), idle, null);
        return none ? TypedSweep.read(form.points(), choices) : reading(Objects.requireNonNull(file), choices);
    }

    private static SweepReading reading(UploadedFile file, SweepChoices choices) throws IOException {
        if (file.size() > LARGEST_SWEEP_BYTES) {
            throw new InputException("file", "the file is larger than 8 MB, which no sweep is. Choose another.");
        }
        try (InputStream content = file.content()) {
            return SweepReading.of(file.filename(), content.readAllBytes(), choices);
        }
    }

    private void sheet(Context ctx, CraftSheetPage page) {
        pages.show(ctx, "setup/sheet", Place.SETUPS, "Set-up of " + page.craft(), page);
    }

    private CraftSheets sheets() {
        return new CraftSheets(workshop.setUps(), pages.figures());
    }

    private String known(@Nullable String name) {
        return workshop.craft().find(typed(name)).name();
    }

    private void linkage(Context ctx) {
        Map<String, String> typed = typed(ctx);
        String craft = typed(ctx.queryParam("craft"));
        String surface = typed(ctx.queryParam("surface"));
        if (typed.isEmpty()) {
            typed.putAll(asOnSheet(craft, surface));
        }
        if (typed.isEmpty()) {
            show(ctx, new LinkagePage(lines(usual(), List.of()), List.of(), craft, surface, null));
            return;
        }
        try {
            LinkageStudy study = LinkageStudy.of(typed);
            show(ctx, new LinkagePage(lines(typed, List.of()), List.of(), craft, surface, picture(ctx, study)));
        } catch (InputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(
                    ctx,
                    new LinkagePage(
                            lines(typed, refused.faults()),
                            FormPage.atNoField(fields(), refused.faults()),
                            craft,
                            surface,
                            null));
        }
    }

    /** The fields of a surface whose linkage is on its craft's latest sheet; empty without one. */
    private Map<String, String> asOnSheet(String craft, String surface) {
        return craft.isBlank() || surface.isBlank()
                ? Map.of()
                : LinkageStudy.typed(workshop, craft, surface).orElse(Map.of());
    }

    private LinkagePage.Picture picture(Context ctx, LinkageStudy study) {
        double centre = TradeUnit.MICROSECOND.fromSi(study.drive().scale().centreSeconds());
        double wanted = ctx.queryParamAsClass("pulse", Double.class).getOrDefault(centre);
        String craft = typed(ctx.queryParam("craft"));
        Optional<SurfaceSweep> sweep = craft.isBlank()
                ? Optional.empty()
                : workshop.setUps()
                        .latestSweep(craft, typed(ctx.queryParam("surface")))
                        .map(KeptSweep::sweep);
        return new LinkagePicture(study)
                .at(
                        wanted,
                        sweep.map(kept -> kept.sweep().points()).orElse(null),
                        sweep.map(kept -> SweepAnalysis.of(kept.sweep())).orElse(null));
    }

    private void show(Context ctx, LinkagePage page) {
        pages.show(ctx, "setup/linkage", Place.SETUPS, "A linkage, moving", page);
    }

    private static Map<String, String> typed(Context ctx) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (WorksheetField field : LinkageStudy.fields()) {
            String word = ctx.queryParam(field.key());
            if (word != null) {
                typed.put(field.key(), word);
            }
        }
        return typed;
    }

    private static String typed(@Nullable String word) {
        return Objects.requireNonNullElse(word, "");
    }

    private static Map<String, String> usual() {
        return LinkageStudy.fields().stream().collect(Collectors.toMap(WorksheetField::key, WorksheetField::usual));
    }

    private static List<FormPage.Line> lines(Map<String, String> typed, List<Fault> faults) {
        return FormPage.lines(fields(), typed, faults, key -> List.of());
    }

    private static List<Field> fields() {
        return LinkageStudy.fields().stream()
                .map(field -> new Field(
                        field.key(),
                        field.label(),
                        field.hint(),
                        Field.Kind.LINE,
                        List.of(),
                        Field.Need.DEPENDS,
                        field.usual()))
                .toList();
    }
}
