package fettle.workshop;

import fettle.engine.supply.Source;

/** A source as typed by a person: power in W, energy in Wh (empty where it does not run out). */
public record SourceForm(String name, String kind, String power, String energy, String note) {
    public Source toSource() {
        throw new UnsupportedOperationException();
    }

    public static SourceForm of(Source source) {
        throw new UnsupportedOperationException();
    }
}
