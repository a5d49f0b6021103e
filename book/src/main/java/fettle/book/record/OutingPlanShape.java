package fettle.book.record;

import fettle.engine.outing.KeptPlan;
import fettle.engine.outing.KeptPlan.GoalReached;
import fettle.engine.outing.KeptPlan.PlannedCharge;
import fettle.engine.outing.KeptPlan.PlannedRun;
import fettle.engine.outing.Spot;
import fettle.engine.units.InputException;
import java.util.List;
import java.util.function.Function;

/** Plans of outings as they were answered. */
public final class OutingPlanShape implements Shape<KeptPlan> {
    private static final String OUTING = "outing_id";
    private static final String SENTENCE = "sentence";
    private static final String INPUTS = "outing_plan_input";
    private static final String REMARKS = "outing_plan_remark";
    private static final String CHARGES = "outing_plan_charge";
    private static final String RUNS = "outing_plan_run";
    private static final String GOALS = "outing_plan_goal";

    @Override
    public Kind kind() {
        return Kind.OUTING_PLAN;
    }

    @Override
    public Row toRow(KeptPlan plan, References references) {
        Long outing = references.id(Kind.OUTING, plan.outing());
        if (outing == null) {
            throw new InputException("outing", "outing \"" + plan.outing() + "\" is not in this book.");
        }
        return Row.empty()
                .with(OUTING, outing)
                .with("made_at_utc", plan.madeAt().toString())
                .with("from_utc", plan.from().toString())
                .with("search_seconds", plan.seconds())
                .withParts(INPUTS, rows(plan.inputs(), OutingPlanShape::sentence))
                .withParts(REMARKS, rows(plan.remarks(), OutingPlanShape::sentence))
                .withParts(CHARGES, rows(plan.charges(), OutingPlanShape::chargeRow))
                .withParts(RUNS, rows(plan.runs(), OutingPlanShape::runRow))
                .withParts(GOALS, rows(plan.goals(), OutingPlanShape::goalRow));
    }

    @Override
    public KeptPlan fromRow(Row row, References references) {
        String outing = references.name(Kind.OUTING, row.whole(OUTING));
        if (outing == null) {
            throw new UnreadableRowException("outing_id " + row.whole(OUTING) + " is no outing of this book");
        }
        return new KeptPlan(
                outing,
                InstantText.read(row, "made_at_utc"),
                InstantText.read(row, "from_utc"),
                items(row, INPUTS, part -> part.text(SENTENCE)),
                items(row, CHARGES, OutingPlanShape::charge),
                items(row, RUNS, OutingPlanShape::run),
                items(row, GOALS, OutingPlanShape::goal),
                items(row, REMARKS, part -> part.text(SENTENCE)),
                row.real("search_seconds"));
    }

    private static <T> List<Row> rows(List<T> items, Function<T, Row> row) {
        return items.stream().map(row).toList();
    }

    private static <T> List<T> items(Row row, String table, Function<Row, T> item) {
        return row.parts(table).stream().map(item).toList();
    }

    private static Row sentence(String sentence) {
        return Row.empty().with(SENTENCE, sentence);
    }

    private static Row chargeRow(PlannedCharge charge) {
        return Row.empty()
                .with("way", charge.way())
                .with("packs", Tags.write(charge.packs()))
                .with("spot", charge.spot().name())
                .with("port", charge.port())
                .with("target", charge.target())
                .with("begins_utc", charge.begins().toString())
                .with("ends_utc", charge.ends().toString())
                .with("from_fraction", charge.fromFraction())
                .with("to_fraction", charge.toFraction())
                .with("source", charge.source())
                .with("source_watts", charge.sourceWatts())
                .with("source_joules", charge.sourceJoules());
    }

    private static PlannedCharge charge(Row row) {
        return new PlannedCharge(
                row.text("way"),
                Tags.read(row.text("packs")),
                Shape.constant(Spot.class, row, "spot"),
                row.text("port"),
                row.text("target"),
                InstantText.read(row, "begins_utc"),
                InstantText.read(row, "ends_utc"),
                row.real("from_fraction"),
                row.real("to_fraction"),
                row.text("source"),
                row.real("source_watts"),
                row.real("source_joules"));
    }

    private static Row runRow(PlannedRun run) {
        return Row.empty()
                .with("run", run.run())
                .with("craft", run.craft())
                .with("packs", Tags.write(run.packs()))
                .with("begins_utc", run.begins().toString())
                .with("ends_utc", run.ends().toString())
                .with("cool_until_utc", run.coolUntil().toString());
    }

    private static PlannedRun run(Row row) {
        return new PlannedRun(
                row.text("run"),
                row.text("craft"),
                Tags.read(row.text("packs")),
                InstantText.read(row, "begins_utc"),
                InstantText.read(row, "ends_utc"),
                InstantText.read(row, "cool_until_utc"));
    }

    private static Row goalRow(GoalReached goal) {
        return Row.empty()
                .with("goal", goal.goal())
                .with("came", goal.came())
                .withFlag("proven", goal.proven())
                .with("gap_fraction", goal.gapFraction());
    }

    private static GoalReached goal(Row row) {
        return new GoalReached(row.text("goal"), row.text("came"), row.flag("proven"), row.real("gap_fraction"));
    }
}
