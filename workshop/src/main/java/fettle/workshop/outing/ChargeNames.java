package fettle.workshop.outing;

import fettle.planner.problem.Target;

/** Names of planned charges: the way of charging, and what it goes to. */
public final class ChargeNames {
    private static final String TO_STORAGE = " " + Target.STORAGE.label();

    private ChargeNames() {}

    static String of(String way, Target target) {
        return target == Target.STORAGE ? way + TO_STORAGE : way;
    }

    static String wayOf(String name) {
        return isToStorage(name) ? name.substring(0, name.length() - TO_STORAGE.length()) : name;
    }

    static boolean isToStorage(String name) {
        return name.endsWith(TO_STORAGE);
    }
}
