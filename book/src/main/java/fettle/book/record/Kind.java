package fettle.book.record;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The kinds of item a book holds, each in a table of its own name.
 *
 * <p>Order matters: an item refers only to items of kinds named before it.
 */
public enum Kind {
    PACK("pack", "tag", List.of("pack_makers_limit"), Map.of()),
    CRAFT("craft", "name", List.of(), Map.of()),
    SOURCE("source", "name", List.of(), Map.of()),
    CHARGER("charger", "name", List.of("charger_chemistry", "charger_port"), Map.of("source_id", SOURCE)),
    CHECK("pack_check", "", List.of("pack_check_cell"), Map.of("pack_id", PACK)),
    CHARGE("pack_charge", "", List.of(), Map.of("pack_id", PACK)),
    RUN("pack_run", "", List.of(), Map.of("pack_id", PACK, "craft_id", CRAFT)),
    RULE("rule_override", "", List.of(), Map.of("pack_id", PACK)),
    TRACE(
            "pack_trace",
            "",
            List.of("pack_trace_segment", "pack_trace_event", "pack_trace_rest", "pack_trace_resistance"),
            Map.of("pack_id", PACK)),
    SERVO("servo", "name", List.of("servo_rating"), Map.of()),
    SET_UP_SHEET(
            "set_up_sheet",
            "",
            List.of("set_up_sheet_surface", "set_up_sheet_rate", "set_up_sheet_linkage"),
            Map.of("craft_id", CRAFT)),
    SURFACE_SWEEP("surface_sweep", "", List.of("surface_sweep_point"), Map.of("craft_id", CRAFT)),
    OUTING(
            "outing",
            "name",
            List.of(
                    "outing_attended",
                    "outing_feed",
                    "outing_pack",
                    "outing_wish",
                    "outing_goal",
                    "outing_choice",
                    "outing_happened"),
            Map.of(),
            List.of(
                    new PartReference("outing_feed", "charger_id", CHARGER),
                    new PartReference("outing_feed", "source_id", SOURCE),
                    new PartReference("outing_pack", "pack_id", PACK),
                    new PartReference("outing_wish", "craft_id", CRAFT))),
    OUTING_PLAN(
            "outing_plan",
            "",
            List.of(
                    "outing_plan_input",
                    "outing_plan_remark",
                    "outing_plan_charge",
                    "outing_plan_run",
                    "outing_plan_goal"),
            Map.of("outing_id", OUTING));

    private final String table;
    private final String nameColumn;
    private final List<String> childTables;
    private final Map<String, Kind> references;
    private final List<PartReference> partReferences;

    Kind(String table, String nameColumn, List<String> childTables, Map<String, Kind> references) {
        this(table, nameColumn, childTables, references, List.of());
    }

    Kind(
            String table,
            String nameColumn,
            List<String> childTables,
            Map<String, Kind> references,
            List<PartReference> partReferences) {
        this.table = table;
        this.nameColumn = nameColumn;
        this.childTables = childTables;
        this.references = references;
        this.partReferences = partReferences;
    }

    /**
     * A column by which parts refer to another item.
     *
     * @param table the parts' table
     * @param column the column
     * @param kind the kind it refers to
     */
    public record PartReference(String table, String column, Kind kind) {}

    public String table() {
        return table;
    }

    /** Column of the name people know it by; empty for entries and rules, which have none. */
    public String nameColumn() {
        return nameColumn;
    }

    /** Tables of its parts, each row with {@code <table>_id} and {@code position}. */
    public List<String> childTables() {
        return childTables;
    }

    /** Columns that refer to other items, and to which kind. */
    public Map<String, Kind> references() {
        return references;
    }

    /** Columns by which its parts refer to other items. */
    public List<PartReference> partReferences() {
        return partReferences;
    }

    /** Column by which its parts refer to it. */
    public String ownerColumn() {
        return table + "_id";
    }

    /** The kind kept in a table; empty where none is. */
    public static Optional<Kind> ofTable(String table) {
        return Arrays.stream(values()).filter(kind -> kind.table.equals(table)).findFirst();
    }
}
