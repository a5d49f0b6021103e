package fettle.desk.outing;

import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.desk.outing.OutingPages.Said;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.JournalEntry;
import fettle.workshop.OutingPapers;
import fettle.workshop.OutingState;
import fettle.workshop.PlanSpeed;
import fettle.workshop.Planning;
import fettle.workshop.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Shows outings, plans them in the background, and takes what is settled and what happened. */
public final class OutingsHandler {
    private final Workshop workshop;
    private final Pages pages;

    public OutingsHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/outings", ctx -> pages.show(ctx, "outing/outings", Place.OUTINGS, "Outings", made().list()));
        routes.get("/outings/day", this::day);
        routes.get("/outings/papers", this::papers);
        routes.post("/outings/plan", this::plan);
        routes.get("/outings/planning", this::planning);
        routes.post("/outings/planning/cancel", this::cancel);
        routes.post(
                "/outings/settle", ctx -> settle(ctx, name -> workshop.outings().settle(name, field(ctx, "what"))));
        routes.post(
                "/outings/release",
                ctx -> settle(ctx, name -> workshop.outings().unsettle(name, field(ctx, "what"))));
        routes.get("/outings/now", ctx -> now(ctx, List.of()));
        routes.post(
                "/outings/start", ctx -> tapped(ctx, () -> workshop.outings().began(name(ctx), field(ctx, "what"))));
        routes.post(
                "/outings/finish", ctx -> tapped(ctx, () -> workshop.outings().ended(name(ctx), field(ctx, "what"))));
        routes.post(
                "/outings/put-back",
                ctx -> tapped(ctx, () -> workshop.outings().putBack(name(ctx), field(ctx, "what"), coulombs(ctx))));
    }

    private OutingPages made() {
        return new OutingPages(workshop, pages.figures());
    }

    private void day(Context ctx) {
        String asked = Objects.requireNonNullElse(ctx.queryParam("why"), "").strip();
        if (asked.isEmpty()) {
            show(ctx, Said.NOTHING);
            return;
        }
        try {
            show(ctx, new Said(asked, workshop.outings().why(name(ctx), asked), "", List.of()));
        } catch (InputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, new Said(asked, sentences(refused), "", List.of()));
        }
    }

    private void papers(Context ctx) {
        OutingPapers papers = workshop.outings().papers(name(ctx));
        pages.show(ctx, "outing/papers", Place.OUTINGS, "To take along: " + papers.outing(), PapersPage.of(papers));
    }

    private void show(Context ctx, Said said) {
        OutingState state = workshop.outings().find(name(ctx));
        pages.show(
                ctx,
                "outing/outing",
                Place.OUTINGS,
                state.outing().name(),
                made().day(state, workshop.outings().planning(state.outing().name()), said));
    }

    private void plan(Context ctx) {
        OutingState state = workshop.outings().find(name(ctx));
        workshop.outings().start(state.outing().name(), PlanSpeed.parse(field(ctx, "seconds")));
        ctx.redirect(OutingPages.href(state.outing().name()), HttpStatus.SEE_OTHER);
    }

    /** The progress of a search; sends the page on to the plan once it is done. */
    private void planning(Context ctx) {
        Planning planning = workshop.outings()
                .planning(name(ctx))
                .orElseThrow(() -> new InputException("name", "nothing is being planned of " + name(ctx) + "."));
        OutingPage.SearchPart part = made().search(planning);
        if (!part.running() && part.trouble().isEmpty()) {
            ctx.header("HX-Redirect", OutingPages.href(planning.progress().outing()));
        }
        pages.part(ctx, "outing/search", part);
    }

    private void cancel(Context ctx) {
        workshop.outings().planning(name(ctx)).ifPresent(Planning::cancel);
        ctx.redirect(OutingPages.href(name(ctx)), HttpStatus.SEE_OTHER);
    }

    /** A change of an outing by its name. */
    private interface Change {
        JournalEntry make(String name);
    }

    private void settle(Context ctx, Change change) {
        try {
            Pages.sendOn(ctx, OutingPages.href(name(ctx)), change.make(name(ctx)));
        } catch (InputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, new Said("", List.of(), field(ctx, "what"), sentences(refused)));
        }
    }

    private void now(Context ctx, List<String> faults) {
        OutingState state = workshop.outings().find(name(ctx));
        String name = state.outing().name();
        pages.show(
                ctx,
                "outing/now",
                Place.OUTINGS,
                "Now: " + name,
                made().now(state, workshop.outings().now(name), faults));
    }

    private void tapped(Context ctx, Supplier<JournalEntry> change) {
        try {
            JournalEntry done = change.get();
            Pages.sendOn(ctx, "/outings/now?name=" + fettle.desk.frame.Back.encode(name(ctx)), done);
        } catch (InputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            now(ctx, sentences(refused));
        }
    }

    private static double coulombs(Context ctx) {
        return QuantityText.si(
                "charge", "charge put back", field(ctx, "charge"), Measure.CHARGE, TradeUnit.MILLIAMPERE_HOUR);
    }

    private static List<String> sentences(InputException refused) {
        return refused.faults().stream().map(Fault::sentence).toList();
    }

    /** The outing named in the form, or in the address. */
    private static String name(Context ctx) {
        @Nullable String typed = ctx.formParam("name");
        return typed == null ? Objects.requireNonNullElse(ctx.queryParam("name"), "") : typed;
    }

    private static String field(Context ctx, String key) {
        return Objects.requireNonNullElse(ctx.formParam(key), "");
    }
}
