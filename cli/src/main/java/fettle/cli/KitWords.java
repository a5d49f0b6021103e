package fettle.cli;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Source;
import fettle.engine.units.TradeUnit;
import fettle.workshop.ChargerForm;
import fettle.workshop.CraftForm;
import fettle.workshop.PackForm;
import fettle.workshop.SourceForm;
import fettle.workshop.Workshop;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine;

/** The words {@code pack}, {@code craft}, {@code charger} and {@code source}, built alike. */
final class KitWords {
    private static final KitKind<Pack> PACK = new KitKind<>("pack", Workshop::packs, PackWords::label, PackForm::of);
    private static final KitKind<Craft> CRAFT =
            new KitKind<>("craft", Workshop::craft, KitWords::craftLabel, CraftForm::of);
    private static final KitKind<Charger> CHARGER =
            new KitKind<>("charger", Workshop::chargers, KitWords::chargerLabel, ChargerForm::of);
    private static final KitKind<Source> SOURCE =
            new KitKind<>("source", Workshop::sources, KitWords::sourceLabel, SourceForm::of);

    private KitWords() {}

    /** Adds the four words to the command line. */
    static void addTo(CommandLine root) {
        root.addSubcommand("pack", word(PACK, new PackShowWord(), PackFields::new));
        root.addSubcommand("craft", word(CRAFT, new KitShowWord<>(CRAFT), CraftFields::new));
        root.addSubcommand("charger", word(CHARGER, new KitShowWord<>(CHARGER), ChargerFields::new));
        root.addSubcommand("source", word(SOURCE, new KitShowWord<>(SOURCE), SourceFields::new));
    }

    private static <T> CommandLine word(KitKind<T> kind, Runnable show, Supplier<KitFields<T>> fields) {
        CommandLine group = described(new CommandLine(new WordGroup()), "Registers and lists: " + kind.word() + ".");
        KitFields<T> added = fields.get();
        KitFields<T> edited = fields.get();
        String one = "one " + kind.word();
        return group.addSubcommand("list", described(new CommandLine(new KitListWord<>(kind)), "Lists what is in use."))
                .addSubcommand("show", described(new CommandLine(show), "Shows " + one + " in full."))
                .addSubcommand(
                        "add", described(withFields(new KitAddWord<>(kind, added), added), "Registers " + one + "."))
                .addSubcommand(
                        "edit",
                        described(
                                withFields(new KitEditWord<>(kind, edited), edited),
                                "Changes " + one + "; what is not given stays as it was."))
                .addSubcommand(
                        "retire",
                        described(new CommandLine(new KitRetireWord<>(kind)), "Takes " + one + " out of use."))
                .addSubcommand(
                        "restore",
                        described(new CommandLine(new KitRestoreWord<>(kind)), "Takes " + one + " into use again."));
    }

    private static CommandLine withFields(Object word, Object fields) {
        CommandLine command = new CommandLine(word);
        command.addMixin("fields", fields);
        return command;
    }

    private static CommandLine described(CommandLine command, String description) {
        command.getCommandSpec().usageMessage().description(description);
        return command;
    }

    private static String craftLabel(Craft craft) {
        String cells = craft.cellsInSeries() == null ? "" : " " + craft.cellsInSeries() + "S";
        String keeper = craft.keeper().isEmpty() ? "" : ", " + craft.keeper();
        return craft.kind().label() + cells + keeper;
    }

    private static String chargerLabel(Charger charger) {
        String ports = charger.ports().stream()
                .map(port -> TradeUnit.AMPERE.print(port.maxAmps(), 0) + " " + TradeUnit.WATT.print(port.maxWatts(), 0)
                        + " " + port.maxCells() + "S")
                .collect(Collectors.joining("; "));
        return ports + " ("
                + charger.chemistries().stream().sorted().map(Chemistry::label).collect(Collectors.joining(", ")) + ")";
    }

    private static String sourceLabel(Source source) {
        String energy = source.energyJoules() == null ? "" : ", " + TradeUnit.WATT_HOUR.print(source.energyJoules(), 0);
        return source.kind().label() + " " + TradeUnit.WATT.print(source.maxWatts(), 0) + energy;
    }
}
