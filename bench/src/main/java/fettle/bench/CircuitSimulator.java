package fettle.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Runs ngspice (Debian package {@code ngspice}) on a netlist and reads what it wrote. */
final class CircuitSimulator {
    private static final double SECONDS_PER_MINUTE = 60;

    private CircuitSimulator() {}

    /**
     * What a run came to.
     *
     * @param rows time, then the outputs
     * @param processSeconds processor time of the whole process
     * @param analysisSeconds analysis time it reports itself
     */
    record Outcome(List<double[]> rows, double processSeconds, double analysisSeconds) {}

    static Outcome run(Path folder, String netlist) throws IOException, InterruptedException {
        Path circuit = Files.writeString(folder.resolve("circuit.cir"), netlist);
        Process process = new ProcessBuilder("sh", "-c", "ngspice -b " + circuit + " 2>&1; times")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String told = new String(process.getInputStream().readAllBytes());
        process.waitFor();
        Path data = folder.resolve("out.data");
        if (!Files.exists(data)) {
            throw new IOException("ngspice made no result:\n" + told);
        }
        List<double[]> rows = Files.readAllLines(data).stream()
                .map(line -> Arrays.stream(line.strip().split("\\s+"))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
        Files.delete(data);
        return new Outcome(rows, childSeconds(told), number(told, "Total analysis time \\(seconds\\) = ([0-9.e+-]+)"));
    }

    /** The second line of the shell's {@code times}: user and system time of its children. */
    private static double childSeconds(String told) {
        Matcher times = Pattern.compile("(\\d+)m([0-9.]+)s (\\d+)m([0-9.]+)s").matcher(told);
        double seconds = 0;
        while (times.find()) {
            seconds = SECONDS_PER_MINUTE * (Integer.parseInt(times.group(1)) + Integer.parseInt(times.group(3)))
                    + Double.parseDouble(times.group(2))
                    + Double.parseDouble(times.group(4));
        }
        return seconds;
    }

    private static double number(String told, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(told);
        return matcher.find() ? Double.parseDouble(matcher.group(1)) : Double.NaN;
    }
}
