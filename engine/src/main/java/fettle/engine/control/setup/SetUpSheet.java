package fettle.engine.control.setup;

import fettle.engine.units.InputException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The set-up of one craft on one day.
 *
 * @param craft the craft's name
 * @param date when it was set
 * @param surfaces every surface, each name once
 * @param note free text
 */
public record SetUpSheet(String craft, LocalDate date, List<SurfaceSetting> surfaces, String note) {
    public SetUpSheet {
        surfaces = List.copyOf(surfaces);
        if (craft.isBlank()) {
            throw new InputException("craft", "the sheet names no craft. Say which one it belongs to.");
        }
        long names = surfaces.stream().map(SurfaceSetting::surface).distinct().count();
        if (surfaces.isEmpty() || names < surfaces.size()) {
            throw new InputException(
                    "surfaces",
                    surfaces.isEmpty()
                            ? "the sheet has no surface. Give at least one."
                            : "a surface stands on the sheet twice. Give each its own name.");
        }
    }

    /** A surface by its name. */
    public Optional<SurfaceSetting> surface(String name) {
        return surfaces.stream()
                .filter(setting -> setting.surface().equals(name))
                .findFirst();
    }

    /** What differs from an earlier sheet, surface by surface. */
    public List<Difference> since(SetUpSheet earlier) {
        return Differences.between(earlier, this);
    }
}
