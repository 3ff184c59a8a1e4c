package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import planewright.api.calculator.Finding;
import planewright.api.calculator.InputProblem;
import planewright.api.journal.JournalReader;
import planewright.api.journal.Template;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.PictureRecord;
import planewright.app.store.PlanformJson;
import planewright.app.store.RecordFiles;
import planewright.app.store.Unreadable;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import tech.units.indriya.quantity.Quantities;

/** Makes the record of inputs out of JSON; collects every problem, and remarks on what is unusual. */
final class Binder {
    private final JournalReader journal;
    private final LocalDateTime now;
    private final List<InputProblem> problems = new ArrayList<>();
    private final List<Finding> unusual = new ArrayList<>();

    /**
     * @param journal holds what an input names
     * @param now the builder's clock, which the word {@code now} stands for
     */
    Binder(JournalReader journal, LocalDateTime now) {
        this.journal = journal;
        this.now = now;
    }

    /** What could not be made. */
    List<InputProblem> problems() {
        return problems;
    }

    /** What was accepted and is seldom so. */
    List<Finding> unusual() {
        return unusual;
    }

    /** The record, or empty where there are problems. */
    Optional<Record> bind(Shape shape, ObjectNode inputs) {
        return bind(shape, inputs, "", "");
    }

    private Optional<Record> bind(Shape shape, ObjectNode inputs, String path, String owner) {
        int before = problems.size();
        inputs.fieldNames().forEachRemaining(name -> requireKnown(shape, name, path, owner));
        var values = new Object[shape.fields().size()];
        for (int i = 0; i < values.length; i++) {
            var field = shape.fields().get(i);
            values[i] = value(new Place(field, path + field.name(), name(field, owner)), inputs.get(field.name()));
        }
        return problems.size() > before ? Optional.empty() : construct(shape, values, path, owner);
    }

    private Object value(Place place, JsonNode node) {
        var field = place.field();
        if (field.kind() == Kind.ROWS) {
            return rows(place, node);
        }
        Optional<?> value = node == null
                        || node.isNull()
                        || node.isTextual() && node.asText().isBlank()
                ? initial(place)
                : plain(place, node);
        if (field.optional()) {
            return value;
        }
        return value.orElse(null);
    }

    private Optional<?> initial(Place place) {
        var field = place.field();
        if (!field.initial().isEmpty()) {
            return plain(place, new com.fasterxml.jackson.databind.node.TextNode(field.initial()));
        }
        if (field.kind() == Kind.TEXT && !field.optional()) {
            return Optional.of("");
        }
        if (field.kind() == Kind.YES_NO && !field.optional()) {
            return Optional.of(false);
        }
        if (!field.optional()) {
            problem(place, "missing", accepted(field));
        }
        return Optional.empty();
    }

    private Optional<?> plain(Place place, JsonNode node) {
        return switch (place.field().kind()) {
            case QUANTITY -> quantity(place, node);
            case TEXT -> text(place, node);
            case YES_NO -> yesNo(place, node);
            case WHOLE_NUMBER -> whole(place, node);
            case CHOICE -> choice(place, node);
            case DATE_TIME -> dateTime(place, node);
            case PLANFORM -> planform(place, node);
            case OUTLINE -> outline(place, node);
            case CALENDAR -> calendar(place, node);
            case PICTURE -> picture(place, node);
            default -> throw new IllegalStateException(place.field().kind() + " is not bound here");
        };
    }

    private Optional<Measured<?>> quantity(Place place, JsonNode node) {
        try {
            Measured<?> value =
                    QuantityJson.read(node, place.field().unit().orElseThrow()).measured();
            return bounded(place, value) ? Optional.of(value) : Optional.empty();
        } catch (QuantityProblem problem) {
            problems.add(new InputProblem(place.path(), place.name(), shown(node), acceptedIn(problem), ""));
            return Optional.empty();
        }
    }

    private boolean bounded(Place place, Measured<?> value) {
        var bounds = place.field().bounds();
        if (!bounds.accept(value)) {
            problem(place, QuantityText.show(value), bounds.accepted());
            return false;
        }
        if (!bounds.usual(value)) {
            unusual.add(Finding.lookAgain(
                    place.name() + " is " + QuantityText.show(value) + "; usual is " + bounds.usually()));
        }
        return true;
    }

    private Optional<String> text(Place place, JsonNode node) {
        if (!node.isTextual()) {
            problem(place, shown(node), "a text");
            return Optional.empty();
        }
        return Optional.of(node.textValue());
    }

    private Optional<Boolean> yesNo(Place place, JsonNode node) {
        var word = node.asText().toLowerCase(java.util.Locale.ROOT);
        if (List.of("true", "yes").contains(word)) {
            return Optional.of(true);
        }
        if (List.of("false", "no").contains(word)) {
            return Optional.of(false);
        }
        problem(place, shown(node), "yes or no");
        return Optional.empty();
    }

    private Optional<Integer> whole(Place place, JsonNode node) {
        try {
            int number = Integer.parseInt(node.asText().strip());
            return bounded(place, new Measured<>(Quantities.getQuantity(number, Units.NUMBER), Optional.empty()))
                    ? Optional.of(number)
                    : Optional.empty();
        } catch (NumberFormatException none) {
            problem(place, shown(node), "a whole number");
            return Optional.empty();
        }
    }

    private Optional<?> choice(Place place, JsonNode node) {
        var found = Arrays.stream(place.field().type().getEnumConstants())
                .filter(constant -> ShapeReader.word(constant)
                        .equalsIgnoreCase(node.asText().strip()))
                .findFirst();
        if (found.isEmpty()) {
            problem(place, shown(node), String.join(", ", place.field().choices()));
        }
        return found;
    }

    private Optional<LocalDateTime> dateTime(Place place, JsonNode node) {
        var time = node.isTextual() ? ClockText.parse(node.textValue(), now) : Optional.<LocalDateTime>empty();
        if (time.isEmpty()) {
            problem(place, shown(node), ClockText.ACCEPTED);
        }
        return time;
    }

    private Optional<?> planform(Place place, JsonNode node) {
        return tree(place, node, "a planform as in build.json", PlanformJson::read);
    }

    private Optional<?> calendar(Place place, JsonNode node) {
        return tree(place, node, "a calendar as in calendar.json", RecordFiles::calendar);
    }

    private Optional<?> outline(Place place, JsonNode node) {
        if (node.isObject()) {
            return tree(place, node, "an outline", OutlineJson::read);
        }
        var template = node.isTextual() ? Shelved.outline(journal, node.textValue()) : Optional.<Template>empty();
        var outline = template.flatMap(journal::outline);
        if (outline.isEmpty()) {
            problem(place, shown(node) + (template.isPresent() ? ", whose file cannot be read" : ""), outlines());
        }
        return outline;
    }

    private String outlines() {
        var names = Shelved.outlines(journal);
        return names.isEmpty()
                ? "an SVG file; there is no outline template to name"
                : "an SVG file, or an outline template: '" + String.join("', '", names) + "'";
    }

    private Optional<?> picture(Place place, JsonNode node) {
        if (node.isObject()) {
            return tree(
                    place,
                    node,
                    "a picture of the journal",
                    tree -> new PictureRecord(
                            tree.path("hash").asText(),
                            tree.path("type").asText(),
                            tree.path("caption").asText()));
        }
        var called = node.isTextual()
                ? Shelved.pictures(journal, new Shelved.Called(node.textValue()))
                : List.<PictureRecord>of();
        if (called.size() != 1) {
            problem(
                    place,
                    shown(node) + (called.isEmpty() ? "" : ", which " + called.size() + " pictures are called"),
                    "the caption of one picture of the journal, or 6 or more digits with which its hash begins");
            return Optional.empty();
        }
        return Optional.of(called.get(0));
    }

    private <T> Optional<T> tree(Place place, JsonNode node, String accepted, TreeReader<T> reader) {
        try {
            if (node instanceof ObjectNode tree) {
                return Optional.of(reader.read(tree));
            }
            problem(place, shown(node), accepted);
        } catch (Unreadable | IllegalArgumentException unreadable) {
            problem(place, "not readable (" + unreadable.getMessage() + ")", accepted);
        }
        return Optional.empty();
    }

    private interface TreeReader<T> {
        T read(ObjectNode tree) throws Unreadable;
    }

    private List<Object> rows(Place place, JsonNode node) {
        var rows = new ArrayList<Object>();
        if (node == null || node.isNull()) {
            return rows;
        }
        if (!node.isArray()) {
            problem(place, shown(node), "a list of rows");
            return rows;
        }
        int number = 0;
        for (var element : node) {
            var path = place.path() + "[" + number++ + "]";
            if (element instanceof ObjectNode row) {
                bind(place.field().row().orElseThrow(), row, path + ".", rowName(place, row, number))
                        .ifPresent(rows::add);
            } else {
                problems.add(new InputProblem(
                        path, "row " + number + " of " + place.name(), shown(element), "an object", ""));
            }
        }
        return rows;
    }

    private Optional<Record> construct(Shape shape, Object[] values, String path, String owner) {
        try {
            var types = Arrays.stream(shape.type().getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new);
            var constructor = shape.type().getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return Optional.of(constructor.newInstance(values));
        } catch (InvocationTargetException refused) {
            problems.add(new InputProblem(
                    path,
                    owner.isEmpty() ? "the input" : owner,
                    "refused",
                    String.valueOf(refused.getCause().getMessage()),
                    ""));
            return Optional.empty();
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("record " + shape.type() + " cannot be made", impossible);
        }
    }

    private void requireKnown(Shape shape, String name, String path, String owner) {
        if (shape.field(name).isEmpty()) {
            var names = shape.fields().stream().map(Field::name).toList();
            problems.add(new InputProblem(
                    path + name,
                    "input '" + name + "'" + (owner.isEmpty() ? "" : " of " + owner),
                    "unknown",
                    String.join(", ", names),
                    ""));
        }
    }

    private void problem(Place place, String value, String accepted) {
        problems.add(new InputProblem(place.path(), place.name(), value, accepted, ""));
    }

    private static String accepted(Field field) {
        var bounds = field.bounds().accepted();
        return switch (field.kind()) {
            case QUANTITY ->
                "a quantity such as 12 " + Units.symbolOf(field.unit().orElseThrow())
                        + (bounds.isEmpty() ? "" : ", " + bounds);
            case WHOLE_NUMBER -> "a whole number" + (bounds.isEmpty() ? "" : ", " + bounds);
            case CHOICE -> String.join(", ", field.choices());
            case DATE_TIME -> ClockText.ACCEPTED;
            case OUTLINE -> "an outline template of the journal, or an SVG file";
            default -> "a value";
        };
    }

    private static String acceptedIn(QuantityProblem problem) {
        var words = problem.getMessage();
        int at = words.indexOf("accepted: ");
        return at < 0 ? words : words.substring(at + "accepted: ".length());
    }

    private static String rowName(Place list, ObjectNode row, int number) {
        return list.field().row().orElseThrow().fields().stream()
                .filter(field -> field.kind() == Kind.TEXT)
                .map(field -> row.path(field.name()).asText(""))
                .filter(text -> !text.isBlank())
                .findFirst()
                .map(text -> "'" + text + "'")
                .orElse("row " + number + " of " + list.name());
    }

    private static String name(Field field, String owner) {
        var label = owner.isEmpty()
                ? field.label()
                : Character.toLowerCase(field.label().charAt(0)) + field.label().substring(1);
        return owner.isEmpty() ? label : label + " of " + owner;
    }

    private static String shown(JsonNode node) {
        if (node.isObject() && node.has("value")) {
            return node.path("value").asText() + " " + node.path("unit").asText("");
        }
        var text = node.isTextual() ? "'" + node.textValue() + "'" : node.toString();
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }

    /** A field, where it stands, and what the builder calls it. */
    private record Place(Field field, String path, String name) {}
}
