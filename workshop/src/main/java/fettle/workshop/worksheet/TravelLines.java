package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.travel.CarriedAs;
import fettle.engine.travel.TravelPack;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.CellsText;
import fettle.workshop.TypedLines;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Packs that travel, one a line: {@code P01; LiPo; 4S; 5000 mAh; spare; 74 Wh; 60 %; grounded}. */
final class TravelLines {
    private static final int FEWEST = 5;

    private TravelLines() {}

    static List<TravelPack> packs(String typed) {
        return TypedLines.read("packs", typed, TravelLines::pack);
    }

    private static TravelPack pack(String line) {
        String[] parts = line.strip().split("\\s*;\\s*");
        if (parts.length < FEWEST) {
            throw new InputException(
                    "packs",
                    parts.length
                            + " parts; expected at least 5 with semicolons between: tag; chemistry; cells; capacity;"
                            + " spare, in craft or power bank.");
        }
        CellsText cells = CellsText.parse(parts[2]);
        Pack pack = new Pack(
                parts[0],
                Chemistry.parse(parts[1]),
                cells.inSeries(),
                cells.inParallel(),
                QuantityText.si("packs", "capacity", parts[3], Measure.CHARGE, TradeUnit.MILLIAMPERE_HOUR),
                null,
                null,
                null,
                "",
                null,
                "",
                Pack.Identity.CONFIRMED,
                List.of(),
                "");
        Double printed = null;
        Double charge = null;
        Standing standing = Standing.READY;
        for (int i = FEWEST; i < parts.length; i++) {
            if (parts[i].equalsIgnoreCase(Standing.GROUNDED.word())) {
                standing = Standing.GROUNDED;
            } else if (QuantityText.measures(parts[i], Measure.ENERGY)) {
                printed = positive(parts[i], Measure.ENERGY);
            } else if (QuantityText.measures(parts[i], Measure.FRACTION)) {
                charge = positive(parts[i], Measure.FRACTION);
            } else {
                throw new InputException(
                        "packs", "\"" + parts[i] + "\" is none of watt-hours, a charge in %, or grounded.");
            }
        }
        return new TravelPack(pack, standing, carried(parts[4]), printed, charge);
    }

    private static @Nullable Double positive(String written, Measure measure) {
        double si = QuantityText.si("packs", measure.noun(), written, measure, null);
        boolean possible = measure == Measure.ENERGY ? si > 0 : si >= 0 && si <= 1;
        if (!possible) {
            throw new InputException(
                    "packs",
                    measure.noun() + " is \"" + written + "\"; expected "
                            + (measure == Measure.ENERGY ? "more than 0 Wh." : "0 to 100 %."));
        }
        return si;
    }

    private static CarriedAs carried(String typed) {
        return switch (typed.strip().toLowerCase(Locale.ROOT)) {
            case "spare" -> CarriedAs.SPARE;
            case "in craft", "in the craft", "installed" -> CarriedAs.INSTALLED;
            case "power bank" -> CarriedAs.POWER_BANK;
            default ->
                throw new InputException("packs", "\"" + typed.strip() + "\" is none of spare, in craft, power bank.");
        };
    }
}
