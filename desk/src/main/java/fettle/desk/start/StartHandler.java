package fettle.desk.start;

import fettle.desk.frame.Figures;
import fettle.desk.frame.LineReading;
import fettle.desk.frame.Pages;
import fettle.desk.frame.Place;
import fettle.engine.charge.Task;
import fettle.engine.pack.Finding;
import fettle.engine.pack.Pack;
import fettle.engine.units.TradeUnit;
import fettle.workshop.EntryPreview;
import fettle.workshop.PackFile;
import fettle.workshop.Registered;
import fettle.workshop.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Leads through the first pack: register, check, read the answer. */
public final class StartHandler {
    private final Workshop workshop;
    private final Pages pages;

    public StartHandler(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.get("/start", ctx -> show(ctx, null));
        routes.post("/start", this::take);
    }

    private void take(Context ctx) {
        String line = String.join(
                        " ",
                        text(ctx, "tag"),
                        text(ctx, "readings"),
                        behind(text(ctx, "celsius"), "", "C"),
                        behind(text(ctx, "rest"), "rest ", "h"))
                .strip();
        EntryPreview preview = workshop.entries().preview(line);
        if (preview.canSave()) {
            Pages.sendOn(ctx, "/start", workshop.entries().enter(line));
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, LineReading.of(preview));
    }

    private void show(Context ctx, @Nullable LineReading refused) {
        List<String> tags = workshop.packs().list().stream()
                .filter(pack -> !pack.retired())
                .map(Registered::name)
                .toList();
        PackFile file = tags.isEmpty() ? null : checkedOrFirst(tags);
        int step = file == null ? 1 : file.history().checks().isEmpty() ? 2 : 3;
        StartPage page = new StartPage(
                step,
                file == null ? null : known(file),
                text(ctx, "readings"),
                text(ctx, "celsius"),
                text(ctx, "rest"),
                refused);
        pages.show(ctx, "start/start", Place.TODAY, "First pack", page);
    }

    private PackFile checkedOrFirst(List<String> tags) {
        return tags.stream()
                .map(workshop.review()::pack)
                .filter(file -> !file.history().checks().isEmpty())
                .findFirst()
                .orElseGet(() -> workshop.review().pack(tags.get(0)));
    }

    private static StartPage.Known known(PackFile file) {
        Pack pack = file.review().assessment().pack();
        List<String> said = file.review().assessment().findings().stream()
                .map(Finding::statement)
                .map(Figures::unbroken)
                .toList();
        return new StartPage.Known(
                pack.tag(),
                pack.chemistry().label() + " " + pack.arrangement() + " "
                        + TradeUnit.MILLIAMPERE_HOUR.print(pack.ratedCapacityCoulombs(), 0),
                pack.cellsInSeries(),
                String.join(
                        " ",
                        Collections.nCopies(
                                pack.cellsInSeries(),
                                String.format(
                                        Locale.ROOT, "%.2f", pack.chemistry().nominalVolts()))),
                file.review().assessment().standing(),
                said,
                file.review().tasks().stream()
                        .map(Task::instruction)
                        .map(Figures::unbroken)
                        .toList());
    }

    /** A bare number with the words around it that its field stands for. */
    private static String behind(String typed, String before, String unit) {
        if (typed.isEmpty()) {
            return "";
        }
        return before + typed + (typed.matches("-?\\d+([.,]\\d+)?") ? unit : "");
    }

    private static String text(Context ctx, String name) {
        return Objects.requireNonNullElse(ctx.formParam(name), "").strip();
    }
}
