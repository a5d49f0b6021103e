package fettle.workshop.demo;

import fettle.engine.cell.Chemistry;
import fettle.engine.pack.Check;
import fettle.workshop.demo.DemoKit.Rating;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Eight months of the invented club's packs, ending at a given instant, with the faults a real shelf has. */
final class DemoScenario {
    private static final int OUTINGS = 17;
    private static final Duration BETWEEN_OUTINGS = Duration.ofDays(14);
    private static final Duration SINCE_LAST_OUTING = Duration.ofDays(6);
    private static final Duration WHOLE_RECORD = Duration.ofDays(243);

    private final Instant now;
    private final Instant begin;

    private DemoScenario(Instant now) {
        this.now = now;
        this.begin = now.minus(WHOLE_RECORD);
    }

    /** Every pack's story up to {@code now}. */
    static List<PackStory> stories(Instant now) {
        return new DemoScenario(now).stories();
    }

    private List<PackStory> stories() {
        List<PackStory> stories = new ArrayList<>();
        harrier(stories);
        sandhopperAndTeal(stories);
        curlewAndDamselfly(stories);
        gnats(stories);
        receiversAndTransmitters(stories);
        return stories;
    }

    private void harrier(List<PackStory> stories) {
        Rating rating = Rating.of(5.0, 30, "4 mm bullet", "Ines");
        stories.add(outings(story("P01", Chemistry.LIPO, "4S", 5000, rating, "Harrier", 8, 2.4), 0, 1)
                .checked(ago(Duration.ofHours(14)), PackStory.STORAGE_FRACTION)
                .charged(ago(Duration.ofHours(12)), PackStory.STORAGE_FRACTION, 1));
        stories.add(drifting(story("P02", Chemistry.LIPO, "4S", 5000, rating, "Harrier", 8, 2.6), 3));
        Instant full = ago(Duration.ofDays(19));
        stories.add(outings(story("P03", Chemistry.LIPO, "4S", 5000, rating, "Harrier", 8, 2.5), 0, 2)
                .checked(full.minus(Duration.ofHours(2)), PackStory.STORAGE_FRACTION)
                .charged(full, PackStory.STORAGE_FRACTION, 1));
    }

    private void sandhopperAndTeal(List<PackStory> stories) {
        stories.add(outings(
                        story(
                                "P04",
                                Chemistry.LIPO,
                                "3S",
                                2200,
                                Rating.of(2.0, 25, "4 mm bullet", "Ines"),
                                "Teal",
                                11,
                                6.1),
                        1,
                        1)
                .ran(ago(Duration.ofHours(44)), 0.02)
                .fallsBehind(2, 0.10)
                .checked(ago(Duration.ofHours(40)), 0.02));
        Rating car = Rating.of(2.0, 40, "3.5 mm bullet", "Dov");
        stories.add(outings(story("P05", Chemistry.LIPO, "2S", 4000, car, "Sandhopper", 14, 3.0), 0, 1)
                .seen(
                        ago(Duration.ofHours(50)),
                        0.55,
                        Check.Sign.SWELLING,
                        "one side is round, found when sorting the box"));
        stories.add(outings(story("P06", Chemistry.LIPO, "2S", 4000, car, "Sandhopper", 14, 2.9), 1, 0)
                .checked(ago(Duration.ofDays(3)), PackStory.STORAGE_FRACTION));
    }

    private void curlewAndDamselfly(List<PackStory> stories) {
        Rating tow = Rating.of(5.0, 35, "5.5 mm bullet", "Tobias");
        stories.add(new PackStory(
                DemoKit.pack("P07", Chemistry.LIPO, "6S", 3300, tow, ago(Duration.ofDays(21))),
                ago(Duration.ofDays(21)),
                "Curlew",
                Duration.ofMinutes(7),
                3.4));
        Rating unsure = tow.unconfirmed("label worn off; bought used as \"8S, I think\"");
        stories.add(new PackStory(
                        DemoKit.pack("P08", Chemistry.LIPO, "8S", 4500, unsure, ago(Duration.ofDays(9))),
                        ago(Duration.ofDays(9)),
                        "Curlew",
                        Duration.ofMinutes(7),
                        2.8)
                .checkedWhole(ago(Duration.ofDays(8)), 29.4));
        stories.add(outings(
                        story(
                                "P09",
                                Chemistry.LIPO,
                                "12S",
                                5000,
                                Rating.of(5.0, 45, "5.5 mm bullet", "Wren"),
                                "Damselfly",
                                6,
                                1.8),
                        0,
                        0)
                .checked(ago(Duration.ofDays(2)), PackStory.STORAGE_FRACTION));
    }

    private void gnats(List<PackStory> stories) {
        Rating hall = Rating.of(null, 30, "2-pin", "Dov");
        stories.add(outings(story("G01", Chemistry.LIHV, "1S", 450, hall, "Gnat", 4, 22), 0, 1)
                .checked(ago(Duration.ofHours(5)), 0.52)
                .charged(ago(Duration.ofHours(4)), 0.52, 1));
        stories.add(outings(story("G02", Chemistry.LIHV, "1S", 450, hall, "Gnat", 4, 24), 1, 1)
                .checked(ago(Duration.ofDays(4)), PackStory.STORAGE_FRACTION));
        stories.add(outings(story("G03", Chemistry.LIHV, "1S", 450, hall, "Gnat", 4, 23), 0, 2)
                .ran(ago(Duration.ofHours(28)), 0.12)
                .checked(ago(Duration.ofHours(25)), 0.12));
    }

    private void receiversAndTransmitters(List<PackStory> stories) {
        stories.add(outings(
                        story(
                                "F01",
                                Chemistry.LIFEPO4,
                                "2S",
                                2500,
                                Rating.of(1.0, 10, "servo plug", "Tobias"),
                                "Curlew",
                                20,
                                9.0),
                        1,
                        1)
                .checked(ago(Duration.ofDays(5)), 0.55));
        PackStory boatSpare = outings(
                story("F02", Chemistry.LIFEPO4, "4S", 6000, Rating.of(1.0, 15, "4 mm bullet", "Ines"), "Teal", 25, 6.0),
                0,
                2);
        stories.add(boatSpare.fallsBehind(4, 0.25).checked(ago(Duration.ofDays(5)), 0.62));
        stories.add(outings(
                        story(
                                "L01",
                                Chemistry.LI_ION,
                                "3S2P",
                                7000,
                                Rating.of(0.5, 3, "4 mm bullet", "Wren"),
                                "Teal",
                                40,
                                14),
                        1,
                        0)
                .checked(ago(Duration.ofDays(6)), 0.35));
        stories.add(outings(
                        story(
                                "N01",
                                Chemistry.NIMH,
                                "6S",
                                3000,
                                Rating.of(1.0, 8, "3.5 mm bullet", "Dov"),
                                "Sandhopper",
                                10,
                                12),
                        0,
                        2)
                .checked(ago(Duration.ofDays(7)), 0.60));
        stories.add(outings(
                        story(
                                "N02",
                                Chemistry.NIMH,
                                "8S",
                                2000,
                                Rating.of(0.5, 3, "servo plug", "Tobias"),
                                "Curlew",
                                30,
                                15),
                        1,
                        2)
                .checked(ago(Duration.ofDays(7)), 0.70));
    }

    private PackStory story(
            String tag,
            Chemistry chemistry,
            String cells,
            double milliampHours,
            Rating rating,
            String craft,
            int runMinutes,
            double cellMilliohms) {
        return new PackStory(
                DemoKit.pack(tag, chemistry, cells, milliampHours, rating, begin.minus(Duration.ofDays(30))),
                begin,
                craft,
                Duration.ofMinutes(runMinutes),
                cellMilliohms);
    }

    /** Every other outing from {@code first} on, without the latest {@code missed}. */
    private PackStory outings(PackStory story, int first, int missed) {
        for (int outing = first; outing < OUTINGS - missed; outing += 2) {
            story.outing(outingNoon(outing));
        }
        return story;
    }

    /** A cell that loses a little more than its neighbours between outings, and the balancing that only half mends it. */
    private PackStory drifting(PackStory story, int cell) {
        for (int outing = 0; outing < OUTINGS; outing += 2) {
            story.outing(outingNoon(outing)).fallsBehind(cell, 0.006);
        }
        return story.checked(ago(Duration.ofDays(1)), PackStory.STORAGE_FRACTION);
    }

    private Instant outingNoon(int outing) {
        return now.minus(SINCE_LAST_OUTING).minus(BETWEEN_OUTINGS.multipliedBy(OUTINGS - 1L - outing));
    }

    private Instant ago(Duration before) {
        return now.minus(before);
    }
}
