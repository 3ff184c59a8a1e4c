package planewright.app.journal;

import java.util.Locale;
import java.util.stream.Stream;
import planewright.api.calculator.Language;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.Written;

/** What the journal says about what was typed, in the language that is shown. */
public final class Said {
    private Said() {}

    /** Has the words read by the time it returns, also those beside other classes, so that whoever may not wait for a file can ask afterwards. */
    public static void prepare(Class<?>... places) {
        Language.of(locale(), Said.class);
        Language.of(locale(), QuantityProblem.class);
        Stream.of(places).forEach(place -> Language.of(locale(), place));
    }

    /** What another package says, with the words of its own table before those of the journal. */
    public static String beside(Class<?> place, String english, Object... values) {
        return Language.of(locale(), place).and(Said.class).say(english, values);
    }

    /** A quantity as it is read and typed, with the decimal sign of the country. */
    static String text(Written quantity) {
        return quantity.text(Locale.getDefault(Locale.Category.FORMAT));
    }

    static String say(String english, Object... values) {
        return Language.of(locale(), Said.class).say(english, values);
    }

    static Locale locale() {
        return Locale.getDefault(Locale.Category.DISPLAY);
    }
}
