package fettle.cli;

import fettle.workshop.Workshop;
import fettle.workshop.worksheet.CraftTimer;
import fettle.workshop.worksheet.Worksheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code fettle craft timer}. */
@Command(
        description = {
            "Sets the timer of a craft with a full pack: the time after which the weakest cell is at its reserve or its"
                    + " under-load minimum, at a stated risk.",
            "Capacity and resistance are the pack's of today, the runs those of the craft with packs of as many cells whose"
                    + " put-back is noted; each can be given here instead."
        },
        footer = {"", "For example:", "  fettle craft timer Harrier P07 --risk 2%"})
final class CraftTimerWord extends RecordSheetWord {
    @Parameters(index = "0", paramLabel = "CRAFT", description = "The craft's name.")
    private String craft = "";

    @Parameters(index = "1", paramLabel = "PACK", description = "The pack's tag.")
    private String pack = "";

    CraftTimerWord() {
        super(CraftTimer.fields());
    }

    @Override
    Worksheet begun(Workshop workshop) {
        return CraftTimer.of(workshop, craft, pack);
    }
}
