package fettle.engine.control.swashplate;

import fettle.engine.control.Caution;
import java.util.List;

/**
 * Pulses for a level plate.
 *
 * @param servos names, in the order of every row
 * @param rows one for each height
 * @param cautions what to mind while levelling
 */
public record LevellingSheet(List<String> servos, List<Row> rows, List<Caution> cautions) {
    public LevellingSheet {
        servos = List.copyOf(servos);
        rows = List.copyOf(rows);
        cautions = List.copyOf(cautions);
    }

    /**
     * The plate level at one height.
     *
     * @param heightMetres height [m]
     * @param pulseSeconds pulses that make it level [s]
     * @param trimSeconds what to add to a mix in proportion [s]
     * @param untrimmed where the plate stands without that
     */
    public record Row(
            double heightMetres, List<Double> pulseSeconds, List<Double> trimSeconds, PlateAttitude untrimmed) {
        public Row {
            pulseSeconds = List.copyOf(pulseSeconds);
            trimSeconds = List.copyOf(trimSeconds);
        }
    }
}
