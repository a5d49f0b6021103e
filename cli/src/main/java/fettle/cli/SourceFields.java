package fettle.cli;

import static fettle.cli.KitFields.or;

import fettle.engine.supply.Source;
import fettle.workshop.SourceForm;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that describe a source. A mixin. */
final class SourceFields implements KitFields<Source> {
    private static final SourceForm EMPTY = new SourceForm("", "", "", "", "");

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            description = "mains supply, vehicle battery, field battery or generator.")
    private @Nullable String kind;

    @Option(names = "--power", paramLabel = "POWER", description = "Power it gives continuously, e.g. 600W.")
    private @Nullable String power;

    @Option(
            names = "--energy",
            paramLabel = "ENERGY",
            description = "Energy it holds, e.g. 960Wh; leave out where it does not run out.")
    private @Nullable String energy;

    @Option(names = "--note", paramLabel = "TEXT", description = "Anything else.")
    private @Nullable String note;

    @Override
    public Source made(String name) {
        return over(EMPTY, name).toSource();
    }

    @Override
    public Source changed(Source present, String name) {
        return over(SourceForm.of(present), name).toSource();
    }

    private SourceForm over(SourceForm was, String name) {
        return new SourceForm(
                name, or(kind, was.kind()), or(power, was.power()), or(energy, was.energy()), or(note, was.note()));
    }
}
