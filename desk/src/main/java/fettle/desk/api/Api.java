package fettle.desk.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import fettle.desk.json.Shapes;
import fettle.desk.kit.ItemKind;
import fettle.desk.kit.ItemKinds;
import fettle.desk.trace.TraceApi;
import fettle.engine.cell.Chemistry;
import fettle.engine.rule.RuleOverride;
import fettle.engine.units.InputException;
import fettle.workshop.RuleForm;
import fettle.workshop.Shelf;
import fettle.workshop.Workshop;
import fettle.workshop.worksheet.Worksheets;
import io.javalin.config.RoutesConfig;
import io.javalin.http.ContentType;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UnsupportedMediaTypeResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;

/** Everything the pages can do, as JSON. Bodies are objects of strings, the same words as in the forms. */
public final class Api {
    private static final ObjectMapper BODIES = new ObjectMapper();
    private static final TypeReference<Map<String, String>> WORDS = new TypeReference<>() {};
    private static final int MOST_ENTRIES = 500;
    private static final int USUAL_ENTRIES = 50;

    private final Workshop workshop;

    public Api(Workshop workshop) {
        this.workshop = workshop;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/api/openapi.json", Api::document);
        routes.get("/api/review", ctx -> answer(ctx, workshop.review().shelf()));
        routes.get("/api/packs/{name}", ctx -> answer(ctx, workshop.review().pack(ctx.pathParam("name"))));
        ItemKinds.all().forEach(kind -> addShelf(routes, kind));
        addRules(routes);
        routes.get("/api/worksheets", ctx -> answer(ctx, Worksheets.all()));
        routes.post(
                "/api/worksheets/{name}",
                ctx -> answer(ctx, Worksheets.of(ctx.pathParam("name")).answer(body(ctx))));
        new TraceApi(workshop, ctx -> word(body(ctx), "finding")).addTo(routes);
        routes.get("/api/journal", this::journal);
        routes.post("/api/journal/{id}/undo", this::undo);
        routes.post("/api/preview", ctx -> answer(ctx, workshop.entries().preview(word(body(ctx), "line"))));
        routes.post("/api/entries", ctx -> created(ctx, workshop.entries().enter(word(body(ctx), "line"))));
    }

    private <T> void addShelf(RoutesConfig routes, ItemKind<T> kind) {
        Shelf<T> shelf = kind.shelf().apply(workshop);
        String all = "/api/" + kind.key();
        String one = all + "/{name}";
        routes.get(all, ctx -> answer(ctx, shelf.list()));
        if (!kind.key().equals("packs")) {
            routes.get(one, ctx -> answer(ctx, shelf.find(ctx.pathParam("name"))));
        }
        routes.post(all, ctx -> created(ctx, shelf.add(kind.form().read().apply(body(ctx)))));
        routes.put(
                one,
                ctx -> answer(
                        ctx,
                        shelf.edit(ctx.pathParam("name"), kind.form().read().apply(body(ctx)))));
        routes.post(
                one + "/retire", ctx -> answer(ctx, shelf.retire(ctx.pathParam("name"), word(body(ctx), "reason"))));
        routes.post(one + "/restore", ctx -> answer(ctx, shelf.restore(ctx.pathParam("name"))));
    }

    private void addRules(RoutesConfig routes) {
        routes.get("/api/rules", ctx -> {
            Chemistry chemistry = Chemistry.parse(Objects.requireNonNullElse(ctx.queryParam("chemistry"), ""));
            answer(ctx, workshop.rules().inForce(chemistry, ctx.queryParam("pack")));
        });
        routes.post(
                "/api/rules",
                ctx -> answer(ctx, workshop.rules().change(ruleForm(body(ctx)).toOverride())));
        routes.post("/api/rules/reset", ctx -> {
            Map<String, String> body = body(ctx);
            body.put("value", "0");
            RuleOverride named = ruleForm(body).toOverride();
            answer(ctx, workshop.rules().reset(named.chemistry(), named.quantity(), named.packTag()));
        });
    }

    private static RuleForm ruleForm(Map<String, String> body) {
        return new RuleForm(
                word(body, "chemistry"),
                word(body, "quantity"),
                word(body, "value"),
                word(body, "packTag"),
                word(body, "reason"));
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
        answer(ctx, workshop.history().recent(offset, limit));
    }

    private void undo(Context ctx) {
        long id = ctx.pathParamAsClass("id", Long.class).get();
        try {
            answer(ctx, workshop.history().undo(id));
        } catch (InputException e) {
            // The request is well formed; it is the book's present state that stands against it.
            ctx.status(HttpStatus.CONFLICT);
            answer(ctx, new Shapes.Refusal(e.faults()));
        }
    }

    private static void answer(Context ctx, Object record) {
        ctx.header("Cache-Control", "no-store");
        ctx.contentType(ContentType.APPLICATION_JSON).result(Shapes.write(record));
    }

    private static void created(Context ctx, Object record) {
        ctx.status(HttpStatus.CREATED);
        answer(ctx, record);
    }

    private static Map<String, String> body(Context ctx) {
        String type = Objects.requireNonNullElse(ctx.contentType(), "");
        if (!type.startsWith("application/json")) {
            throw new UnsupportedMediaTypeResponse("the body is \"" + type + "\"; expected application/json.");
        }
        try {
            return BODIES.readValue(ctx.body(), WORDS);
        } catch (JsonProcessingException e) {
            throw new InputException(
                    "",
                    "the body is not a JSON object of strings at line "
                            + e.getLocation().getLineNr() + ", column "
                            + e.getLocation().getColumnNr() + ".");
        }
    }

    private static String word(Map<String, String> body, String key) {
        return Objects.requireNonNullElse(body.get(key), "");
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
