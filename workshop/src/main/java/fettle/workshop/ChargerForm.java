package fettle.workshop;

import static fettle.workshop.TypedFields.written;

import fettle.engine.cell.Chemistry;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Port;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A charger as typed by a person. Ports are one a line or separated by semicolons:
 * {@code 20A 400W 6S bleed 0.5A discharge 25W}. Chemistries are separated by commas.
 */
public record ChargerForm(
        String name, String totalPower, String chemistries, String source, String ports, String note) {
    private static final Map<String, String> FIELD_OF = Map.of("totalWatts", "totalPower");

    /** Stands in for a port that cannot be read, only while the other fields are checked. */
    private static final Port ANY_PORT = new Port(1, 1, 10, 1, null, null);

    /** The charger, or {@link fettle.engine.units.InputException} with every fault, each at its field's name here. */
    public Charger toCharger() {
        TypedFields fields = new TypedFields();
        Double watts = fields.optional("totalPower", "total power", totalPower, Measure.POWER, TradeUnit.WATT);
        Set<Chemistry> known = knownChemistries(fields);
        List<Port> outputs = outputs(fields);
        String fedBy = source.isBlank() ? null : source.strip();
        return fields.make(() -> new Charger(name.strip(), watts, known, fedBy, outputs, note.strip()), FIELD_OF);
    }

    /** A charger as a person would type it. */
    public static ChargerForm of(Charger charger) {
        String fedBy = charger.source();
        return new ChargerForm(
                charger.name(),
                written(charger.totalWatts(), Measure.POWER),
                charger.chemistries().stream().sorted().map(Chemistry::label).collect(Collectors.joining(", ")),
                fedBy == null ? "" : fedBy,
                charger.ports().stream().map(PortText::write).collect(Collectors.joining("\n")),
                charger.note());
    }

    private Set<Chemistry> knownChemistries(TypedFields fields) {
        Set<Chemistry> known = EnumSet.noneOf(Chemistry.class);
        for (String written : chemistries.split("[,;\n]")) {
            if (!written.isBlank()) {
                known.add(fields.read("chemistries", () -> Chemistry.parse(written.strip()), Chemistry.LIPO));
            }
        }
        return known;
    }

    private List<Port> outputs(TypedFields fields) {
        List<Port> outputs = new ArrayList<>();
        for (String written : ports.split("[;\n]")) {
            int number = outputs.size() + 1;
            if (!written.isBlank()) {
                outputs.add(fields.read("ports", () -> PortText.parse(number, written), ANY_PORT));
            }
        }
        return outputs;
    }
}
