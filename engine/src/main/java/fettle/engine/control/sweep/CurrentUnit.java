package fettle.engine.control.sweep;

import fettle.engine.units.TradeUnit;

/** The units a column of current can have. */
public enum CurrentUnit {
    MILLIAMPERE(TradeUnit.MILLIAMPERE),
    AMPERE(TradeUnit.AMPERE);

    private final TradeUnit unit;

    CurrentUnit(TradeUnit unit) {
        this.unit = unit;
    }

    public String symbol() {
        return unit.symbol();
    }

    /** A figure of the column as amperes. */
    public double toAmps(double figure) {
        return unit.toSi(figure);
    }
}
