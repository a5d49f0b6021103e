package fettle.reliability;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.desk.Desk;
import fettle.desk.DeskOptions;
import fettle.workshop.PackForm;
import fettle.workshop.Registered;
import fettle.workshop.Workshop;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A damaged row costs what stands in it: everything else is answered, and every page says what was left out. */
final class DamagedRowTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void fill() {
        try (Workshop workshop = open()) {
            for (String tag : List.of("P07", "P08")) {
                workshop.packs()
                        .add(new PackForm(tag, "LiPo", "4S", "5000", "", "", "", "", "", "", "confirmed", "", "")
                                .toPack());
                workshop.entries().enter(tag + " 3.84 3.83 3.85 3.84 21C rest 2h");
                workshop.entries().enter(tag + " charged 1840 mAh");
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "UPDATE pack_check SET taken_at_utc = 'noon' WHERE id = 1 | pack_check row 1 | P07 P08",
                "UPDATE pack_charge SET ended_at_utc = '' WHERE id = 2    | pack_charge row 2 | P07 P08",
                "UPDATE pack SET chemistry = 'COAL' WHERE id = 1          | pack row 1 | P08"
            })
    void costsOnlyItself(String sql, String row, String packs) throws IOException, InterruptedException, SQLException {
        damage(sql);
        try (Workshop workshop = open();
                Desk desk = Desk.start(workshop, DeskOptions.onLoopback(0, Clock.systemUTC(), null))) {
            assertThat(workshop.packs().list()).extracting(Registered::name).containsExactly(packs.split(" "));
            assertThat(workshop.review().shelf().packs()).hasSize(packs.split(" ").length);
            assertThat(workshop.keeping().damage())
                    .hasValueSatisfying(told -> assertThat(told)
                            .contains(row + " cannot be read", "Everything else is there", "restore the latest backup")
                            .doesNotContain("Exception"));
            assertThat(workshop.keeping().verify()).anyMatch(fault -> fault.contains(row));
            assertThat(page(desk)).contains(row + " cannot be read");
            assertThat(workshop.entries().enter("P08 3.80 3.80 3.80 3.80").id()).isEqualTo(7);
        }
    }

    @Test
    void aWholeBookSaysNothingOfDamage() {
        try (Workshop workshop = open()) {
            workshop.review().shelf();
            assertThat(workshop.keeping().damage()).isEmpty();
        }
    }

    private static String page(Desk desk) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(desk.url())).build();
        return HttpClient.newHttpClient().send(request, BodyHandlers.ofString()).body();
    }

    private Workshop open() {
        return Workshop.open(folder, Clock.systemUTC(), "Marten");
    }

    private void damage(String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("book.sqlite"));
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA ignore_check_constraints = ON");
            assertThat(statement.executeUpdate(sql)).isEqualTo(1);
        }
    }
}
