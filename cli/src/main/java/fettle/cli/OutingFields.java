package fettle.cli;

import static fettle.cli.KitFields.or;

import fettle.engine.outing.Outing;
import fettle.workshop.OutingForm;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that describe an outing. A mixin. */
final class OutingFields implements KitFields<Outing> {
    @Option(names = "--date", paramLabel = "DATE", description = "The day at the field, e.g. 2026-05-16.")
    private @Nullable String date;

    @Option(
            names = "--zone",
            paramLabel = "ZONE",
            description = "Time zone of every time, e.g. Europe/Zurich. Default: this computer's.")
    private @Nullable String zone;

    @Option(names = "--leave-home", paramLabel = "TIME", description = "E.g. 08:00, or day before 19:00.")
    private @Nullable String leaveHome;

    @Option(names = "--arrive", paramLabel = "TIME", description = "When the field is reached.")
    private @Nullable String arrive;

    @Option(names = "--pack-up", paramLabel = "TIME", description = "When the last pack is off the chargers there.")
    private @Nullable String packUp;

    @Option(
            names = "--back-home",
            paramLabel = "TIME",
            description = "When home is reached. Default: as long as the way there.")
    private @Nullable String backHome;

    @Option(names = "--ambient", paramLabel = "TEMPERATURE", description = "At the field, e.g. 18C.")
    private @Nullable String ambient;

    @Option(
            names = "--attended",
            paramLabel = "LINE",
            description = "When somebody is with the chargers, e.g. \"home day before 19:00 to 22:30\". Repeat it."
                    + " Default: the whole time at the field. Nothing is charged at other times.")
    private @Nullable List<String> attended;

    @Option(
            names = "--feed",
            paramLabel = "LINE",
            description = "Place, charger and source, e.g. \"field: field-pair on field-box; 85 %%; 09:00 to 12:00\"."
                    + " Repeat it.")
    private @Nullable List<String> feeds;

    @Option(names = "--packs", paramLabel = "TAGS", description = "Packs that may be used, e.g. P01,P02.")
    private @Nullable String packs;

    @Option(
            names = "--run",
            paramLabel = "LINE",
            description = "Runs wanted, e.g. \"Harrier x3; value 5; 09:30 to 15:00; 8 min; gap 10 min; takes 70 %%\"."
                    + " Repeat it.")
    private @Nullable List<String> runs;

    @Option(
            names = "--goal",
            paramLabel = "WORDS",
            description = "A goal, the most important first, e.g. \"the earliest finish\". Repeat it.")
    private @Nullable List<String> goals;

    @Option(
            names = "--storage-by",
            paramLabel = "TIME",
            description = "When every pack should be at storage again. Default: the end of the last attended time.")
    private @Nullable String storageBy;

    @Option(names = "--note", paramLabel = "TEXT", description = "Anything else.")
    private @Nullable String note;

    @Override
    public Outing made(String name) {
        return made(name, ZoneOffset.UTC);
    }

    @Override
    public Outing made(String name, ZoneId here) {
        OutingForm empty = new OutingForm("", "", here.getId(), "", "", "", "", "", "", "", "", "", "", "", "");
        return over(empty, name).toOuting();
    }

    @Override
    public Outing changed(Outing present, String name) {
        return over(OutingForm.of(present), name).toOuting();
    }

    private OutingForm over(OutingForm was, String name) {
        return new OutingForm(
                name,
                or(date, was.date()),
                or(zone, was.zone()),
                or(leaveHome, was.leaveHome()),
                or(arrive, was.arrive()),
                or(packUp, was.packUp()),
                or(backHome, was.backHome()),
                or(ambient, was.ambient()),
                or(lines(attended), was.attended()),
                or(lines(feeds), was.feeds()),
                or(packs, was.packs()),
                or(lines(runs), was.runs()),
                or(lines(goals), was.goals()),
                or(storageBy, was.storageBy()),
                or(note, was.note()));
    }

    private static @Nullable String lines(@Nullable List<String> given) {
        return given == null ? null : String.join("\n", given);
    }
}
