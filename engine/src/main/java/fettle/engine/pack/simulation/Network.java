package fettle.engine.pack.simulation;

import java.util.List;
import java.util.Optional;

/**
 * The state of a bench and the means to step it: {@link #attempt} looks ahead, {@link #accept} makes it so.
 *
 * <p>As a {@link Moment} it shows the instant last begun, attempted or accepted. Not thread-safe.
 */
final class Network implements Moment {
    private static final int MOST_CORRECTIONS = 50;

    /** Volts two corrections of a mean may differ by when the step is taken as solved: rounding of a few volts. */
    private static final double SOLVED_VOLTS = 1e-14;

    private final CellBank bank;
    private final Ladder mean;
    private final Ladder instant;
    private final double[] bleedAmps;
    private final double[] unbledVolts;

    /** Currents of the cells at the accepted instant [A]. */
    private final double[] firstAmps;

    private final Optional<Balancer> balancer;
    private CellStates now;
    private CellStates ahead;
    private CellStates shown;
    private boolean corrected;

    private Demand demand = new Demand.Rest();
    private Demand.Limit limit = Demand.Limit.NONE;
    private int step = -1;
    private double acceptedSeconds;
    private double beganSeconds;
    private double aheadSeconds;
    private double stepCoulombs;
    private final Tally tally = new Tally();

    Network(Bench bench) {
        List<CellAt> cells = bench.cells().toList();
        bank = new CellBank(bench.circuits(), bench.ambientKelvins());
        balancer = bench.balancer();
        now = new CellStates(cells.size());
        ahead = new CellStates(cells.size());
        shown = now;
        for (int cell = 0; cell < cells.size(); cell++) {
            now.start(cell, cells.get(cell).chargeFraction(), cells.get(cell).kelvins());
        }
        int places =
                bench.packs().stream().mapToInt(pack -> pack.groups().size()).sum();
        bleedAmps = new double[places];
        unbledVolts = new double[places];
        firstAmps = new double[cells.size()];
        mean = new Ladder(bench, bleedAmps);
        instant = new Ladder(bench, bleedAmps);
        bank.begin(now);
        instant.solve(now.emf, now.r0, demand);
    }

    /** Puts the next demand to the packs. */
    void begin(Demand next) {
        demand = next;
        step++;
        beganSeconds = acceptedSeconds;
        stepCoulombs = 0;
        solve(now);
        settle();
    }

    /** Computes the instant {@code dt} seconds after the accepted one, and shows it. */
    void attempt(double dt) {
        if (corrected) {
            bank.clearCorrections();
            corrected = false;
        }
        bank.mean(now, dt, firstAmps);
        mean.draw(bank.meanEmf, bank.meanOhms, demand);
        boolean held = bank.advance(now, ahead, mean.cellAmps);
        for (int i = 0; !held && i < MOST_CORRECTIONS; i++) {
            corrected = true;
            held = bank.correct(now, ahead, mean.cellAmps) <= SOLVED_VOLTS;
            mean.draw(bank.meanEmf, bank.meanOhms, demand);
            bank.advance(now, ahead, mean.cellAmps);
        }
        bank.complete(ahead);
        solve(ahead);
        shown = ahead;
        aheadSeconds = dt;
    }

    /** Takes the attempted instant, whose exact time is given [s]. */
    void accept(double seconds) {
        tally.add(aheadSeconds, mean, bank.heatJoules());
        stepCoulombs += Math.abs(mean.amps) * aheadSeconds;
        CellStates spare = now;
        now = ahead;
        ahead = spare;
        shown = now;
        acceptedSeconds = seconds;
        aheadSeconds = 0;
        settle();
    }

    private void settle() {
        if (balancer.isPresent()) {
            setBleed(balancer.get());
        }
        System.arraycopy(instant.cellAmps, 0, firstAmps, 0, firstAmps.length);
    }

    private void setBleed(Balancer with) {
        boolean changed = false;
        for (int pack = 0; pack < instant.packs(); pack++) {
            changed |= setBleed(with, instant.firstPlace(pack), instant.firstPlace(pack + 1));
        }
        if (changed) {
            solve(now);
        }
    }

    private void solve(CellStates state) {
        instant.solve(state.emf, state.r0, demand);
        limit = demand.limit(instant.emf, instant.ohms);
    }

    private boolean setBleed(Balancer with, int first, int end) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int place = first; place < end; place++) {
            unbledVolts[place] = instant.voltsUnbled(place);
            lowest = Math.min(lowest, unbledVolts[place]);
        }
        boolean changed = false;
        for (int place = first; place < end; place++) {
            boolean bled = unbledVolts[place] > lowest + with.withinVolts();
            changed |= bled != bleedAmps[place] > 0;
            bleedAmps[place] = bled ? with.meanAmps() : 0;
        }
        return changed;
    }

    Tally tally() {
        return tally;
    }

    /** Which limit of the demand holds at the instant shown. */
    Demand.Limit limit() {
        return limit;
    }

    /** The most the packs could give at the instant shown [W]. */
    double mostWatts() {
        return instant.emf * instant.emf / (4 * instant.ohms);
    }

    double beganSeconds() {
        return beganSeconds;
    }

    @Override
    public double seconds() {
        return acceptedSeconds + aheadSeconds;
    }

    @Override
    public double stepSeconds() {
        return seconds() - beganSeconds;
    }

    @Override
    public int step() {
        return step;
    }

    @Override
    public double volts() {
        return instant.volts;
    }

    @Override
    public double amps() {
        return instant.amps;
    }

    @Override
    public double stepCoulombs() {
        return aheadSeconds == 0 ? stepCoulombs : stepCoulombs + Math.abs(mean.amps) * aheadSeconds;
    }

    @Override
    public int packs() {
        return instant.packs();
    }

    @Override
    public double packAmps(int pack) {
        return instant.packAmps[pack];
    }

    @Override
    public int cells() {
        return firstAmps.length;
    }

    @Override
    public double cellVolts(int cell) {
        return instant.placeVolts[instant.placeOf(cell)];
    }

    @Override
    public double cellRestVolts(int cell) {
        return shown.restVolts(cell);
    }

    @Override
    public double cellCharge(int cell) {
        return shown.charge(cell);
    }

    @Override
    public double cellAmps(int cell) {
        return instant.cellAmps[cell];
    }

    @Override
    public double cellKelvins(int cell) {
        return shown.kelvins(cell);
    }

    @Override
    public double lowestCellVolts() {
        return instant.lowestVolts;
    }

    @Override
    public double highestCellVolts() {
        return instant.highestVolts;
    }

    @Override
    public double lowestCellCharge() {
        return bank.lowestCharge();
    }

    @Override
    public double highestCellCharge() {
        return bank.highestCharge();
    }

    @Override
    public double hottestKelvins() {
        return bank.hottestKelvins();
    }
}
