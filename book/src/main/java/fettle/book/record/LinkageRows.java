package fettle.book.record;

import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.Linkage;
import fettle.engine.control.linkage.PullPull;
import fettle.engine.control.linkage.TorqueRod;
import fettle.engine.control.setup.SurfaceSetting;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Linkages of a sheet's surfaces, a row for each surface that has one. */
final class LinkageRows {
    private static final String PUSHROD = "pushrod";
    private static final String CABLES = "cables";
    private static final String TORQUE_ROD = "torque rod";
    private static final String TORQUE_ROD_AGAINST = "torque rod against servo";

    private LinkageRows() {}

    static List<Row> of(List<SurfaceSetting> surfaces) {
        List<Row> rows = new ArrayList<>();
        for (SurfaceSetting setting : surfaces) {
            Linkage linkage = setting.linkage();
            if (linkage != null) {
                rows.add(row(linkage).with("surface", setting.surface()));
            }
        }
        return rows;
    }

    /** The linkage of a surface's row; {@code null} if it has none. */
    static @Nullable Linkage linkage(Row surface, List<Row> linkages) {
        return linkages.stream()
                .filter(row -> row.text("surface").equals(surface.text("surface")))
                .findFirst()
                .map(row -> linkage(row, surface))
                .orElse(null);
    }

    private static Row row(Linkage linkage) {
        if (linkage instanceof TorqueRod rod) {
            return blank(rod.turning() == TorqueRod.Turning.WITH_SERVO ? TORQUE_ROD : TORQUE_ROD_AGAINST)
                    .with("length_metres", rod.lengthMetres())
                    .with("diameter_metres", rod.diameterMetres())
                    .with("shear_modulus_pascals", rod.shearModulusPascals());
        }
        boolean cables = linkage instanceof PullPull;
        FourBar bar = linkage instanceof PullPull pair ? pair.first() : (FourBar) linkage;
        return blank(cables ? CABLES : PUSHROD)
                .with("aft_metres", bar.hingeXMetres())
                .with("above_metres", bar.hingeYMetres())
                .with("arm_radians", bar.armNeutralRadians())
                .with("horn_radians", bar.hornNeutralRadians());
    }

    private static Row blank(String kind) {
        Row row = Row.empty().with("kind", kind);
        for (String column : List.of(
                "aft_metres",
                "above_metres",
                "arm_radians",
                "horn_radians",
                "length_metres",
                "diameter_metres",
                "shear_modulus_pascals")) {
            row = row.with(column, (Double) null);
        }
        return row;
    }

    private static Linkage linkage(Row row, Row surface) {
        return switch (row.text("kind")) {
            case PUSHROD -> bar(row, surface);
            case CABLES -> PullPull.straight(bar(row, surface));
            case TORQUE_ROD -> rod(row, TorqueRod.Turning.WITH_SERVO);
            case TORQUE_ROD_AGAINST -> rod(row, TorqueRod.Turning.AGAINST_SERVO);
            default -> throw new UnreadableRowException("kind is \"" + row.text("kind") + "\", which no linkage is");
        };
    }

    private static FourBar bar(Row row, Row surface) {
        return new FourBar(
                surface.real("arm_hole_metres"),
                surface.real("horn_hole_metres"),
                row.real("aft_metres"),
                row.real("above_metres"),
                row.real("arm_radians"),
                row.real("horn_radians"));
    }

    private static TorqueRod rod(Row row, TorqueRod.Turning turning) {
        return new TorqueRod(
                turning, row.real("length_metres"), row.real("diameter_metres"), row.real("shear_modulus_pascals"));
    }
}
