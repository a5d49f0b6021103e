package fettle.workshop.sweep;

import fettle.engine.control.sweep.Sweep;
import fettle.engine.control.sweep.SweepAnalysis;
import fettle.engine.control.sweep.SweepComparison;
import fettle.engine.control.sweep.SweepResult;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a file's sweep says.
 *
 * @param file name of the file
 * @param read how it was read
 * @param result the sweep
 * @param sinceEarlier what changed since an earlier sweep; {@code null} if none was given
 */
public record SweepAnswer(
        String file,
        List<String> read,
        SweepResult result,
        @Nullable SweepComparison sinceEarlier) {
    public SweepAnswer {
        read = List.copyOf(read);
    }

    public static SweepAnswer of(SweepReading reading) {
        return new SweepAnswer(reading.file(), reading.read(), SweepAnalysis.of(reading.sweep()), null);
    }

    /** With an earlier sweep of the same surface beside it. */
    public static SweepAnswer of(SweepReading reading, Sweep earlier) {
        SweepResult result = SweepAnalysis.of(reading.sweep());
        return new SweepAnswer(
                reading.file(), reading.read(), result, SweepComparison.of(SweepAnalysis.of(earlier), result));
    }
}
