package fettle.desk.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.workshop.ChargerForm;
import fettle.workshop.CraftForm;
import fettle.workshop.PackForm;
import fettle.workshop.ServoForm;
import fettle.workshop.SourceForm;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class ItemKindsTest {
    @Test
    void asksForEveryWordOfTheWorkshopsForms() {
        List<Class<?>> forms =
                List.of(PackForm.class, CraftForm.class, ChargerForm.class, SourceForm.class, ServoForm.class);

        for (int kind = 0; kind < forms.size(); kind++) {
            assertThat(ItemKinds.all().get(kind).form().fields())
                    .extracting(Field::key)
                    .containsExactlyInAnyOrderElementsOf(
                            Arrays.stream(forms.get(kind).getRecordComponents())
                                    .map(RecordComponent::getName)
                                    .toList());
        }
    }

    @Test
    void refusesAWordThatNoFieldHas() {
        assertThatThrownBy(() -> ItemKinds.all().get(0).form().read().apply(Map.of("tag", "P07", "colour", "red")))
                .isInstanceOfSatisfying(
                        InputException.class,
                        refused -> assertThat(refused.faults())
                                .extracting(Fault::field)
                                .containsExactly("colour"));
    }
}
