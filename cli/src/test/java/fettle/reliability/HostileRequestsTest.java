package fettle.reliability;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fettle.desk.Desk;
import fettle.desk.DeskOptions;
import fettle.workshop.Workshop;
import fettle.workshop.demo.DemoBook;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Attacks on a desk over the demo book: every route of the API document and every form of every page it links to, with
 * script, SQL, climbing paths and made-up words in each field. Nothing is an answer of the kind 5xx.
 */
final class HostileRequestsTest {
    private static final Instant NOW = Instant.parse("2026-11-25T14:00:00Z");
    private static final int SHORT_FORM = 150;
    private static final int REQUESTS =
            Integer.getInteger("fettle.inputs", 0) > 0 ? Integer.getInteger("fettle.inputs") / 100 : SHORT_FORM;
    private static final long SEED = Long.getLong("fettle.seed", 496);
    private static final String SCRIPT = "\"'></textarea></title><script>alert(1)</script><img src=x onerror=alert(2)>";
    private static final String SQL = "P07' OR '1'='1'; DROP TABLE pack; --";
    private static final String CLIMB = "../../../../../../etc/passwd";

    @TempDir
    private static Path folder;

    private static Workshop workshop;
    private static Desk desk;
    private static Pages pages;
    private static JsonNode document;
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @BeforeAll
    static void open() throws IOException, InterruptedException {
        Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
        DemoBook.make(folder.resolve("book"), NOW, line -> {});
        workshop = Workshop.open(folder.resolve("book"), clock, "Ada");
        desk = Desk.start(workshop, DeskOptions.onLoopback(0, clock, null));
        pages = Pages.crawl(address -> get(address).body());
        document = new ObjectMapper().readTree(get("/api/openapi.json").body());
    }

    @AfterAll
    static void close() {
        desk.close();
        workshop.close();
    }

    @Test
    void findsThePagesAndTheirForms() {
        assertThat(pages.addresses()).hasSizeGreaterThan(25);
        assertThat(pages.forms()).extracting(Pages.Form::action).contains("/entry", "/kit/rules", "/setups/craft");
    }

    @Test
    void scriptInAnyFieldStaysText() {
        for (String page : List.copyOf(pages.addresses())) {
            harmless("GET " + page, get(page + (page.contains("?") ? "&" : "?") + "back=" + encoded(SCRIPT)));
        }
        inEveryField(SCRIPT, HostileRequestsTest::harmless);
        Pages.crawl(address -> {
            HttpResponse<String> answer = get(address);
            harmless("GET " + address, answer);
            return answer.body();
        });
    }

    @Test
    void sqlInAnyFieldIsOnlyAWord() {
        inEveryField(SQL, HostileRequestsTest::plain);
        assertThat(workshop.keeping().verify()).isEmpty();
        assertThat(workshop.packs().list()).hasSizeGreaterThanOrEqualTo(17);
    }

    @Test
    void aPathThatClimbsOutFindsNothing() throws IOException {
        for (String climbing : List.of(
                "/assets/../../../../etc/passwd",
                "/assets/..%2f..%2f..%2fetc%2fpasswd",
                "/assets/%2e%2e/%2e%2e/etc/passwd",
                "/assets/..;/..;/etc/passwd",
                "/assets/..\\..\\etc\\passwd",
                "/assets//etc/passwd",
                "/assets/",
                "/webjars/../../etc/passwd",
                "/%00/etc/passwd",
                "//etc/passwd",
                "/../book/book.sqlite")) {
            String answer = raw("GET " + climbing + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
            assertThat(answer)
                    .as(climbing)
                    .containsPattern("^HTTP/1.1 (30[1278]|4\\d\\d) ")
                    .doesNotContain("root:", "SQLite format", "Exception", "\tat ");
        }
        inEveryField(CLIMB, HostileRequestsTest::plain);
    }

    @Test
    void madeUpRequestsAreAnsweredInWords() {
        Mischief mischief = new Mischief(SEED);
        List<Request> requests = requests();
        int refused = 0;
        for (int sent = 0; sent < REQUESTS; sent++) {
            Request request = requests.get(mischief.random.nextInt(requests.size()));
            HttpResponse<String> answer = request.send(mischief);
            plain(request.toString(), answer);
            refused += answer.statusCode() >= 400 ? 1 : 0;
        }
        if (REQUESTS > SHORT_FORM) {
            System.out.printf("%-18s %7d inputs, %7d of them read%n", "requests", REQUESTS, REQUESTS - refused);
        }
        assertThat(refused).isBetween(1, REQUESTS);
        assertThat(workshop.keeping().verify()).isEmpty();
    }

    @Test
    void brokenHttpIsRefusedWithoutSayingWhatServesIt() throws IOException {
        String body = "line=" + "3".repeat(100_000);
        String head = " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n";
        SoftAssertions soft = new SoftAssertions();
        for (String request : List.of(
                "BREW /" + head + "\r\n",
                "TRACE /" + head + "\r\n",
                "CONNECT /" + head + "\r\n",
                "PROPFIND /" + head + "\r\n",
                "DELETE /kit" + head + "\r\n",
                "GET /?from=%zz" + head + "\r\n",
                "GET /?from=%ff%fe" + head + "\r\n",
                "GET /kit/packs/%c0%ae%c0%ae" + head + "\r\n",
                "GET /journal?from=%00" + head + "\r\n",
                "GET / HTTP/9.9\r\nHost: localhost\r\n\r\n",
                "GET / HTTP/1.1\r\nConnection: close\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: localhost.evil.example\r\nConnection: close\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: localhost\r\nHost: evil.example\r\nConnection: close\r\n\r\n",
                "GET http://evil.example/" + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n",
                "GET /" + "a".repeat(20_000) + head + "\r\n",
                "GET /" + head + "X-Long: " + "a".repeat(20_000) + "\r\n\r\n",
                "POST /entry" + head + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: "
                        + body.length() + "\r\n\r\n" + body,
                "POST /entry" + head + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: -5\r\n\r\n",
                "POST /entry" + head
                        + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: 8\r\n\r\nline=%zz",
                "POST /entry" + head
                        + "Content-Type: application/x-www-form-urlencoded; charset=made-up\r\nContent-Length: 8\r\n\r\nline=P07",
                "POST /entry" + head + "Content-Type: multipart/form-data\r\nContent-Length: 8\r\n\r\nline=P07",
                "POST /traces/look" + head
                        + "Content-Type: multipart/form-data; boundary=x\r\nContent-Length: 8\r\n\r\n--x--\r\nq",
                "POST /api/entries" + head + "Content-Type: application/json\r\nContent-Length: 4\r\n\r\nnull",
                "POST /api/entries" + head + "Content-Type: application/json\r\nContent-Length: 3\r\n\r\n\u00ff\u00fe{",
                "POST /api/entries" + head
                        + "Content-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\nzz\r\n",
                "POST /api/entries" + head
                        + "Content-Type: application/json\r\nTransfer-Encoding: chunked\r\nContent-Length: 3\r\n\r\n0\r\n\r\n",
                "\u0016\u0003\u0001\u0000\u00a5\u0001\r\n\r\n")) {
            soft.assertThat(raw(request))
                    .as(request.lines().findFirst().orElse(""))
                    .containsPattern(
                            "^HTTP/1.1 (4\\d\\d|50[15]) |^$" + (request.startsWith("GET /") ? "|^HTTP/1.1 200 " : ""))
                    .doesNotContain("HTTP/1.1 500")
                    .doesNotContainIgnoringCase("jetty")
                    .doesNotContainIgnoringCase("javalin")
                    .doesNotContain("Exception", "\tat ");
        }
        soft.assertAll();
    }

    /** Each of many holds a connection open in the middle of its request; the desk answers others all the same. */
    @Test
    void slowClientsKeepNobodyOut() throws IOException {
        List<Socket> slow = new ArrayList<>();
        try {
            for (int client = 0; client < 300; client++) {
                Socket socket = connect();
                slow.add(socket);
                String begun = client % 2 == 0
                        ? "GET / HTTP/1.1\r\nHost: local"
                        : "POST /entry HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/x-www-form-urlencoded\r\n"
                                + "Content-Length: 5000\r\n\r\nline=P";
                socket.getOutputStream().write(begun.getBytes(StandardCharsets.ISO_8859_1));
                socket.getOutputStream().flush();
            }
            assertThat(get("/api/review").statusCode()).isEqualTo(200);
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    private interface Check {
        void accept(String what, HttpResponse<String> answer);
    }

    /** Sends every form and every route once for each of its fields, that field hostile and the others as they were. */
    private static void inEveryField(String hostile, Check check) {
        for (Request request : requests()) {
            for (String field : request.usual().keySet()) {
                Map<String, String> words = new LinkedHashMap<>(request.usual());
                words.put(field, hostile);
                check.accept(request + ", field " + field, request.send(words, request.places()));
            }
            for (int place = 0; place < request.places().size(); place++) {
                List<String> places = new ArrayList<>(request.places());
                places.set(place, hostile);
                check.accept(request + ", place " + place, request.send(request.usual(), places));
            }
        }
    }

    private static void harmless(String what, HttpResponse<String> answer) {
        plain(what, answer);
        if (answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html")) {
            assertThat(answer.body())
                    .as(what)
                    .doesNotContain("<script>alert", "<img src=x", "\"'></textarea>", "\"'></title>");
        }
    }

    private static void plain(String what, HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(what + "\n" + answer.body()).isLessThan(500);
        assertThat(answer.body()).as(what).doesNotContain("Exception:", "\tat ", "root:x:", "SQLITE_");
    }

    /** A request that can be made: of a form, or of the API document. */
    private record Request(String method, String path, List<String> places, Map<String, String> usual, String type) {
        HttpResponse<String> send(Mischief mischief) {
            Map<String, String> words = new LinkedHashMap<>();
            usual.forEach((field, word) -> words.put(
                    field, mischief.random.nextInt(3) == 0 ? mischief.text(List.of(word + mischief.scrap())) : word));
            List<String> made = places.stream()
                    .map(place -> mischief.random.nextInt(4) == 0 ? mischief.scrap() : place)
                    .toList();
            return HostileRequestsTest.send(this, words, made, mischief.random);
        }

        HttpResponse<String> send(Map<String, String> words, List<String> made) {
            return HostileRequestsTest.send(this, words, made, new Random(1));
        }

        @Override
        public String toString() {
            return method + " " + path;
        }
    }

    private static HttpResponse<String> send(
            Request request, Map<String, String> words, List<String> made, Random random) {
        String path = request.path();
        for (String place : made) {
            path = path.replaceFirst(
                    "\\{[^}]*\\}", encoded(place).replace("+", "%20").replace("$", "%24"));
        }
        String form = words.entrySet().stream()
                .map(word -> encoded(word.getKey()) + "=" + encoded(word.getValue()))
                .collect(Collectors.joining("&"));
        boolean query = request.type().isEmpty() || request.type().equals("application/octet-stream");
        String address = query && !form.isEmpty() ? path + (path.contains("?") ? "&" : "?") + form : path;
        HttpRequest.Builder builder = HttpRequest.newBuilder(URI.create(desk.url() + address.substring(1)));
        if (!request.type().isEmpty()) {
            builder.header("Content-Type", request.type());
        }
        String body = request.type().equals("application/json")
                ? json(words, random)
                : query ? "time_s,volts,amps\n0,16,1\n1,15.9,2\n" : form;
        return exchange(builder.method(
                request.method(),
                request.method().equals("GET") ? BodyPublishers.noBody() : BodyPublishers.ofString(body)));
    }

    private static String json(Map<String, String> words, Random random) {
        try {
            String json = new ObjectMapper().writeValueAsString(words);
            return random.nextInt(12) == 11 ? json.substring(0, random.nextInt(json.length())) : json;
        } catch (IOException never) {
            throw new java.io.UncheckedIOException(never);
        }
    }

    private static List<Request> requests() {
        List<Request> requests = new ArrayList<>();
        pages.forms()
                .forEach(form -> requests.add(new Request(
                        form.post() ? "POST" : "GET",
                        form.action(),
                        List.of(),
                        form.fields(),
                        form.post() ? "application/x-www-form-urlencoded" : "")));
        document.get("paths")
                .properties()
                .forEach(path -> path.getValue()
                        .properties()
                        .forEach(way -> add(requests, path.getKey(), way.getKey(), way.getValue())));
        return requests;
    }

    private static void add(List<Request> requests, String path, String method, JsonNode operation) {
        if (!List.of("get", "post", "put").contains(method)) {
            return;
        }
        Map<String, String> words = new LinkedHashMap<>();
        List<String> places = new ArrayList<>();
        for (JsonNode parameter : operation.path("parameters")) {
            JsonNode whole = parameter.has("$ref") ? referred(parameter) : parameter;
            boolean id = whole.path("name").asText().equals("id");
            if (whole.path("in").asText().equals("path")) {
                places.add(id ? "1" : "P07");
            } else {
                words.put(whole.path("name").asText(), "1");
            }
        }
        JsonNode content = operation.path("requestBody").path("content");
        String type = content.isEmpty() ? "" : content.fieldNames().next();
        if (type.equals("application/json")) {
            JsonNode schema = content.path(type).path("schema");
            JsonNode whole = schema.has("$ref") ? referred(schema) : schema;
            new TreeSet<>(names(whole.path("properties"))).forEach(name -> words.put(name, "P07"));
            whole.path("example")
                    .properties()
                    .forEach(word -> words.put(word.getKey(), word.getValue().asText()));
        }
        requests.add(new Request(method.toUpperCase(java.util.Locale.ROOT), path, places, words, type));
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static JsonNode referred(JsonNode reference) {
        return document.at(reference.get("$ref").asText().substring(1));
    }

    private static HttpResponse<String> get(String path) {
        return exchange(HttpRequest.newBuilder(URI.create(desk.url() + path.substring(1))));
    }

    private static HttpResponse<String> exchange(HttpRequest.Builder request) {
        try {
            return CLIENT.send(request.build(), BodyHandlers.ofString());
        } catch (IOException failed) {
            throw new java.io.UncheckedIOException(failed);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    private static String encoded(String word) {
        return URLEncoder.encode(word, StandardCharsets.UTF_8);
    }

    private static Socket connect() throws IOException {
        URI uri = URI.create(desk.url());
        Socket socket = new Socket(uri.getHost(), uri.getPort());
        socket.setSoTimeout(60_000);
        return socket;
    }

    private static String raw(String request) throws IOException {
        try (Socket socket = connect()) {
            OutputStream out = socket.getOutputStream();
            out.write(request.getBytes(StandardCharsets.ISO_8859_1));
            out.flush();
            socket.shutdownOutput();
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (java.net.SocketException closedOnUs) {
            return "";
        }
    }
}
