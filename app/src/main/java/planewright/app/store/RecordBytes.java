package planewright.app.store;

import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.Unit;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import tech.units.indriya.quantity.Quantities;

/**
 * Records as bytes that are read back many times faster than JSON: for what the program keeps for itself and can make again, never
 * for what a journal holds. Bytes of records of another shape cannot be read; {@link #shape} tells them apart.
 *
 * @param <R> its components are texts, numbers, truths, dates, words of an enum, quantities, and records, lists and optionals of
 *     these
 */
final class RecordBytes<R extends Record> {
    private static final Map<String, Unit<?>> UNITS = new ConcurrentHashMap<>();

    private final Class<R> type;
    private final Form<?> form;

    /** @throws IllegalArgumentException for a record with a component of another kind */
    RecordBytes(Class<R> type) {
        this.type = type;
        this.form = form(type);
    }

    /** The names and kinds of all components. */
    String shape() {
        return form.shape();
    }

    void write(R record, DataOutputStream out) throws IOException {
        form.write(record, out);
    }

    /** @throws RuntimeException if the bytes are none of such a record */
    R read(ByteBuffer in) {
        return type.cast(form.read(in));
    }

    static void writeText(String text, DataOutputStream out) throws IOException {
        var bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    static String readText(ByteBuffer in) {
        var bytes = new byte[in.getInt()];
        in.get(bytes);
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private interface Writer<T> {
        void write(T value, DataOutputStream out) throws IOException;
    }

    private interface Reader {
        Object read(ByteBuffer in);
    }

    /** How one kind of value is written and read. */
    private record Form<T>(String shape, Class<T> type, Writer<T> writer, Reader reader) {
        void write(Object value, DataOutputStream out) throws IOException {
            writer.write(type.cast(value), out);
        }

        Object read(ByteBuffer in) {
            return reader.read(in);
        }
    }

    private static Form<?> form(Type type) {
        if (type instanceof ParameterizedType generic) {
            var element = generic.getActualTypeArguments()[0];
            if (generic.getRawType() == List.class) {
                return list(form(element));
            }
            if (generic.getRawType() == Optional.class) {
                return optional(form(element));
            }
            if (generic.getRawType() == Measured.class) {
                return new Form<>("measured", Measured.class, RecordBytes::writeMeasured, RecordBytes::readMeasured);
            }
        }
        if (type == String.class) {
            return new Form<>("text", String.class, RecordBytes::writeText, RecordBytes::readText);
        }
        if (type == double.class) {
            return new Form<>("number", Double.class, (number, out) -> out.writeDouble(number), ByteBuffer::getDouble);
        }
        if (type == boolean.class) {
            return new Form<>("truth", Boolean.class, (truth, out) -> out.writeBoolean(truth), in -> in.get() != 0);
        }
        if (type == LocalDate.class) {
            return new Form<>(
                    "date",
                    LocalDate.class,
                    (date, out) -> out.writeLong(date.toEpochDay()),
                    in -> LocalDate.ofEpochDay(in.getLong()));
        }
        if (type instanceof Class<?> kind && kind.isEnum()) {
            var words = kind.getEnumConstants();
            return new Form<>(
                    Arrays.toString(words),
                    Enum.class,
                    (word, out) -> out.writeByte(word.ordinal()),
                    in -> words[in.get()]);
        }
        if (type instanceof Class<?> kind && kind.isRecord()) {
            return record(kind);
        }
        throw new IllegalArgumentException(type.getTypeName() + " cannot be written as bytes");
    }

    private static Form<?> list(Form<?> element) {
        return new Form<>(
                "list of " + element.shape(),
                List.class,
                (values, out) -> {
                    out.writeInt(values.size());
                    for (Object value : values) {
                        element.write(value, out);
                    }
                },
                in -> {
                    int size = in.getInt();
                    var values = new ArrayList<Object>();
                    for (int i = 0; i < size; i++) {
                        values.add(element.read(in));
                    }
                    return values;
                });
    }

    private static Form<?> optional(Form<?> element) {
        return new Form<>(
                "maybe " + element.shape(),
                Optional.class,
                (value, out) -> {
                    out.writeBoolean(value.isPresent());
                    if (value.isPresent()) {
                        element.write(value.get(), out);
                    }
                },
                in -> in.get() == 0 ? Optional.empty() : Optional.of(element.read(in)));
    }

    private static Form<?> record(Class<?> type) {
        var components = type.getRecordComponents();
        var forms = Arrays.stream(components)
                .map(component -> form(component.getGenericType()))
                .toList();
        var getters =
                Arrays.stream(components).map(RecordComponent::getAccessor).toList();
        var maker = constructor(type, components);
        return new Form<>(
                IntStream.range(0, components.length)
                        .mapToObj(i ->
                                components[i].getName() + " " + forms.get(i).shape())
                        .collect(Collectors.joining(", ", type.getSimpleName() + "(", ")")),
                type,
                (value, out) -> {
                    for (int i = 0; i < components.length; i++) {
                        forms.get(i).write(component(value, getters.get(i)), out);
                    }
                },
                in -> {
                    var values = new Object[components.length];
                    for (int i = 0; i < values.length; i++) {
                        values[i] = forms.get(i).read(in);
                    }
                    return made(maker, values);
                });
    }

    private static Constructor<?> constructor(Class<?> type, RecordComponent[] components) {
        try {
            return type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException(type + " has no constructor of its components", impossible);
        }
    }

    private static Object component(Object record, Method getter) {
        try {
            return getter.invoke(record);
        } catch (ReflectiveOperationException failure) {
            throw new IllegalStateException(getter + " cannot be asked", failure);
        }
    }

    private static Object made(Constructor<?> maker, Object[] values) {
        try {
            return maker.newInstance(values);
        } catch (ReflectiveOperationException failure) {
            throw new IllegalStateException("these are no components of a " + maker.getDeclaringClass(), failure);
        }
    }

    private static void writeMeasured(Measured<?> value, DataOutputStream out) throws IOException {
        writeQuantity(value.value(), out);
        out.writeBoolean(value.plusMinus().isPresent());
        if (value.plusMinus().isPresent()) {
            writeQuantity(value.plusMinus().get(), out);
        }
    }

    private static void writeQuantity(Quantity<?> quantity, DataOutputStream out) throws IOException {
        out.writeDouble(quantity.getValue().doubleValue());
        writeText(Units.codeOf(quantity.getUnit()), out);
    }

    private static Measured<?> readMeasured(ByteBuffer in) {
        return measured(in.getDouble(), unit(in), in);
    }

    private static <Q extends Quantity<Q>> Measured<Q> measured(double number, Unit<Q> unit, ByteBuffer in) {
        var value = Quantities.getQuantity(number, unit);
        if (in.get() == 0) {
            return new Measured<>(value, Optional.empty());
        }
        double spread = in.getDouble();
        @SuppressWarnings("unchecked") // a Measured's value and spread are of one kind
        var same = (Unit<Q>) unit(in);
        return new Measured<>(value, Optional.of(Quantities.getQuantity(spread, same)));
    }

    private static Unit<?> unit(ByteBuffer in) {
        return UNITS.computeIfAbsent(readText(in), code -> Units.ofCode(code).orElseThrow());
    }
}
