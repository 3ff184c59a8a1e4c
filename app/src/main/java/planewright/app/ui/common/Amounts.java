package planewright.app.ui.common;

import java.util.Locale;
import planewright.api.quantity.Measured;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** Quantities to read, with the decimal sign of the window's country. What is typed stays as it was typed. */
public final class Amounts {
    private Amounts() {}

    /** A quantity as it is read: {@code 12,5 g ± 0,5 g}. */
    public static String of(Measured<?> value) {
        return QuantityText.show(value, Locale.getDefault(Locale.Category.FORMAT));
    }

    /** What somebody has written, as it is read. */
    public static String of(Written quantity) {
        return quantity.text(Locale.getDefault(Locale.Category.FORMAT));
    }
}
