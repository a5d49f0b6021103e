package fettle.workshop;

import fettle.engine.cell.Chemistry;
import fettle.engine.control.servo.Servo;
import fettle.engine.outing.Outing;
import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Source;
import fettle.engine.units.Counted;
import fettle.engine.units.TradeUnit;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How the journal and the errors speak of one kind of kit.
 *
 * @param noun what one of it is called
 * @param nameNoun what its name is called, for several
 * @param name the name of an item
 * @param description an item in a few words with trade units
 */
record KitWords<T>(String noun, String nameNoun, Function<T, String> name, Function<T, String> description) {
    static final KitWords<Pack> PACK = new KitWords<>("pack", "tags", Pack::tag, KitWords::describe);
    static final KitWords<Craft> CRAFT = new KitWords<>("craft", "names", Craft::name, KitWords::describe);
    static final KitWords<Charger> CHARGER = new KitWords<>("charger", "names", Charger::name, KitWords::describe);
    static final KitWords<Source> SOURCE = new KitWords<>("source", "names", Source::name, KitWords::describe);
    static final KitWords<Servo> SERVO = new KitWords<>("servo", "names", Servo::name, KitWords::describe);

    static final KitWords<Outing> OUTING = new KitWords<>("outing", "names", Outing::name, KitWords::describe);

    private static String describe(Outing outing) {
        int runs = outing.runs().size();
        return outing.date() + ", " + runs + (runs == 1 ? " run" : " runs") + " wanted";
    }

    private static String describe(Servo servo) {
        return TradeUnit.MICROSECOND.print(servo.scale().centreSeconds(), 0) + ", "
                + TradeUnit.VOLT.print(servo.ratings().lowestVolts(), 1) + " to "
                + TradeUnit.VOLT.print(servo.ratings().highestVolts(), 1);
    }

    private static String describe(Pack pack) {
        return pack.chemistry().label() + " " + pack.arrangement() + " "
                + TradeUnit.MILLIAMPERE_HOUR.print(pack.ratedCapacityCoulombs(), 0);
    }

    private static String describe(Craft craft) {
        Integer cells = craft.cellsInSeries();
        return craft.kind().label() + (cells == null ? "" : ", " + cells + "S");
    }

    private static String describe(Charger charger) {
        return Counted.of(charger.ports().size(), "port") + ", "
                + new TreeSet<>(charger.chemistries())
                        .stream().map(Chemistry::label).collect(Collectors.joining(", "));
    }

    private static String describe(Source source) {
        return source.kind().label() + ", " + TradeUnit.WATT.print(source.maxWatts(), 0);
    }
}
