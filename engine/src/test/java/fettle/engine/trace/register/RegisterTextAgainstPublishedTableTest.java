package fettle.engine.trace.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.engine.reference.ReferenceFiles;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Worked decodes of the Smart Battery Data Specification 1.1: packings and bits as read in three independent secondary
 * copies (see {@code standards/smart_battery.md} of the reference folder). Exact, letter for letter.
 */
final class RegisterTextAgainstPublishedTableTest {
    private static final Pattern CONDITION = Pattern.compile("^(\\w+)(?: \\((.*)\\))?$");

    @Test
    void decodesEveryWorkedCase() {
        List<String[]> cases = ReferenceFiles.rows("standards/sbs_decode_cases.csv");
        for (String[] row : cases) {
            Matcher named = CONDITION.matcher(row[0]);
            assertThat(named.matches()).as(row[0]).isTrue();
            Register register = Register.named(named.group(1)).orElseThrow();
            int raw = Integer.decode(row[1]);
            assertThat(raw).isEqualTo(Integer.parseInt(row[2]));
            assertThat(RegisterText.of(register, raw, scaling(named.group(2))))
                    .as("%s %s", row[0], row[1])
                    .isEqualTo(row[3].replace("degC", "°C"));
        }
        assertThat(cases).hasSizeGreaterThanOrEqualTo(30);
    }

    private static Scaling scaling(String condition) {
        String said = condition == null ? "" : condition;
        int mode = said.contains("CAPACITY_MODE=1") ? 0x8000 : 0;
        int specification = said.contains("ipscale=10^1") ? 0x1031 : 0x0031;
        return Scaling.of(specification, mode);
    }

    @Test
    void knowsEveryWordRegisterOfTheTable() {
        int known = 0;
        for (String[] row : ReferenceFiles.rows("standards/sbs_registers.csv")) {
            if (row[2].contains("block") || row[1].startsWith("OptionalMfg")) {
                continue;
            }
            assertThat(Register.named(row[0]))
                    .as(row[0])
                    .isEqualTo(Register.named(row[1]))
                    .isPresent();
            known++;
        }
        assertThat(known).isEqualTo(Register.values().length);
    }

    @Test
    void turnsTheSignOfTheCurrent() {
        assertThat(RegisterText.dischargeAmps(0xEC78, Scaling.PLAIN)).isEqualTo(5.0);
        assertThat(RegisterText.dischargeAmps(0x1388, Scaling.PLAIN)).isEqualTo(-5.0);
        assertThat(RegisterText.volts(0x3138, Scaling.of(0x0131, 0))).isCloseTo(126.0, within(1e-9));
        assertThat(RegisterText.kelvins(0x0BA6)).isCloseTo(298.2, within(1e-9));
    }
}
