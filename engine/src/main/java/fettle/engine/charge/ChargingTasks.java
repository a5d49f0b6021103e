package fettle.engine.charge;

import fettle.engine.cell.Chemistry;
import fettle.engine.cell.DefaultCurves;
import fettle.engine.cell.RestCurve;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.Pack;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.units.Estimate;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.CitationStatus;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Charge, storage and balance tasks of a pack that may be charged. */
final class ChargingTasks {
    private static final String ATTEND =
            "Stay with it: hard bare surface, nothing near that burns, charger set to this chemistry and cell count, %s"
                    + "pack between %s and %s. The maker's instructions come first.";

    /** Longer times are told in hours. */
    private static final double LONG_SECONDS = TradeUnit.HOUR.toSi(2);

    /** A charge takes longer than charge over current, for the taper at its end. From memory. */
    private static final double TAPER = 1.2;

    private static final double NIMH_CHARGE_FACTOR = 1.5;

    private static final double ENOUGH_FRACTION = 0.90;

    private final Assessment assessment;
    private final Pack pack;
    private final Limits limits;
    private final Means means;
    private final Instant now;
    private final RestCurve curve;

    ChargingTasks(Assessment assessment, Limits limits, Means means, Instant now) {
        this.assessment = assessment;
        this.pack = assessment.pack();
        this.limits = limits;
        this.means = means;
        this.now = now;
        this.curve = DefaultCurves.of(pack.chemistry());
    }

    List<Task> tasks() {
        List<Task> tasks = new ArrayList<>();
        if (isOutsideChargeTemperature()) {
            return tasks;
        }
        balance().ifPresent(tasks::add);
        Estimate charge = assessment.charge();
        if (charge == null) {
            return tasks;
        }
        double high = curve.charge(limits.si(Quantity.STORAGE_HIGH));
        double low = curve.charge(limits.si(Quantity.STORAGE_LOW));
        if (assessment.fullSince() != null && charge.value() > high) {
            tasks.add(toStorageFromAbove(charge, high, assessment.fullSince()));
        } else if (charge.value() < limits.si(Quantity.RESERVE) && charge.value() < low) {
            tasks.add(charging(
                    TaskKind.STORE,
                    charge,
                    low,
                    now,
                    "below reserve; storage band from "
                            + limits.rule(Quantity.STORAGE_LOW).print()));
        }
        if (charge.value() < ENOUGH_FRACTION) {
            tasks.add(charging(TaskKind.CHARGE, charge, 1, null, "at " + TradeUnit.PERCENT.print(charge, 0)));
        }
        return tasks;
    }

    private boolean isOutsideChargeTemperature() {
        Double kelvins = assessment.temperatureKelvins();
        return kelvins != null
                && (kelvins < limits.si(Quantity.CHARGE_COLDEST) || kelvins > limits.si(Quantity.CHARGE_WARMEST));
    }

    private Task toStorageFromAbove(Estimate charge, double high, Instant fullSince) {
        Estimate out = coulombs(charge, charge.value() - high);
        Optional<DischargeCurrent> current = means.bestDischarge(pack);
        String how = current.map(found -> " at " + found.print() + ", about " + minutes(out.times(1 / found.amps()))
                        + " on " + found.place().print())
                .orElse("; no registered port discharges it: use it in a craft, then check it");
        List<Step> steps = new ArrayList<>(List.of(storageStep(charge, high, out)));
        current.ifPresent(found -> steps.add(found.step(pack)));
        Instant due = fullSince.plusSeconds((long) limits.si(Quantity.STORAGE_TIME));
        return new Task(
                TaskKind.STORE,
                pack.tag(),
                "Use it, or discharge " + TradeUnit.MILLIAMPERE_HOUR.print(out, 0) + " to the storage band" + how + ".",
                "full since " + fullSince.toString().substring(0, 10) + "; kept full at most "
                        + limits.rule(Quantity.STORAGE_TIME).print(),
                due,
                "Stay with it while it discharges; never below the storage band.",
                new Working(steps));
    }

    private Step storageStep(Estimate charge, double high, Estimate out) {
        return new Step(
                "discharge to storage",
                "(z − z(top of the storage band)) · capacity",
                List.of(
                        "z = " + TradeUnit.PERCENT.print(charge, 0),
                        "top of the band " + limits.rule(Quantity.STORAGE_HIGH).print() + " = "
                                + TradeUnit.PERCENT.print(high, 0),
                        "capacity = "
                                + TradeUnit.MILLIAMPERE_HOUR.print(
                                        assessment.capacity().plannedCoulombs(), 0)),
                TradeUnit.MILLIAMPERE_HOUR.print(out, 0),
                limits.rule(Quantity.STORAGE_HIGH).citation());
    }

    private Task charging(TaskKind kind, Estimate charge, double target, @Nullable Instant due, String reason) {
        Estimate in = coulombs(charge, target - charge.value()).times(chargeInPerChargeHeld());
        String goal = target >= 1 ? "" : " to the storage band";
        Optional<ChargeCurrent> current = means.bestCharge(assessment, limits);
        if (current.isEmpty()) {
            return new Task(
                    kind,
                    pack.tag(),
                    "Charge " + TradeUnit.MILLIAMPERE_HOUR.print(in, 0) + goal + ": no registered charger takes "
                            + pack.chemistry().label() + " " + pack.arrangement() + ".",
                    reason,
                    due,
                    attend(),
                    Working.NONE);
        }
        ChargeCurrent found = current.get();
        Estimate seconds = in.times((target >= 1 ? TAPER : 1) / found.amps());
        return new Task(
                kind,
                pack.tag(),
                "Charge " + TradeUnit.MILLIAMPERE_HOUR.print(in, 0) + goal + " at " + found.print() + " on "
                        + found.charger().name() + " port " + found.port().number() + ", about "
                        + minutes(seconds) + ", " + end(target) + ".",
                reason + "; " + found.print() + " because the strictest limit is "
                        + found.binding().what(),
                due,
                attend(),
                Working.of(found.step(pack), timeStep(in, found, seconds, target)));
    }

    private String attend() {
        boolean hasBalanceLead = pack.chemistry().isLithium() && pack.cellsInSeries() > 1;
        return ATTEND.formatted(
                hasBalanceLead ? "balance lead connected, " : "",
                limits.rule(Quantity.CHARGE_COLDEST).print(),
                limits.rule(Quantity.CHARGE_WARMEST).print());
    }

    /** NiMH takes 1.5 times what it gives back at slow charge (published, typical); lithium and lead-acid about all of it. */
    private double chargeInPerChargeHeld() {
        return pack.chemistry() == Chemistry.NIMH ? NIMH_CHARGE_FACTOR : 1;
    }

    private String end(double target) {
        if (pack.chemistry() == Chemistry.NIMH) {
            return "ended by the charger's voltage-dip or temperature cut-off";
        }
        double volts = target >= 1 ? limits.si(Quantity.CHARGE_LIMIT) : limits.si(Quantity.STORAGE_LOW);
        return "to " + TradeUnit.VOLT.print(volts, 2) + " per cell";
    }

    private Optional<Task> balance() {
        return assessment.findings().stream()
                .filter(finding -> finding.id().equals("imbalance"))
                .findFirst()
                .map(finding -> {
                    Estimate apart = assessment.imbalanceCoulombs();
                    String how = means.bestBleed(pack)
                            .filter(place -> apart != null)
                            .map(place -> " on " + place.print() + ", about "
                                    + minutes(apart.times(1 / place.port().bleedAmps()))
                                    + " at its bleed current of "
                                    + TradeUnit.AMPERE.print(place.port().bleedAmps(), 2))
                            .orElse("; no registered port states a bleed current");
                    return new Task(
                            TaskKind.BALANCE,
                            pack.tag(),
                            "Balance" + how + ".",
                            finding.statement(),
                            null,
                            attend(),
                            finding.working());
                });
    }

    private Estimate coulombs(Estimate charge, double fraction) {
        double capacity = assessment.capacity().plannedCoulombs();
        return new Estimate(
                fraction * capacity,
                charge.standardDeviation() * capacity,
                charge.times(capacity).drivers());
    }

    /** A time on the charger: minutes, or hours once minutes say too much. */
    private static String minutes(Estimate seconds) {
        return seconds.value() < LONG_SECONDS ? TradeUnit.MINUTE.print(seconds, 0) : TradeUnit.HOUR.print(seconds, 1);
    }

    private static Step timeStep(Estimate in, ChargeCurrent current, Estimate seconds, double target) {
        return new Step(
                "charging time",
                target >= 1 ? "charge ÷ current × 1.2 for the taper" : "charge ÷ current",
                List.of("charge = " + TradeUnit.MILLIAMPERE_HOUR.print(in, 0), "current = " + current.print()),
                minutes(seconds),
                new Citation("allowance for the taper", CitationStatus.FROM_MEMORY));
    }
}
