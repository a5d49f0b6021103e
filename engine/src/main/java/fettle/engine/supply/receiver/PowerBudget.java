package fettle.engine.supply.receiver;

import fettle.engine.working.Working;
import java.util.List;

/**
 * What a supply can bear.
 *
 * @param scenarios from the lightest to the heaviest
 * @param warnings what it cannot bear, the most serious first
 * @param improvements what to change, the most helpful first
 * @param working how it was reached
 */
public record PowerBudget(
        List<ScenarioPower> scenarios, List<PowerWarning> warnings, List<Improvement> improvements, Working working) {
    public PowerBudget {
        scenarios = List.copyOf(scenarios);
        warnings = List.copyOf(warnings);
        improvements = List.copyOf(improvements);
    }

    public ScenarioPower of(Scenario scenario) {
        return scenarios.stream()
                .filter(power -> power.scenario() == scenario)
                .findFirst()
                .orElseThrow();
    }
}
