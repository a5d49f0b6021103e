package fettle.workshop.demo;

import fettle.workshop.OutingForm;
import fettle.workshop.PlanSpeed;
import fettle.workshop.Workshop;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/** The invented club's next day out, the day after the record ends. */
final class DemoOuting {
    static final String NAME = "Club day at the airstrip";

    /** Enough for a plan worth looking at; a person who wants a better one plans again. */
    private static final PlanSpeed QUICK = new PlanSpeed(0.4);

    private DemoOuting() {}

    static void make(Workshop workshop, Instant now) {
        LocalDate day = LocalDate.ofInstant(now, ZoneOffset.UTC).plusDays(1);
        workshop.outingShelf()
                .add(new OutingForm(
                                NAME,
                                day.toString(),
                                "UTC",
                                "08:15",
                                "09:00",
                                "15:30",
                                "16:15",
                                "19 °C",
                                "home day before 18:30 to 22:30\nfield 09:00 to 15:30\nhome 16:45 to 21:30",
                                "home: bench-pair on clubhouse; 88 %\n"
                                        + "field: field-pair on field-box; 85 %\n"
                                        + "field: tall on generator; 82 %; 10:00 to 13:00",
                                "P01, P02, P03, P04, P05, P06, P07, P08",
                                "Harrier x4; value 5; 09:30 to 15:00; 6 min; gap 15 min\n"
                                        + "Sandhopper x3; value 2; 10:00 to 15:00; 8 min; gap 10 min\n"
                                        + "Teal x1; value 3; 11:00 to 14:00; 7 min",
                                "",
                                "",
                                "Ines brings the generator key")
                        .toOuting());
        workshop.outings().plan(NAME, QUICK, best -> true);
    }
}
