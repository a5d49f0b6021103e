package fettle.engine.pack.simulation;

import java.util.Arrays;

/**
 * Reduces cells to places, packs and one source at the common terminals, meets the demand, and shares the current out.
 *
 * <p>Everything is linear, so each reduction is a Thévenin equivalent and nothing is iterated. Not thread-safe.
 */
final class Ladder {
    private final int[] placeStart;
    private final int[] packStart;
    private final double[] leadOhms;
    private final double[] bleedSiemens;
    private final double[] bleedAmps;
    private final double[] placeEmf;
    private final double[] placeOhms;
    private final double[] packEmf;
    private final double[] packOhms;
    private final int[] placeOfCell;
    private final boolean plain;

    final double[] placeVolts;
    final double[] packAmps;
    final double[] cellAmps;
    double emf;
    double ohms;
    double amps;
    double volts;
    double lowestVolts;
    double highestVolts;

    /**
     * A ladder for a bench.
     *
     * @param bleedAmps currents the balancer draws from each place [A], shared with the caller
     */
    Ladder(Bench bench, double[] bleedAmps) {
        this.bleedAmps = bleedAmps;
        packStart = new int[bench.packs().size() + 1];
        leadOhms = new double[bench.packs().size()];
        for (int pack = 0; pack < leadOhms.length; pack++) {
            packStart[pack + 1] =
                    packStart[pack] + bench.packs().get(pack).groups().size();
            leadOhms[pack] = bench.packs().get(pack).leadOhms();
        }
        SeriesGroup[] places =
                bench.packs().stream().flatMap(pack -> pack.groups().stream()).toArray(SeriesGroup[]::new);
        placeStart = new int[places.length + 1];
        bleedSiemens = new double[places.length];
        for (int place = 0; place < places.length; place++) {
            placeStart[place + 1] = placeStart[place] + places[place].cells().size();
            bleedSiemens[place] = 1 / places[place].bleedOhms();
        }
        placeOfCell = new int[placeStart[places.length]];
        for (int place = 0; place < places.length; place++) {
            Arrays.fill(placeOfCell, placeStart[place], placeStart[place + 1], place);
        }
        placeEmf = new double[places.length];
        placeOhms = new double[places.length];
        placeVolts = new double[places.length];
        packEmf = new double[leadOhms.length];
        packOhms = new double[leadOhms.length];
        packAmps = new double[leadOhms.length];
        cellAmps = new double[placeStart[places.length]];
        plain = leadOhms.length == 1
                && placeStart[places.length] == places.length
                && bench.balancer().isEmpty()
                && Arrays.stream(bleedSiemens).allMatch(siemens -> siemens == 0);
    }

    int packs() {
        return packAmps.length;
    }

    int firstPlace(int pack) {
        return packStart[pack];
    }

    int placeOf(int cell) {
        return placeOfCell[cell];
    }

    /** Volts a place would show without the balancer's current [V]. */
    double voltsUnbled(int place) {
        return placeVolts[place] + bleedAmps[place] * placeOhms[place];
    }

    /** Power lost in leads and in everything that bleeds [W]. */
    double leadWatts() {
        double watts = 0;
        for (int pack = 0; pack < leadOhms.length; pack++) {
            watts += packAmps[pack] * packAmps[pack] * leadOhms[pack];
        }
        return watts;
    }

    double bleedWatts() {
        if (plain) {
            return 0;
        }
        double watts = 0;
        for (int place = 0; place < placeVolts.length; place++) {
            watts += placeVolts[place] * (bleedAmps[place] + bleedSiemens[place] * placeVolts[place]);
        }
        return watts;
    }

    /** Meets a demand from cells of given electromotive forces [V] and resistances [Ω]; volts of the places included. */
    void solve(double[] cellEmf, double[] cellOhms, Demand demand) {
        draw(cellEmf, cellOhms, demand);
        if (plain) {
            sharePlain(cellEmf, cellOhms);
        }
    }

    /** Meets a demand; in a plain string the volts of the places are left as they were. */
    void draw(double[] cellEmf, double[] cellOhms, Demand demand) {
        if (plain) {
            reducePlain(cellEmf, cellOhms);
        } else {
            reducePlaces(cellEmf, cellOhms);
            reducePacks();
        }
        amps = demand.amps(emf, ohms);
        volts = emf - amps * ohms;
        if (plain) {
            packAmps[0] = amps;
            double[] each = cellAmps;
            for (int cell = 0; cell < each.length; cell++) {
                each[cell] = amps;
            }
        } else {
            share(cellEmf, cellOhms);
        }
    }

    private void reducePlain(double[] cellEmf, double[] cellOhms) {
        double sumEmf = 0;
        double sumOhms = leadOhms[0];
        for (int cell = 0; cell < cellEmf.length; cell++) {
            sumEmf += cellEmf[cell];
            sumOhms += cellOhms[cell];
        }
        emf = sumEmf;
        ohms = sumOhms;
    }

    private void sharePlain(double[] cellEmf, double[] cellOhms) {
        double[] each = placeVolts;
        double current = amps;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int cell = 0; cell < cellEmf.length; cell++) {
            double across = cellEmf[cell] - current * cellOhms[cell];
            each[cell] = across;
            lowest = across < lowest ? across : lowest;
            highest = across > highest ? across : highest;
        }
        lowestVolts = lowest;
        highestVolts = highest;
    }

    private void reducePlaces(double[] cellEmf, double[] cellOhms) {
        for (int place = 0; place < placeVolts.length; place++) {
            int first = placeStart[place];
            double sourceEmf = cellEmf[first];
            double sourceOhms = cellOhms[first];
            if (placeStart[place + 1] - first > 1) {
                double siemens = 0;
                double shortAmps = 0;
                for (int cell = first; cell < placeStart[place + 1]; cell++) {
                    siemens += 1 / cellOhms[cell];
                    shortAmps += cellEmf[cell] / cellOhms[cell];
                }
                sourceEmf = shortAmps / siemens;
                sourceOhms = 1 / siemens;
            }
            double share = 1 / (1 + sourceOhms * bleedSiemens[place]);
            placeEmf[place] = (sourceEmf - bleedAmps[place] * sourceOhms) * share;
            placeOhms[place] = sourceOhms * share;
        }
    }

    private void reducePacks() {
        double siemens = 0;
        double shortAmps = 0;
        for (int pack = 0; pack < packAmps.length; pack++) {
            double sumEmf = 0;
            double sumOhms = leadOhms[pack];
            for (int place = packStart[pack]; place < packStart[pack + 1]; place++) {
                sumEmf += placeEmf[place];
                sumOhms += placeOhms[place];
            }
            packEmf[pack] = sumEmf;
            packOhms[pack] = sumOhms;
            siemens += 1 / sumOhms;
            shortAmps += sumEmf / sumOhms;
        }
        boolean alone = packAmps.length == 1;
        emf = alone ? packEmf[0] : shortAmps / siemens;
        ohms = alone ? packOhms[0] : 1 / siemens;
    }

    private void share(double[] cellEmf, double[] cellOhms) {
        lowestVolts = Double.POSITIVE_INFINITY;
        highestVolts = Double.NEGATIVE_INFINITY;
        for (int pack = 0; pack < packAmps.length; pack++) {
            double current = packAmps.length == 1 ? amps : (packEmf[pack] - volts) / packOhms[pack];
            packAmps[pack] = current;
            for (int place = packStart[pack]; place < packStart[pack + 1]; place++) {
                shareInPlace(place, current, cellEmf, cellOhms);
            }
        }
    }

    private void shareInPlace(int place, double current, double[] cellEmf, double[] cellOhms) {
        double across = placeEmf[place] - current * placeOhms[place];
        placeVolts[place] = across;
        lowestVolts = Math.min(lowestVolts, across);
        highestVolts = Math.max(highestVolts, across);
        int first = placeStart[place];
        if (placeStart[place + 1] - first == 1) {
            cellAmps[first] = current + bleedAmps[place] + bleedSiemens[place] * across;
            return;
        }
        for (int cell = first; cell < placeStart[place + 1]; cell++) {
            cellAmps[cell] = (cellEmf[cell] - across) / cellOhms[cell];
        }
    }
}
