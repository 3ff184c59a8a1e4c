package planewright.app.calc;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Unit;
import planewright.api.calculator.Finding;
import planewright.api.calculator.From;
import planewright.api.calculator.Input;
import planewright.api.calculator.Language;
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
import planewright.shared.material.Materials;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;

/** Reads what a record holds from its components and their annotations. */
final class ShapeReader {
    private ShapeReader() {}

    static Shape inputs(Class<? extends Record> type) throws Faulty {
        var fields = new ArrayList<Field>();
        for (var component : type.getRecordComponents()) {
            var input = component.getAnnotation(Input.class);
            if (input == null) {
                throw new Faulty(place(component) + " has no @Input");
            }
            fields.add(input(component, input));
        }
        return new Shape(type, fields);
    }

    static Shape results(Class<? extends Record> type) throws Faulty {
        var fields = new ArrayList<Field>();
        for (var component : type.getRecordComponents()) {
            var result = component.getAnnotation(Result.class);
            if (result == null) {
                throw new Faulty(place(component) + " has no @Result");
            }
            fields.add(result(component, result));
        }
        for (var field : fields) {
            if (!field.upTo().isEmpty() && fields.stream().noneMatch(other -> isEnd(field, other))) {
                throw new Faulty(type.getSimpleName() + "." + field.name() + " runs up to '" + field.upTo()
                        + "', which is no quantity of its unit");
            }
        }
        return new Shape(type, fields);
    }

    private static boolean isEnd(Field begin, Field other) {
        return other.name().equals(begin.upTo())
                && begin.kind() == Kind.QUANTITY
                && other.kind() == Kind.QUANTITY
                && other.unit().equals(begin.unit());
    }

    /** The word of a constant: {@code main wheels} for {@code MAIN_WHEELS}. */
    static String word(Object constant) {
        return ((Enum<?>) constant).name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static Field input(RecordComponent component, Input input) throws Faulty {
        var value = ValueType.of(component);
        if (value.kind().compareTo(Kind.ROWS) > 0) {
            throw new Faulty(place(component) + " is a " + value.kind() + ", which cannot be an input");
        }
        var unit = unit(component, value.kind(), input.unit());
        return new Field(
                component.getName(),
                input.label(),
                input.help(),
                value.kind(),
                unit,
                value.optional(),
                input.initial(),
                bounds(component, value.kind(), unit, input),
                offered(value, input.from()),
                row(value, true),
                Optional.of(input.from()).filter(from -> from.value() != From.Place.NOWHERE),
                input.under(),
                "",
                Language.ENGLISH,
                value.type());
    }

    private static Field result(RecordComponent component, Result result) throws Faulty {
        var value = ValueType.of(component);
        return new Field(
                component.getName(),
                result.label(),
                result.help(),
                value.kind(),
                unit(component, value.kind(), result.unit()),
                value.optional(),
                "",
                Bounds.NONE,
                choices(value.type()),
                row(value, false),
                Optional.empty(),
                result.under(),
                result.upTo(),
                Language.ENGLISH,
                value.type());
    }

    private static Optional<Shape> row(ValueType value, boolean input) throws Faulty {
        if (value.kind() != Kind.ROWS) {
            return Optional.empty();
        }
        var type = value.type().asSubclass(Record.class);
        return Optional.of(input ? inputs(type) : results(type));
    }

    private static Optional<Unit<?>> unit(RecordComponent component, Kind kind, String code) throws Faulty {
        if (kind != Kind.QUANTITY) {
            return Optional.empty();
        }
        Optional<Unit<?>> unit = Units.ofCode(code);
        if (unit.isEmpty()) {
            throw new Faulty(
                    place(component) + " has the unit '" + code + "'; accepted: a UCUM code of the API's Units");
        }
        return unit;
    }

    private static Bounds bounds(RecordComponent component, Kind kind, Optional<Unit<?>> unit, Input input)
            throws Faulty {
        if (kind != Kind.QUANTITY && kind != Kind.WHOLE_NUMBER) {
            return Bounds.NONE;
        }
        var like = unit.orElse(Units.NUMBER);
        if (!input.initial().isEmpty()) {
            bound(component, input.initial(), like);
        }
        return new Bounds(
                bound(component, input.above(), like),
                bound(component, input.atLeast(), like),
                bound(component, input.atMost(), like),
                bound(component, input.usuallyFrom(), like),
                bound(component, input.usuallyTo(), like));
    }

    private static Optional<Measured<?>> bound(RecordComponent component, String text, Unit<?> like) throws Faulty {
        try {
            return text.isEmpty()
                    ? Optional.empty()
                    : Optional.of(QuantityText.parseLike(text, like).measured());
        } catch (QuantityProblem problem) {
            throw new Faulty(place(component) + ": " + problem.getMessage());
        }
    }

    private static List<String> choices(Class<?> type) {
        return type.isEnum()
                ? Arrays.stream(type.getEnumConstants()).map(ShapeReader::word).toList()
                : List.of();
    }

    private static List<String> offered(ValueType value, From from) {
        return from.value() == From.Place.MATERIAL ? Materials.table().names(from.name()) : choices(value.type());
    }

    private static String place(RecordComponent component) {
        return "component '" + component.getName() + "' of "
                + component.getDeclaringRecord().getSimpleName();
    }

    /** A component's type taken apart. */
    private record ValueType(Kind kind, boolean optional, Class<?> type) {
        static ValueType of(RecordComponent component) throws Faulty {
            var type = component.getGenericType();
            if (raw(type) == Optional.class) {
                return of(component, argument(type), true);
            }
            return of(component, type, false);
        }

        private static ValueType of(RecordComponent component, Type type, boolean optional) throws Faulty {
            var raw = raw(type);
            if (raw == List.class) {
                return new ValueType(listKind(component, raw(argument(type))), true, raw(argument(type)));
            }
            return new ValueType(kind(component, raw), optional, raw);
        }

        private static Kind listKind(RecordComponent component, Class<?> element) throws Faulty {
            if (element == Finding.class) {
                return Kind.FINDINGS;
            }
            if (element == Proposal.class) {
                return Kind.PROPOSALS;
            }
            if (element.isRecord()) {
                return Kind.ROWS;
            }
            throw new Faulty(place(component) + " is a list of " + element.getSimpleName()
                    + "; accepted: lists of row records, of findings, of proposals");
        }

        private static Kind kind(RecordComponent component, Class<?> type) throws Faulty {
            if (type == Measured.class) {
                return Kind.QUANTITY;
            } else if (type == String.class) {
                return Kind.TEXT;
            } else if (type == boolean.class || type == Boolean.class) {
                return Kind.YES_NO;
            } else if (type == int.class || type == Integer.class) {
                return Kind.WHOLE_NUMBER;
            } else if (type.isEnum()) {
                return Kind.CHOICE;
            } else if (type == LocalDateTime.class) {
                return Kind.DATE_TIME;
            } else if (type == Planform.class) {
                return Kind.PLANFORM;
            } else if (type == Outline.class) {
                return Kind.OUTLINE;
            } else if (type == BenchCalendar.class) {
                return Kind.CALENDAR;
            } else if (type == Picture.class) {
                return Kind.PICTURE;
            } else if (Chart.class.isAssignableFrom(type)) {
                return Kind.CHART;
            } else if (type == Drawing.class) {
                return Kind.DRAWING;
            }
            throw new Faulty(place(component) + " is a " + type.getSimpleName()
                    + "; accepted: what the package description of planewright.api.calculator lists");
        }

        private static Type argument(Type type) {
            return ((ParameterizedType) type).getActualTypeArguments()[0];
        }

        private static Class<?> raw(Type type) {
            if (type instanceof Class<?> raw) {
                return raw;
            }
            return type instanceof ParameterizedType parameterized
                    ? (Class<?>) parameterized.getRawType()
                    : Object.class;
        }
    }
}
