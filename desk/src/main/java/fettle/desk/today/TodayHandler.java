package fettle.desk.today;

import fettle.desk.frame.Back;
import fettle.desk.frame.Figures;
import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.engine.outing.Happened;
import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.Outing;
import fettle.workshop.OutingState;
import fettle.workshop.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;

/** Shows Today. */
public final class TodayHandler {
    private static final int MOST_CHARGES = 4;

    private final Workshop workshop;
    private final Pages pages;

    public TodayHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/", this::show);
    }

    private void show(Context ctx) {
        TodayPage page = TodayPage.of(
                workshop.review().shelf(),
                pack -> workshop.rules().inForce(pack.chemistry(), pack.tag()),
                workshop.outings().next().map(this::next).orElse(null),
                pages.figures());
        pages.show(ctx, "today/today", Place.TODAY, "Today", page);
    }

    private TodayPage.NextOuting next(OutingState state) {
        Outing outing = state.outing();
        KeptPlan plan = state.plan();
        Figures figures = pages.figures();
        String planned = plan == null
                ? "not planned yet"
                : plan.runs().size() + " of " + outing.runs().size() + " runs planned"
                        + (state.outdated().isEmpty() ? "" : ", out of date: plan again");
        List<String> charges = plan == null
                ? List.of()
                : workshop.outings().now(outing.name()).next().stream()
                        .filter(step -> step.kind() == Happened.Kind.CHARGE)
                        .limit(MOST_CHARGES)
                        .map(step -> figures.moment(step.begins()) + ": " + step.what())
                        .toList();
        return new TodayPage.NextOuting(
                outing.name(),
                "/outings/day?name=" + Back.encode(outing.name()),
                figures.due(outing.times().leaveHome()),
                planned,
                charges);
    }
}
