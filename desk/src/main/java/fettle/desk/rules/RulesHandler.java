package fettle.desk.rules;

import fettle.desk.frame.Back;
import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.engine.cell.Chemistry;
import fettle.engine.rule.RuleOverride;
import fettle.engine.units.InputException;
import fettle.workshop.RuleForm;
import fettle.workshop.Rules;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Shows the rules in force and takes changes to them. */
public final class RulesHandler {
    private final Rules rules;
    private final Pages pages;

    public RulesHandler(Rules rules, Pages pages) {
        this.rules = rules;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/kit/rules", this::show);
        routes.post("/kit/rules", this::change);
        routes.post("/kit/rules/reset", this::reset);
    }

    private void show(Context ctx) {
        Chemistry chemistry = Chemistry.parse(Objects.requireNonNullElse(ctx.queryParam("chemistry"), "LiPo"));
        String packTag = Objects.requireNonNullElse(ctx.queryParam("pack"), "");
        show(ctx, RulesPage.of(chemistry, packTag, rules.inForce(chemistry, tagOrNull(packTag))));
    }

    private void show(Context ctx, RulesPage page) {
        String title = page.packTag().isEmpty() ? "Rules for " + page.chemistry() : "Rules for " + page.packTag();
        pages.show(ctx, "rules/rules", Place.RULES, title, page);
    }

    private void change(Context ctx) {
        RuleForm form = new RuleForm(
                word(ctx, "chemistry"),
                word(ctx, "quantity"),
                word(ctx, "value"),
                word(ctx, "pack"),
                word(ctx, "reason"));
        try {
            Pages.sendOn(ctx, address(form), rules.change(form.toOverride()));
        } catch (InputException e) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            Chemistry chemistry = Chemistry.parse(form.chemistry());
            show(
                    ctx,
                    RulesPage.of(
                            chemistry,
                            form.packTag(),
                            rules.inForce(chemistry, tagOrNull(form.packTag())),
                            form,
                            e.faults()));
        }
    }

    private void reset(Context ctx) {
        RuleForm form = new RuleForm(word(ctx, "chemistry"), word(ctx, "quantity"), "0", word(ctx, "pack"), "");
        RuleOverride named = form.toOverride();
        Pages.sendOn(ctx, address(form), rules.reset(named.chemistry(), named.quantity(), named.packTag()));
    }

    private static String address(RuleForm form) {
        String address = Back.with("/kit/rules", "chemistry", form.chemistry());
        return form.packTag().isEmpty() ? address : Back.with(address, "pack", form.packTag());
    }

    private static @Nullable String tagOrNull(String packTag) {
        return packTag.isBlank() ? null : packTag;
    }

    private static String word(Context ctx, String name) {
        return Objects.requireNonNullElse(ctx.formParam(name), "");
    }
}
