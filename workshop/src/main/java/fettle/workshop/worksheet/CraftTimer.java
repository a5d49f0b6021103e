package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Assessment;
import fettle.engine.pack.Craft;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.units.Faults;
import fettle.engine.units.TradeUnit;
import fettle.planner.timer.RunDemand;
import fettle.planner.timer.RunDemands;
import fettle.workshop.CellOhms;
import fettle.workshop.KnownPack;
import fettle.workshop.Workshop;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The timer of a craft with one pack: the worksheet, begun from the record. Capacity and resistance are the pack's of today; the runs
 * are those of the craft with any pack of as many cells, as far as what was put back after them is noted.
 */
public final class CraftTimer {
    private CraftTimer() {}

    /** What it asks for. */
    public static List<WorksheetField> fields() {
        return TimerSheet.WORKSHEET.fields();
    }

    /**
     * The worksheet of a craft and a pack, full to begin with.
     *
     * @param craftName the craft, in any case
     * @param tag the pack
     * @throws fettle.workshop.UnknownNameException if there is no such craft or pack
     */
    public static Worksheet of(Workshop workshop, String craftName, String tag) {
        Craft craft = workshop.craft().find(craftName).item();
        KnownPack known = workshop.review().known(tag);
        Pack pack = known.pack();
        Map<String, String> typed = new HashMap<>();
        typed.put("charge", "100 %");
        typed.put("runs", runs(workshop, craft, pack));
        typed.put("peak", craft.peakAmps() == null ? "" : TradeUnit.AMPERE.print(craft.peakAmps(), 1));
        typed.putAll(pack(known.assessment(), CellOhms.of(known.history())));
        return new Worksheet(
                "timer",
                "Timer of " + craft.name() + " with " + pack.tag(),
                TimerSheet.WORKSHEET.question(),
                fields().stream()
                        .map(field -> typed.containsKey(field.key()) ? field.with(typed.get(field.key())) : field)
                        .toList(),
                given -> {
                    refuseUnlessRuns(craft, known.assessment());
                    return TimerSheet.answer(given);
                });
    }

    private static void refuseUnlessRuns(Craft craft, Assessment assessment) {
        Pack pack = assessment.pack();
        Standing standing = assessment.standing();
        Faults faults = new Faults();
        if (standing == Standing.GROUNDED || standing == Standing.RETIRED) {
            faults.add("pack", pack.tag() + " is " + standing.word() + ": it is not run. Take another pack.");
        }
        Integer cells = craft.cellsInSeries();
        if (cells != null && cells != pack.cellsInSeries()) {
            faults.add(
                    "pack",
                    craft.name() + " takes " + cells + "S, " + pack.tag() + " is " + pack.cellsInSeries()
                            + "S. Take another pack.");
        }
        faults.refuse();
    }

    private static Map<String, String> pack(Assessment assessment, double ohms) {
        Pack pack = assessment.pack();
        Double mass = pack.massKilograms();
        return Map.of(
                "chemistry",
                pack.chemistry().label(),
                "cells",
                pack.arrangement(),
                "capacity",
                TradeUnit.MILLIAMPERE_HOUR.print(assessment.capacity().plannedCoulombs(), 0),
                "resistance",
                TradeUnit.MILLIOHM.print(ohms * pack.cellsInParallel(), 2),
                "mass",
                mass == null ? "" : TradeUnit.GRAM.print(mass, 0));
    }

    /** The runs as the worksheet takes them; where none tells, the current entered for the craft as one run. */
    private static String runs(Workshop workshop, Craft craft, Pack pack) {
        String told = workshop.review().histories().stream()
                .filter(history -> history.pack().cellsInSeries() == pack.cellsInSeries())
                .flatMap(history -> RunDemands.of(history, craft.name()).stream()
                        .map(run -> line(run, history.pack().chemistry())))
                .collect(Collectors.joining("\n"));
        Double typical = craft.typicalAmps();
        return told.isEmpty() && typical != null ? "5 min; " + TradeUnit.AMPERE.print(typical, 1) : told;
    }

    /** What was put back, as noted; as a current where a cell does not keep all of it. */
    private static String line(RunDemand run, Chemistry chemistry) {
        String took = chemistry == Chemistry.NIMH
                ? TradeUnit.AMPERE.print(run.meanAmps(), 2)
                : TradeUnit.MILLIAMPERE_HOUR.print(run.coulombs(), 0);
        return String.format(Locale.ROOT, "%.0f s; %s", run.seconds(), took);
    }
}
