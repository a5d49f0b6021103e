package fettle.desk.frame;

import fettle.workshop.History;
import fettle.workshop.JournalEntry;
import fettle.workshop.Keeping;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Draws pages: puts a finished page record and its frame through its template. Thread-safe. */
public final class Pages {
    private static final String DONE = "done";
    private static final int LOOK_BACK = 50;

    private final TemplateEngine templates = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Pages.class.getClassLoader(), "fettle.desk.templates");
    private final History history;
    private final Keeping keeping;
    private final Figures figures;
    private final @Nullable String notice;

    /** @param keeping tells of damage to the book, which stands on top of every page like the notice */
    public Pages(History history, Keeping keeping, Clock clock, @Nullable String notice) {
        this.history = history;
        this.keeping = keeping;
        this.figures = new Figures(clock);
        this.notice = notice;
    }

    public Figures figures() {
        return figures;
    }

    /** Answers with a whole page. {@code template} is {@code place/name} below the desk's package. */
    public void show(Context ctx, String template, Place place, String title, Object page) {
        show(ctx, template, page, frame(ctx, place, title, Back.of(ctx), null));
    }

    /** Answers with a whole page on which an entry line that could not be saved is kept. */
    public void showTyped(Context ctx, String template, LineReading typed, String back) {
        show(ctx, template, typed, frame(ctx, Place.TODAY, "Entry", back, typed));
    }

    /** Answers with a part of a page. */
    public void part(Context ctx, String template, Object page) {
        draw(ctx, template, Map.of("page", page));
    }

    /** Sends the reader on after a change, to a page that tells of it and offers to undo it. */
    public static void sendOn(Context ctx, String back, JournalEntry done) {
        String address = Back.with(back, DONE, Long.toString(done.id()));
        if (ctx.header("HX-Request") != null) {
            ctx.header("HX-Redirect", address);
        } else {
            ctx.redirect(address, HttpStatus.SEE_OTHER);
        }
    }

    private void show(Context ctx, String template, Object page, Frame frame) {
        ctx.header("Cache-Control", "no-store");
        draw(ctx, template, Map.of("page", page, "frame", frame));
    }

    private Frame frame(Context ctx, Place place, String title, String back, @Nullable LineReading typed) {
        return new Frame(
                place,
                title,
                notice(),
                back,
                done(ctx),
                typed,
                figures.moment(figures.now()),
                preferences(ctx).theme());
    }

    private @Nullable String notice() {
        Optional<String> damage = keeping.damage();
        return damage.isEmpty() ? notice : damage.get() + (notice == null ? "" : " " + notice);
    }

    private @Nullable JournalEntry done(Context ctx) {
        String id = ctx.queryParam(DONE);
        if (id == null) {
            return null;
        }
        return history.recent(0, LOOK_BACK).stream()
                .filter(entry -> Long.toString(entry.id()).equals(id))
                .findFirst()
                .orElse(null);
    }

    private void draw(Context ctx, String template, Map<String, Object> parameters) {
        StringOutput output = new StringOutput();
        templates.render("fettle/desk/" + template + ".jte", parameters, output);
        ctx.html(new ReaderUnits(preferences(ctx)).in(output.toString()));
    }

    private static Preferences preferences(Context ctx) {
        return Preferences.of(ctx.cookie(Preferences.COOKIE));
    }
}
