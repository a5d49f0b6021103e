package fettle.desk.fit;

import fettle.desk.frame.Back;
import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.desk.worksheet.WorksheetPage;
import fettle.workshop.Workshop;
import fettle.workshop.worksheet.CraftTimer;
import fettle.workshop.worksheet.Worksheet;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Objects;

/** Shows the timer of a craft with one pack. */
public final class TimerHandler {
    private static final String PATH = "/kit/timer";

    private final Workshop workshop;
    private final Pages pages;

    public TimerHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    /** The address of a craft's timer with a pack. */
    public static String href(String craft, String tag) {
        return PATH + "?name=" + Back.encode(craft) + "&pack=" + Back.encode(tag);
    }

    public void addTo(RoutesConfig routes) {
        routes.get(PATH, this::show);
    }

    private void show(Context ctx) {
        String craft = asked(ctx, "name");
        String tag = asked(ctx, "pack");
        Worksheet worksheet = CraftTimer.of(workshop, craft, tag);
        WorksheetPage.From from = new WorksheetPage.From(
                PATH, Map.of("name", craft, "pack", tag), FitPage.href(craft), "Packs for " + craft);
        pages.show(ctx, "worksheet/worksheet", Place.KIT, worksheet.title(), WorksheetPage.of(ctx, worksheet, from));
    }

    private static String asked(Context ctx, String key) {
        return Objects.requireNonNullElse(ctx.queryParam(key), "");
    }
}
