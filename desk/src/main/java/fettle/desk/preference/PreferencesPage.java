package fettle.desk.preference;

import fettle.desk.frame.Preferences;
import fettle.desk.frame.Preferences.HourClock;
import fettle.desk.frame.Theme;
import fettle.engine.units.TradeUnit;
import java.util.Arrays;
import java.util.List;

/** The choices with what holds now. */
public record PreferencesPage(List<Question> questions) {

    /** One thing to choose: its key, what it is, and what can be chosen. */
    public record Question(String key, String label, List<Choice> choices) {}

    /** One choice. */
    public record Choice(String value, String label, boolean chosen) {}

    static PreferencesPage of(Preferences now) {
        return new PreferencesPage(List.of(
                new Question(
                        "theme",
                        "Colours",
                        Arrays.stream(Theme.values())
                                .map(theme -> new Choice(theme.name(), theme.label(), theme == now.theme()))
                                .toList()),
                units("temperature", "Temperatures", Preferences.TEMPERATURES, now.temperature()),
                units("length", "Short lengths", Preferences.LENGTHS, now.length()),
                units("torque", "Torques", Preferences.TORQUES, now.torque()),
                new Question(
                        "clock",
                        "Times beside a date",
                        List.of(
                                new Choice(HourClock.HOURS_24.name(), "18:30", now.clock() == HourClock.HOURS_24),
                                new Choice(HourClock.HOURS_12.name(), "6:30 pm", now.clock() == HourClock.HOURS_12)))));
    }

    private static Question units(String key, String label, List<TradeUnit> units, TradeUnit now) {
        return new Question(
                key,
                label,
                units.stream()
                        .map(unit -> new Choice(unit.name(), unit.symbol(), unit == now))
                        .toList());
    }
}
