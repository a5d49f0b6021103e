package fettle.desk.kit;

import fettle.desk.frame.Back;
import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.workshop.JournalEntry;
import fettle.workshop.Registered;
import fettle.workshop.Shelf;
import fettle.workshop.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Shows the kit and takes its forms. A form that is refused is shown again as typed, each fault at its field. */
public final class KitHandler {
    private final Workshop workshop;
    private final Pages pages;

    public KitHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/kit", ctx -> pages.show(ctx, "kit/kit", Place.KIT, "Kit", KitPage.of(workshop)));
        ItemKinds.all().forEach(kind -> addTo(routes, kind));
        addTo(routes, ItemKinds.outings());
    }

    private <T> void addTo(RoutesConfig routes, ItemKind<T> kind) {
        Shelf<T> shelf = kind.shelf().apply(workshop);
        routes.get("/kit/add/" + kind.key(), ctx -> show(ctx, kind, null, atFirst(), List.of()));
        routes.post("/kit/add/" + kind.key(), ctx -> take(ctx, kind, null));
        routes.get("/kit/edit/" + kind.key(), ctx -> {
            Registered<T> found = shelf.find(name(ctx.queryParam("name")));
            show(ctx, kind, found, kind.form().write().apply(found.item()), List.of());
        });
        routes.post("/kit/edit/" + kind.key(), ctx -> take(ctx, kind, shelf.find(name(ctx.queryParam("name")))));
        routes.post("/kit/retire/" + kind.key(), ctx -> {
            String reason = Objects.requireNonNullElse(ctx.formParam("reason"), "");
            Pages.sendOn(ctx, kind.place().path(), shelf.retire(name(ctx.formParam("name")), reason));
        });
        routes.post("/kit/restore/" + kind.key(), ctx -> {
            Pages.sendOn(ctx, kind.place().path(), shelf.restore(name(ctx.formParam("name"))));
        });
    }

    private <T> void take(Context ctx, ItemKind<T> kind, @Nullable Registered<T> edited) {
        Map<String, String> words = new HashMap<>();
        for (Field field : kind.form().fields()) {
            words.put(field.key(), String.join(", ", ctx.formParams(field.key())));
        }
        try {
            T item = kind.form().read().apply(words);
            Shelf<T> shelf = kind.shelf().apply(workshop);
            JournalEntry done = edited == null ? shelf.add(item) : shelf.edit(edited.name(), item);
            Pages.sendOn(ctx, kind.place().path(), done);
        } catch (InputException e) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, kind, edited, words, e.faults());
        }
    }

    private <T> void show(
            Context ctx,
            ItemKind<T> kind,
            @Nullable Registered<T> edited,
            Map<String, String> words,
            List<Fault> faults) {
        List<Field> fields = kind.form().fields();
        String name = edited == null ? null : edited.name();
        FormPage page = new FormPage(
                name == null ? "/kit/add/" + kind.key() : "/kit/edit/" + kind.key() + "?name=" + Back.encode(name),
                name == null ? "Add the " + kind.singular() : "Save the " + kind.singular(),
                FormPage.lines(fields, words, faults, new KnownWords(workshop)::of),
                FormPage.atNoField(fields, faults),
                kind.key(),
                name,
                edited != null && edited.retired(),
                kind.place().path());
        String title = name == null ? "Add " + article(kind.singular()) + kind.singular() : "Edit " + name;
        pages.show(ctx, "kit/form", kind.place(), title, page);
    }

    /** What a new item's form holds before anything is typed; fields it does not have are passed over. */
    private Map<String, String> atFirst() {
        return Map.of("zone", pages.figures().zone().getId());
    }

    private static String article(String noun) {
        return "aeiou".indexOf(noun.charAt(0)) < 0 ? "a " : "an ";
    }

    private static String name(@Nullable String name) {
        return Objects.requireNonNullElse(name, "");
    }
}
