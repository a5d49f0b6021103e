package fettle.desk.today;

import fettle.desk.frame.Back;
import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.workshop.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.time.Duration;

/** Shows Today, and keeps the reader's choice of contrast. */
public final class TodayHandler {
    private static final int YEAR_SECONDS = (int) Duration.ofDays(365).toSeconds();

    private final Workshop workshop;
    private final Pages pages;

    public TodayHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/", this::show);
        routes.post("/contrast", TodayHandler::contrast);
    }

    private void show(Context ctx) {
        TodayPage page = TodayPage.of(
                workshop.review().shelf(),
                pack -> workshop.rules().inForce(pack.chemistry(), pack.tag()),
                pages.figures());
        pages.show(ctx, "today/today", Place.TODAY, "Today", page);
    }

    private static void contrast(Context ctx) {
        String chosen = "high".equals(ctx.formParam("contrast")) ? "high" : "normal";
        Cookie cookie = new Cookie(Pages.CONTRAST_COOKIE, chosen, "/", YEAR_SECONDS);
        cookie.setSameSite(SameSite.STRICT);
        cookie.setHttpOnly(true);
        ctx.cookie(cookie);
        ctx.redirect(Back.safe(ctx.formParam("back")), HttpStatus.SEE_OTHER);
    }
}
