package fettle.desk.fit;

import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.desk.kit.Field;
import fettle.desk.kit.FormPage;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.workshop.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Shows the packs for a craft, ranked. */
public final class FitHandler {
    private static final List<Field> FIELDS = List.of(
            field("lightest", "Lightest pack", "In g, so that it balances; may be left out."),
            field("heaviest", "Heaviest pack", "In g; may be left out."),
            field("capacity", "Least capacity", "In mAh; may be left out."));

    private final Workshop workshop;
    private final Pages pages;

    public FitHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/kit/fit", this::show);
    }

    private void show(Context ctx) {
        String craft = workshop.craft()
                .find(Objects.requireNonNullElse(ctx.queryParam("name"), ""))
                .name();
        Map<String, String> typed = new LinkedHashMap<>();
        FIELDS.forEach(field -> typed.put(field.key(), Objects.requireNonNullElse(ctx.queryParam(field.key()), "")));
        pages.show(ctx, "fit/fit", Place.KIT, "Packs for " + craft, page(ctx, craft, typed));
    }

    private FitPage page(Context ctx, String craft, Map<String, String> typed) {
        try {
            return FitPage.of(craft, workshop.fits().of(craft, typed), lines(typed, List.of()));
        } catch (InputException refused) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            return FitPage.refused(craft, lines(typed, refused.faults()), FormPage.atNoField(FIELDS, refused.faults()));
        }
    }

    private static List<FormPage.Line> lines(Map<String, String> typed, List<Fault> faults) {
        return FormPage.lines(FIELDS, typed, faults, key -> List.of());
    }

    private static Field field(String key, String label, String hint) {
        return new Field(key, label, hint, Field.Kind.LINE, List.of(), Field.Need.DEPENDS, "");
    }
}
