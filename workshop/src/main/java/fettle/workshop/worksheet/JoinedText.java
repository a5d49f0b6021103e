package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.charge.answer.JoinAnswer.Joined;
import fettle.engine.pack.model.CellModel;
import fettle.engine.pack.model.Doubt;
import fettle.engine.pack.model.PackModel;
import fettle.engine.units.InputException;
import fettle.engine.units.Measure;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.CellsText;
import fettle.workshop.TypedLines;
import java.util.List;
import java.util.stream.IntStream;

/** Packs to be joined, one a line: {@code P01; 3.84; 5000 mAh; 3 mΩ; 5 A}. */
final class JoinedText {
    private static final int PARTS = 5;

    /** Rest volts read within 5 mV a cell; what is common to all packs makes no current. Common practice, no source. */
    private static final Doubt READ_BY_METER = new Doubt(0.005, 0.05, 0.15, 2, 0);

    private JoinedText() {}

    static List<Joined> packs(String typed, Chemistry chemistry, CellsText cells, double leadOhms) {
        return TypedLines.read("packs", typed, line -> pack(line, chemistry, cells, leadOhms));
    }

    private static Joined pack(String line, Chemistry chemistry, CellsText cells, double leadOhms) {
        String[] parts = line.strip().split("\\s*;\\s*");
        if (parts.length != PARTS) {
            throw new InputException(
                    "packs",
                    parts.length + " parts; expected 5 with semicolons between: name; charge; capacity; mΩ per cell;"
                            + " largest charge current.");
        }
        List<Double> charges = PerCell.charges(parts[1], cells.inSeries(), chemistry);
        double coulombs = QuantityText.si("capacity", "capacity", parts[2], Measure.CHARGE, TradeUnit.MILLIAMPERE_HOUR);
        List<Double> ohms = PerCell.ohms(parts[3], cells.inSeries());
        double amps = QuantityText.si("amps", "largest charge current", parts[4], Measure.CURRENT, TradeUnit.AMPERE);
        List<CellModel> places = IntStream.range(0, cells.inSeries())
                .mapToObj(cell -> new CellModel(charges.get(cell), coulombs, ohms.get(cell) / cells.inParallel()))
                .toList();
        PackModel pack = PackModel.uniform(parts[0], chemistry, cells.inSeries(), coulombs, 0.5, 0.005)
                .withCells(places)
                .withLead(leadOhms)
                .withDoubt(READ_BY_METER);
        return new Joined(pack, amps);
    }
}
