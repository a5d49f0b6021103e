package fettle.workshop.entry;

import fettle.engine.pack.Pack;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.List;

/** Questions that readings raise although they can be saved. They only ask: the assessment judges. */
final class Doubts {
    /** Room for the last bit of a converted number, so that 4200 mV is not above 4.2 V. */
    private static final double LAST_BIT = 1e-9;

    /** Put-back beyond rated capacity by this share is doubtful: charging is nearly lossless. Common practice. */
    private static final double MOST_PUT_BACK = 1.2;

    /** Cells and pack read with two meters differ by less than this. Common practice, no source. */
    private static final double MOST_DIFFERENCE_SHARE = 0.02;

    private Doubts() {}

    static List<String> cells(KnownPack pack, List<Double> volts) {
        List<String> doubts = new ArrayList<>();
        int highest = 0;
        int lowest = 0;
        for (int cell = 1; cell < volts.size(); cell++) {
            highest = volts.get(cell) > volts.get(highest) ? cell : highest;
            lowest = volts.get(cell) < volts.get(lowest) ? cell : lowest;
        }
        above(pack, "cell " + (highest + 1) + " at " + print(volts.get(highest)), volts.get(highest), doubts);
        below(pack, "cell " + (lowest + 1) + " at " + print(volts.get(lowest)), volts.get(lowest), doubts);
        double spread = volts.get(highest) - volts.get(lowest);
        Rule rule = pack.limits().rule(Quantity.IMBALANCE_GROUND);
        if (spread > rule.valueSi() + LAST_BIT) {
            doubts.add("cell " + (lowest + 1) + " is " + TradeUnit.MILLIVOLT.print(spread, 0) + " below cell "
                    + (highest + 1) + ", more than " + rule.print() + ". Are the figures right?");
        }
        return doubts;
    }

    /** What pack volts alone cannot tell, besides what they do. */
    static List<String> packAlone(KnownPack pack, double packVolts) {
        List<String> doubts = new ArrayList<>(packVolts(pack, packVolts, "for the whole pack"));
        Pack known = pack.pack();
        doubts.add(
                "pack volts alone show no cell spread: a weak cell can hide behind the others. Read each cell before "
                        + "the next charge.");
        if (known.identity() == Pack.Identity.UNCONFIRMED) {
            doubts.add("is " + known.tag() + " really " + known.arrangement()
                    + "? Nobody has confirmed it, and pack volts alone cannot tell. Count the balance-lead wires.");
        }
        return doubts;
    }

    /** Cells that do not add up to the pack. */
    static List<String> sum(List<Double> cellVolts, double packVolts) {
        double sum = cellVolts.stream().mapToDouble(Double::doubleValue).sum();
        return Math.abs(packVolts - sum) > MOST_DIFFERENCE_SHARE * sum
                ? List.of("the cells add up to " + TradeUnit.VOLT.print(sum, 2) + ", but the pack reads "
                        + TradeUnit.VOLT.print(packVolts, 2) + ". Are the figures right?")
                : List.of();
    }

    /** @param when of which moment they are, e.g. {@code at the end} */
    static List<String> packVolts(KnownPack pack, double packVolts, String when) {
        double perCell = packVolts / pack.pack().cellsInSeries();
        String told = TradeUnit.VOLT.print(packVolts, 2) + " " + when + " is " + print(perCell) + " per cell, which";
        List<String> doubts = new ArrayList<>();
        above(pack, told, perCell, doubts);
        below(pack, told, perCell, doubts);
        return doubts;
    }

    static List<String> temperature(KnownPack pack, double kelvins) {
        Rule rule = pack.limits().rule(Quantity.TEMPERATURE_LIMIT);
        return kelvins > rule.valueSi() + LAST_BIT
                ? List.of(TradeUnit.CELSIUS.print(kelvins, 1) + " is above the limit of " + rule.print()
                        + ". Is it °C? Write °F as e.g. 70F.")
                : List.of();
    }

    static List<String> putBack(KnownPack pack, double coulombs) {
        double rated = pack.pack().ratedCapacityCoulombs();
        return coulombs > MOST_PUT_BACK * rated
                ? List.of(TradeUnit.MILLIAMPERE_HOUR.print(coulombs, 0)
                        + " put back is more than the pack's capacity of " + TradeUnit.MILLIAMPERE_HOUR.print(rated, 0)
                        + ". Is it the right pack and the right figure?")
                : List.of();
    }

    private static void above(KnownPack pack, String told, double perCell, List<String> doubts) {
        Rule rule = pack.limits().rule(Quantity.CHARGE_LIMIT);
        if (perCell > rule.valueSi() + LAST_BIT) {
            doubts.add(told + " is above the charge limit of " + rule.print() + " for " + kind(pack)
                    + ". Are the figure and the chemistry right? If so, do not charge it.");
        }
    }

    private static void below(KnownPack pack, String told, double perCell, List<String> doubts) {
        Rule rule = pack.limits().rule(Quantity.REST_MINIMUM);
        if (perCell < rule.valueSi() - LAST_BIT) {
            doubts.add(
                    told + " is below the rest minimum of " + rule.print() + " for " + kind(pack)
                            + ". Is the figure right, and is it a rest reading? If so, do not charge it before it is inspected.");
        }
    }

    private static String kind(KnownPack pack) {
        return pack.pack().chemistry().label();
    }

    private static String print(double volts) {
        return TradeUnit.VOLT.print(volts, 3);
    }
}
