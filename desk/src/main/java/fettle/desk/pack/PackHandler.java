package fettle.desk.pack;

import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.workshop.PackFile;
import fettle.workshop.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** Shows one pack in full. */
public final class PackHandler {
    private final Workshop workshop;
    private final Pages pages;

    public PackHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/kit/packs/{tag}", this::show);
    }

    private void show(Context ctx) {
        PackFile file = workshop.review().pack(ctx.pathParam("tag"));
        PackPage page = PackPage.of(file, workshop.traces().ofPack(ctx.pathParam("tag")), pages.figures());
        pages.show(ctx, "pack/pack", Place.KIT, page.tag(), page);
    }
}
