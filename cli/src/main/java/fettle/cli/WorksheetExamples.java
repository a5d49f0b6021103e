package fettle.cli;

import fettle.workshop.worksheet.Worksheet;
import fettle.workshop.worksheet.WorksheetField;
import java.util.Map;
import java.util.stream.Collectors;

/** A whole command for each worksheet, for its help. */
final class WorksheetExamples {
    private static final String PACK = "--cells 4S --capacity 5000 --resistance 3 ";
    private static final String LINKAGE = "--arm 10 --horn 15 --aft 100 ";
    private static final Map<String, String> ARGUMENTS = Map.ofEntries(
            Map.entry("charge", PACK + "--charge \"3.84;3.83;3.85;3.84\" --amps 5 --bleed 0.5"),
            Map.entry("storage", PACK + "--charge 90% --amps 5 --discharge 25W"),
            Map.entry("balance", PACK + "--charge \"3.84;3.80;3.85;3.84\" --amps 5"),
            Map.entry(
                    "join",
                    "--cells 4S --amps 8 --packs \"P01; 3.84; 5000; 3; 5A\" --packs \"P02; 3.83; 5000; 3; 5A\""),
            Map.entry("load", PACK + "--charge 95% --load 40A --working"),
            Map.entry("rating", PACK + "--label 150A"),
            Map.entry("cold", PACK + "--charge 95% --load 20A --cold 5"),
            Map.entry(
                    "timer",
                    PACK + "--charge 100% --peak 60 --runs \"6 min; 2900 mAh\" --runs \"5m50; 3100 mAh\""
                            + " --runs \"6 min; 2750 mAh\""),
            Map.entry("field", "--capacity 80Ah --charge 12.6V --uses \"charge P07; 60 Wh; 45 min\""),
            Map.entry("generator", "--watts 1000 --full 4h --quarter 9h --load 400W"),
            Map.entry("usb", "--cells 3S --capacity 2200 --resistance 6 --charge 100% --device 19Wh"),
            Map.entry(
                    "travel",
                    "--packs \"P01; LiPo; 4S; 5000 mAh; spare\" --packs \"P07; LiPo; 6S; 5000 mAh; in craft\""),
            Map.entry("linkage", LINKAGE + "--low 1050 --high 1950"),
            Map.entry("throws", LINKAGE + "--up 12mm --down 10°"),
            Map.entry("holes", "--arms \"8 10 12\" --horns \"12 15 18\" --aft 100 --up 20 --down 15"),
            Map.entry("match", LINKAGE + "--arm-direction-2 80 --up 20 --down 20 --points 5"),
            Map.entry("swashplate", "--layout 120 --ball 30 --arm 15 --height 3 --forward 5"),
            Map.entry("signal", "--servo-centre 760 --servo-span 250 --servo-frame 560Hz --centre 1520"),
            Map.entry("hinge", "--chord 50 --span 300 --speed 120km/h --torque 4kgcm"),
            Map.entry(
                    "servo-power",
                    "--servos \"rudder; 10mA; 0.3A; 1.5A; 600mm; 26; data\" --input 12.6 --output 6 --continuous 3"
                            + " --peak 5"));

    private WorksheetExamples() {}

    /** The command; without an example of its own, the fields that must be typed. */
    static String of(Worksheet worksheet) {
        String arguments = ARGUMENTS.getOrDefault(
                worksheet.word(),
                worksheet.fields().stream()
                        .filter(field -> field.usual().isEmpty())
                        .map(WorksheetField::key)
                        .map(key -> "--" + key + " …")
                        .collect(Collectors.joining(" ")));
        return "fettle work " + worksheet.word() + " " + arguments;
    }
}
