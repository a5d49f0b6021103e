package fettle.workshop.worksheet;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.Linkage;
import fettle.engine.control.linkage.PullPull;
import fettle.engine.control.linkage.TorqueRod;
import fettle.engine.control.servo.Servo;
import fettle.engine.control.setup.SurfaceSetting;
import fettle.engine.units.QuantityText;
import fettle.engine.units.TradeUnit;
import fettle.workshop.Registered;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A surface of a set-up sheet as it would be typed into the fields of a linkage. */
final class SheetWords {
    private static final double PULSE_OF_TURN = TradeUnit.MICROSECOND.toSi(100);

    private SheetWords() {}

    /** The words by field; empty if the surface has no linkage. */
    static Optional<Map<String, String>> of(SurfaceSetting setting, List<Registered<Servo>> servos) {
        Linkage linkage = setting.linkage();
        if (linkage == null) {
            return Optional.empty();
        }
        Map<String, String> words = new HashMap<>(linkage(linkage));
        words.put("chord", QuantityText.write(setting.chordMetres(), TradeUnit.MILLIMETRE));
        words.put("centre", QuantityText.write(setting.centreSeconds(), TradeUnit.MICROSECOND));
        words.put("low", QuantityText.write(setting.lowestSeconds(), TradeUnit.MICROSECOND));
        words.put("high", QuantityText.write(setting.highestSeconds(), TradeUnit.MICROSECOND));
        double way = turnsAgainst(linkage) ? -1 : 1;
        servos.stream()
                .filter(servo -> servo.name().equalsIgnoreCase(setting.servo()))
                .map(servo -> servo.item().scale().radiansPerPulseSecond())
                .findFirst()
                .ifPresentOrElse(
                        slope -> words.put("turn", QuantityText.write(way * slope * PULSE_OF_TURN, TradeUnit.DEGREE)),
                        () -> words.put("turn", way < 0 ? "-10°" : "10°"));
        return Optional.of(words);
    }

    private static boolean turnsAgainst(Linkage linkage) {
        return linkage instanceof TorqueRod rod && rod.turning() == TorqueRod.Turning.AGAINST_SERVO;
    }

    private static Map<String, String> linkage(Linkage linkage) {
        if (linkage instanceof TorqueRod rod) {
            return Map.of(
                    "joined", LinkageFields.TORQUE_ROD,
                    "rod-length", QuantityText.write(rod.lengthMetres(), TradeUnit.MILLIMETRE),
                    "rod-thickness", QuantityText.write(rod.diameterMetres(), TradeUnit.MILLIMETRE));
        }
        boolean cables = linkage instanceof PullPull;
        FourBar bar = linkage instanceof PullPull pair ? pair.first() : (FourBar) linkage;
        return Map.of(
                "joined", cables ? LinkageFields.CABLES : LinkageFields.PUSHROD,
                "arm", QuantityText.write(bar.armMetres(), TradeUnit.MILLIMETRE),
                "horn", QuantityText.write(bar.hornMetres(), TradeUnit.MILLIMETRE),
                "aft", QuantityText.write(bar.hingeXMetres(), TradeUnit.MILLIMETRE),
                "above", QuantityText.write(bar.hingeYMetres(), TradeUnit.MILLIMETRE),
                "arm-direction", QuantityText.write(bar.armNeutralRadians(), TradeUnit.DEGREE),
                "horn-direction", QuantityText.write(bar.hornNeutralRadians(), TradeUnit.DEGREE));
    }
}
