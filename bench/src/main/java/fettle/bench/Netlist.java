package fettle.bench;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.pack.simulation.Bench;
import fettle.engine.pack.simulation.CellAt;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.PackCircuit;
import fettle.engine.pack.simulation.SeriesGroup;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A bench and one demand as a netlist for a general-purpose circuit simulator. Curves are read at every 5 % of charge. */
final class Netlist {
    private static final int CURVE_ROWS = 21;
    private static final double LEAST_OHMS = 1e-9;

    private final List<String> lines = new ArrayList<>();
    private final List<String> outputs = new ArrayList<>(List.of("v(bus)"));
    private int cells;

    private Netlist() {}

    /**
     * A transient from 0 to a time.
     *
     * @param data file the simulator writes: time, bus volts, then every cell's charge and temperature rise
     */
    static String of(Bench bench, Demand demand, double seconds, double stepSeconds, String data) {
        Netlist netlist = new Netlist();
        netlist.lines.add("bench of packs");
        for (int pack = 0; pack < bench.packs().size(); pack++) {
            netlist.pack(bench.packs().get(pack), pack, bench.ambientKelvins());
        }
        netlist.demand(demand);
        netlist.line("Rref bus 0 1e9");
        netlist.line(".control");
        netlist.line("option reltol=1e-6");
        netlist.line("tran %s %s 0 %s uic", stepSeconds, seconds, stepSeconds);
        netlist.line("set wr_singlescale");
        netlist.line("wrdata %s %s", data, String.join(" ", netlist.outputs));
        netlist.line("rusage all");
        netlist.line(".endc");
        netlist.line(".end");
        return String.join("\n", netlist.lines) + "\n";
    }

    private void line(String format, Object... figures) {
        lines.add(String.format(Locale.ROOT, format, figures));
    }

    private void pack(PackCircuit pack, int number, double ambientKelvins) {
        String below = "0";
        for (int place = 0; place < pack.groups().size(); place++) {
            String above = "n" + number + "_" + place;
            SeriesGroup group = pack.groups().get(place);
            for (CellAt cell : group.cells()) {
                cell(cell, below, above, ambientKelvins);
            }
            if (Double.isFinite(group.bleedOhms())) {
                line("Rb%d_%d %s %s %s", number, place, above, below, group.bleedOhms());
            }
            below = above;
        }
        line("Rl%d %s bus %s", number, below, Math.max(LEAST_OHMS, pack.leadOhms()));
    }

    private void cell(CellAt at, String below, String above, double ambientKelvins) {
        CellCircuit cell = at.circuit();
        int n = cells++;
        String curve = java.util.stream.IntStream.range(0, CURVE_ROWS)
                .mapToDouble(row -> row / (CURVE_ROWS - 1.0))
                .mapToObj(z ->
                        String.format(Locale.ROOT, "%.9f,%.9f", z, cell.rest().volts(z)))
                .collect(Collectors.joining(","));
        line("Bocv%d o%d %s V=pwl(V(s%d),%s)", n, n, below, n, curve);
        line("Vm%d o%d m%d 0", n, n, n);
        line("Br0%d m%d x%d V=I(Vm%d)*%s*V(k%d)", n, n, n, n, cell.resistances().ohms(0, 0), n);
        line(
                "Bra%d x%d y%d I=V(x%d,y%d)/(%s*V(k%d))",
                n, n, n, n, n, cell.resistances().ohms(1, 0), n);
        line("Ca%d x%d y%d %s IC=0", n, n, n, cell.c1Farads());
        line(
                "Brb%d y%d %s I=V(y%d,%s)/(%s*V(k%d))",
                n, n, above, n, above, cell.resistances().ohms(2, 0), n);
        line("Cb%d y%d %s %s IC=0", n, n, above, cell.c2Farads());
        line("Cs%d s%d 0 1 IC=%s", n, n, at.chargeFraction());
        line("Bs%d s%d 0 I=I(Vm%d)/%s", n, n, n, cell.capacityCoulombs());
        line(
                "Bk%d k%d 0 V=exp(%s*(1/(V(t%d)+%s)-1/298.15))",
                n, n, cell.arrhenius().activationJoulesPerMole() / Arrhenius.GAS_CONSTANT, n, ambientKelvins);
        line("Ct%d t%d 0 %s IC=%s", n, n, cell.thermal().joulesPerKelvin(), at.kelvins() - ambientKelvins);
        line("Gt%d t%d 0 t%d 0 %s", n, n, n, cell.thermal().wattsPerKelvin());
        line("Bt%d 0 t%d I=I(Vm%d)*(V(o%d,%s)-V(%s,%s))", n, n, n, n, below, above, below);
        outputs.add("v(s" + n + ")");
        outputs.add("v(t" + n + ")");
    }

    private void demand(Demand demand) {
        if (demand instanceof Demand.Current current) {
            line("Iload bus 0 %s", current.dischargeAmps());
        } else if (demand instanceof Demand.Power power) {
            line("Bload bus 0 I=%s/max(V(bus),0.5)", power.dischargeWatts());
        } else if (demand instanceof Demand.Resistor load) {
            line("Rload bus 0 %s", load.loadOhms());
        } else if (demand instanceof Demand.Charge charge) {
            String watts = Double.isInfinite(charge.limitWatts())
                    ? charge.limitAmps() + ""
                    : "min(" + charge.limitAmps() + "," + charge.limitWatts() + "/max(V(bus),0.5))";
            line(
                    "Bch 0 bus I=max(0,min(%s,(%s-V(bus))/%s))",
                    watts, charge.limitVolts(), Math.max(LEAST_OHMS, charge.sourceOhms()));
        }
    }
}
