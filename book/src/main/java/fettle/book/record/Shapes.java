package fettle.book.record;

import fettle.engine.control.servo.Servo;
import fettle.engine.control.setup.SetUpSheet;
import fettle.engine.control.sweep.SurfaceSweep;
import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.Outing;
import fettle.engine.pack.ChargeRecord;
import fettle.engine.pack.Check;
import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Run;
import fettle.engine.rule.RuleOverride;
import fettle.engine.supply.Charger;
import fettle.engine.supply.Source;
import fettle.engine.trace.TraceRecord;
import java.util.List;

/** The shape of every kind. */
public final class Shapes {
    public static final Shape<Pack> PACK = new PackShape();
    public static final Shape<Craft> CRAFT = new CraftShape();
    public static final Shape<Source> SOURCE = new SourceShape();
    public static final Shape<Charger> CHARGER = new ChargerShape();
    public static final Shape<Check> CHECK = new CheckShape();
    public static final Shape<ChargeRecord> CHARGE = new ChargeShape();
    public static final Shape<Run> RUN = new RunShape();
    public static final Shape<RuleOverride> RULE = new RuleShape();
    public static final Shape<TraceRecord> TRACE = new TraceShape();
    public static final Shape<Servo> SERVO = new ServoShape();
    public static final Shape<SetUpSheet> SET_UP_SHEET = new SetUpSheetShape();
    public static final Shape<SurfaceSweep> SURFACE_SWEEP = new SurfaceSweepShape();

    public static final Shape<Outing> OUTING = new OutingShape();
    public static final Shape<KeptPlan> OUTING_PLAN = new OutingPlanShape();

    public static final List<Shape<?>> ALL = List.of(
            PACK,
            CRAFT,
            SOURCE,
            CHARGER,
            CHECK,
            CHARGE,
            RUN,
            RULE,
            TRACE,
            SERVO,
            SET_UP_SHEET,
            SURFACE_SWEEP,
            OUTING,
            OUTING_PLAN);

    private Shapes() {}
}
