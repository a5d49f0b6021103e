package fettle.workshop.scenario;

import fettle.engine.pack.simulation.Bench;
import fettle.engine.pack.simulation.Moment;
import fettle.engine.pack.simulation.PackCircuit;
import fettle.engine.pack.simulation.SeriesGroup;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Columns of a time series: time, step and terminals, then every pack's current, then every cell.
 *
 * @param names names with their units, in order
 * @param packs how many packs
 */
public record SeriesColumns(List<String> names, int packs) {
    private static final List<String> TERMINALS = List.of("time_seconds", "step", "volts", "amps");
    private static final List<String> PER_CELL = List.of("volts", "rest_volts", "amps", "charge", "celsius");

    public SeriesColumns {
        names = List.copyOf(names);
    }

    /** The columns for a bench. Cells are called by pack and place, those side by side with a letter. */
    public static SeriesColumns of(Bench bench) {
        List<String> names = new ArrayList<>(TERMINALS);
        bench.packs().forEach(pack -> names.add(plain(pack.name()) + "_amps"));
        for (PackCircuit pack : bench.packs()) {
            for (int place = 0; place < pack.groups().size(); place++) {
                SeriesGroup group = pack.groups().get(place);
                for (int side = 0; side < group.cells().size(); side++) {
                    String letter = group.cells().size() == 1 ? "" : "_" + (side + 1);
                    String cell = plain(pack.name()) + "_cell" + (place + 1) + letter;
                    PER_CELL.forEach(figure -> names.add(cell + "_" + figure));
                }
            }
        }
        return new SeriesColumns(names, bench.packs().size());
    }

    private static String plain(String name) {
        return name.strip().replaceAll("[^\\p{L}\\p{N}]+", "_");
    }

    /** Writes an instant into a row. */
    void fill(Moment now, double[] row) {
        int at = 0;
        row[at++] = now.seconds();
        row[at++] = now.step() + 1.0;
        row[at++] = now.volts();
        row[at++] = now.amps();
        for (int pack = 0; pack < packs; pack++) {
            row[at++] = now.packAmps(pack);
        }
        for (int cell = 0; cell < now.cells(); cell++) {
            row[at++] = now.cellVolts(cell);
            row[at++] = now.cellRestVolts(cell);
            row[at++] = now.cellAmps(cell);
            row[at++] = now.cellCharge(cell);
            row[at++] = TradeUnit.CELSIUS.fromSi(now.cellKelvins(cell));
        }
    }
}
