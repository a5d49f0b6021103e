package fettle.workshop.worksheet;

import fettle.engine.units.InputException;
import java.util.List;
import java.util.stream.Collectors;

/** The worksheets there are, in the order they are shown. */
public final class Worksheets {
    private static final List<Worksheet> ALL = List.of(
            ChargeSheet.WORKSHEET,
            StorageSheet.WORKSHEET,
            BalanceSheet.WORKSHEET,
            JoinSheet.WORKSHEET,
            LoadSheet.WORKSHEET,
            RatingSheet.WORKSHEET,
            ColdSheet.WORKSHEET,
            TimerSheet.WORKSHEET,
            FieldSheet.WORKSHEET,
            GeneratorSheet.WORKSHEET,
            UsbSheet.WORKSHEET,
            TravelSheet.WORKSHEET,
            LinkageSheet.WORKSHEET,
            ThrowsSheet.WORKSHEET,
            HolesSheet.WORKSHEET,
            MatchSheet.WORKSHEET,
            SwashplateSheet.WORKSHEET,
            SignalSheet.WORKSHEET,
            HingeSheet.WORKSHEET,
            ServoPowerSheet.WORKSHEET);

    private Worksheets() {}

    public static List<Worksheet> all() {
        return ALL;
    }

    /** The worksheet of a word. */
    public static Worksheet of(String word) {
        return ALL.stream()
                .filter(sheet -> sheet.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new InputException(
                        "worksheet",
                        "there is no worksheet \"" + word + "\"; there are "
                                + ALL.stream().map(Worksheet::word).collect(Collectors.joining(", ")) + "."));
    }
}
