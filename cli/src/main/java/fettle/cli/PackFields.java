package fettle.cli;

import static fettle.cli.KitFields.or;

import fettle.engine.pack.Pack;
import fettle.workshop.PackForm;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that describe a pack. A mixin. */
final class PackFields implements KitFields<Pack> {
    private static final PackForm EMPTY = new PackForm("", "", "", "", "", "", "", "", "", "", "", "", "");

    @Option(
            names = "--chemistry",
            paramLabel = "CHEMISTRY",
            description = "LiPo, LiHV, LiFePO4, Li-ion, NiMH or lead-acid, off the label.")
    private @Nullable String chemistry;

    @Option(names = "--cells", paramLabel = "CELLS", description = "Cells in series and parallel: 4S, 6S2P.")
    private @Nullable String cells;

    @Option(names = "--capacity", paramLabel = "CAPACITY", description = "Capacity off the label: 5000, 5000mAh, 5Ah.")
    private @Nullable String capacity;

    @Option(
            names = "--charge-rating",
            paramLabel = "CURRENT",
            description = "Largest charge current off the label: 5C or 10A.")
    private @Nullable String chargeRating;

    @Option(
            names = "--discharge-rating",
            paramLabel = "CURRENT",
            description = "Largest continuous current off the label: 30C or 150A.")
    private @Nullable String dischargeRating;

    @Option(names = "--mass", paramLabel = "MASS", description = "With its leads: 540g or 19oz.")
    private @Nullable String mass;

    @Option(names = "--connector", paramLabel = "NAME", description = "Main connector, as you call it.")
    private @Nullable String connector;

    @Option(names = "--bought", paramLabel = "DAY", description = "Day it was bought: 2026-03-14.")
    private @Nullable String bought;

    @Option(names = "--keeper", paramLabel = "WHO", description = "Who keeps it.")
    private @Nullable String keeper;

    @Option(
            names = "--identity",
            paramLabel = "WORD",
            description = "confirmed once a person has read the label and counted the leads, else unconfirmed.")
    private @Nullable String identity;

    @Option(
            names = "--limits",
            paramLabel = "LIMITS",
            description = "Limits its maker states, with semicolons: \"charge-limit 4.15 V; storage-time 48 h\".")
    private @Nullable String limits;

    @Option(names = "--note", paramLabel = "TEXT", description = "Anything else.")
    private @Nullable String note;

    @Override
    public Pack made(String name) {
        return over(EMPTY, name).toPack();
    }

    @Override
    public Pack changed(Pack present, String name) {
        return over(PackForm.of(present), name).toPack();
    }

    private PackForm over(PackForm was, String tag) {
        return new PackForm(
                tag,
                or(chemistry, was.chemistry()),
                or(cells, was.cells()),
                or(capacity, was.capacity()),
                or(chargeRating, was.chargeRating()),
                or(dischargeRating, was.dischargeRating()),
                or(mass, was.mass()),
                or(connector, was.connector()),
                or(bought, was.bought()),
                or(keeper, was.keeper()),
                or(identity, was.identity()),
                or(limits, was.limits()),
                or(note, was.note()));
    }
}
