package fettle.engine.charge.answer;

import fettle.engine.pack.model.Circuits;
import fettle.engine.pack.model.PackModel;
import fettle.engine.pack.model.Spreading;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.End;
import fettle.engine.pack.simulation.EndKind;
import fettle.engine.pack.simulation.Protocol;
import fettle.engine.pack.simulation.ProtocolStep;
import fettle.engine.pack.simulation.Simulation;
import fettle.engine.pack.simulation.StepOutcome;
import fettle.engine.pack.simulation.Summary;
import fettle.engine.rule.Limits;
import fettle.engine.rule.Quantity;
import fettle.engine.units.Estimate;
import fettle.engine.units.InputException;
import fettle.engine.units.TradeUnit;
import fettle.engine.working.Citation;
import fettle.engine.working.Step;
import fettle.engine.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * Whether packs may be joined side by side for charging, and what then flows.
 *
 * @param mayJoin no current on joining passes what its pack may take, even two standard deviations up
 * @param packs what each pack sees
 * @param settling until no pack's current is above a twentieth of the smallest limit [s]
 * @param leadHeat heat in leads until then [J]
 * @param sharedCharge time of the charge in common [s]; empty if they may not be joined
 * @param first what to bring closer first; empty if they may be joined
 * @param working the steps
 */
public record JoinAnswer(
        boolean mayJoin,
        List<Share> packs,
        Estimate settling,
        Estimate leadHeat,
        Optional<Estimate> sharedCharge,
        Optional<Closer> first,
        Working working) {
    private static final double EQUAL_STEP_SECONDS = 0.5;
    private static final double CHARGE_STEP_SECONDS = 5;
    private static final double SETTLED_SHARE = 0.05;
    private static final double LONGEST_SECONDS = 86_400;
    private static final double SURELY = 2;
    private static final double LEAST_SHARE_OF_LIMIT = 0.25;
    private static final Citation PRACTICE = Citation.commonPractice(
            "on joining, no pack takes more than it may be charged with; currents are followed cell by cell");

    public JoinAnswer {
        packs = List.copyOf(packs);
    }

    /**
     * A pack to be joined.
     *
     * @param pack the pack as it is known; its lead resistance is the one it is joined through
     * @param chargeAmps largest current it may be charged with [A], > 0
     */
    public record Joined(PackModel pack, double chargeAmps) {}

    /**
     * What one pack sees.
     *
     * @param name the pack
     * @param first its current at the instant of joining [A], discharge positive
     * @param allowedAmps largest it may be charged with [A]
     * @param chargeShare its share of the charge current when the charge in common begins; 0 if not joined
     */
    public record Share(String name, Estimate first, double allowedAmps, double chargeShare) {
        boolean isSurelyAllowed() {
            return mostAmps() <= allowedAmps;
        }

        private double mostAmps() {
            return Math.abs(first.value()) + SURELY * first.standardDeviation();
        }
    }

    /**
     * What has to come closer.
     *
     * @param name the pack furthest from the rest
     * @param volts its volts at rest [V]
     * @param towardsVolts bring it at least this close: to here [V]
     */
    public record Closer(String name, double volts, double towardsVolts) {}

    /**
     * Works out joining packs and charging them together.
     *
     * @param joined at least two packs of one chemistry and cell count
     * @param limits the rules that hold for all of them
     * @param means what charges them
     * @throws InputException for unlike packs
     */
    public static JoinAnswer of(List<Joined> joined, Limits limits, ChargeMeans means) {
        AlikePacks.refuseUnlessAlike(joined);
        List<PackModel> packs = joined.stream().map(Joined::pack).toList();
        double settledAmps = SETTLED_SHARE * least(joined);
        List<Estimate> figures = Spreading.ofAll(packs, varied -> figures(equalise(varied, settledAmps)));
        List<Estimate> first = figures.subList(2, figures.size());
        List<Share> apart = shares(joined, first, Optional.empty());
        boolean may = apart.stream().allMatch(Share::isSurelyAllowed);
        Optional<Summary> charge = may ? Optional.of(charge(packs, limits, means)) : Optional.empty();
        return new JoinAnswer(
                may,
                may ? shares(joined, first, charge) : apart,
                figures.get(0),
                figures.get(1),
                charge.map(done -> chargeTime(packs, limits, means)),
                may ? Optional.empty() : Optional.of(closer(joined, first)),
                working(joined, first, figures.get(0)));
    }

    private static double least(List<Joined> joined) {
        return joined.stream().mapToDouble(Joined::chargeAmps).min().orElseThrow();
    }

    private static double[] figures(StepOutcome equalising) {
        return DoubleStream.concat(
                        DoubleStream.of(
                                equalising.seconds(), equalising.passed().leadHeatJoules()),
                        equalising.first().packAmps().stream().mapToDouble(Double::doubleValue))
                .toArray();
    }

    private static Estimate chargeTime(List<PackModel> packs, Limits limits, ChargeMeans means) {
        return Spreading.ofAll(packs, varied ->
                        new double[] {charge(varied, limits, means).lastStep().seconds()})
                .get(0);
    }

    private static StepOutcome equalise(List<PackModel> packs, double settledAmps) {
        return Simulation.run(Circuits.bench(packs, Optional.empty()), Protocol.of(equalising(settledAmps)))
                .lastStep();
    }

    private static ProtocolStep equalising(double settledAmps) {
        return ProtocolStep.of(
                "equalise",
                new Demand.Rest(),
                EQUAL_STEP_SECONDS,
                new End(EndKind.PACK_CURRENTS_AT_MOST, settledAmps),
                End.after(LONGEST_SECONDS));
    }

    private static Summary charge(List<PackModel> packs, Limits limits, ChargeMeans means) {
        double volts = packs.get(0).cells().size() * limits.si(Quantity.CHARGE_LIMIT);
        ProtocolStep step = ProtocolStep.of(
                "charge in common",
                new Demand.Charge(volts, means.amps(), means.terminalWatts(), 0),
                CHARGE_STEP_SECONDS,
                new End(EndKind.CURRENT_AT_MOST, means.endAmps()),
                End.after(LONGEST_SECONDS));
        return Simulation.run(Circuits.bench(packs, means.balancer()), Protocol.of(equalising(means.endAmps()), step));
    }

    private static List<Share> shares(List<Joined> joined, List<Estimate> first, Optional<Summary> charge) {
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < joined.size(); i++) {
            int pack = i;
            double share = charge.map(done -> done.lastStep().first())
                    .map(start -> start.packAmps().get(pack) / start.amps())
                    .orElse(0.0);
            shares.add(new Share(
                    joined.get(i).pack().name(), first.get(i), joined.get(i).chargeAmps(), share));
        }
        return shares;
    }

    /** The pack furthest from the mean of the others, and how close it must come for the smallest allowed current. */
    private static Closer closer(List<Joined> joined, List<Estimate> first) {
        double total = joined.stream().mapToDouble(one -> rest(one.pack())).sum();
        Joined furthest = joined.get(0);
        double gap = 0;
        for (Joined one : joined) {
            double others = (total - rest(one.pack())) / (joined.size() - 1);
            if (Math.abs(rest(one.pack()) - others) > Math.abs(gap)) {
                furthest = one;
                gap = rest(one.pack()) - others;
            }
        }
        double ohms = joined.stream().mapToDouble(one -> ohms(one.pack())).min().orElseThrow();
        double unsure =
                first.stream().mapToDouble(Estimate::standardDeviation).max().orElseThrow();
        double amps = Math.max(LEAST_SHARE_OF_LIMIT * least(joined), least(joined) - SURELY * unsure);
        double allowed = Math.min(Math.abs(gap), amps * (ohms(furthest.pack()) + ohms / (joined.size() - 1)));
        double volts = rest(furthest.pack());
        return new Closer(furthest.pack().name(), volts, volts - gap + Math.copySign(allowed, gap));
    }

    private static double rest(PackModel pack) {
        return Circuits.restVolts(pack);
    }

    private static double ohms(PackModel pack) {
        return pack.leadOhms()
                + pack.cells().stream().mapToDouble(cell -> cell.stepOhms()).sum();
    }

    private static Working working(List<Joined> joined, List<Estimate> first, Estimate settling) {
        List<String> inputs = joined.stream()
                .map(one -> one.pack().name() + " = "
                        + TradeUnit.VOLT.print(rest(one.pack()), 2) + " at rest, "
                        + TradeUnit.MILLIOHM.print(ohms(one.pack()), 1) + " with leads, takes at most "
                        + TradeUnit.AMPERE.print(one.chargeAmps(), 1))
                .toList();
        String currents = first.stream()
                .map(amps -> TradeUnit.AMPERE.print(amps, 2))
                .reduce((a, b) -> a + ", " + b)
                .orElseThrow();
        return Working.of(
                new Step(
                        "currents on joining",
                        "common volts so that all currents sum to 0",
                        inputs,
                        currents,
                        PRACTICE),
                new Step(
                        "until they are even",
                        "currents followed until all are below a twentieth of the smallest limit",
                        List.of(),
                        TradeUnit.MINUTE.print(settling, 1),
                        Circuits.SHAPE));
    }
}
