package fettle.desk.worksheet;

import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.workshop.worksheet.Worksheet;
import fettle.workshop.worksheet.Worksheets;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** Shows the worksheets and works them out. Nothing is kept: what was typed stands in the address. */
public final class WorksheetHandler {
    private final Pages pages;

    public WorksheetHandler(Pages pages) {
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get(
                "/worksheets",
                ctx -> pages.show(
                        ctx,
                        "worksheet/worksheets",
                        Place.WORKSHEETS,
                        "Worksheets",
                        new WorksheetsPage(Worksheets.all())));
        for (Worksheet worksheet : Worksheets.all()) {
            routes.get("/worksheets/" + worksheet.word(), ctx -> work(ctx, worksheet));
        }
    }

    private void work(Context ctx, Worksheet worksheet) {
        WorksheetPage page = WorksheetPage.of(ctx, worksheet, WorksheetPage.From.list(worksheet));
        pages.show(ctx, "worksheet/worksheet", Place.WORKSHEETS, worksheet.title(), page);
    }
}
