package fettle.desk.api;

import fettle.desk.json.Shapes;
import fettle.desk.kit.ItemKind;
import fettle.desk.kit.ItemKinds;
import fettle.desk.label.LabelsHandler;
import fettle.desk.trace.TraceApi;
import fettle.engine.cell.Chemistry;
import fettle.engine.rule.RuleOverride;
import fettle.engine.units.InputException;
import fettle.workshop.RuleForm;
import fettle.workshop.Shelf;
import fettle.workshop.Workshop;
import fettle.workshop.worksheet.CraftTimer;
import fettle.workshop.worksheet.Worksheets;
import io.javalin.config.RoutesConfig;
import io.javalin.http.ContentType;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;

/** Everything the pages can do, as JSON. Bodies are objects of strings, the same words as in the forms. */
public final class Api {
    private static final int MOST_ENTRIES = 500;
    private static final int USUAL_ENTRIES = 50;

    private final Workshop workshop;

    public Api(Workshop workshop) {
        this.workshop = workshop;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/api/openapi.json", Api::document);
        routes.get("/api/review", ctx -> Json.answer(ctx, workshop.review().shelf()));
        routes.get(
                "/api/packs/{name}", ctx -> Json.answer(ctx, workshop.review().pack(ctx.pathParam("name"))));
        ItemKinds.all().forEach(kind -> addShelf(routes, kind));
        addShelf(routes, ItemKinds.outings());
        new OutingsApi(workshop).addTo(routes);
        addRules(routes);
        routes.get("/api/labels", ctx -> Json.answer(ctx, LabelsHandler.asked(workshop, ctx)));
        routes.get("/api/worksheets", ctx -> Json.answer(ctx, Worksheets.all()));
        routes.post(
                "/api/worksheets/{name}",
                ctx -> Json.answer(ctx, Worksheets.of(ctx.pathParam("name")).answer(Json.body(ctx))));
        new TraceApi(workshop, ctx -> Json.word(Json.body(ctx), "finding")).addTo(routes);
        new SetUpsApi(workshop).addTo(routes);
        routes.post(
                "/api/craft/{name}/fit",
                ctx -> Json.answer(ctx, workshop.fits().of(ctx.pathParam("name"), Json.body(ctx))));
        routes.post("/api/craft/{name}/timer", ctx -> {
            Map<String, String> body = Json.body(ctx);
            Json.answer(
                    ctx,
                    CraftTimer.of(workshop, ctx.pathParam("name"), Json.word(body, "pack"))
                            .answer(body));
        });
        routes.get("/api/journal", this::journal);
        routes.post("/api/journal/{id}/undo", this::undo);
        routes.post(
                "/api/preview", ctx -> Json.answer(ctx, workshop.entries().preview(Json.word(Json.body(ctx), "line"))));
        routes.post("/api/checks/preview", ctx -> {
            Map<String, String> body = Json.body(ctx);
            Json.answer(ctx, workshop.shelfCheck().preview(Json.word(body, "rows"), Json.word(body, "every")));
        });
        routes.post("/api/checks", ctx -> {
            Map<String, String> body = Json.body(ctx);
            Json.created(ctx, workshop.shelfCheck().save(Json.word(body, "rows"), Json.word(body, "every")));
        });
        routes.post(
                "/api/entries", ctx -> Json.created(ctx, workshop.entries().enter(Json.word(Json.body(ctx), "line"))));
    }

    private <T> void addShelf(RoutesConfig routes, ItemKind<T> kind) {
        Shelf<T> shelf = kind.shelf().apply(workshop);
        String all = "/api/" + kind.key();
        String one = all + "/{name}";
        routes.get(all, ctx -> Json.answer(ctx, shelf.list()));
        if (!kind.key().equals("packs") && !kind.key().equals("outings")) {
            routes.get(one, ctx -> Json.answer(ctx, shelf.find(ctx.pathParam("name"))));
        }
        routes.post(all, ctx -> Json.created(ctx, shelf.add(kind.form().read().apply(Json.body(ctx)))));
        routes.put(
                one,
                ctx -> Json.answer(
                        ctx,
                        shelf.edit(ctx.pathParam("name"), kind.form().read().apply(Json.body(ctx)))));
        routes.post(
                one + "/retire",
                ctx -> Json.answer(ctx, shelf.retire(ctx.pathParam("name"), Json.word(Json.body(ctx), "reason"))));
        routes.post(one + "/restore", ctx -> Json.answer(ctx, shelf.restore(ctx.pathParam("name"))));
    }

    private void addRules(RoutesConfig routes) {
        routes.get("/api/rules", ctx -> {
            Chemistry chemistry = Chemistry.parse(Objects.requireNonNullElse(ctx.queryParam("chemistry"), ""));
            Json.answer(ctx, workshop.rules().inForce(chemistry, ctx.queryParam("pack")));
        });
        routes.post(
                "/api/rules",
                ctx -> Json.answer(
                        ctx, workshop.rules().change(ruleForm(Json.body(ctx)).toOverride())));
        routes.post("/api/rules/reset", ctx -> {
            Map<String, String> body = Json.body(ctx);
            body.put("value", "0");
            RuleOverride named = ruleForm(body).toOverride();
            Json.answer(ctx, workshop.rules().reset(named.chemistry(), named.quantity(), named.packTag()));
        });
    }

    private static RuleForm ruleForm(Map<String, String> body) {
        return new RuleForm(
                Json.word(body, "chemistry"),
                Json.word(body, "quantity"),
                Json.word(body, "value"),
                Json.word(body, "packTag"),
                Json.word(body, "reason"));
    }

    private void journal(Context ctx) {
        int offset = ctx.queryParamAsClass("offset", Integer.class).getOrDefault(0);
        int limit = ctx.queryParamAsClass("limit", Integer.class).getOrDefault(USUAL_ENTRIES);
        if (offset < 0 || limit < 1 || limit > MOST_ENTRIES) {
            throw new InputException(
                    "limit",
                    "offset is " + offset + " and limit " + limit + "; expected 0 or more, and 1 to " + MOST_ENTRIES
                            + ".");
        }
        Json.answer(ctx, workshop.history().recent(offset, limit));
    }

    private void undo(Context ctx) {
        long id = ctx.pathParamAsClass("id", Long.class).get();
        try {
            Json.answer(ctx, workshop.history().undo(id));
        } catch (InputException e) {
            // The request is well formed; it is the book's present state that stands against it.
            ctx.status(HttpStatus.CONFLICT);
            Json.answer(ctx, new Shapes.Refusal(e.faults()));
        }
    }

    private static void document(Context ctx) {
        try (InputStream stream = Api.class.getResourceAsStream("/fettle/desk/api/openapi.json")) {
            byte[] document = Objects.requireNonNull(stream, "openapi.json").readAllBytes();
            ctx.contentType(ContentType.APPLICATION_JSON).result(new String(document, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
