package fettle.cli;

import fettle.desk.json.Shapes;
import fettle.engine.units.Printable;
import fettle.workshop.Workshop;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What every word shares: which book, how to print, and when. A mixin. */
final class Session {
    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec spec;

    @Option(
            names = "--book",
            paramLabel = "DIR",
            description = "The book's folder. Default: FETTLE_BOOK, else ~/.local/share/fettle.")
    private @Nullable Path book;

    @Mixin
    private final HelpOption help = new HelpOption();

    @Option(names = Printing.JSON, description = "Print JSON instead of text.")
    private boolean json;

    private @Nullable Workshop opened;

    boolean json() {
        return json;
    }

    Path bookFolder() {
        Path named = namedFolder();
        return named == null ? surroundings().bookFolder() : named;
    }

    /** The folder the user named on the command line, if any. */
    @Nullable
    Path namedFolder() {
        if (book != null && book.toString().isBlank()) {
            // else the book would be made wherever the command happens to be typed
            throw new RefusedException("--book names no folder. Name one, or leave it out for the usual one.");
        }
        return book;
    }

    /** Opens the book; the caller closes it. */
    Workshop open() {
        return open(bookFolder());
    }

    /** Opens the book in a folder; the caller closes it. */
    Workshop open(Path folder) {
        Workshop workshop =
                Workshop.open(folder, surroundings().clock(), surroundings().actor());
        opened = workshop;
        return workshop;
    }

    Surroundings surroundings() {
        return ((Fettle) spec().root().userObject()).surroundings();
    }

    ZoneId zone() {
        return surroundings().clock().getZone();
    }

    /** Prints data: the shape as JSON if asked for, else the text. */
    void print(Object shape, String text) {
        if (json) {
            line(Shapes.write(shape));
        } else {
            line(Printable.of(text));
        }
        if (opened != null) {
            opened.keeping().damage().ifPresent(damage -> progress("fettle: " + damage));
        }
    }

    /** Prints one line of data. */
    void line(String text) {
        spec().commandLine().getOut().println(text);
        spec().commandLine().getOut().flush();
    }

    /** Tells what is going on, apart from the data. */
    void progress(String text) {
        spec().commandLine().getErr().println(text);
        spec().commandLine().getErr().flush();
    }

    private CommandSpec spec() {
        return Objects.requireNonNull(spec, "the mixin is not in a command");
    }
}
