package fettle.desk.trace;

import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.desk.json.Shapes;
import fettle.engine.health.TraceHealth;
import fettle.engine.trace.Trace;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.workshop.KeptTrace;
import fettle.workshop.TraceAdded;
import fettle.workshop.TraceChoices;
import fettle.workshop.TracePreview;
import fettle.workshop.TraceProgress;
import fettle.workshop.UnknownNameException;
import fettle.workshop.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.ContentType;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Lists traces, takes logs on in two steps (look, keep), and shows what is in them. */
public final class TraceHandler {
    private static final int POINTS = 2_000;
    private static final long LONG_BYTES = 8_000_000; // about a second's reading
    private static final int MOST_POINTS = 20_000;

    private final Workshop workshop;
    private final Pages pages;
    private final PendingLogs pending = new PendingLogs();
    private final Readings readings = new Readings();
    private final RecentTraces recent;

    public TraceHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
        this.recent = new RecentTraces(workshop.traces());
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/traces", ctx -> list(ctx, word(ctx.queryParam("pack")), List.of()));
        routes.post("/traces/look", this::look);
        routes.post("/traces", this::keep);
        routes.get("/traces/reading/{token}", this::reading);
        routes.post("/traces/reading/{token}/stop", this::stop);
        routes.get("/traces/{id}", this::show);
        routes.get("/traces/{id}/lines.json", this::lines);
        routes.post("/traces/{id}/acknowledge", this::acknowledge);
        routes.get("/traces/{id}/open-format.csv", this::openFormat);
    }

    private void list(Context ctx, String pack, List<String> faults) {
        TracesPage page = TracesPage.of(workshop, pack, faults, pages.figures());
        pages.show(ctx, "trace/traces", Place.TRACES, "Traces", page);
    }

    private void look(Context ctx) throws IOException {
        String pack = word(ctx.formParam("pack"));
        UploadedFile file = ctx.uploadedFile("file");
        if (file == null || file.size() == 0) {
            refuse(ctx, pack, List.of(new Fault("file", "no file was chosen. Choose a log, e.g. flight.csv.")));
            return;
        }
        String token;
        try (InputStream content = file.content()) {
            token = pending.take(file.filename(), content);
        }
        try {
            workshop.packs().find(pack);
            look(ctx, token, pack, TraceChoices.NONE, List.of());
        } catch (InputException unreadable) {
            pending.drop(token);
            refuse(ctx, pack, unreadable.faults());
        }
    }

    private void refuse(Context ctx, String pack, List<Fault> faults) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        list(ctx, pack, faults.stream().map(Fault::sentence).toList());
    }

    private void look(Context ctx, String token, String pack, TraceChoices choices, List<String> faults) {
        TracePreview preview = workshop.traces().preview(pending.find(token), choices);
        LookPage page = LookPage.of(token, pack, preview, choices, faults);
        pages.show(ctx, "trace/look", Place.TRACES, "Look at " + preview.file(), page);
    }

    private void keep(Context ctx) {
        String token = word(ctx.formParam("token"));
        String pack = word(ctx.formParam("pack"));
        TraceChoices choices = new TraceChoices(
                columns(ctx),
                word(ctx.formParam("positive")),
                word(ctx.formParam("zone")),
                word(ctx.formParam("note")),
                word(ctx.formParam("packs")));
        try {
            Path log = pending.find(token);
            if (log.toFile().length() > LONG_BYTES) {
                workshop.packs().find(pack);
                readings.begin(
                        token, pack, choices, progress -> workshop.traces().add(pack, log, choices, progress));
                ctx.redirect("/traces/reading/" + token, HttpStatus.SEE_OTHER);
                return;
            }
            TraceAdded added = workshop.traces().add(pack, log, choices, TraceProgress.NONE);
            pending.drop(token);
            Pages.sendOn(ctx, "/traces/" + added.trace().id(), added.entry());
        } catch (InputException refused) {
            lookAgain(ctx, token, pack, choices, refused.faults());
        }
    }

    private void lookAgain(Context ctx, String token, String pack, TraceChoices choices, List<Fault> faults) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        try {
            look(ctx, token, pack, choices, faults.stream().map(Fault::sentence).toList());
        } catch (InputException wrongChoice) {
            refuse(ctx, pack, faults);
        }
    }

    /** How far a long log is; once it is read, on to its page, or back to what it was to be read as. */
    private void reading(Context ctx) {
        String token = ctx.pathParam("token");
        Readings.Reading reading = readings.find(token).orElseThrow(TraceHandler::notHere);
        boolean part = ctx.header("HX-Request") != null;
        if (reading.ended() && part) {
            ctx.header("HX-Redirect", "/traces/reading/" + token).result("");
        } else if (reading.added().isPresent()) {
            TraceAdded added = reading.added().get();
            pending.drop(token);
            Pages.sendOn(ctx, "/traces/" + added.trace().id(), added.entry());
        } else if (reading.ended()) {
            lookAgain(ctx, token, reading.pack(), reading.choices(), reading.faults());
        } else {
            String file = String.valueOf(pending.find(token).getFileName());
            ctx.header("Cache-Control", "no-store");
            pages.show(
                    ctx,
                    "trace/reading",
                    Place.TRACES,
                    "Reading " + file,
                    new ReadingPage(token, file, reading.pack(), reading.perCent()));
        }
    }

    private void stop(Context ctx) {
        String token = ctx.pathParam("token");
        readings.find(token).orElseThrow(TraceHandler::notHere).stop();
        ctx.redirect("/traces/reading/" + token, HttpStatus.SEE_OTHER);
    }

    private static UnknownNameException notHere() {
        return new UnknownNameException("that log is no longer being read here. See: Traces.");
    }

    /** The uses of all columns as the form has them, in the words of {@link TraceChoices#columns()}. */
    private static String columns(Context ctx) {
        List<String> uses = new ArrayList<>();
        for (int number = 1; ctx.formParam("use-" + number) != null; number++) {
            String unit = word(ctx.formParam("unit-" + number)).strip();
            uses.add(ctx.formParam("use-" + number) + "=" + number + (unit.isEmpty() ? "" : ":" + unit));
        }
        return String.join(",", uses);
    }

    private void show(Context ctx) {
        show(ctx, workshop.traces().find(id(ctx)), "");
    }

    private void show(Context ctx, KeptTrace trace, @Nullable String fault) {
        pages.show(
                ctx,
                "trace/trace",
                Place.TRACES,
                "Trace " + trace.id() + " of " + trace.pack(),
                TracePage.of(trace, health(trace), word(fault), pages.figures()));
    }

    private void acknowledge(Context ctx) {
        KeptTrace trace = workshop.traces().find(id(ctx));
        try {
            Pages.sendOn(
                    ctx,
                    "/traces/" + trace.id(),
                    workshop.traces().acknowledge(trace.id(), word(ctx.formParam("finding"))));
        } catch (InputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, trace, refused.getMessage());
        }
    }

    /** What can be told of resistance; a trace too long to be held at once only says so. */
    private TraceHealth health(KeptTrace trace) {
        try {
            return recent.look(trace.id()).health();
        } catch (InputException tooLong) {
            return new TraceHealth(List.of(), List.of(String.valueOf(tooLong.getMessage())));
        }
    }

    private void lines(Context ctx) {
        RecentTraces.Looked looked = recent.look(id(ctx));
        Trace trace = looked.samples();
        double from = ctx.queryParamAsClass("from", Double.class).getOrDefault(trace.timeSeconds()[0]);
        double to = ctx.queryParamAsClass("to", Double.class).getOrDefault(trace.timeSeconds()[trace.size() - 1]);
        int points = ctx.queryParamAsClass("points", Integer.class).getOrDefault(POINTS);
        int most = Math.max(4, Math.min(MOST_POINTS, points));
        ctx.header("Cache-Control", "no-store");
        ctx.contentType(ContentType.APPLICATION_JSON)
                .result(Shapes.write(TraceLines.of(trace, looked.model(), from, to, most)));
    }

    private void openFormat(Context ctx) throws IOException {
        long id = id(ctx);
        StringWriter text = new StringWriter();
        workshop.traces().export(id, text);
        ctx.header("Content-Disposition", "attachment; filename=\"trace-" + id + ".bdf.csv\"");
        ctx.contentType("text/csv; charset=utf-8").result(text.toString());
    }

    private static long id(Context ctx) {
        return ctx.pathParamAsClass("id", Long.class).get();
    }

    private static String word(@Nullable String typed) {
        return Objects.requireNonNullElse(typed, "");
    }
}
