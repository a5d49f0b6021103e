package fettle.desk.glossary;

import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import io.javalin.config.RoutesConfig;

/** Shows all terms. */
public final class GlossaryHandler {
    private final Pages pages;

    public GlossaryHandler(Pages pages) {
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get(
                "/glossary",
                ctx -> pages.show(ctx, "glossary/glossary", Place.JOURNAL, "Words", new GlossaryPage(Glossary.all())));
    }
}
