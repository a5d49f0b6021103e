package fettle.engine.health.capacity;

import fettle.engine.cell.RestCurve;
import fettle.engine.pack.MeterAccuracy;
import fettle.engine.pack.assessment.RestCharge;
import fettle.engine.units.Estimate;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Charge at rest, the mean of the cells read, with what is random of its error apart from what the curve adds.
 *
 * @param at when it was read
 * @param charge fraction of full
 * @param random standard deviation of what differs from reading to reading
 * @param curve standard deviation of what the curve errs by, the same every time
 */
record RestReading(Instant at, double charge, double random, double curve) {
    /** @param restSeconds time since the last load or charge [s]; {@code null} if not known */
    static RestReading of(
            Instant at, List<Double> cellVolts, @Nullable Double restSeconds, RestCurve curve, MeterAccuracy meter) {
        double settling = RestCharge.restVolts(restSeconds);
        double meterVolts = meter.cellVolts() / Math.sqrt(cellVolts.size());
        List<Estimate> charges = cellVolts.stream()
                .map(each -> RestCharge.of(curve, each, meterVolts, settling))
                .toList();
        double mean = charges.stream().mapToDouble(Estimate::value).average().orElseThrow();
        double deviation = IntStream.range(0, charges.size())
                .mapToDouble(i -> charges.get(i).standardDeviation())
                .average()
                .orElseThrow();
        double band = curve.bandVolts(mean);
        double fixed = Math.hypot(meterVolts, settling);
        double all = Math.hypot(fixed, band);
        return new RestReading(at, mean, deviation * fixed / all, deviation * band / all);
    }
}
