package fettle.engine.pack.fit;

import java.util.List;

/**
 * A pack, or two joined, that does not suit a craft.
 *
 * @param tags its packs
 * @param reasons every reason, with figures
 */
public record Misfit(List<String> tags, List<String> reasons) {
    public Misfit {
        tags = List.copyOf(tags);
        reasons = List.copyOf(reasons);
    }
}
