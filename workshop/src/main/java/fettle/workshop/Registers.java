package fettle.workshop;

import fettle.book.intake.LogFile;
import fettle.book.intake.RegisterDump;
import fettle.engine.trace.register.Register;
import fettle.engine.trace.register.RegisterText;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Tells what the registers of a pack say (Smart Battery Data Specification 1.1). Needs no book. */
public final class Registers {
    /** More than a pack's own electronics draw: common practice, no source. */
    private static final double AT_REST_AMPS = 0.1;

    private Registers() {}

    /** @throws InputException if the file lists no register */
    public static RegisterReading read(Path file) {
        RegisterDump dump = RegisterDump.read(LogFile.of(file));
        List<RegisterReading.Entry> entries = Arrays.stream(Register.values())
                .filter(dump.words()::containsKey)
                .map(register -> new RegisterReading.Entry(
                        register.label(),
                        String.format(Locale.ROOT, "0x%04X", dump.words().get(register)),
                        dump.text(register).orElseThrow()))
                .toList();
        List<String> remarks = new ArrayList<>(dump.remarks());
        return new RegisterReading(entries, check(dump, remarks), remarks);
    }

    private static String check(RegisterDump dump, List<String> remarks) {
        Map<Register, Integer> words = dump.words();
        if (!words.containsKey(Register.VOLTAGE) || !words.containsKey(Register.CURRENT)) {
            remarks.add("without Voltage and Current it cannot be taken as a check.");
            return "";
        }
        double amps = RegisterText.dischargeAmps(words.get(Register.CURRENT), dump.scaling());
        if (Math.abs(amps) > AT_REST_AMPS) {
            remarks.add(TradeUnit.AMPERE.print(Math.abs(amps), 2) + " flows: these are no rest volts. Read it again"
                    + " after an hour at rest to take it as a check.");
            return "";
        }
        String volts = TradeUnit.VOLT.print(RegisterText.volts(words.get(Register.VOLTAGE), dump.scaling()), 3);
        Integer warmth = words.get(Register.TEMPERATURE);
        String celsius = warmth == null ? "" : " " + TradeUnit.CELSIUS.print(RegisterText.kelvins(warmth), 1);
        return (volts + celsius).replace(" V", "V").replace(" °C", "C");
    }
}
