package fettle.desk.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fettle.desk.OpenDesk;
import fettle.desk.kit.ItemKinds;
import fettle.workshop.PlanSpeed;
import io.javalin.Javalin;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map.Entry;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds the OpenAPI document against what the desk answers. */
final class OpenApiDocumentTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String RUDDER =
            "rudder; spare; 1100 1500 1900; 80 mm; all 20/20; arm 10; horn 15; pushrod aft 120";
    private static final String POINTS = IntStream.range(0, 13)
            .mapToObj(at -> (1000 + 50 * at) + " " + (200 + 60 * Math.max(0, at - 8)) + "mA -" + (40 - 5 * at) + "°")
            .collect(Collectors.joining("\\n"))
            .replace("--", "");

    private static final String OUTING_NAME = "Club day at the airstrip";
    private static final String OUTING = "{'name':'Lake','date':'2026-05-10','zone':'UTC','leaveHome':'08:00',"
            + "'arrive':'09:00','packUp':'15:00','ambient':'18C','packs':'P01, P06',"
            + "'feeds':'field: field-pair on field-box','runs':'Harrier; 09:30 to 14:30; 6 min'}";

    @TempDir
    static Path folder;

    private static OpenDesk desk;
    private static final String LOG = "time_s,volts,amps\n0,15.2,0\n1,15.2,0\n2,11.0,20\n3,14.8,20\n4,15.1,0\n";
    private static JsonNode document;

    @BeforeAll
    static void open() throws Exception {
        desk = OpenDesk.ofTheClub(folder);
        desk.workshop().outings().start(OUTING_NAME, new PlanSpeed(0.3));
        document = JSON.readTree(desk.get("/api/openapi.json").body());
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @Test
    void documentsEveryRouteAndNoOther() {
        TreeSet<String> documented = new TreeSet<>();
        for (Entry<String, JsonNode> path : document.get("paths").properties()) {
            path.getValue()
                    .fieldNames()
                    .forEachRemaining(method -> documented.add(method.toUpperCase(Locale.ROOT) + " " + path.getKey()));
        }
        TreeSet<String> routed = new TreeSet<>();
        Javalin.create(config -> {
            new Api(desk.workshop()).addTo(config.routes);
            config.unsafe
                    .internalRouter
                    .allHttpHandlers()
                    .forEach(handler -> routed.add(handler.endpoint.method.name() + " " + handler.endpoint.path));
        });

        assertThat(documented).isEqualTo(routed).hasSizeGreaterThan(25);
    }

    @Test
    void answersEveryDocumentedReadingInTheDocumentedShape() throws Exception {
        List<String> compared = new ArrayList<>();
        for (Entry<String, JsonNode> path : document.get("paths").properties()) {
            JsonNode get = path.getValue().get("get");
            if (get == null) {
                continue;
            }
            String address =
                    path.getKey().replace("{name}", nameIn(path.getKey())).replace("{id}", "1");
            HttpResponse<String> answer =
                    desk.get(address.equals("/api/rules") ? "/api/rules?chemistry=LiPo&pack=P01" : asked(address));
            assertThat(answer.statusCode()).as(address).isEqualTo(200);
            JsonNode schema = get.at("/responses/200/content/application~1json/schema");
            compare(JSON.readTree(answer.body()), schema, path.getKey(), compared);
        }
        assertThat(compared).hasSizeGreaterThan(1000);
    }

    @Test
    void refusesEveryDocumentedChangeThatNamesNothingWithFaults() throws Exception {
        int refused = 0;
        for (Entry<String, JsonNode> path : document.get("paths").properties()) {
            for (Entry<String, JsonNode> operation : path.getValue().properties()) {
                if (operation.getKey().equals("get") || path.getKey().equals("/api/preview")) {
                    continue;
                }
                String address = path.getKey().replace("{name}", "Nobody").replace("{id}", "999999");
                HttpResponse<String> answer = desk.sendJson(operation.getKey().toUpperCase(Locale.ROOT), address, "{}");
                assertThat(answer.statusCode()).as(address).isIn(400, 404, 409);
                assertThat(JSON.readTree(answer.body()).get("faults"))
                        .as(address)
                        .isNotEmpty();
                refused++;
            }
        }
        assertThat(refused).isGreaterThan(15);
    }

    @Test
    void answersEveryDocumentedChangeInTheDocumentedShape() throws Exception {
        String pack = "{'tag':'P90','chemistry':'LiPo','cells':'4S','capacity':'5000'}";
        String rule = "'chemistry':'LiPo','quantity':'storage-time'";
        String[][] changes = {
            {"post", "/api/packs", "", pack},
            {"put", "/api/packs/{name}", "P90", pack.replace("}", ",'identity':'confirmed'}")},
            {"post", "/api/packs/{name}/retire", "P90", "{'reason':'tired'}"},
            {"post", "/api/packs/{name}/restore", "P90", ""},
            {"post", "/api/craft", "", "{'name':'Wren','kind':'glider'}"},
            {"put", "/api/craft/{name}", "Wren", "{'name':'Wren','kind':'plane'}"},
            {"post", "/api/craft/{name}/retire", "Wren", "{'reason':'crashed'}"},
            {"post", "/api/craft/{name}/restore", "Wren", ""},
            {"post", "/api/sources", "", "{'name':'van','kind':'vehicle battery','power':'300 W'}"},
            {"put", "/api/sources/{name}", "van", "{'name':'van','kind':'vehicle battery','power':'200 W'}"},
            {"post", "/api/sources/{name}/retire", "van", "{'reason':'sold'}"},
            {"post", "/api/sources/{name}/restore", "van", ""},
            {"post", "/api/servos", "", "{'name':'spare','ratings':'6V 5.5kgcm'}"},
            {"put", "/api/servos/{name}", "spare", "{'name':'spare','ratings':'6V 5.4kgcm stall 1.6A'}"},
            {"post", "/api/servos/{name}/retire", "spare", "{'reason':'stripped'}"},
            {"post", "/api/servos/{name}/restore", "spare", ""},
            {"post", "/api/chargers", "", "{'name':'spare','ports':'10A 100W 6S','chemistries':'LiPo'}"},
            {"put", "/api/chargers/{name}", "spare", "{'name':'spare','ports':'8A 80W 6S','chemistries':'LiPo'}"},
            {"post", "/api/chargers/{name}/retire", "spare", "{'reason':'broken'}"},
            {"post", "/api/chargers/{name}/restore", "spare", ""},
            {"post", "/api/rules", "", "{" + rule + ",'value':'48 h'}"},
            {"post", "/api/rules/reset", "", "{" + rule + "}"},
            {
                "post",
                "/api/worksheets/{name}",
                "load",
                "{'chemistry':'LiPo','cells':'4S','capacity':'5000','charge':'95%','resistance':'3','load':'40A'}"
            },
            {"post", "/api/craft/{name}/fit", "Wren", "{'heaviest':'2 kg'}"},
            {"post", "/api/craft/{name}/timer", "Wren", "{'pack':'P90','runs':'6 min; 20 A'}"},
            {"post", "/api/setups/{name}", "Wren", "{'surfaces':'" + RUDDER + "'}"},
            {"post", "/api/setups/{name}/sweeps", "Wren", "{'surface':'rudder','points':'" + POINTS + "'}"},
            {"post", "/api/setups/{name}/surface", "Wren", "{'surface':'rudder','volts':'6','speed':'30 m/s'}"},
            {"post", "/api/setups/{name}/power", "Wren", "{'input':'12.6','output':'6','continuous':'5','peak':'8'}"},
            {"post", "/api/sweeps", "", "{'points':'" + POINTS + "'}"},
            {"post", "/api/checks/preview", "", "{'rows':'P90 3.84 3.83 3.85 3.84','every':'21C rest 2h'}"},
            {"post", "/api/checks", "", "{'rows':'P90 3.84 3.83 3.85 3.84','every':'21C rest 2h'}"},
            {"post", "/api/outings", "", OUTING},
            {"put", "/api/outings/{name}", "Lake", OUTING.replace("18C", "20C")},
            {"post", "/api/outings/{name}/retire", "Lake", "{'reason':'rain'}"},
            {"post", "/api/outings/{name}/restore", "Lake", ""},
            {"post", "/api/outings/{name}/settle", "Lake", "{'what':'not P06'}"},
            {"post", "/api/outings/{name}/release", "Lake", "{'what':'not P06'}"},
            {"post", "/api/outings/{name}/plan", "Lake", "{'seconds':'0.3 s'}"},
            {"post", "/api/outings/{name}/planning", "Lake", "{'seconds':'0.3 s'}"},
            {"post", "/api/outings/{name}/planning/cancel", "Lake", ""},
            {"post", "/api/outings/{name}/start", "Lake", "{'what':'Harrier 1'}"},
            {"post", "/api/outings/{name}/finish", "Lake", "{'what':'Harrier 1'}"},
            {"post", "/api/outings/{name}/put-back", "Lake", "{'what':'Harrier 1','charge':'3000 mAh'}"},
            {"post", "/api/preview", "", "{'line':'P90 3.84 3.83 38.5 3.84'}"},
            {"post", "/api/entries", "", "{'line':'P90 3.84 3.83 3.85 3.84 21C rest 2h'}"},
            {"post", "/api/traces", "?pack=P90&name=a.csv&positive=discharge", LOG},
            {"post", "/api/traces/preview", "?name=b.csv", LOG},
            {"post", "/api/traces/{id}/acknowledge", "4", "{'finding':'rested well'}"},
            {"post", "/api/journal/{id}/undo", "latest", ""},
        };
        TreeSet<String> tried = new TreeSet<>();
        for (String[] change : changes) {
            String named = change[2].equals("latest")
                    ? Long.toString(
                            desk.workshop().history().recent(0, 1).get(0).id())
                    : change[2];
            HttpResponse<String> answer = desk.sendJson(
                    change[0].toUpperCase(Locale.ROOT),
                    named.startsWith("?") ? change[1] + named : change[1].replaceAll("\\{.*?}", named),
                    change[3].replace('\'', '"'));
            JsonNode operation = document.get("paths").get(change[1]).get(change[0]);
            JsonNode documented = operation.get("responses").get(Integer.toString(answer.statusCode()));
            assertThat(answer.statusCode()).as(change[1] + answer.body()).isIn(200, 201);
            assertThat(documented)
                    .as("%s of %s", answer.statusCode(), change[1])
                    .isNotNull();
            compare(
                    JSON.readTree(answer.body()),
                    documented.at("/content/application~1json/schema"),
                    change[1],
                    new ArrayList<>());
            tried.add(change[0] + " " + change[1]);
        }
        TreeSet<String> documented = new TreeSet<>();
        document.get("paths")
                .properties()
                .forEach(path -> path.getValue().properties().stream()
                        .filter(operation -> !operation.getKey().equals("get"))
                        .forEach(operation -> documented.add(operation.getKey() + " " + path.getKey())));
        assertThat(tried).isEqualTo(documented);
    }

    private static void compare(JsonNode value, JsonNode schema, String where, List<String> compared) {
        JsonNode resolved = resolve(schema);
        compared.add(where);
        if (value.isNull()) {
            boolean nullable = (schema.has("nullable") ? schema : resolved)
                    .path("nullable")
                    .asBoolean();
            assertThat(nullable).as("%s may be null", where).isTrue();
        } else if (resolved.has("properties")) {
            assertThat(names(value)).as("fields of %s", where).isEqualTo(names(resolved.get("properties")));
            for (Entry<String, JsonNode> field : value.properties()) {
                JsonNode inner = resolved.get("properties").get(field.getKey());
                compare(field.getValue(), inner, where + "." + field.getKey(), compared);
            }
        } else if (resolved.has("items")) {
            assertThat(value.isArray()).as(where).isTrue();
            value.forEach(item -> compare(item, resolved.get("items"), where + "[]", compared));
        } else if (resolved.has("enum")) {
            assertThat(resolved.get("enum")).as(where).contains(value);
        } else {
            assertThat(type(value))
                    .as("type of %s", where)
                    .matches(resolved.path("type").asText());
        }
    }

    private static JsonNode resolve(JsonNode schema) {
        JsonNode one = schema.has("allOf") ? schema.get("allOf").get(0) : schema;
        return one.has("$ref") ? document.at(one.get("$ref").asText().substring(1)) : one;
    }

    private static String type(JsonNode value) {
        if (value.isIntegralNumber()) {
            return "integer";
        }
        if (value.isNumber()) {
            return "number";
        }
        return value.isBoolean() ? "boolean" : value.isObject() ? "object" : "string";
    }

    private static TreeSet<String> names(JsonNode object) {
        TreeSet<String> names = new TreeSet<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** A question about an outing names what it asks about. */
    private static String asked(String address) {
        return address.endsWith("/why") ? address + "?what=P01" : address;
    }

    private static String nameIn(String path) {
        if (path.startsWith("/api/setups/")) {
            return "Harrier";
        }
        if (path.startsWith("/api/outings/")) {
            return OUTING_NAME.replace(" ", "%20");
        }
        return ItemKinds.all().stream()
                .filter(kind -> path.startsWith("/api/" + kind.key()))
                .map(kind -> kind.shelf().apply(desk.workshop()).list().get(0).name())
                .findFirst()
                .orElse("");
    }
}
