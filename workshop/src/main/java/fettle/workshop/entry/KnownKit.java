package fettle.workshop.entry;

import fettle.engine.pack.Craft;
import java.util.List;
import java.util.Optional;

/** The registered names a line can use. Case never matters. */
public interface KnownKit {
    Optional<KnownPack> pack(String tag);

    /** The registered tags most like a mistyped one; empty if there is no pack at all. */
    List<String> tagsNear(String tag);

    Optional<Craft> craft(String name);

    /** The registered craft names most like a mistyped one; empty if there is no craft at all. */
    List<String> craftNear(String name);
}
