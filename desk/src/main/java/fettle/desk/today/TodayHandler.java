package fettle.desk.today;

import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.workshop.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** Shows Today. */
public final class TodayHandler {
    private final Workshop workshop;
    private final Pages pages;

    public TodayHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/", this::show);
    }

    private void show(Context ctx) {
        TodayPage page = TodayPage.of(
                workshop.review().shelf(),
                pack -> workshop.rules().inForce(pack.chemistry(), pack.tag()),
                pages.figures());
        pages.show(ctx, "today/today", Place.TODAY, "Today", page);
    }
}
