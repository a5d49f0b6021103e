package fettle.desk.frame;

import fettle.workshop.JournalEntry;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What surrounds a page.
 *
 * @param place the menu entry it belongs to
 * @param title its heading
 * @param notice a line about the whole book; {@code null} for none
 * @param back the page's own address, to come back to after a change
 * @param done the change just made; {@code null} for none
 * @param typed an entry line that could not be saved, kept; {@code null} for none
 * @param drawn when the page was made
 * @param theme the colours the reader chose
 */
public record Frame(
        Place place,
        String title,
        @Nullable String notice,
        String back,
        @Nullable JournalEntry done,
        @Nullable LineReading typed,
        String drawn,
        Theme theme) {
    public List<Place> menu() {
        return List.of(Place.values());
    }

    public List<Theme> themes() {
        return List.of(Theme.values());
    }

    public String lineTyped() {
        return typed == null ? "" : typed.line();
    }
}
