package fettle.engine.control.linkage.choice;

import fettle.engine.control.Caution;
import fettle.engine.working.Working;
import java.util.List;

/**
 * Linkages that give the wanted throws.
 *
 * @param bestFirst least peak torque first; at equal torque the one that uses more of the servo's travel
 * @param tried how many combinations of holes and clockings were looked at
 * @param working how they were ranked
 * @param cautions what to mind when fitting one
 */
public record LinkageChoices(List<LinkageChoice> bestFirst, int tried, Working working, List<Caution> cautions) {
    public LinkageChoices {
        bestFirst = List.copyOf(bestFirst);
        cautions = List.copyOf(cautions);
    }
}
