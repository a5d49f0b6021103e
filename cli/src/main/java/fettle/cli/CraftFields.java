package fettle.cli;

import static fettle.cli.KitFields.or;

import fettle.engine.pack.Craft;
import fettle.workshop.CraftForm;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that describe a craft. A mixin. */
final class CraftFields implements KitFields<Craft> {
    private static final CraftForm EMPTY = new CraftForm("", "", "", "", "", "", "", "");

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            description = "plane, glider, helicopter, multirotor, car, boat or other.")
    private @Nullable String kind;

    @Option(
            names = "--cells",
            paramLabel = "CELLS",
            description = "Cells in series it takes, e.g. 4S; leave out if several fit.")
    private @Nullable String cells;

    @Option(names = "--connector", paramLabel = "NAME", description = "Connector it takes.")
    private @Nullable String connector;

    @Option(names = "--typical-current", paramLabel = "CURRENT", description = "Typical current, e.g. 25A.")
    private @Nullable String typicalCurrent;

    @Option(names = "--peak-current", paramLabel = "CURRENT", description = "Peak current, e.g. 60A.")
    private @Nullable String peakCurrent;

    @Option(names = "--keeper", paramLabel = "WHO", description = "Who keeps it.")
    private @Nullable String keeper;

    @Option(names = "--note", paramLabel = "TEXT", description = "Anything else.")
    private @Nullable String note;

    @Override
    public Craft made(String name) {
        return over(EMPTY, name).toCraft();
    }

    @Override
    public Craft changed(Craft present, String name) {
        return over(CraftForm.of(present), name).toCraft();
    }

    private CraftForm over(CraftForm was, String name) {
        return new CraftForm(
                name,
                or(kind, was.kind()),
                or(cells, was.cells()),
                or(connector, was.connector()),
                or(typicalCurrent, was.typicalCurrent()),
                or(peakCurrent, was.peakCurrent()),
                or(keeper, was.keeper()),
                or(note, was.note()));
    }
}
