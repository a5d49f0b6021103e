package fettle.cli;

import fettle.workshop.Workshop;
import fettle.workshop.worksheet.CraftTimer;
import fettle.workshop.worksheet.Sheet;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fettle craft timer}. */
@Command(
        description = {
            "Sets the timer of a craft with a full pack: the time after which the weakest cell is at its reserve or its"
                    + " under-load minimum, at a stated risk.",
            "Capacity and resistance are the pack's of today, the runs those of the craft with packs of as many cells whose"
                    + " put-back is noted; each can be given here instead."
        },
        footer = {"", "For example:", "  fettle craft timer Harrier P07 --risk 2%"})
final class CraftTimerWord implements Runnable {
    @Mixin
    private final Session session = new Session();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "CRAFT", description = "The craft's name.")
    private String craft = "";

    @Parameters(index = "1", paramLabel = "PACK", description = "The pack's tag.")
    private String pack = "";

    @Option(names = "--working", description = "Show the steps behind the figures.")
    private boolean working;

    private CraftTimerWord() {}

    /** The word with the worksheet's fields as its options. */
    static CommandLine word() {
        CommandLine command = new CommandLine(new CraftTimerWord());
        SheetFields.addTo(command.getCommandSpec(), CraftTimer.fields());
        return command;
    }

    @Override
    public void run() {
        try (Workshop workshop = session.open()) {
            Sheet sheet = CraftTimer.of(workshop, craft, pack).answer(SheetFields.typed(spec, CraftTimer.fields()));
            session.print(sheet, SheetFields.text(sheet, working));
        }
    }
}
