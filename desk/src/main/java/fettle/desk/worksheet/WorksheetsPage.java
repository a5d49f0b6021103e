package fettle.desk.worksheet;

import fettle.workshop.worksheet.Worksheet;
import java.util.List;

/**
 * The list of worksheets.
 *
 * @param all every worksheet
 */
public record WorksheetsPage(List<Worksheet> all) {}
