package fettle.desk.journal;

import fettle.desk.frame.Back;
import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.workshop.History;
import fettle.workshop.JournalEntry;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;

/** Shows the journal, and undoes changes. */
public final class JournalHandler {
    private static final int PAGE = 50;

    private final History history;
    private final Pages pages;

    public JournalHandler(History history, Pages pages) {
        this.history = history;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/journal", this::show);
        routes.post("/journal/{id}/undo", this::undo);
    }

    private void show(Context ctx) {
        int from = ctx.queryParamAsClass("from", Integer.class).getOrDefault(0);
        int offset = Math.max(0, from);
        List<JournalEntry> entries = history.recent(offset, PAGE + 1);
        boolean more = entries.size() > PAGE;
        List<JournalEntry> shown = more ? entries.subList(0, PAGE) : entries;
        JournalPage page = JournalPage.of(shown, more ? offset + PAGE : 0, pages.figures());
        pages.show(ctx, "journal/journal", Place.JOURNAL, "Journal", page);
    }

    private void undo(Context ctx) {
        long id = ctx.pathParamAsClass("id", Long.class).get();
        Pages.sendOn(ctx, Back.safe(ctx.formParam("back")), history.undo(id));
    }
}
