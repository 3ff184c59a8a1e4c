package planewright.api.contract;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Records taken apart and put together again. */
final class Records {
    private Records() {}

    static Object value(Record record, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException unreadable) {
            throw new AssertionError(component + " cannot be read", unreadable);
        }
    }

    static Record copy(Record record) {
        return of(record.getClass(), values(record));
    }

    /**
     * The same record with one component changed.
     *
     * @throws IllegalArgumentException where the record refuses it
     */
    static Record with(Record record, RecordComponent component, Object value) {
        var values = values(record);
        var components = record.getClass().getRecordComponents();
        for (int i = 0; i < components.length; i++) {
            if (components[i].getName().equals(component.getName())) {
                values[i] = value;
            }
        }
        return of(record.getClass(), values);
    }

    private static Object[] values(Record record) {
        return Arrays.stream(record.getClass().getRecordComponents())
                .map(component -> value(record, component))
                .toArray();
    }

    private static Record of(Class<? extends Record> type, Object... values) {
        try {
            var constructor = type.getDeclaredConstructor(Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new));
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof IllegalArgumentException told) {
                throw told;
            }
            throw new AssertionError(type + " fails instead of refusing", refused.getCause());
        } catch (ReflectiveOperationException impossible) {
            throw new AssertionError(type + " cannot be made", impossible);
        }
    }

    /** What a component holds, without {@code Optional} or {@code List} around it. */
    static Class<?> content(RecordComponent component) {
        var type = component.getGenericType();
        boolean wrapped = component.getType() == Optional.class || component.getType() == List.class;
        return raw(wrapped ? ((ParameterizedType) type).getActualTypeArguments()[0] : type);
    }

    private static Class<?> raw(Type type) {
        return type instanceof Class<?> known
                ? known
                : type instanceof ParameterizedType parameterized
                        ? (Class<?>) parameterized.getRawType()
                        : Object.class;
    }
}
