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
    private static final double USUAL_SLOPE = TradeUnit.DEGREE.toSi(10) / PULSE_OF_TURN;

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
        Optional<Servo> servo = servos.stream()
                .filter(known -> known.name().equalsIgnoreCase(setting.servo()))
                .map(Registered::item)
                .findFirst();
        double slope = servo.map(known -> known.scale().radiansPerPulseSecond()).orElse(USUAL_SLOPE);
        words.put("turn", QuantityText.write(way * slope * PULSE_OF_TURN, TradeUnit.DEGREE));
        // the lowest voltage of its data: the torque that is left when the battery sags
        servo.map(known -> known.ratings().rising().get(0).stallNewtonMetres())
                .ifPresent(
                        stall -> words.put("torque", QuantityText.write(stall, TradeUnit.KILOGRAM_FORCE_CENTIMETRE)));
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
