package fettle.desk.entry;

import fettle.desk.frame.Back;
import fettle.desk.frame.LineReading;
import fettle.desk.frame.Pages;
import fettle.workshop.Entries;
import fettle.workshop.EntryPreview;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;

/** Reads and saves entry lines. A line that cannot be saved comes back with its problems. */
public final class EntryHandler {
    private final Entries entries;
    private final Pages pages;

    public EntryHandler(Entries entries, Pages pages) {
        this.entries = entries;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.post("/entry/preview", this::preview);
        routes.post("/entry", this::enter);
        routes.get("/entry", ctx -> ctx.redirect("/"));
    }

    private void preview(Context ctx) {
        String line = line(ctx);
        if (line.isBlank()) {
            ctx.html("");
            return;
        }
        pages.part(ctx, "frame/reading", LineReading.of(entries.preview(line)));
    }

    private void enter(Context ctx) {
        String back = Back.safe(ctx.formParam("back"));
        EntryPreview preview = entries.preview(line(ctx));
        if (preview.canSave()) {
            Pages.sendOn(ctx, back, entries.enter(preview.line()));
            return;
        }
        LineReading reading = LineReading.of(preview);
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        if (ctx.header("HX-Request") != null) {
            pages.part(ctx, "frame/reading", reading);
        } else {
            pages.showTyped(ctx, "entry/entry", reading, back);
        }
    }

    private static String line(Context ctx) {
        return Optional.ofNullable(ctx.formParam("line")).orElse("");
    }
}
