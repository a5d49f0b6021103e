package fettle.planner.solve;

/** How much each count weighs while days are placed. */
class Weighing {
    private final double[] weights;
    private final int freeFinishMinute;
    private final Shake shake;

    /**
     * @param weights weight of every count
     * @param freeFinishMinute a finish up to this costs nothing
     * @param shake choices left out
     */
    Weighing(double[] weights, int freeFinishMinute, Shake shake) {
        this.shake = shake;
        this.weights = weights.clone();
        this.freeFinishMinute = freeFinishMinute;
    }

    Shake shake() {
        return shake;
    }

    int freeFinishMinute() {
        return freeFinishMinute;
    }

    double weight(int count) {
        return weights[count];
    }

    /** What an option adds by itself, shared among its packs. */
    double own(Option option) {
        double cost = 0;
        for (int count = 0; count < Count.SIZE; count++) {
            cost += weights[count] * option.counts()[count];
        }
        return cost / option.share();
    }

    /** What more an option costs when it starts at a step. */
    double at(Course course, int option, int tick) {
        return 0;
    }
}
