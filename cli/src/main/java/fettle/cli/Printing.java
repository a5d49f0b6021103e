package fettle.cli;

import fettle.desk.json.Shapes;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints an answer as text or, if asked for, as JSON. A mixin for words that need no book. */
final class Printing {
    /** Asks for JSON. */
    static final String JSON = "--json";

    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec spec;

    @Mixin
    private final HelpOption help = new HelpOption();

    @Option(names = JSON, description = "Print JSON instead of text.")
    private boolean json;

    /** Prints data: the shape as JSON if asked for, else the text. */
    void print(Object shape, String text) {
        var out = Objects.requireNonNull(spec, "the mixin is not in a command")
                .commandLine()
                .getOut();
        out.println(json ? Shapes.write(shape) : text);
        out.flush();
    }
}
