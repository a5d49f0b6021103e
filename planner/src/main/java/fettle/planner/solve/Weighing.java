package fettle.planner.solve;

/** How much each count weighs while days are placed. */
class Weighing {
    private final double[] weights;

    Weighing(double[] weights) {
        this.weights = weights.clone();
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
