package fettle.engine.rule;

import static fettle.engine.rule.Quantity.CHARGE_COLDEST;
import static fettle.engine.rule.Quantity.CHARGE_LIMIT;
import static fettle.engine.rule.Quantity.CHARGE_WARMEST;
import static fettle.engine.rule.Quantity.CHECK_AGE;
import static fettle.engine.rule.Quantity.DEFAULT_CHARGE_RATE;
import static fettle.engine.rule.Quantity.IMBALANCE_GROUND;
import static fettle.engine.rule.Quantity.IMBALANCE_TEND;
import static fettle.engine.rule.Quantity.LOAD_MINIMUM;
import static fettle.engine.rule.Quantity.RESERVE;
import static fettle.engine.rule.Quantity.REST_MINIMUM;
import static fettle.engine.rule.Quantity.RETIRE_CAPACITY;
import static fettle.engine.rule.Quantity.RETIRE_RESISTANCE;
import static fettle.engine.rule.Quantity.STORAGE_HIGH;
import static fettle.engine.rule.Quantity.STORAGE_LOW;
import static fettle.engine.rule.Quantity.STORAGE_TIME;
import static fettle.engine.rule.Quantity.TEMPERATURE_LIMIT;

import fettle.engine.cell.Chemistry;
import fettle.engine.working.Citation;
import fettle.engine.working.CitationStatus;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The limits a new book starts with. The maker's sheet for the very cell wins over every one of them. */
final class DefaultRules {
    private static final Citation MAKERS_LIPO =
            Citation.published("cell makers' specifications for lithium polymer cells");
    private static final Citation FIRE_SERVICE =
            Citation.published("U.S. Fire Administration, battery guidance: no charging below 0 °C or above 40 °C");
    private static final Citation MAKER_COLD =
            Citation.published("cell makers' specifications and JEITA profile: no charging below 0 °C");
    private static final Citation MAKERS_HOT = Citation.published("cell makers' specifications: discharge up to 60 °C");
    private static final Citation LIFEPO4_SHEET = Citation.published("a maker's LiFePO4 cell table");
    private static final Citation MEMORY = new Citation("no source looked up", CitationStatus.FROM_MEMORY);
    private static final Citation PRACTICE = Citation.commonPractice("habit of the trade");
    private static final Citation ROBOTICS_LAB =
            Citation.published("University of Maryland robotics facility, Li-Po batteries: never above 1C");

    private static final Map<Chemistry, Map<Quantity, Rule>> RULES = new EnumMap<>(Chemistry.class);

    static {
        lipo();
        lihv();
        lifepo4();
        liIon();
        nimh();
        leadAcid();
    }

    private DefaultRules() {}

    static Rule of(Chemistry chemistry, Quantity quantity) {
        return RULES.get(chemistry).get(quantity);
    }

    static List<Rule> of(Chemistry chemistry) {
        return new ArrayList<>(RULES.get(chemistry).values());
    }

    private static void lipo() {
        new Table(Chemistry.LIPO)
                .add(CHARGE_LIMIT, 4.20, MAKERS_LIPO)
                .add(STORAGE_LOW, 3.75, PRACTICE)
                .add(STORAGE_HIGH, 3.85, PRACTICE)
                .add(REST_MINIMUM, 3.00, Citation.commonPractice("makers pre-charge at 0.1C below 3.0 V"))
                .add(LOAD_MINIMUM, 3.00, MAKERS_LIPO)
                .lithium();
    }

    private static void lihv() {
        new Table(Chemistry.LIHV)
                .add(CHARGE_LIMIT, 4.35, Citation.published("a maker's text on high-voltage lithium polymer cells"))
                .add(STORAGE_LOW, 3.75, MEMORY)
                .add(STORAGE_HIGH, 3.90, MEMORY)
                .add(REST_MINIMUM, 3.00, MEMORY)
                .add(LOAD_MINIMUM, 3.00, MEMORY)
                .lithium();
    }

    private static void lifepo4() {
        new Table(Chemistry.LIFEPO4)
                .add(CHARGE_LIMIT, 3.65, LIFEPO4_SHEET)
                .add(STORAGE_LOW, 3.20, MEMORY)
                .add(STORAGE_HIGH, 3.33, MEMORY)
                .add(REST_MINIMUM, 2.50, PRACTICE)
                .add(LOAD_MINIMUM, 2.50, PRACTICE)
                .lithium();
    }

    private static void liIon() {
        new Table(Chemistry.LI_ION)
                .add(
                        CHARGE_LIMIT,
                        4.20,
                        Citation.published("cell makers' specifications for cylindrical lithium-ion cells"))
                .add(STORAGE_LOW, 3.60, MEMORY)
                .add(STORAGE_HIGH, 3.80, MEMORY)
                .add(REST_MINIMUM, 2.75, MAKERS_LIPO)
                .add(LOAD_MINIMUM, 2.75, MAKERS_LIPO)
                .lithium();
    }

    private static void nimh() {
        new Table(Chemistry.NIMH)
                .add(CHARGE_LIMIT, 1.55, MEMORY)
                .add(STORAGE_LOW, 1.20, MEMORY)
                .add(STORAGE_HIGH, 1.45, MEMORY)
                .add(REST_MINIMUM, 1.00, PRACTICE)
                .add(LOAD_MINIMUM, 0.90, MEMORY)
                .add(CHARGE_COLDEST, 0, MEMORY)
                .add(CHARGE_WARMEST, 45, MEMORY)
                .add(TEMPERATURE_LIMIT, 60, MEMORY)
                .add(STORAGE_TIME, 8_760, PRACTICE)
                .add(DEFAULT_CHARGE_RATE, 0.1, Citation.published("slow charge at C/10 for 13 to 15 h, ended by timer"))
                .common();
    }

    private static void leadAcid() {
        new Table(Chemistry.LEAD_ACID)
                .add(CHARGE_LIMIT, 2.45, MEMORY)
                .add(STORAGE_LOW, 2.08, MEMORY)
                .add(STORAGE_HIGH, 2.25, MEMORY)
                .add(REST_MINIMUM, 1.95, MEMORY)
                .add(LOAD_MINIMUM, 1.75, MEMORY)
                .add(CHARGE_COLDEST, 0, MEMORY)
                .add(CHARGE_WARMEST, 40, MEMORY)
                .add(TEMPERATURE_LIMIT, 50, MEMORY)
                .add(STORAGE_TIME, 8_760, Citation.commonPractice("lead-acid is stored full"))
                .add(DEFAULT_CHARGE_RATE, 0.2, MEMORY)
                .common();
    }

    /** Fills the rules of one chemistry, values in each quantity's own unit. */
    private record Table(Chemistry chemistry) {
        Table add(Quantity quantity, double value, Citation citation) {
            RULES.computeIfAbsent(chemistry, key -> new EnumMap<>(Quantity.class))
                    .put(quantity, new Rule(chemistry, quantity, quantity.unit().toSi(value), citation, false));
            return this;
        }

        void lithium() {
            add(CHARGE_COLDEST, 0, MAKER_COLD)
                    .add(CHARGE_WARMEST, 40, FIRE_SERVICE)
                    .add(TEMPERATURE_LIMIT, 60, MAKERS_HOT)
                    .add(STORAGE_TIME, 72, PRACTICE)
                    .add(DEFAULT_CHARGE_RATE, 1, ROBOTICS_LAB)
                    .common();
        }

        void common() {
            add(IMBALANCE_TEND, 20, PRACTICE)
                    .add(IMBALANCE_GROUND, 150, PRACTICE)
                    .add(RESERVE, 20, Citation.commonPractice("use at most 80 % of capacity in a run"))
                    .add(CHECK_AGE, 60, PRACTICE)
                    .add(
                            RETIRE_CAPACITY,
                            80,
                            Citation.commonPractice("end of life of a traction cell is taken as 80 % of new"))
                    .add(RETIRE_RESISTANCE, 200, Citation.commonPractice("doubled resistance ends useful power"));
        }
    }
}
