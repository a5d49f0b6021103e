package fettle.desk.shelf;

import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.engine.pack.Pack;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.workshop.JournalEntry;
import fettle.workshop.Registered;
import fettle.workshop.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes a shelf of checks. Rows that cannot be saved come back as typed, each fault at its row, and none is saved. */
public final class ShelfHandler {
    private static final Pattern SAVED = Pattern.compile("(\\d{1,18})-(\\d{1,18})");
    private static final int LOOK_BACK = 500;

    private final Workshop workshop;
    private final Pages pages;

    public ShelfHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/checks", ctx -> show(ctx, RowsRead.nothing(tags())));
        routes.post("/checks/preview", ctx -> pages.part(ctx, "shelf/rows", read(ctx)));
        routes.post("/checks", this::take);
    }

    private void take(Context ctx) {
        RowsRead read = read(ctx);
        boolean good = !read.rows().isEmpty() && read.good() == read.rows().size();
        if (ctx.formParam("look") != null) {
            show(ctx, read);
        } else if (good) {
            List<JournalEntry> saved = workshop.shelfCheck().save(text(ctx, "rows"), text(ctx, "every"));
            ctx.redirect(
                    "/checks?saved=" + saved.get(0).id() + "-"
                            + saved.get(saved.size() - 1).id(),
                    HttpStatus.SEE_OTHER);
        } else {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, read);
        }
    }

    private RowsRead read(Context ctx) {
        if (text(ctx, "rows").isBlank() && ctx.path().endsWith("/preview")) {
            return RowsRead.nothing(tags());
        }
        try {
            return RowsRead.of(workshop.shelfCheck().preview(text(ctx, "rows"), text(ctx, "every")), tags());
        } catch (InputException e) {
            return RowsRead.refused(String.valueOf(e.getMessage()), tags());
        }
    }

    private void show(Context ctx, RowsRead read) {
        List<ShelfPage.KnownPack> packs = inUse().stream()
                .map(pack -> new ShelfPage.KnownPack(
                        pack.tag(),
                        pack.chemistry().label() + " " + pack.arrangement() + " "
                                + TradeUnit.MILLIAMPERE_HOUR.print(pack.ratedCapacityCoulombs(), 0),
                        pack.cellsInSeries()))
                .toList();
        String range = Objects.requireNonNullElse(ctx.queryParam("saved"), "");
        ShelfPage page = new ShelfPage(
                text(ctx, "rows"), text(ctx, "every"), packs, read, saved(range), "/checks?saved=" + range);
        pages.show(ctx, "shelf/shelf", Place.TODAY, "Check the shelf", page);
    }

    private List<JournalEntry> saved(String range) {
        Matcher ids = SAVED.matcher(range);
        if (!ids.matches()) {
            return List.of();
        }
        long first = Long.parseLong(ids.group(1));
        long last = Long.parseLong(ids.group(2));
        return workshop.history().recent(0, LOOK_BACK).stream()
                .filter(entry -> entry.id() >= first && entry.id() <= last)
                .sorted(Comparator.comparingLong(JournalEntry::id))
                .toList();
    }

    private List<Pack> inUse() {
        return workshop.packs().list().stream()
                .filter(pack -> !pack.retired())
                .map(Registered::item)
                .toList();
    }

    private List<String> tags() {
        return inUse().stream().map(Pack::tag).toList();
    }

    private static String text(Context ctx, String name) {
        return Objects.requireNonNullElse(ctx.formParam(name), "");
    }
}
