package fettle.desk.passport;

import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.desk.paper.ReportPdf;
import fettle.workshop.Workshop;
import fettle.workshop.label.Paper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** Shows passports and hands them out as PDF. */
public final class PassportHandler {
    private final Workshop workshop;
    private final Pages pages;

    public PassportHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/kit/packs/{tag}/passport", this::show);
        routes.get("/kit/packs/{tag}/passport.pdf", this::pdf);
    }

    private void show(Context ctx) {
        String tag = workshop.packs().find(ctx.pathParam("tag")).name();
        PassportPage page = new PassportPage(tag, PackPassport.of(workshop, tag, pages.figures()));
        pages.show(ctx, "passport/passport", Place.KIT, page.report().title(), page);
    }

    private void pdf(Context ctx) {
        String tag = workshop.packs().find(ctx.pathParam("tag")).name();
        Paper paper = "letter".equals(ctx.queryParam("paper")) ? Paper.LETTER : Paper.A4;
        ctx.header("Content-Disposition", "inline; filename=\"passport-" + tag + ".pdf\"");
        ctx.header("Cache-Control", "no-store");
        ctx.contentType("application/pdf").result(ReportPdf.of(PackPassport.of(workshop, tag, pages.figures()), paper));
    }
}
