package fettle.desk;

import fettle.workshop.Workshop;
import fettle.workshop.demo.DemoBook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;

/** A desk on a free port over a real book, and a client to talk to it. */
public final class OpenDesk implements AutoCloseable {
    private final Workshop workshop;
    private final Desk desk;
    private final HttpClient client = HttpClient.newHttpClient();

    private OpenDesk(Path folder) {
        Clock clock = Clock.fixed(ShelfFixtures.NOW, ZoneOffset.UTC);
        this.workshop = Workshop.open(folder, clock, "Ada");
        this.desk = Desk.start(workshop, DeskOptions.onLoopback(0, clock, "demo book: thrown away on exit"));
    }

    /** Over an empty book. */
    public static OpenDesk empty(Path folder) {
        return new OpenDesk(folder.resolve("book"));
    }

    /** Over the book of the invented club. */
    public static OpenDesk ofTheClub(Path folder) {
        DemoBook.make(folder.resolve("book"), ShelfFixtures.NOW, line -> {});
        return new OpenDesk(folder.resolve("book"));
    }

    public Workshop workshop() {
        return workshop;
    }

    public String url(String path) {
        return desk.url() + path.substring(1);
    }

    public HttpResponse<String> get(String path) {
        return send(request(path).GET());
    }

    /** Sends a form, {@code name=value&…}. */
    public HttpResponse<String> post(String path, String form) {
        return send(request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form)));
    }

    public HttpResponse<String> sendJson(String method, String path, String json) {
        return send(
                request(path).header("Content-Type", "application/json").method(method, BodyPublishers.ofString(json)));
    }

    public HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(url(path)));
    }

    public HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        desk.close();
        workshop.close();
    }
}
