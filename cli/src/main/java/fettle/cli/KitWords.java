package fettle.cli;

import fettle.cli.KitKind.Verb;
import fettle.engine.cell.Chemistry;
import fettle.engine.control.servo.Servo;
import fettle.engine.outing.Outing;
import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Source;
import fettle.engine.units.TradeUnit;
import fettle.workshop.ChargerForm;
import fettle.workshop.CraftForm;
import fettle.workshop.OutingForm;
import fettle.workshop.PackForm;
import fettle.workshop.ServoForm;
import fettle.workshop.SourceForm;
import fettle.workshop.Workshop;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine;

/** The words {@code pack}, {@code craft}, {@code charger}, {@code source} and {@code servo}, built alike. */
final class KitWords {
    private static final KitKind<Pack> PACK = new KitKind<>(
            "pack",
            "packs",
            Workshop::packs,
            PackWords::label,
            PackForm::of,
            new KitKind.Examples(
                    "P07", "--chemistry LiPo --cells 4S --capacity 5000 --charge-rating 5C", "--mass 540g"));
    private static final KitKind<Craft> CRAFT = new KitKind<>(
            "craft",
            "craft",
            Workshop::craft,
            KitWords::craftLabel,
            CraftForm::of,
            new KitKind.Examples("Harrier", "--kind plane --cells 4S --typical-current 32A", "--peak-current 60A"));
    private static final KitKind<Charger> CHARGER = new KitKind<>(
            "charger",
            "chargers",
            Workshop::chargers,
            KitWords::chargerLabel,
            ChargerForm::of,
            new KitKind.Examples(
                    "bench",
                    "--chemistries LiPo,NiMH --ports \"20A 400W 8S bleed 1A; 10A 200W 6S\"",
                    "--total-power 500W"));
    private static final KitKind<Source> SOURCE = new KitKind<>(
            "source",
            "sources",
            Workshop::sources,
            KitWords::sourceLabel,
            SourceForm::of,
            new KitKind.Examples("clubhouse", "--kind \"mains supply\" --power 700W", "--power 600W"));

    private static final KitKind<Servo> SERVO = new KitKind<>(
            "servo",
            "servos",
            Workshop::servos,
            KitWords::servoLabel,
            ServoForm::of,
            new KitKind.Examples(
                    "wing", "--centre 1500µs --turn 10° --ratings \"6V 5.5kgcm 0.12s stall 1.6A\"", "--frame 333Hz"));

    private static final KitKind<Outing> OUTING = new KitKind<>(
            "outing",
            "outings",
            Workshop::outingShelf,
            KitWords::outingLabel,
            OutingForm::of,
            new KitKind.Examples(
                    "\"Lake day\"",
                    "--date 2026-05-16 --leave-home 08:00 --arrive 09:00 --pack-up 15:00 --ambient 18C --packs P07"
                            + " --run \"Harrier x2; 09:30 to 14:00; 8 min; takes 70 %\"",
                    "--ambient 21C"));

    private KitWords() {}

    /** Adds the words to the command line. */
    static void addTo(CommandLine root) {
        root.addSubcommand(
                "pack",
                word(PACK, new PackShowWord(), PackFields::new)
                        .addSubcommand(new PackLabelWord())
                        .addSubcommand(new PackPassportWord()));
        root.addSubcommand(
                "craft",
                word(CRAFT, new KitShowWord<>(CRAFT), CraftFields::new)
                        .addSubcommand("fit", new CraftFitWord())
                        .addSubcommand("timer", new CraftTimerWord().word()));
        root.addSubcommand("charger", word(CHARGER, new KitShowWord<>(CHARGER), ChargerFields::new));
        root.addSubcommand("source", word(SOURCE, new KitShowWord<>(SOURCE), SourceFields::new));
        CommandLine outing = word(OUTING, new OutingWord.Show(), OutingFields::new);
        List.of(
                        OutingWord.Make.class,
                        OutingWord.Now.class,
                        OutingWord.Start.class,
                        OutingWord.Finish.class,
                        OutingWord.PutBack.class,
                        OutingWord.Why.class,
                        OutingWord.Take.class,
                        OutingWord.Settle.class,
                        OutingWord.Release.class)
                .forEach(outing::addSubcommand);
        root.addSubcommand("outing", outing);
        root.addSubcommand("servo", word(SERVO, new KitShowWord<>(SERVO), ServoFields::new));
    }

    private static String outingLabel(Outing outing) {
        int runs = outing.runs().size();
        return outing.date() + ", " + runs + (runs == 1 ? " run wanted, " : " runs wanted, ")
                + outing.packs().size() + (outing.packs().size() == 1 ? " pack" : " packs");
    }

    private static String servoLabel(Servo servo) {
        return TradeUnit.MICROSECOND.print(servo.scale().centreSeconds(), 0) + ", "
                + servo.ratings().rising().stream()
                        .map(rating -> TradeUnit.VOLT.print(rating.volts(), 1) + " "
                                + TradeUnit.KILOGRAM_FORCE_CENTIMETRE.print(rating.stallNewtonMetres(), 1))
                        .collect(Collectors.joining(", "));
    }

    private static <T> CommandLine word(KitKind<T> kind, Runnable show, Supplier<KitFields<T>> fields) {
        CommandLine group = new CommandLine(new WordGroup());
        group.getCommandSpec().usageMessage().description("Registers, changes and lists " + kind.plural() + ".");
        KitFields<T> added = fields.get();
        KitFields<T> edited = fields.get();
        Map<Verb, CommandLine> words = new EnumMap<>(Verb.class);
        words.put(Verb.LIST, new CommandLine(new KitListWord<>(kind)));
        words.put(Verb.SHOW, new CommandLine(show));
        words.put(Verb.ADD, withFields(new KitAddWord<>(kind, added), added));
        words.put(Verb.EDIT, withFields(new KitEditWord<>(kind, edited), edited));
        words.put(Verb.RETIRE, new CommandLine(new KitRetireWord<>(kind)));
        words.put(Verb.RESTORE, new CommandLine(new KitRestoreWord<>(kind)));
        words.forEach((verb, command) -> {
            group.addSubcommand(verb.word(), command);
            command.getCommandSpec()
                    .usageMessage()
                    .description(verb.description(kind))
                    .footer("", "For example:", "  " + verb.example(kind));
        });
        return group;
    }

    private static CommandLine withFields(Object word, Object fields) {
        CommandLine command = new CommandLine(word);
        command.addMixin("fields", fields);
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
