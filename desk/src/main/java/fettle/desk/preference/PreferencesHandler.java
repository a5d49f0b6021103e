package fettle.desk.preference;

import fettle.desk.frame.Back;
import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.desk.frame.Preferences;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;

/** Shows a reader's choices and keeps them in a cookie; what a form leaves out stays as it was. */
public final class PreferencesHandler {
    private static final int YEAR_SECONDS = (int) Duration.ofDays(365).toSeconds();

    private final Pages pages;

    public PreferencesHandler(Pages pages) {
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/preferences", this::show);
        routes.post("/preferences", PreferencesHandler::keep);
    }

    private void show(Context ctx) {
        pages.show(
                ctx,
                "preference/preferences",
                Place.JOURNAL,
                "Preferences",
                PreferencesPage.of(Preferences.of(ctx.cookie(Preferences.COOKIE))));
    }

    private static void keep(Context ctx) {
        Map<String, String> words = new HashMap<>();
        ctx.formParamMap().forEach((name, values) -> words.put(name, values.get(0)));
        Preferences chosen = Preferences.of(ctx.cookie(Preferences.COOKIE)).with(words);
        Cookie cookie = new Cookie(Preferences.COOKIE, chosen.cookie(), "/", YEAR_SECONDS);
        cookie.setSameSite(SameSite.STRICT);
        cookie.setHttpOnly(true);
        ctx.cookie(cookie);
        ctx.redirect(Back.safe(ctx.formParam("back")), HttpStatus.SEE_OTHER);
    }
}
