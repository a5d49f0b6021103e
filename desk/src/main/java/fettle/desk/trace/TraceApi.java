package fettle.desk.trace;

import fettle.desk.json.Shapes;
import fettle.engine.units.InputException;
import fettle.workshop.TraceChoices;
import fettle.workshop.TraceProgress;
import fettle.workshop.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.ContentType;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Traces under {@code /api}: the log itself is the body of the request, byte for byte, and what is said about it stands in
 * the query.
 */
public final class TraceApi {
    private final Workshop workshop;
    private final Function<Context, String> finding;
    private final PendingLogs pending = new PendingLogs();

    /** @param finding reads what was found from a body of JSON */
    public TraceApi(Workshop workshop, Function<Context, String> finding) {
        this.workshop = workshop;
        this.finding = finding;
    }

    public void addTo(RoutesConfig routes) {
        routes.get(
                "/api/traces",
                ctx -> answer(
                        ctx,
                        ctx.queryParam("pack") == null
                                ? workshop.traces().list()
                                : workshop.traces().ofPack(word(ctx, "pack"))));
        routes.post("/api/traces", this::add);
        routes.post("/api/traces/preview", this::preview);
        routes.get("/api/traces/{id}", ctx -> answer(ctx, workshop.traces().find(id(ctx))));
        routes.post(
                "/api/traces/{id}/acknowledge",
                ctx -> answer(ctx, workshop.traces().acknowledge(id(ctx), finding.apply(ctx))));
    }

    private void add(Context ctx) throws IOException {
        String pack = word(ctx, "pack");
        workshop.packs().find(pack);
        Object added = received(ctx, (file, said) -> workshop.traces().add(pack, file, said, TraceProgress.NONE));
        ctx.status(HttpStatus.CREATED);
        answer(ctx, added);
    }

    private void preview(Context ctx) throws IOException {
        answer(ctx, received(ctx, (file, said) -> workshop.traces().preview(file, said)));
    }

    private Object received(Context ctx, BiFunction<Path, TraceChoices, Object> use) throws IOException {
        String name = word(ctx, "name");
        if (name.isBlank()) {
            throw new InputException("name", "the log has no name. Say it in the address, e.g. ?name=flight.csv.");
        }
        TraceChoices said = new TraceChoices(
                word(ctx, "columns"), word(ctx, "positive"), word(ctx, "zone"), word(ctx, "note"), word(ctx, "packs"));
        String token;
        try (InputStream body = ctx.bodyInputStream()) {
            token = pending.take(name, body);
        }
        try {
            return use.apply(pending.find(token), said);
        } finally {
            pending.drop(token);
        }
    }

    private static void answer(Context ctx, Object record) {
        ctx.header("Cache-Control", "no-store");
        ctx.contentType(ContentType.APPLICATION_JSON).result(Shapes.write(record));
    }

    private static long id(Context ctx) {
        return ctx.pathParamAsClass("id", Long.class).get();
    }

    private static String word(Context ctx, String key) {
        return Objects.requireNonNullElse(ctx.queryParam(key), "");
    }
}
