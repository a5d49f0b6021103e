package fettle.engine.pack.simulation;

/** Charge and energy passed so far, summed over the steps. Not thread-safe. */
final class Tally {
    private double outCoulombs;
    private double inCoulombs;
    private double outJoules;
    private double inJoules;
    private double cellHeatJoules;
    private double leadHeatJoules;
    private double bleedHeatJoules;
    private long steps;

    void add(double seconds, Ladder mean, double heatJoules) {
        double coulombs = mean.amps * seconds;
        double joules = coulombs * mean.volts;
        if (coulombs >= 0) {
            outCoulombs += coulombs;
            outJoules += joules;
        } else {
            inCoulombs -= coulombs;
            inJoules -= joules;
        }
        cellHeatJoules += heatJoules;
        leadHeatJoules += mean.leadWatts() * seconds;
        bleedHeatJoules += mean.bleedWatts() * seconds;
        steps++;
    }

    long steps() {
        return steps;
    }

    Passed passed() {
        return new Passed(
                outCoulombs, inCoulombs, outJoules, inJoules, cellHeatJoules, leadHeatJoules, bleedHeatJoules);
    }
}
