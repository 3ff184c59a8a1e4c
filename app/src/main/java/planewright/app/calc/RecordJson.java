package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Proposal;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Outline;
import planewright.api.journal.BenchCalendar;
import planewright.api.journal.Picture;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.app.journal.CalendarRecord;
import planewright.app.store.JsonFiles;
import planewright.app.store.PlanformJson;
import planewright.app.store.RecordFiles;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** A record of inputs or results as JSON. */
final class RecordJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private RecordJson() {}

    /** The object; quantities in the units that the shape shows. Absent values are not written. */
    static ObjectNode write(Shape shape, Record record) {
        var object = JsonFiles.object();
        for (var field : shape.fields()) {
            write(field, component(record, field.name())).ifPresent(node -> object.set(field.name(), node));
        }
        return object;
    }

    /** The value of a component. */
    static Object component(Record record, String name) {
        try {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                if (component.getName().equals(name)) {
                    var accessor = component.getAccessor();
                    accessor.setAccessible(true);
                    return accessor.invoke(record);
                }
            }
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(
                    "component '" + name + "' of " + record.getClass() + " cannot be read", impossible);
        }
        throw new IllegalArgumentException("record " + record.getClass() + " has no component '" + name + "'");
    }

    private static Optional<JsonNode> write(Field field, Object value) {
        var present = value instanceof Optional<?> optional ? optional.orElse(null) : value;
        return present == null ? Optional.empty() : Optional.of(node(field, present));
    }

    /** The value of a field that is present. */
    static JsonNode node(Field field, Object value) {
        return switch (field.kind()) {
            case QUANTITY ->
                QuantityJson.write(
                        QuantityText.in((Measured<?>) value, field.unit().orElseThrow()));
            case TEXT -> NODES.textNode((String) value);
            case YES_NO -> NODES.booleanNode((Boolean) value);
            case WHOLE_NUMBER -> NODES.numberNode((Integer) value);
            case CHOICE -> NODES.textNode(ShapeReader.word(value));
            case DATE_TIME -> NODES.textNode(value.toString());
            case PLANFORM -> PlanformJson.write((Planform) value);
            case OUTLINE -> OutlineJson.write((Outline) value);
            case CALENDAR -> RecordFiles.json(CalendarRecord.of((BenchCalendar) value));
            case PICTURE -> Shelved.json((Picture) value);
            case ROWS -> rows(field, (List<?>) value);
            case CHART -> FigureJson.chart((Chart) value);
            case DRAWING -> FigureJson.drawing((Drawing) value);
            case FINDINGS -> findings((List<?>) value);
            case PROPOSALS -> proposals((List<?>) value);
        };
    }

    private static ArrayNode rows(Field field, List<?> rows) {
        var array = NODES.arrayNode();
        rows.forEach(row -> array.add(write(field.row().orElseThrow(), (Record) row)));
        return array;
    }

    private static ArrayNode findings(List<?> findings) {
        var array = NODES.arrayNode();
        for (var each : findings) {
            var finding = (Finding) each;
            array.addObject().put("grade", finding.grade().word()).put("text", finding.text());
        }
        return array;
    }

    private static ArrayNode proposals(List<?> proposals) {
        var array = NODES.arrayNode();
        proposals.forEach(each -> array.add(proposal((Proposal) each)));
        return array;
    }

    private static ObjectNode proposal(Proposal proposal) {
        if (proposal instanceof Proposal.NewTask task) {
            var node = JsonFiles.object().put("kind", "task").put("name", task.name());
            task.handsOn().ifPresent(time -> node.set("handsOn", written(time)));
            return node;
        }
        if (proposal instanceof Proposal.NewOutline outline) {
            return texts("outline", outline.name(), "notes", outline.notes())
                    .set("outline", OutlineJson.write(outline.outline()));
        }
        if (proposal instanceof Proposal.NewPlanform shape) {
            return JsonFiles.object()
                    .put("kind", "planform")
                    .put("name", shape.name())
                    .set("planform", PlanformJson.write(shape.planform()));
        }
        if (proposal instanceof Proposal.NewText text) {
            return texts("text", text.name(), "text", text.text());
        }
        if (proposal instanceof Proposal.NewJoint joint) {
            return JsonFiles.object()
                    .put("kind", "joint")
                    .put("name", joint.name())
                    .put("material", joint.material())
                    .put("start", joint.start().toString())
                    .put("handsOffUntil", joint.handsOffUntil().toString())
                    .put("fullyCured", joint.fullyCured().toString());
        }
        return proposal instanceof Proposal.NewMeasurement measurement
                ? valued("measurement", proposal, measurement.value())
                : valued("set-up value", proposal, ((Proposal.NewSetUpValue) proposal).value());
    }

    private static ObjectNode texts(String kind, String name, String list, List<String> texts) {
        var node = JsonFiles.object().put("kind", kind).put("name", name);
        texts.forEach(node.putArray(list)::add);
        return node;
    }

    private static ObjectNode valued(String kind, Proposal proposal, Measured<?> value) {
        return JsonFiles.object().put("kind", kind).put("name", proposal.name()).set("value", written(value));
    }

    /** With the digits that the journal gets. */
    private static ObjectNode written(Measured<?> value) {
        return QuantityJson.write(Written.of(value).measured());
    }
}
