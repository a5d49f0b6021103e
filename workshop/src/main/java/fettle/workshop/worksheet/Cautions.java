package fettle.workshop.worksheet;

/** What to watch, said where the action is. */
final class Cautions {
    static final String CHARGING = "Stay with it while it charges, on a surface that does not burn, charger set to this"
            + " chemistry and cell count. These are sums, not a check of the pack: look at it first."
            + " The maker's instructions come first.";
    static final String STORING =
            "Stay with it while it charges or discharges, on a surface that does not burn; never below"
                    + " the storage band. These are sums, not a check of the pack: look at it first.";
    static final String JOINING =
            "Join only packs checked by cell today, main leads through a fused board, balance leads"
                    + " after the main leads have evened out. The maker's instructions come first.";
    static final String LOADING = "Propeller off or blades removed, wheels clear, while testing a load on the bench."
            + " Stop if a cell falls away from the others.";

    static final String FIELD =
            "Fuse the leads at the battery, keep its vent clear, and stay while anything charges from it."
                    + " Of a vehicle keep enough to start it. The maker's instructions come first.";
    static final String GENERATOR =
            "Run it outdoors only, well away from people, tents and vehicles: its exhaust kills."
                    + " Let it cool before refuelling.";
    static final String FEEDING =
            "Stay with it: most converters do not stop at a pack's minimum by themselves. Let pack and"
                    + " converter lie open, not in a closed bag. These are sums, not a check of the pack: look at it first.";
    static final String TIMING =
            "Come down at once if power fades, whatever the timer says. Check each cell after the first run with a new"
                    + " setting.";

    private Cautions() {}
}
