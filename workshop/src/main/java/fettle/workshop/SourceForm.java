package fettle.workshop;

import static fettle.workshop.TypedFields.written;

import fettle.engine.supply.Source;
import fettle.engine.supply.SourceKind;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import java.util.Map;

/** A source as typed by a person: power in W, energy in Wh (empty where it does not run out). */
public record SourceForm(String name, String kind, String power, String energy, String note) {
    private static final Map<String, String> FIELD_OF = Map.of("maxWatts", "power", "energyJoules", "energy");

    /** Stands in for a power that cannot be read, only while the other fields are checked. */
    private static final double ANY_WATTS = 100;

    /** The source, or {@link fettle.engine.units.InputException} with every fault, each at its field's name here. */
    public Source toSource() {
        TypedFields fields = new TypedFields();
        SourceKind known = fields.choice("kind", "kind", kind, SourceKind.values(), SourceKind::label);
        double watts = fields.needed("power", "power", power, Measure.POWER, TradeUnit.WATT, ANY_WATTS);
        Double joules = fields.optional("energy", "energy", energy, Measure.ENERGY, TradeUnit.WATT_HOUR);
        return fields.make(() -> new Source(name.strip(), known, watts, joules, note.strip()), FIELD_OF);
    }

    /** A source as a person would type it. */
    public static SourceForm of(Source source) {
        return new SourceForm(
                source.name(),
                source.kind().label(),
                written(source.maxWatts(), Measure.POWER),
                written(source.energyJoules(), Measure.ENERGY),
                source.note());
    }
}
