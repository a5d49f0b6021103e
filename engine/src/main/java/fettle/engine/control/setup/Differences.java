package fettle.engine.control.setup;

import fettle.engine.units.TradeUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Compares two sheets as they print: what prints the same is the same. */
final class Differences {
    private static final String ABSENT = "not on the sheet";

    private Differences() {}

    static List<Difference> between(SetUpSheet earlier, SetUpSheet later) {
        List<Difference> found = new ArrayList<>();
        for (SurfaceSetting setting : later.surfaces()) {
            earlier.surface(setting.surface())
                    .ifPresentOrElse(
                            before -> compare(before, setting, found),
                            () -> found.add(new Difference(setting.surface(), "surface", ABSENT, "added")));
        }
        for (SurfaceSetting setting : earlier.surfaces()) {
            if (later.surface(setting.surface()).isEmpty()) {
                found.add(new Difference(setting.surface(), "surface", "on the sheet", "removed"));
            }
        }
        return List.copyOf(found);
    }

    private static void compare(SurfaceSetting before, SurfaceSetting after, List<Difference> found) {
        Map<String, String> was = printed(before);
        Map<String, String> is = printed(after);
        is.forEach((what, value) -> {
            String old = was.getOrDefault(what, ABSENT);
            if (!old.equals(value)) {
                found.add(new Difference(after.surface(), what, old, value));
            }
        });
        was.forEach((what, value) -> {
            if (!is.containsKey(what)) {
                found.add(new Difference(after.surface(), what, value, ABSENT));
            }
        });
    }

    private static Map<String, String> printed(SurfaceSetting setting) {
        Map<String, String> printed = new LinkedHashMap<>();
        printed.put("servo", setting.servo());
        printed.put("direction", setting.reversed() ? "reversed" : "normal");
        printed.put("lower end point", TradeUnit.MICROSECOND.print(setting.lowestSeconds(), 0));
        printed.put("centre", TradeUnit.MICROSECOND.print(setting.centreSeconds(), 0));
        printed.put("upper end point", TradeUnit.MICROSECOND.print(setting.highestSeconds(), 0));
        printed.put("chord", TradeUnit.MILLIMETRE.print(setting.chordMetres(), 1));
        for (Rate rate : setting.rates()) {
            printed.put(
                    rate.name() + " rate",
                    TradeUnit.DEGREE.print(rate.upRadians(), 1) + " up, "
                            + TradeUnit.DEGREE.print(rate.downRadians(), 1) + " down");
        }
        put(printed, "arm hole", setting.armHoleMetres(), TradeUnit.MILLIMETRE, 1);
        put(printed, "horn hole", setting.hornHoleMetres(), TradeUnit.MILLIMETRE, 1);
        if (setting.linkage() != null) {
            printed.put("linkage", LinkageText.of(setting.linkage()));
        }
        put(printed, "current at rest", setting.idleAmps(), TradeUnit.AMPERE, 2);
        put(printed, "largest current", setting.largestAmps(), TradeUnit.AMPERE, 2);
        return printed;
    }

    private static void put(
            Map<String, String> printed, String what, @Nullable Double value, TradeUnit unit, int decimals) {
        if (value != null) {
            printed.put(what, unit.print(value, decimals));
        }
    }
}
