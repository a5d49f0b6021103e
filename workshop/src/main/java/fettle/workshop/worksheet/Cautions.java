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

    private Cautions() {}
}
