package fettle.engine.pack.simulation;

import fettle.engine.cell.circuit.Arrhenius;
import fettle.engine.cell.circuit.CellCircuit;
import fettle.engine.cell.circuit.OpenCircuit;
import fettle.engine.cell.circuit.RcPair;
import fettle.engine.cell.circuit.ThermalNode;
import fettle.engine.reference.ReferenceFiles;
import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A netlist of battery/circuits, read for its figures alone, with the key figures stated beside it. */
final class ReferenceCircuit {
    private static final String FOLDER = "battery/circuits/";
    private static final String NUMBER = "([-+0-9.e]+)";
    private static final double KELVINS = TradeUnit.CELSIUS.toSi(25);

    private final String name;
    private final List<String> lines;

    private ReferenceCircuit(String name, List<String> lines) {
        this.name = name;
        this.lines = lines;
    }

    static ReferenceCircuit read(String name) {
        return new ReferenceCircuit(name, ReferenceFiles.lines(FOLDER + name + ".cir"));
    }

    /** All numbers captured by a pattern, over all lines it is found in. "#" in the pattern stands for a number. */
    List<double[]> all(String pattern) {
        Pattern wanted = Pattern.compile(pattern.replace("#", NUMBER));
        List<double[]> found = new ArrayList<>();
        for (String line : lines) {
            Matcher matcher = wanted.matcher(line);
            if (matcher.find()) {
                double[] numbers = new double[matcher.groupCount()];
                Arrays.setAll(numbers, i -> Double.parseDouble(matcher.group(i + 1)));
                found.add(numbers);
            }
        }
        return found;
    }

    double[] numbers(String pattern) {
        return all(pattern).get(0);
    }

    /** The rest-voltage points of the first cell; all cells of a netlist share them. */
    OpenCircuit curve() {
        String line = lines.stream().filter(l -> l.contains("pwl(")).findFirst().orElseThrow();
        String inside = line.substring(line.indexOf(',') + 1, line.lastIndexOf(')'));
        double[] points = Arrays.stream(inside.split(","))
                .mapToDouble(Double::parseDouble)
                .toArray();
        double[] charge = new double[points.length / 2];
        double[] volts = new double[charge.length];
        Arrays.setAll(charge, row -> points[2 * row]);
        Arrays.setAll(volts, row -> points[2 * row + 1]);
        return OpenCircuit.of(charge, volts);
    }

    /** Cells with one pair, in the order of the netlist. */
    List<CellAt> cells() {
        OpenCircuit curve = curve();
        return all("cell \\d+: # Ah, soc #, R0 #, R1 #, C1 #").stream()
                .map(f -> new CellAt(
                        CellCircuit.of(
                                TradeUnit.AMPERE_HOUR.toSi(f[0]), curve, f[2], new RcPair(f[3], f[4]), RcPair.NONE),
                        f[1],
                        KELVINS))
                .toList();
    }

    Bench onePack() {
        return Bench.of(PackCircuit.series(name, 0, cells().toArray(CellAt[]::new)), KELVINS);
    }

    /** A string with the resistor Rb… across each of its cells. */
    Bench bled() {
        List<double[]> resistors = all("^Rb\\d+ \\S+ \\S+ #");
        List<CellAt> cells = cells();
        List<SeriesGroup> groups = new ArrayList<>();
        for (int cell = 0; cell < cells.size(); cell++) {
            groups.add(new SeriesGroup(List.of(cells.get(cell)), resistors.get(cell)[0]));
        }
        return Bench.of(new PackCircuit(name, groups, 0), KELVINS);
    }

    /** Equal strings joined through the resistor Rl… of each. */
    Bench joined() {
        List<double[]> leads = all("^Rl\\d+ \\S+ \\S+ #");
        List<CellAt> cells = cells();
        int series = cells.size() / leads.size();
        List<PackCircuit> packs = new ArrayList<>();
        for (int pack = 0; pack < leads.size(); pack++) {
            CellAt[] own = cells.subList(pack * series, (pack + 1) * series).toArray(CellAt[]::new);
            packs.add(PackCircuit.series("pack" + (pack + 1), leads.get(pack)[0], own));
        }
        return new Bench(packs, Optional.empty(), KELVINS);
    }

    /** The cell with two pairs, heat and temperature law, from the netlist's parameters. */
    Bench warm() {
        CellCircuit cell = CellCircuit.of(
                        TradeUnit.AMPERE_HOUR.toSi(parameter("Q")),
                        curve(),
                        parameter("R0"),
                        new RcPair(parameter("R1"), parameter("C1")),
                        new RcPair(parameter("R2"), parameter("C2")))
                .with(new Arrhenius(parameter("EA")), new ThermalNode(parameter("CTH"), parameter("GTH")));
        double ambient = TradeUnit.CELSIUS.toSi(parameter("TA"));
        return Bench.of(PackCircuit.series(name, 0, new CellAt(cell, numbers("^Cs s 0 1 IC=#")[0], ambient)), ambient);
    }

    double parameter(String symbol) {
        return numbers("^\\.param.* " + symbol + "=#")[0];
    }

    /** Key figures of README.md: "name value" pairs in its row of the table. */
    Map<String, Double> keyFigures() {
        String row = ReferenceFiles.lines(FOLDER + "README.md").stream()
                .filter(line -> line.startsWith("| " + name + " |"))
                .findFirst()
                .orElseThrow();
        Map<String, Double> figures = new LinkedHashMap<>();
        Matcher matcher = Pattern.compile("(\\w*_\\w*) (-?[0-9.]+)").matcher(row.split("\\|")[4]);
        while (matcher.find()) {
            figures.put(matcher.group(1), Double.parseDouble(matcher.group(2)));
        }
        return figures;
    }

    /** A row of the table in MORE.md, in this circuit's column. */
    double[] more(String label) {
        List<String> table = ReferenceFiles.lines(FOLDER + "MORE.md");
        String[] head = table.stream()
                .filter(line -> line.startsWith("| | "))
                .findFirst()
                .orElseThrow()
                .split("\\|");
        int column = Arrays.stream(head).map(String::strip).toList().indexOf(name);
        String row = table.stream()
                .filter(line -> line.startsWith("| " + label))
                .findFirst()
                .orElseThrow();
        return Arrays.stream(row.split("\\|")[column].split("[ ,(]+"))
                .filter(word -> word.matches("-?[0-9.]+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    /** The result series of the circuit simulator. */
    List<double[]> series() {
        return ReferenceFiles.rows(FOLDER + name + ".csv").stream()
                .map(row -> Arrays.stream(row).mapToDouble(Double::parseDouble).toArray())
                .toList();
    }
}
