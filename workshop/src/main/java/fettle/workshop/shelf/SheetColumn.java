package fettle.workshop.shelf;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a column of a pasted table holds, told by its heading. */
enum SheetColumn {
    TAG("tag|pack|pack tag|label"),
    CELL("(cell|c|volts|v)? ?#?\\d{1,2}( ?\\(?v(olts)?\\)?)?|cells?|readings?|volts"),
    PACK_VOLTS("(total|pack) ?(volts|voltage|v)( ?\\(v\\))?"),
    RESISTANCE("(ir|resistance|r) ?\\d{0,2}( ?\\(?m(Ω|ω|ohms?)\\)?)?"),
    CELSIUS("temp(erature)?( ?\\(?(°? ?c|celsius)\\)?)?"),
    FAHRENHEIT("temp(erature)? ?\\(?(°? ?f|fahrenheit)\\)?"),
    REST_HOURS("rest(ed)? ?\\(?(h|hours?)\\)?"),
    REST_MINUTES("rest(ed)? ?\\(?(min|minutes)\\)?"),
    REST("rest(ed)?"),
    WHEN("when|at|date|time|date and time|day"),
    SEEN("seen|signs?"),
    NOTE("notes?|remarks?|comments?");

    private static final Pattern BARE_NUMBER = Pattern.compile("[-+]?\\d+([.,]\\d+)?");

    private final Pattern heading;

    SheetColumn(String heading) {
        this.heading = Pattern.compile(heading);
    }

    /** The column of a heading; empty if it says nothing known. */
    static Optional<SheetColumn> of(String heading) {
        String said = heading.strip().toLowerCase(Locale.ROOT);
        return List.of(values()).stream()
                .filter(column -> column.heading.matcher(said).matches())
                .findFirst();
    }

    /** A cell of this column, as a word of an entry line; a bare number gets the unit of its heading. */
    String word(String cell) {
        boolean bare = BARE_NUMBER.matcher(cell).matches();
        return switch (this) {
            case TAG, CELL, RESISTANCE, WHEN, SEEN -> cell;
            case PACK_VOLTS -> "pack " + cell;
            case CELSIUS -> bare ? cell + "C" : cell;
            case FAHRENHEIT -> bare ? cell + "F" : cell;
            case REST_HOURS -> "rest " + cell + (bare ? "h" : "");
            case REST_MINUTES -> "rest " + cell + (bare ? "min" : "");
            case REST -> "rest " + cell;
            case NOTE -> "note \"" + cell.replace('"', '\'') + "\"";
        };
    }
}
