package planewright.app.calc;

import java.util.List;
import java.util.Optional;
import planewright.api.calculator.Language;
import planewright.shared.quantity.UnitChoice;

/**
 * What a record holds.
 *
 * @param type the record
 * @param fields its components in order
 */
public record Shape(Class<? extends Record> type, List<Field> fields) {
    public Shape {
        fields = List.copyOf(fields);
    }

    /** The same in another language. */
    Shape in(Language language) {
        return new Shape(type, fields.stream().map(field -> field.in(language)).toList());
    }

    /** The same with its quantities in the units that somebody prefers. */
    public Shape in(UnitChoice units) {
        return new Shape(type, fields.stream().map(field -> field.in(units)).toList());
    }

    public Optional<Field> field(String name) {
        return fields.stream().filter(field -> field.name().equals(name)).findFirst();
    }
}
