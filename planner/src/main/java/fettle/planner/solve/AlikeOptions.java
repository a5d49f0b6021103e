package fettle.planner.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes one option of those that differ by their port alone. */
final class AlikeOptions {
    private AlikeOptions() {}

    static List<Option> merged(List<Option> options) {
        Map<String, List<Option>> alike = new LinkedHashMap<>();
        for (Option option : options) {
            alike.computeIfAbsent(signature(option), unseen -> new ArrayList<>())
                    .add(option);
        }
        return alike.values().stream()
                .map(same -> same.get(0)
                        .on(same.stream()
                                .flatMap(option -> option.places().stream())
                                .toList()))
                .toList();
    }

    private static String signature(Option option) {
        StringBuilder text = new StringBuilder();
        if (option.isRun() || option.isJoint() || option.key().locked()) {
            text.append(option.key().kind());
        }
        text.append(option.from()).append(' ').append(option.to()).append(' ');
        text.append(option.key().fromFraction()).append(' ').append(option.minutes());
        text.append(' ').append(option.freeTicks()).append(' ').append(option.source());
        text.append(' ').append(option.wattHours()).append(' ').append(option.share());
        text.append(Arrays.toString(option.counts()));
        for (Use use : option.uses()) {
            text.append(use.resource()).append(Arrays.toString(use.amounts()));
        }
        return text.toString();
    }
}
