package fettle.engine.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws of reading and writing, on generated input; the seed is in every failure. */
final class QuantityTextLawsTest {
    private static final long SEED = 20260311;
    private static final String ALPHABET = "0123456789.,+-−eE aAcCdfFhHkmMnNoOsvVwWzΩ°%µ\"'\t٣";

    @ParameterizedTest
    @EnumSource(Measure.class)
    void whatIsReadIsWrittenAndReadBackTheSame(Measure measure) {
        Random random = new Random(SEED);
        for (int i = 0; i < 5_000; i++) {
            List<TradeUnit> units = measure.units();
            TradeUnit unit = units.get(random.nextInt(units.size()));
            String typed = random.nextInt(10_000) + "." + random.nextInt(10_000) + unit.symbol();
            double si = QuantityText.si("field", "it", typed, measure, null);
            String written = QuantityText.write(si, measure);

            assertThat(QuantityText.si("field", "it", written, measure, null))
                    .as("seed %d, %s → %s", SEED, typed, written)
                    .isEqualTo(si);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void anyTextGivesAFiniteNumberOrARefusal(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50_000; i++) {
            String typed = anyText(random);
            for (Measure measure : Measure.values()) {
                try {
                    double si = QuantityText.si(
                            "field", "it", typed, measure, measure.units().get(0));
                    assertThat(si).as("seed %d, %s", seed, typed).isFinite();
                } catch (InputException refused) {
                    assertThat(refused.faults()).as("seed %d, %s", seed, typed).hasSize(1);
                }
            }
        }
    }

    private static String anyText(Random random) {
        StringBuilder text = new StringBuilder();
        for (int length = random.nextInt(14); length > 0; length--) {
            text.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return text.toString();
    }
}
