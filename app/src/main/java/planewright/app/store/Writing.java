package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.quantity.Written;

/** Fills an object with fields; what is absent or empty is not written. */
final class Writing {
    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

    private final ObjectNode object = JsonFiles.object();

    ObjectNode done() {
        return object;
    }

    Writing text(String name, String text) {
        if (!text.isEmpty()) {
            object.put(name, text);
        }
        return this;
    }

    Writing whole(String name, int number) {
        object.put(name, number);
        return this;
    }

    Writing number(String name, double number) {
        if (number == Math.rint(number) && Math.abs(number) < 1e9) {
            object.put(name, (int) number);
        } else {
            object.put(name, BigDecimal.valueOf(number));
        }
        return this;
    }

    Writing flag(String name, boolean flag) {
        if (flag) {
            object.put(name, true);
        }
        return this;
    }

    Writing time(String name, LocalDateTime time) {
        return text(name, time.getSecond() == 0 && time.getNano() == 0 ? MINUTES.format(time) : time.toString());
    }

    Writing time(String name, Optional<LocalDateTime> time) {
        time.ifPresent(known -> time(name, known));
        return this;
    }

    Writing texts(String name, List<String> texts) {
        if (!texts.isEmpty()) {
            var array = object.putArray(name);
            texts.forEach(array::add);
        }
        return this;
    }

    <T> Writing rows(String name, List<T> rows, Function<T, Writing> row) {
        if (!rows.isEmpty()) {
            var array = object.putArray(name);
            rows.forEach(each -> array.add(row.apply(each).done()));
        }
        return this;
    }

    Writing tree(String name, ObjectNode tree) {
        object.set(name, tree.deepCopy());
        return this;
    }

    Writing nested(String name, Writing nested) {
        object.set(name, nested.done());
        return this;
    }

    Writing written(Written quantity) {
        text("value", quantity.number()).text("unit", Units.codeOf(quantity.unit()));
        quantity.plusMinus().ifPresent(spread -> text("plusMinus", spread));
        return this;
    }

    Writing measured(String name, Optional<? extends Measured<?>> value) {
        value.ifPresent(known -> nested(name, new Writing().written(exact(known))));
        return this;
    }

    /** The quantity itself as the fields of this object. */
    Writing measured(Measured<?> value) {
        return written(exact(value));
    }

    /** To 15 digits: every number that somebody typed comes back as it was (IEEE 754, 5.12.2). */
    private static <Q extends Quantity<Q>> Written exact(Measured<Q> value) {
        var unit = value.value().getUnit();
        return new Written(
                digits(value.value().getValue().doubleValue()),
                unit,
                value.plusMinus().map(spread -> digits(value.spreadIn(unit))));
    }

    private static String digits(double number) {
        return new BigDecimal(number)
                .round(new MathContext(15))
                .stripTrailingZeros()
                .toPlainString();
    }
}
