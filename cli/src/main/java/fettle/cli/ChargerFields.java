package fettle.cli;

import static fettle.cli.KitFields.or;

import fettle.engine.supply.Charger;
import fettle.workshop.ChargerForm;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that describe a charger. A mixin. */
final class ChargerFields implements KitFields<Charger> {
    private static final ChargerForm EMPTY = new ChargerForm("", "", "", "", "", "");

    @Option(
            names = "--total-power",
            paramLabel = "POWER",
            description = "Power all ports share, e.g. 400W; leave out if each has its own.")
    private @Nullable String totalPower;

    @Option(
            names = "--chemistries",
            paramLabel = "LIST",
            description = "What it can charge, with commas: LiPo,LiHV,NiMH.")
    private @Nullable String chemistries;

    @Option(names = "--source", paramLabel = "NAME", description = "Name of the source that feeds it.")
    private @Nullable String source;

    @Option(
            names = "--ports",
            paramLabel = "PORTS",
            description = "Its ports, with semicolons: \"20A 400W 6S bleed 0.5A discharge 25W; 10A 200W 6S\".")
    private @Nullable String ports;

    @Option(names = "--note", paramLabel = "TEXT", description = "Anything else.")
    private @Nullable String note;

    @Override
    public Charger made(String name) {
        return over(EMPTY, name).toCharger();
    }

    @Override
    public Charger changed(Charger present, String name) {
        return over(ChargerForm.of(present), name).toCharger();
    }

    private ChargerForm over(ChargerForm was, String name) {
        return new ChargerForm(
                name,
                or(totalPower, was.totalPower()),
                or(chemistries, was.chemistries()),
                or(source, was.source()),
                or(ports, was.ports()),
                or(note, was.note()));
    }
}
