package fettle.engine.health.forecast;

import fettle.engine.units.TradeUnit;
import java.util.List;

/**
 * One change of use that a forecast is told with.
 *
 * @param change what is done otherwise
 * @param then the use it leads to
 */
public record UseScenario(String change, Use then) {
    /** What people ask about, each against {@link Use#USUAL}. */
    public static final List<UseScenario> ASKED = List.of(
            new UseScenario(
                    "kept full half the time", new Use(0.5, Use.USUAL.keptKelvins(), Use.USUAL.depthFraction())),
            new UseScenario("kept full all the time", new Use(1, Use.USUAL.keptKelvins(), Use.USUAL.depthFraction())),
            new UseScenario("kept at 35 °C", new Use(0, TradeUnit.CELSIUS.toSi(35), Use.USUAL.depthFraction())),
            new UseScenario("run half as deep", new Use(0, Use.USUAL.keptKelvins(), Use.USUAL.depthFraction() / 2)));

    /** Its effect on a pack used as usual. */
    public UseEffect effect() {
        return UseEffect.between(Use.USUAL, then);
    }
}
