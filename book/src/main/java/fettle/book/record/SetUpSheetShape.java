package fettle.book.record;

import fettle.engine.control.setup.Rate;
import fettle.engine.control.setup.SetUpSheet;
import fettle.engine.control.setup.SurfaceSetting;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;

/** Set-up sheets. A sheet names its craft, which must be registered, so that it follows its renaming. */
public final class SetUpSheetShape implements Shape<SetUpSheet> {
    private static final String SURFACES = "set_up_sheet_surface";
    private static final String RATES = "set_up_sheet_rate";
    private static final String LINKAGES = "set_up_sheet_linkage";

    @Override
    public Kind kind() {
        return Kind.SET_UP_SHEET;
    }

    @Override
    public Row toRow(SetUpSheet sheet, References references) {
        List<Row> rates = sheet.surfaces().stream()
                .flatMap(setting -> setting.rates().stream().map(rate -> rateRow(setting.surface(), rate)))
                .toList();
        return CraftReference.row(sheet.craft(), references)
                .with("dated_on", sheet.date().toString())
                .with("note", sheet.note())
                .withParts(
                        SURFACES,
                        sheet.surfaces().stream()
                                .map(SetUpSheetShape::surfaceRow)
                                .toList())
                .withParts(RATES, rates)
                .withParts(LINKAGES, LinkageRows.of(sheet.surfaces()));
    }

    @Override
    public SetUpSheet fromRow(Row row, References references) {
        return new SetUpSheet(
                CraftReference.name(row, references),
                date(row),
                row.parts(SURFACES).stream()
                        .map(part -> surface(part, row.parts(RATES), row.parts(LINKAGES)))
                        .toList(),
                row.text("note"));
    }

    private static LocalDate date(Row row) {
        String written = row.text("dated_on");
        try {
            return LocalDate.parse(written);
        } catch (DateTimeParseException damaged) {
            throw new UnreadableRowException("dated_on is \"" + written + "\"; expected a date such as 2026-05-16");
        }
    }

    private static Row surfaceRow(SurfaceSetting setting) {
        return Row.empty()
                .with("surface", setting.surface())
                .with("servo", setting.servo())
                .with("lowest_seconds", setting.lowestSeconds())
                .with("centre_seconds", setting.centreSeconds())
                .with("highest_seconds", setting.highestSeconds())
                .withFlag("reversed", setting.reversed())
                .with("chord_metres", setting.chordMetres())
                .with("arm_hole_metres", setting.armHoleMetres())
                .with("horn_hole_metres", setting.hornHoleMetres())
                .with("idle_amps", setting.idleAmps())
                .with("largest_amps", setting.largestAmps());
    }

    private static Row rateRow(String surface, Rate rate) {
        return Row.empty()
                .with("surface", surface)
                .with("name", rate.name())
                .with("up_radians", rate.upRadians())
                .with("down_radians", rate.downRadians());
    }

    private static SurfaceSetting surface(Row row, List<Row> rates, List<Row> linkages) {
        String name = row.text("surface");
        return new SurfaceSetting(
                name,
                row.text("servo"),
                row.real("lowest_seconds"),
                row.real("centre_seconds"),
                row.real("highest_seconds"),
                row.flag("reversed"),
                row.real("chord_metres"),
                rates.stream()
                        .filter(rate -> rate.text("surface").equals(name))
                        .map(rate -> new Rate(rate.text("name"), rate.real("up_radians"), rate.real("down_radians")))
                        .toList(),
                row.realOrNull("arm_hole_metres"),
                row.realOrNull("horn_hole_metres"),
                row.realOrNull("idle_amps"),
                row.realOrNull("largest_amps"),
                LinkageRows.linkage(row, linkages));
    }
}
