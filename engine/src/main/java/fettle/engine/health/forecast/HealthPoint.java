package fettle.engine.health.forecast;

import fettle.engine.units.Faults;

/**
 * One reading of health.
 *
 * @param cycle full cycles of use before it, ≥ 0
 * @param day days since the record began, ≥ 0
 * @param share health as a share of new
 * @param deviation its standard deviation, ≥ 0
 */
public record HealthPoint(double cycle, double day, double share, double deviation) {
    public HealthPoint {
        Faults faults = new Faults();
        if (!(cycle >= 0) || !(day >= 0) || !Double.isFinite(cycle + day)) {
            faults.add("cycle", "reading is at cycle " + cycle + ", day " + day + "; expected both 0 or more.");
        }
        if (!Double.isFinite(share) || !(deviation >= 0)) {
            faults.add("share", "health is " + share + " ± " + deviation + "; expected numbers, ± of 0 or more.");
        }
        faults.refuse();
    }
}
