package fettle.desk.kit;

import fettle.desk.frame.Back;
import fettle.workshop.Registered;
import fettle.workshop.Workshop;
import java.util.List;

/** Everything registered, kind by kind, with what is retired apart. */
public record KitPage(List<Section> sections) {

    /** One kind of kit. */
    public record Section(
            String key,
            String heading,
            String singular,
            String purpose,
            List<Column> columns,
            List<Row> inUse,
            List<Row> retired) {}

    /** One item: its name and where it leads, and one figure per column. */
    public record Row(String name, String href, List<String> figures) {}

    static KitPage of(Workshop workshop) {
        return new KitPage(ItemKinds.all().stream()
                .<Section>map(kind -> section(kind, workshop))
                .toList());
    }

    private static <T> Section section(ItemKind<T> kind, Workshop workshop) {
        List<Registered<T>> items = kind.shelf().apply(workshop).list();
        return new Section(
                kind.key(),
                kind.heading(),
                kind.singular(),
                kind.purpose(),
                kind.columns(),
                rows(kind, items, false),
                rows(kind, items, true));
    }

    private static <T> List<Row> rows(ItemKind<T> kind, List<Registered<T>> items, boolean retired) {
        return items.stream()
                .filter(item -> item.retired() == retired)
                .map(item -> new Row(
                        item.name(), href(kind, item.name()), kind.summary().apply(item.item())))
                .toList();
    }

    private static String href(ItemKind<?> kind, String name) {
        return kind.key().equals("packs")
                ? "/kit/packs/" + name
                : "/kit/edit/" + kind.key() + "?name=" + Back.encode(name);
    }
}
