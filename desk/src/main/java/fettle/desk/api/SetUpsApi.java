package fettle.desk.api;

import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.workshop.SetUps;
import fettle.workshop.Workshop;
import fettle.workshop.sweep.SweepAnswer;
import fettle.workshop.sweep.SweepChoices;
import fettle.workshop.sweep.SweepReading;
import fettle.workshop.sweep.TypedSweep;
import fettle.workshop.worksheet.CraftPower;
import fettle.workshop.worksheet.SurfaceStudy;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Set-up sheets and sweeps as JSON. */
final class SetUpsApi {
    private static final String ONE = "/api/setups/{name}";

    private final Workshop workshop;

    SetUpsApi(Workshop workshop) {
        this.workshop = workshop;
    }

    void addTo(RoutesConfig routes) {
        routes.get(ONE, ctx -> Json.answer(ctx, setUps().of(ctx.pathParam("name"))));
        routes.post(ONE, this::addSheet);
        routes.get(
                ONE + "/sweeps",
                ctx -> Json.answer(
                        ctx,
                        setUps().sweeps(
                                        ctx.pathParam("name"),
                                        Objects.requireNonNullElse(ctx.queryParam("surface"), ""))));
        routes.post(ONE + "/sweeps", this::addSweep);
        routes.post(ONE + "/surface", ctx -> {
            Map<String, String> body = Json.body(ctx);
            Json.answer(
                    ctx,
                    SurfaceStudy.of(workshop, ctx.pathParam("name"), Json.word(body, "surface"))
                            .answer(body));
        });
        routes.post(
                ONE + "/power",
                ctx -> Json.answer(
                        ctx, CraftPower.of(workshop, ctx.pathParam("name")).answer(Json.body(ctx))));
        routes.post("/api/sweeps", ctx -> Json.answer(ctx, SweepAnswer.of(reading(Json.body(ctx)))));
    }

    private SetUps setUps() {
        return workshop.setUps();
    }

    private void addSheet(Context ctx) {
        Map<String, String> body = Json.body(ctx);
        Json.created(
                ctx,
                setUps().add(
                                ctx.pathParam("name"),
                                Json.word(body, "surfaces"),
                                SetUps.day(Json.word(body, "date")),
                                Json.word(body, "note")));
    }

    private void addSweep(Context ctx) {
        Map<String, String> body = Json.body(ctx);
        SweepReading reading = reading(body);
        Json.created(
                ctx, setUps().keep(ctx.pathParam("name"), Json.word(body, "surface"), reading.file(), reading.sweep()));
    }

    private static SweepReading reading(Map<String, String> body) {
        return TypedSweep.read(
                Json.word(body, "points"),
                new SweepChoices("", "", "", "", Json.word(body, "unit"), amps(body, "idle"), amps(body, "stall")));
    }

    private static @Nullable Double amps(Map<String, String> body, String field) {
        return QuantityText.siOrNull(field, "current (" + field + ")", Json.word(body, field), Measure.CURRENT, null);
    }
}
