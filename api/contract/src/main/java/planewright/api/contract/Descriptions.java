package planewright.api.contract;

import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.measure.Unit;
import org.pf4j.Extension;
import planewright.api.calculator.About;
import planewright.api.calculator.Finding;
import planewright.api.calculator.Input;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.Result;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Outline;
import planewright.api.journal.BenchCalendar;
import planewright.api.journal.Picture;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** What a form, a command line and a schema are made of is there and can be read. */
final class Descriptions {
    private static final Set<Class<?>> PLAIN = Set.of(
            Measured.class,
            String.class,
            boolean.class,
            Boolean.class,
            int.class,
            Integer.class,
            LocalDateTime.class,
            Planform.class,
            Outline.class,
            BenchCalendar.class,
            Picture.class);

    private Descriptions() {}

    static void about(Class<?> calculator, About about) {
        var name = calculator.getName();
        Checks.require(about != null, name + " has no @About");
        Checks.require(calculator.isAnnotationPresent(Extension.class), name + " has no @Extension");
        Checks.require(
                Modifier.isPublic(calculator.getModifiers())
                        && calculator.getConstructors().length == 1
                        && calculator.getConstructors()[0].getParameterCount() == 0,
                name + " cannot be made; accepted: a public class with one public constructor without parameters");
        Checks.require(
                about.id().matches("[a-z][a-z0-9]*\\.[a-z][a-z0-9-]*"),
                name + " has the id '" + about.id() + "'; accepted: plugin.name in lower case");
        Checks.require(!about.version().isBlank() && !about.title().isBlank(), name + " has no version or no title");
        Checks.require(
                about.question().matches("[A-Z].*\\?"),
                name + " asks '" + about.question() + "'; accepted: a question that starts with a capital");
        filled(name + " has a source", about.sources());
        filled(name + " has a caution", about.cautions());
    }

    private static void filled(String what, String... texts) {
        Checks.require(texts.length > 0, what + ": none; accepted: one or more");
        for (var text : texts) {
            Checks.require(!text.isBlank(), what + " that is blank");
        }
    }

    static void inputs(Class<? extends Record> type) {
        inputs(components(type));
    }

    static void inputs(RecordComponent... components) {
        var labels = new HashSet<String>();
        for (var component : components) {
            var place = place(component);
            var input = component.getAnnotation(Input.class);
            Checks.require(input != null, place + " has no @Input");
            label(place, input.label(), labels);
            Checks.require(
                    input.help().matches("(?s)[A-Z].*\\."),
                    place + " has the help '" + input.help() + "'; accepted: a sentence");
            Checks.require(
                    isValue(component) || isRows(component),
                    place + " cannot be an input; accepted: see planewright.api.calculator");
            unit(component, input.unit());
            readable(component, input);
            if (isRows(component)) {
                inputs(Records.content(component).asSubclass(Record.class));
            }
        }
    }

    static void results(Class<? extends Record> type) {
        var labels = new HashSet<String>();
        for (var component : components(type)) {
            var place = place(component);
            var result = component.getAnnotation(Result.class);
            Checks.require(result != null, place + " has no @Result");
            label(place, result.label(), labels);
            var content = Records.content(component);
            boolean list = component.getType() == List.class;
            Checks.require(
                    list && (content == Finding.class || content == Proposal.class)
                            || !list && (Chart.class.isAssignableFrom(content) || content == Drawing.class)
                            || isValue(component)
                            || isRows(component),
                    place + " cannot be a result; accepted: see planewright.api.calculator");
            unit(component, result.unit());
            if (isRows(component)) {
                results(content.asSubclass(Record.class));
            }
        }
    }

    private static RecordComponent[] components(Class<? extends Record> type) {
        Checks.require(Modifier.isPublic(type.getModifiers()), type.getName() + " is not public");
        Checks.require(type.getRecordComponents().length > 0, type.getName() + " holds nothing");
        return type.getRecordComponents();
    }

    private static void label(String place, String label, Set<String> taken) {
        Checks.require(!label.isBlank(), place + " has no label");
        Checks.require(taken.add(label), place + " has the label '" + label + "', which another one has");
    }

    private static void unit(RecordComponent component, String code) {
        boolean quantity = Records.content(component) == Measured.class;
        Checks.require(
                Units.ofCode(code).isPresent() == quantity,
                place(component) + " has the unit '" + code + "'; accepted: "
                        + (quantity ? "a UCUM code of the API's table of units" : "none, for it is no quantity"));
    }

    /** Bounds and initial values mean something, are in order, and agree. */
    private static void readable(RecordComponent component, Input input) {
        var place = place(component);
        var content = Records.content(component);
        if (content == Measured.class || content == int.class || content == Integer.class) {
            Unit<?> unit =
                    content == Measured.class ? Units.ofCode(input.unit()).orElseThrow() : Units.NUMBER;
            var bounds = Bounds.of(place, input, unit);
            for (var usual : List.of(input.initial(), input.usuallyFrom(), input.usuallyTo())) {
                Bounds.read(place, usual, unit)
                        .ifPresent(value -> Checks.require(
                                bounds.accept(value), place + ": '" + usual + "' lies outside its own bounds"));
            }
            Checks.require(
                    bounds.edges().stream().allMatch(edge -> bounds.atMost().orElse(edge) >= edge),
                    place + " accepts nothing: its bounds are the wrong way round");
        } else if (content.isEnum() && !input.initial().isEmpty()) {
            Checks.require(
                    Arrays.stream(content.getEnumConstants())
                            .map(constant -> ((Enum<?>) constant)
                                    .name()
                                    .toLowerCase(Locale.ROOT)
                                    .replace('_', ' '))
                            .anyMatch(input.initial()::equals),
                    place + " starts as '" + input.initial() + "', which is none of its choices");
        }
    }

    static boolean isRows(RecordComponent component) {
        var content = Records.content(component);
        return component.getType() == List.class && content.isRecord() && content != Finding.class;
    }

    private static boolean isValue(RecordComponent component) {
        var content = Records.content(component);
        return component.getType() != List.class && (PLAIN.contains(content) || content.isEnum());
    }

    private static String place(RecordComponent component) {
        return "'" + component.getName() + "' of "
                + component.getDeclaringRecord().getSimpleName();
    }
}
