package fettle.desk.api;

import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.PlanSpeed;
import fettle.workshop.Planning;
import fettle.workshop.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Objects;

/** Outings as JSON: their plans, what is settled, what happened. */
final class OutingsApi {
    private static final String ONE = "/api/outings/{name}";

    private final Workshop workshop;

    OutingsApi(Workshop workshop) {
        this.workshop = workshop;
    }

    void addTo(RoutesConfig routes) {
        routes.get(ONE, ctx -> Json.answer(ctx, workshop.outings().find(name(ctx))));
        routes.get(ONE + "/now", ctx -> Json.answer(ctx, workshop.outings().now(name(ctx))));
        routes.get(ONE + "/papers", ctx -> Json.answer(ctx, workshop.outings().papers(name(ctx))));
        routes.get(
                ONE + "/why",
                ctx -> Json.answer(
                        ctx,
                        workshop.outings().why(name(ctx), Objects.requireNonNullElse(ctx.queryParam("what"), ""))));
        routes.post(
                ONE + "/plan", ctx -> Json.created(ctx, workshop.outings().plan(name(ctx), speed(ctx), best -> true)));
        routes.post(
                ONE + "/planning",
                ctx -> Json.created(
                        ctx, workshop.outings().start(name(ctx), speed(ctx)).progress()));
        routes.get(ONE + "/planning", ctx -> Json.answer(ctx, planning(ctx).progress()));
        routes.post(ONE + "/planning/cancel", ctx -> {
            planning(ctx).cancel();
            Json.answer(ctx, planning(ctx).progress());
        });
        routes.post(ONE + "/settle", ctx -> Json.created(ctx, workshop.outings().settle(name(ctx), what(ctx))));
        routes.post(
                ONE + "/release", ctx -> Json.created(ctx, workshop.outings().unsettle(name(ctx), what(ctx))));
        routes.post(ONE + "/start", ctx -> Json.created(ctx, workshop.outings().began(name(ctx), what(ctx))));
        routes.post(ONE + "/finish", ctx -> Json.created(ctx, workshop.outings().ended(name(ctx), what(ctx))));
        routes.post(ONE + "/put-back", ctx -> {
            Map<String, String> body = Json.body(ctx);
            double coulombs = QuantityText.si(
                    "charge", "charge put back", Json.word(body, "charge"), Measure.CHARGE, TradeUnit.MILLIAMPERE_HOUR);
            Json.created(ctx, workshop.outings().putBack(name(ctx), Json.word(body, "what"), coulombs));
        });
    }

    private Planning planning(Context ctx) {
        return workshop.outings()
                .planning(name(ctx))
                .orElseThrow(() -> new InputException("name", "nothing is being planned of " + name(ctx) + "."));
    }

    private static PlanSpeed speed(Context ctx) {
        return PlanSpeed.parse(ctx.body().isBlank() ? "" : Json.word(Json.body(ctx), "seconds"));
    }

    private static String what(Context ctx) {
        return Json.word(Json.body(ctx), "what");
    }

    private static String name(Context ctx) {
        return ctx.pathParam("name");
    }
}
