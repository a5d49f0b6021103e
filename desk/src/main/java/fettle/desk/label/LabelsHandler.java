package fettle.desk.label;

import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.desk.label.LabelsPage.Choice;
import fettle.engine.units.InputException;
import fettle.workshop.Registered;
import fettle.workshop.Workshop;
import fettle.workshop.label.LabelGrid;
import fettle.workshop.label.LabelRun;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Shows labels and hands them out as PDF. */
public final class LabelsHandler {
    private final Workshop workshop;
    private final Pages pages;

    public LabelsHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/kit/labels", this::show);
        routes.get("/kit/labels.pdf", this::pdf);
    }

    /** The labels asked for by {@code pack}, {@code sheet}, {@code start} and {@code address} of a request. */
    public static LabelRun asked(Workshop workshop, Context ctx) {
        return workshop.labels()
                .of(ctx.queryParams("pack"), text(ctx, "sheet", ""), start(ctx), text(ctx, "address", ""));
    }

    private void pdf(Context ctx) {
        ctx.header("Content-Disposition", "inline; filename=\"labels.pdf\"");
        ctx.header("Cache-Control", "no-store");
        ctx.contentType("application/pdf").result(LabelSheets.pdf(asked(workshop, ctx)));
    }

    private void show(Context ctx) {
        String fault = "";
        LabelRun run = null;
        try {
            run = asked(workshop, ctx);
        } catch (InputException e) {
            fault = String.valueOf(e.getMessage());
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        pages.show(ctx, "label/labels", Place.KIT, "Labels", page(ctx, run, fault));
    }

    private LabelsPage page(Context ctx, @Nullable LabelRun run, String fault) {
        List<String> tags = ctx.queryParams("pack");
        String sheet = text(ctx, "sheet", LabelGrid.USUAL.key());
        String start = text(ctx, "start", "1");
        String address = text(ctx, "address", "");
        return new LabelsPage(
                workshop.packs().list().stream()
                        .filter(pack -> !pack.retired())
                        .map(Registered::name)
                        .map(tag -> new Choice(tag, tag, tags.contains(tag)))
                        .toList(),
                Arrays.stream(LabelGrid.values())
                        .map(grid -> new Choice(
                                grid.key(), grid.description(), grid.key().equals(sheet)))
                        .toList(),
                start,
                address,
                here(ctx),
                fault,
                run == null ? List.of() : LabelSheets.of(run),
                LabelsPage.pdf(tags, sheet, start, address),
                run == null
                        ? List.of()
                        : run.labels().stream()
                                .filter(label -> label.chargeLimitVolts() == null)
                                .map(label -> label.tag())
                                .toList());
    }

    /** A code of the loopback would lead a phone to itself. */
    private static @Nullable String here(Context ctx) {
        String host = Objects.requireNonNullElse(ctx.header("Host"), "");
        return host.matches("(localhost|127\\.0\\.0\\.1|\\[::1])(:\\d+)?") ? null : ctx.scheme() + "://" + host;
    }

    private static int start(Context ctx) {
        String typed = text(ctx, "start", "1").strip();
        if (!typed.matches("\\d{1,4}")) {
            throw new InputException(
                    "start", "start is \"" + typed + "\"; expected a whole number, 1 for a new sheet.");
        }
        return Integer.parseInt(typed);
    }

    private static String text(Context ctx, String name, String usual) {
        String typed = ctx.queryParam(name);
        return typed == null ? usual : typed;
    }
}
