package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import planewright.api.calculator.Finding;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.Language;
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
import planewright.shared.quantity.UnitChoice;
import tech.units.indriya.quantity.Quantities;

/** Makes the record of inputs out of JSON; collects every problem, and remarks on what is unusual. */
final class Binder {
    private static final double EXAMPLE = 12;
    private static final MathContext TWO_DIGITS = new MathContext(2);

    private final JournalReader journal;
    private final LocalDateTime now;
    private final Language language;
    private final UnitChoice units;
    private final List<InputProblem> problems = new ArrayList<>();
    private final List<Finding> unusual = new ArrayList<>();

    /**
     * @param journal holds what an input names
     * @param now the builder's clock, which the word {@code now} stands for
     * @param language in which problems are told
     * @param units likewise
     */
    Binder(JournalReader journal, LocalDateTime now, Language language, UnitChoice units) {
        this.units = units;
        this.journal = journal;
        this.now = now;
        this.language = language;
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
            problem(place, language.say("missing"), accepted(field));
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
        var told = place.field().in(units).bounds();
        var read = units.written(value).text(language.locale());
        if (!bounds.accept(value)) {
            problem(place, read, told.accepted(language));
            return false;
        }
        if (!bounds.usual(value)) {
            unusual.add(Finding.lookAgain(
                    language.say("{0} is {1}; usual is {2}", place.name(), read, told.usually(language))));
        }
        return true;
    }

    private Optional<String> text(Place place, JsonNode node) {
        if (!node.isTextual()) {
            problem(place, shown(node), language.say("a text"));
            return Optional.empty();
        }
        return Optional.of(node.textValue());
    }

    private Optional<Boolean> yesNo(Place place, JsonNode node) {
        var word = node.asText().toLowerCase(java.util.Locale.ROOT);
        if (List.of("true", "yes", language.say("yes")).contains(word)) {
            return Optional.of(true);
        }
        if (List.of("false", "no", language.say("no")).contains(word)) {
            return Optional.of(false);
        }
        problem(place, shown(node), language.say("yes or no"));
        return Optional.empty();
    }

    private Optional<Integer> whole(Place place, JsonNode node) {
        try {
            int number = Integer.parseInt(node.asText().strip());
            return bounded(place, new Measured<>(Quantities.getQuantity(number, Units.NUMBER), Optional.empty()))
                    ? Optional.of(number)
                    : Optional.empty();
        } catch (NumberFormatException none) {
            problem(place, shown(node), language.say("a whole number"));
            return Optional.empty();
        }
    }

    private Optional<?> choice(Place place, JsonNode node) {
        var found = Arrays.stream(place.field().type().getEnumConstants())
                .filter(constant -> ShapeReader.word(constant)
                        .equalsIgnoreCase(node.asText().strip()))
                .findFirst();
        if (found.isEmpty()) {
            problem(place, shown(node), choices(place.field()));
        }
        return found;
    }

    private Optional<LocalDateTime> dateTime(Place place, JsonNode node) {
        var time =
                node.isTextual() ? ClockText.parse(node.textValue(), now, language) : Optional.<LocalDateTime>empty();
        if (time.isEmpty()) {
            problem(place, shown(node), language.say(ClockText.ACCEPTED));
        }
        return time;
    }

    private Optional<?> planform(Place place, JsonNode node) {
        return tree(place, node, language.say("a planform as in build.json"), PlanformJson::read);
    }

    private Optional<?> calendar(Place place, JsonNode node) {
        return tree(place, node, language.say("a calendar as in calendar.json"), RecordFiles::calendar);
    }

    private Optional<?> outline(Place place, JsonNode node) {
        if (node.isObject()) {
            return tree(place, node, language.say("an outline"), OutlineJson::read);
        }
        var template = node.isTextual() ? Shelved.outline(journal, node.textValue()) : Optional.<Template>empty();
        var outline = template.flatMap(journal::outline);
        if (outline.isEmpty()) {
            problem(
                    place,
                    template.isPresent() ? language.say("{0}, whose file cannot be read", shown(node)) : shown(node),
                    outlines());
        }
        return outline;
    }

    private String outlines() {
        var names = Shelved.outlines(journal);
        return names.isEmpty()
                ? language.say("an SVG file; there is no outline template to name")
                : language.say("an SVG file, or an outline template: {0}", "'" + String.join("', '", names) + "'");
    }

    private Optional<?> picture(Place place, JsonNode node) {
        if (node.isObject()) {
            return tree(
                    place,
                    node,
                    language.say("a picture of the journal"),
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
                    called.isEmpty()
                            ? shown(node)
                            : language.say("{0}, which {1} pictures are called", shown(node), called.size()),
                    language.say(
                            "the caption of one picture of the journal, or 6 or more digits with which its hash begins"));
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
            problem(place, language.say("not readable ({0})", unreadable.getMessage()), accepted);
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
            problem(place, shown(node), language.say("a list of rows"));
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
                        path,
                        language.say("row {0} of {1}", number, place.name()),
                        shown(element),
                        language.say("an object"),
                        ""));
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
                    owner.isEmpty() ? language.say("the input") : owner,
                    language.say("refused"),
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
                    owner.isEmpty()
                            ? language.say("input '{0}'", name)
                            : language.say("input '{0}' of {1}", name, owner),
                    language.say("unknown"),
                    String.join(", ", names),
                    ""));
        }
    }

    private String choices(Field field) {
        return field.choices().stream().map(field::told).collect(Collectors.joining(", "));
    }

    private void problem(Place place, String value, String accepted) {
        problems.add(new InputProblem(place.path(), place.name(), value, accepted, ""));
    }

    /** Twelve of the calculator's own unit, in the unit that is preferred. */
    private String example(Field asked, Field told) {
        var unit = told.unit().orElseThrow();
        var number = QuantityText.in(Measured.of(EXAMPLE, asked.unit().orElseThrow()), unit)
                .value()
                .getValue();
        double rough = new BigDecimal(number.doubleValue()).round(TWO_DIGITS).doubleValue();
        return QuantityText.show(Measured.of(rough, unit), language.locale());
    }

    private String accepted(Field asked) {
        var field = asked.in(units);
        var bounds = field.bounds().accepted(language);
        return switch (field.kind()) {
            case QUANTITY ->
                language.say("a quantity such as {0}", example(asked, field)) + (bounds.isEmpty() ? "" : ", " + bounds);
            case WHOLE_NUMBER -> language.say("a whole number") + (bounds.isEmpty() ? "" : ", " + bounds);
            case CHOICE -> choices(field);
            case DATE_TIME -> language.say(ClockText.ACCEPTED);
            case OUTLINE -> language.say("an outline template of the journal, or an SVG file");
            default -> language.say("a value");
        };
    }

    private String acceptedIn(QuantityProblem problem) {
        return problem.accepted(language.locale());
    }

    private String rowName(Place list, ObjectNode row, int number) {
        return list.field().row().orElseThrow().fields().stream()
                .filter(field -> field.kind() == Kind.TEXT)
                .map(field -> row.path(field.name()).asText(""))
                .filter(text -> !text.isBlank())
                .findFirst()
                .map(text -> "'" + text + "'")
                .orElseGet(() -> language.say("row {0} of {1}", number, list.name()));
    }

    private String name(Field field, String owner) {
        return owner.isEmpty() ? field.label() : language.say("{0} of {1}", inSentence(field.label()), owner);
    }

    /** English begins a label in small letters within a sentence; German nouns stay as they are. */
    private String inSentence(String label) {
        return language.locale().getLanguage().equals("en")
                ? Character.toLowerCase(label.charAt(0)) + label.substring(1)
                : label;
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
