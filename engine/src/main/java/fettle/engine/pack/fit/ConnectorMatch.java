package fettle.engine.pack.fit;

import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import java.util.Optional;

/** Whether a pack's connector goes into a craft's. */
public final class ConnectorMatch {
    private ConnectorMatch() {}

    /** Why it does not; empty if it does, or if one of them is not stated. */
    public static Optional<String> misfit(Craft craft, Pack pack) {
        boolean stated = !craft.connector().isBlank() && !pack.connector().isBlank();
        return stated && !craft.connector().equalsIgnoreCase(pack.connector())
                ? Optional.of(craft.name() + " has a " + craft.connector() + " connector, " + pack.tag() + " a "
                        + pack.connector())
                : Optional.empty();
    }
}
