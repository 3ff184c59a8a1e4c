package planewright.app.ui.planform;

import java.util.function.IntFunction;
import planewright.api.journal.Planform;
import planewright.shared.quantity.QuantityProblem;

/**
 * A column of a table of a shape.
 *
 * @param title its heading
 * @param type of its cells: texts, truths, or words of an enum
 * @param read what a row shows
 * @param write the shape with what was typed, or nothing where cells are only read
 */
record ShapeColumn(String title, Class<?> type, IntFunction<Object> read, Writer write) {
    /** Makes a shape of what was typed. */
    interface Writer {
        /**
         * @throws QuantityProblem if it is not understood
         * @throws IllegalArgumentException if the shape would be none; the message names what, the value and what is accepted
         */
        Planform write(int row, Object typed) throws QuantityProblem;
    }

    static ShapeColumn of(String title, IntFunction<Object> read, Writer write) {
        return new ShapeColumn(title, String.class, read, write);
    }

    /** What is only read. */
    static ShapeColumn shown(String title, IntFunction<Object> read) {
        return new ShapeColumn(title, String.class, read, null);
    }

    boolean isWritten() {
        return write != null;
    }
}
