package fettle.book.record;

import fettle.engine.outing.Attended;
import fettle.engine.outing.Choice;
import fettle.engine.outing.Feed;
import fettle.engine.outing.Happened;
import fettle.engine.outing.Outing;
import fettle.engine.outing.OutingTimes;
import fettle.engine.outing.RunWish;
import fettle.engine.outing.Spot;
import fettle.engine.units.InputException;
import java.util.List;
import java.util.function.Function;

/** Outings. Packs, craft, chargers and sources are kept by id, so that an outing follows their renaming. */
public final class OutingShape implements Shape<Outing> {
    private static final String ATTENDED = "outing_attended";
    private static final String FEEDS = "outing_feed";
    private static final String PACKS = "outing_pack";
    private static final String WISHES = "outing_wish";
    private static final String GOALS = "outing_goal";
    private static final String CHOICES = "outing_choice";
    private static final String HAPPENED = "outing_happened";

    @Override
    public Kind kind() {
        return Kind.OUTING;
    }

    @Override
    public Row toRow(Outing outing, References references) {
        return Row.empty()
                .with("name", outing.name())
                .with("zone", outing.zone())
                .with("leave_home_utc", outing.times().leaveHome().toString())
                .with("arrive_utc", outing.times().arrive().toString())
                .with("pack_up_utc", outing.times().packUp().toString())
                .with("back_home_utc", outing.times().backHome().toString())
                .with("ambient_kelvins", outing.ambientKelvins())
                .with("storage_by_utc", outing.storageBy().toString())
                .with("note", outing.note())
                .withParts(ATTENDED, rows(outing.attended(), OutingShape::attendedRow))
                .withParts(FEEDS, rows(outing.feeds(), feed -> feedRow(feed, references)))
                .withParts(
                        PACKS,
                        rows(
                                outing.packs(),
                                tag -> Row.empty().with("pack_id", id(references, Kind.PACK, "packs", "pack", tag))))
                .withParts(WISHES, rows(outing.wishes(), wish -> wishRow(wish, references)))
                .withParts(GOALS, rows(outing.goals(), goal -> Row.empty().with("goal", goal)))
                .withParts(CHOICES, rows(outing.choices(), OutingShape::choiceRow))
                .withParts(HAPPENED, rows(outing.happened(), OutingShape::happenedRow));
    }

    @Override
    public Outing fromRow(Row row, References references) {
        return new Outing(
                row.text("name"),
                row.text("zone"),
                new OutingTimes(
                        InstantText.read(row, "leave_home_utc"),
                        InstantText.read(row, "arrive_utc"),
                        InstantText.read(row, "pack_up_utc"),
                        InstantText.read(row, "back_home_utc")),
                row.real("ambient_kelvins"),
                items(row, ATTENDED, OutingShape::attended),
                items(row, FEEDS, part -> feed(part, references)),
                items(row, PACKS, part -> name(references, Kind.PACK, part, "pack_id")),
                items(row, WISHES, part -> wish(part, references)),
                items(row, GOALS, part -> part.text("goal")),
                InstantText.read(row, "storage_by_utc"),
                items(row, CHOICES, OutingShape::choice),
                items(row, HAPPENED, OutingShape::happened),
                row.text("note"));
    }

    private static <T> List<Row> rows(List<T> items, Function<T, Row> row) {
        return items.stream().map(row).toList();
    }

    private static <T> List<T> items(Row row, String table, Function<Row, T> item) {
        return row.parts(table).stream().map(item).toList();
    }

    private static Row attendedRow(Attended attended) {
        return Row.empty()
                .with("spot", attended.spot().name())
                .with("from_utc", attended.from().toString())
                .with("until_utc", attended.until().toString());
    }

    private static Attended attended(Row row) {
        return new Attended(
                Shape.constant(Spot.class, row, "spot"),
                InstantText.read(row, "from_utc"),
                InstantText.read(row, "until_utc"));
    }

    private static Row feedRow(Feed feed, References references) {
        return Row.empty()
                .with("spot", feed.spot().name())
                .with("charger_id", id(references, Kind.CHARGER, "feeds", "charger", feed.charger()))
                .with("source_id", id(references, Kind.SOURCE, "feeds", "source", feed.source()))
                .with("efficiency_fraction", feed.efficiencyFraction())
                .with("from_utc", InstantText.orNull(feed.from()))
                .with("until_utc", InstantText.orNull(feed.until()));
    }

    private static Feed feed(Row row, References references) {
        return new Feed(
                Shape.constant(Spot.class, row, "spot"),
                name(references, Kind.CHARGER, row, "charger_id"),
                name(references, Kind.SOURCE, row, "source_id"),
                row.real("efficiency_fraction"),
                InstantText.readOrNull(row, "from_utc"),
                InstantText.readOrNull(row, "until_utc"));
    }

    private static Row wishRow(RunWish wish, References references) {
        return Row.empty()
                .with("craft_id", id(references, Kind.CRAFT, "runs", "craft", wish.craft()))
                .with("count", wish.count())
                .with("value", wish.value())
                .with("earliest_utc", wish.earliest().toString())
                .with("latest_utc", wish.latest().toString())
                .with("duration_seconds", wish.durationSeconds())
                .with("gap_seconds", wish.gapSeconds())
                .with("takes_fraction", wish.takesFraction());
    }

    private static RunWish wish(Row row, References references) {
        return new RunWish(
                name(references, Kind.CRAFT, row, "craft_id"),
                Math.toIntExact(row.whole("count")),
                Math.toIntExact(row.whole("value")),
                InstantText.read(row, "earliest_utc"),
                InstantText.read(row, "latest_utc"),
                row.real("duration_seconds"),
                row.real("gap_seconds"),
                row.realOrNull("takes_fraction"));
    }

    private static Row choiceRow(Choice choice) {
        return Row.empty()
                .with("kind", choice.kind().name())
                .with("subject", choice.subject())
                .with("packs", Tags.write(choice.packs()))
                .with("at_utc", InstantText.orNull(choice.at()));
    }

    private static Choice choice(Row row) {
        return new Choice(
                Shape.constant(Choice.Kind.class, row, "kind"),
                row.text("subject"),
                Tags.read(row.text("packs")),
                InstantText.readOrNull(row, "at_utc"));
    }

    private static Row happenedRow(Happened happened) {
        return Row.empty()
                .with("kind", happened.kind().name())
                .with("subject", happened.subject())
                .with("packs", Tags.write(happened.packs()))
                .with("began_utc", InstantText.orNull(happened.began()))
                .with("ended_utc", InstantText.orNull(happened.ended()))
                .with("put_back_coulombs", happened.putBackCoulombs());
    }

    private static Happened happened(Row row) {
        return new Happened(
                Shape.constant(Happened.Kind.class, row, "kind"),
                row.text("subject"),
                Tags.read(row.text("packs")),
                InstantText.readOrNull(row, "began_utc"),
                InstantText.readOrNull(row, "ended_utc"),
                row.realOrNull("put_back_coulombs"));
    }

    private static Long id(References references, Kind kind, String field, String noun, String name) {
        Long id = references.id(kind, name);
        if (id == null) {
            throw new InputException(
                    field, noun + " \"" + name + "\" is not in this book. Add it first: " + noun + " add.");
        }
        return id;
    }

    private static String name(References references, Kind kind, Row row, String column) {
        String name = references.name(kind, row.whole(column));
        if (name == null) {
            throw new UnreadableRowException(column + " " + row.whole(column) + " names nothing in this book");
        }
        return name;
    }
}
