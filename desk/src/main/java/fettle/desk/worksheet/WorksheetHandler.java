package fettle.desk.worksheet;

import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.workshop.worksheet.Worksheet;
import fettle.workshop.worksheet.WorksheetField;
import fettle.workshop.worksheet.Worksheets;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
        Map<String, String> typed = typed(ctx, worksheet);
        if (typed.isEmpty()) {
            show(ctx, worksheet, WorksheetPage.asked(worksheet));
            return;
        }
        try {
            show(ctx, worksheet, WorksheetPage.answered(worksheet, typed, worksheet.answer(typed)));
        } catch (InputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            List<Fault> faults = refused.faults();
            show(ctx, worksheet, WorksheetPage.refused(worksheet, typed, faults));
        }
    }

    private void show(Context ctx, Worksheet worksheet, WorksheetPage page) {
        pages.show(ctx, "worksheet/worksheet", Place.WORKSHEETS, worksheet.title(), page);
    }

    private static Map<String, String> typed(Context ctx, Worksheet worksheet) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (WorksheetField field : worksheet.fields()) {
            String word = ctx.queryParam(field.key());
            if (word != null) {
                typed.put(field.key(), word);
            }
        }
        return typed;
    }
}
