package fettle.planner.problem;

import java.util.List;

/** A choice that must stay as it is. */
public sealed interface Lock {
    /** What is locked, in words. */
    String label();

    /**
     * This run is made with these packs, whenever.
     *
     * @param run name of the run
     * @param packs tags of one of its sets
     */
    record RunWith(String run, List<String> packs) implements Lock {
        public RunWith {
            packs = List.copyOf(packs);
        }

        @Override
        public String label() {
            return run + " with " + String.join(" and ", packs);
        }
    }

    /**
     * This run starts at this minute, whatever the pack.
     *
     * @param run name of the run
     * @param startMinute a whole step
     */
    record RunAt(String run, int startMinute) implements Lock {
        @Override
        public String label() {
            return run + " at minute " + startMinute;
        }
    }

    /**
     * This run is left out.
     *
     * @param run name of the run
     */
    record RunNot(String run) implements Lock {
        @Override
        public String label() {
            return "no " + run;
        }
    }

    /**
     * This charge begins at this minute; also one already going on, from the packs' charge now at minute 0.
     *
     * @param way name of the way
     * @param startMinute a whole step
     * @param target what it ends at
     */
    record ChargeAt(String way, int startMinute, Target target) implements Lock {
        @Override
        public String label() {
            return way + " at minute " + startMinute + " " + target.label();
        }
    }

    /**
     * This pack is neither used nor charged.
     *
     * @param pack its tag
     */
    record PackNot(String pack) implements Lock {
        @Override
        public String label() {
            return "not " + pack;
        }
    }
}
