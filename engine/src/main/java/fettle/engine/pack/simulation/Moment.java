package fettle.engine.pack.simulation;

/** Everything at one instant of a simulation, as end conditions and recorders see it. Valid only during the call. */
public interface Moment {
    /** Time since the beginning of the protocol [s]. */
    double seconds();

    /** Time since the beginning of the protocol step [s]. */
    double stepSeconds();

    /** Position of the protocol step, from 0. */
    int step();

    /** Volts at the common terminals [V]. */
    double volts();

    /** Current at the common terminals [A], discharge positive. */
    double amps();

    /** Charge passed since the beginning of the protocol step, either way [C]. */
    double stepCoulombs();

    /** Packs joined. */
    int packs();

    /** Current of one pack [A], discharge positive. */
    double packAmps(int pack);

    /** Cells of all packs. */
    int cells();

    /** Terminal volts of one cell [V]. */
    double cellVolts(int cell);

    /** Rest volts one cell would settle at [V]. */
    double cellRestVolts(int cell);

    /** Charge of one cell as a fraction. */
    double cellCharge(int cell);

    /** Current of one cell [A], bleed included, discharge positive. */
    double cellAmps(int cell);

    /** Temperature of one cell [K]. */
    double cellKelvins(int cell);

    /** Lowest terminal volts of any cell [V]. */
    double lowestCellVolts();

    /** Highest terminal volts of any cell [V]. */
    double highestCellVolts();

    /** Lowest charge of any cell as a fraction. */
    double lowestCellCharge();

    /** Highest charge of any cell as a fraction. */
    double highestCellCharge();

    /** Temperature of the hottest cell [K]. */
    double hottestKelvins();
}
