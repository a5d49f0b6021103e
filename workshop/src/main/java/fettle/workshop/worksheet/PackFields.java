package fettle.workshop.worksheet;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.model.CellModel;
import fettle.engine.pack.model.PackModel;
import fettle.engine.rule.Limits;
import fettle.engine.rule.RuleSet;
import fettle.engine.units.Measure;
import fettle.engine.units.TradeUnit;
import fettle.workshop.CellsText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The fields by which every worksheet learns of a pack, and the pack they make. */
final class PackFields {
    static final WorksheetField CHEMISTRY = WorksheetField.choice(
            "chemistry",
            "Chemistry",
            "As on the label.",
            "LiPo",
            Arrays.stream(Chemistry.values()).map(Chemistry::label).toList());
    static final WorksheetField CELLS = WorksheetField.line("cells", "Cells", "In series, e.g. 4S or 6S2P.", "");
    private static final WorksheetField CAPACITY =
            WorksheetField.line("capacity", "Capacity", "Of the pack, e.g. 5000 mAh.", "");
    private static final WorksheetField CHARGE = WorksheetField.line(
            "charge", "Charge now", "A share, e.g. 40 %, or rest volts, one for all cells or one each.", "");
    private static final WorksheetField RESISTANCE = WorksheetField.line(
            "resistance",
            "Resistance per cell",
            "In mΩ at 25 °C, as a load step shows it, one for all cells or one each. A 1 kHz meter reads about two"
                    + " thirds of that.",
            "");
    private static final WorksheetField LEADS =
            WorksheetField.line("leads", "Leads and connector", "Together, in mΩ.", "2 mΩ");
    private static final WorksheetField MASS =
            WorksheetField.line("mass", "Mass", "Of the pack, in g. Left out: from its energy.", "");
    private static final WorksheetField TEMPERATURE =
            WorksheetField.line("temperature", "Pack temperature", "In °C.", "25 °C");
    private static final WorksheetField AIR = WorksheetField.line("air", "Air temperature", "In °C.", "25 °C");

    private static final double ANY_COULOMBS = 3600;
    private static final double ANY_KELVINS = 298.15;

    private PackFields() {}

    /** All of them, those of the worksheet itself after the most wanted. */
    static List<WorksheetField> with(WorksheetField... own) {
        return Stream.of(
                        Stream.of(CHEMISTRY, CELLS, CAPACITY, CHARGE, RESISTANCE),
                        Arrays.stream(own),
                        Stream.of(LEADS, MASS, TEMPERATURE, AIR))
                .flatMap(stream -> stream)
                .toList();
    }

    /** The same for a pack that is taken as full. */
    static List<WorksheetField> fullWith(WorksheetField... own) {
        return with(own).stream().filter(field -> field != CHARGE).toList();
    }

    static Chemistry chemistry(Typed typed) {
        return typed.read("chemistry", () -> Chemistry.parse(typed.word("chemistry")), Chemistry.LIPO);
    }

    static Limits limits(Chemistry chemistry) {
        return RuleSet.of(List.of()).limitsFor(chemistry, null, List.of());
    }

    /** The pack with its charge as typed. */
    static PackModel pack(Typed typed) {
        Chemistry chemistry = chemistry(typed);
        CellsText cells = cells(typed);
        List<Double> charges = typed.read(
                "charge",
                () -> PerCell.charges(typed.word("charge"), cells.inSeries(), chemistry),
                Collections.nCopies(cells.inSeries(), 0.5));
        return pack(typed, chemistry, cells, charges);
    }

    /** The pack, full. */
    static PackModel fullPack(Typed typed) {
        CellsText cells = cells(typed);
        return pack(typed, chemistry(typed), cells, Collections.nCopies(cells.inSeries(), 1.0));
    }

    private static CellsText cells(Typed typed) {
        return typed.read("cells", () -> CellsText.parse(typed.word("cells")), new CellsText(1, 1));
    }

    private static PackModel pack(Typed typed, Chemistry chemistry, CellsText cells, List<Double> charges) {
        double coulombs = typed.quantity("capacity", Measure.CHARGE, TradeUnit.MILLIAMPERE_HOUR, ANY_COULOMBS);
        List<Double> ohms = typed.read(
                "resistance",
                () -> PerCell.ohms(typed.word("resistance"), cells.inSeries()),
                Collections.nCopies(cells.inSeries(), 0.005));
        double leads = typed.quantity("leads", Measure.RESISTANCE, TradeUnit.MILLIOHM, 0);
        double kelvins = typed.quantity("temperature", Measure.TEMPERATURE, TradeUnit.CELSIUS, ANY_KELVINS);
        double air = typed.quantity("air", Measure.TEMPERATURE, TradeUnit.CELSIUS, ANY_KELVINS);
        OptionalDouble mass = typed.optional("mass", Measure.MASS, TradeUnit.GRAM);
        List<CellModel> places = new ArrayList<>(IntStream.range(0, cells.inSeries())
                .mapToObj(cell -> new CellModel(charges.get(cell), coulombs, ohms.get(cell) / cells.inParallel()))
                .toList());
        return typed.make(() -> {
            PackModel pack = PackModel.uniform("pack", chemistry, cells.inSeries(), coulombs, 0.5, 0.005)
                    .withCells(places)
                    .withLead(leads)
                    .at(kelvins, air);
            return mass.isPresent() ? pack.withMass(mass.getAsDouble()) : pack;
        });
    }
}
