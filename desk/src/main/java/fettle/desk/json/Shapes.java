package fettle.desk.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import fettle.engine.cell.Chemistry;
import fettle.engine.charge.TaskKind;
import fettle.engine.control.Caution;
import fettle.engine.control.linkage.FourBar;
import fettle.engine.control.linkage.Linkage;
import fettle.engine.control.linkage.PullPull;
import fettle.engine.control.linkage.TorqueRod;
import fettle.engine.health.forecast.Crossing;
import fettle.engine.health.forecast.FadeTrend;
import fettle.engine.outing.Choice;
import fettle.engine.outing.Happened;
import fettle.engine.outing.Spot;
import fettle.engine.pack.Check;
import fettle.engine.pack.CraftKind;
import fettle.engine.pack.Pack;
import fettle.engine.pack.Standing;
import fettle.engine.pack.fit.Fit;
import fettle.engine.pack.simulation.Demand;
import fettle.engine.pack.simulation.EndKind;
import fettle.engine.rule.Quantity;
import fettle.engine.rule.Rule;
import fettle.engine.supply.SourceKind;
import fettle.engine.trace.EventKind;
import fettle.engine.trace.SegmentKind;
import fettle.engine.units.Estimate;
import fettle.engine.units.Fault;
import fettle.engine.working.CitationStatus;
import fettle.workshop.EntryPreview;
import fettle.workshop.Planning;
import fettle.workshop.label.LabelGrid;
import fettle.workshop.label.LabelRun;
import fettle.workshop.worksheet.Worksheet;
import fettle.workshop.worksheet.WorksheetField;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * How records become JSON, in one place for the HTTP API and the command line: SI values under their field names, dates
 * as ISO 8601, choices by their label, estimates as value, standard deviation and drivers. Thread-safe.
 */
public final class Shapes {
    private static final ObjectMapper MAPPER = mapper();

    private Shapes() {}

    /**
     * What is answered where something was refused.
     *
     * @param faults each with the field at fault, empty where it is the whole request
     */
    public record Refusal(List<Fault> faults) {}

    /** The shared mapper; configured once, not to be changed. */
    public static ObjectMapper mapper() {
        return JsonMapper.builder()
                .addModule(new JavaTimeModule())
                .addModule(labels())
                .addMixIn(Rule.class, RuleShape.class)
                .addMixIn(FadeTrend.class, FadeTrendShape.class)
                .addMixIn(EntryPreview.class, EntryPreviewShape.class)
                .addMixIn(Worksheet.class, WorksheetShape.class)
                .addMixIn(Linkage.class, LinkageShape.class)
                .addMixIn(LabelRun.class, LabelRunShape.class)
                .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
                .build();
    }

    /** A record, or a list of them, as one line of JSON. */
    public static String write(Object record) {
        try {
            return MAPPER.writeValueAsString(record);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("no JSON shape for " + record.getClass(), e);
        }
    }

    private static SimpleModule labels() {
        SimpleModule module = new SimpleModule("labels");
        label(module, Chemistry.class, Chemistry::label);
        label(module, LabelGrid.class, LabelGrid::key);
        label(module, CraftKind.class, CraftKind::label);
        label(module, SourceKind.class, SourceKind::label);
        label(module, CitationStatus.class, CitationStatus::label);
        label(module, Check.Sign.class, Check.Sign::label);
        label(module, Standing.class, Standing::word);
        label(module, TaskKind.class, TaskKind::word);
        label(module, Quantity.class, Quantity::key);
        label(module, SegmentKind.class, SegmentKind::label);
        label(module, EventKind.class, EventKind::key);
        label(module, EndKind.class, EndKind::key);
        label(module, Spot.class, Spot::label);
        label(module, Choice.Kind.class, Choice.Kind::label);
        label(module, Happened.Kind.class, kind -> kind.name().toLowerCase(Locale.ROOT));
        label(module, Planning.State.class, Planning.State::word);
        label(module, Demand.Limit.class, Demand.Limit::label);
        label(module, Fit.Joining.class, Fit.Joining::label);
        label(module, Caution.class, Caution::sentence);
        module.addSerializer(Crossing.class, new CrossingShape());
        label(module, Pack.Identity.class, identity -> identity.name().toLowerCase(Locale.ROOT));
        return module;
    }

    private static <T> void label(SimpleModule module, Class<T> type, Function<T, String> label) {
        module.addSerializer(type, new JsonSerializer<T>() {
            @Override
            public void serialize(T value, JsonGenerator json, SerializerProvider provider) throws IOException {
                json.writeString(label.apply(value));
            }
        });
    }

    /** Says which kind of linkage it is. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = FourBar.class, name = "pushrod"),
        @JsonSubTypes.Type(value = PullPull.class, name = "cables"),
        @JsonSubTypes.Type(value = TorqueRod.class, name = "torque rod")
    })
    private interface LinkageShape {}

    /** Adds a rule's stable id and its printed limit. */
    private interface RuleShape {
        @JsonProperty("id")
        String id();

        @JsonProperty("printed")
        String print();
    }

    /** What a trend says, its filter left out. */
    private interface FadeTrendShape {
        @JsonProperty("level")
        Estimate level();

        @JsonProperty("fadePerCycle")
        Estimate fadePerCycle();

        @JsonProperty("changepoints")
        List<Double> changepoints();

        @JsonProperty("cyclesPerDay")
        double cyclesPerDay();
    }

    /** Cycles left; {@code null} where the limit may never be crossed. */
    private static final class CrossingShape extends JsonSerializer<Crossing> {
        @Override
        public void serialize(Crossing value, JsonGenerator json, SerializerProvider provider) throws IOException {
            json.writeStartObject();
            write(json, "low", value.low());
            write(json, "median", value.median());
            write(json, "high", value.high());
            json.writeEndObject();
        }

        private static void write(JsonGenerator json, String name, double cycles) throws IOException {
            if (Double.isFinite(cycles)) {
                json.writeNumberField(name, cycles);
            } else {
                json.writeNullField(name);
            }
        }
    }

    /** Adds whether the line can be saved. */
    private interface EntryPreviewShape {
        @JsonProperty("canSave")
        boolean canSave();
    }

    /** Adds how many sheets of paper are needed. */
    private interface LabelRunShape {
        @JsonProperty("sheets")
        int sheets();
    }

    /** Shows what a worksheet asks, and leaves its sum out. */
    private interface WorksheetShape {
        @JsonProperty("word")
        String word();

        @JsonProperty("title")
        String title();

        @JsonProperty("question")
        String question();

        @JsonProperty("fields")
        List<WorksheetField> fields();
    }
}
