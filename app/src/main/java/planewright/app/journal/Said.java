package planewright.app.journal;

import java.util.Locale;
import planewright.api.calculator.Language;
import planewright.shared.quantity.QuantityProblem;

/** What the journal says about what was typed, in the language that is shown. */
public final class Said {
    private Said() {}

    /** Has the words read by the time it returns, so that whoever may not wait for a file can ask afterwards. */
    public static void prepare() {
        Language.of(locale(), Said.class);
        Language.of(locale(), QuantityProblem.class);
    }

    static String say(String english, Object... values) {
        return Language.of(locale(), Said.class).say(english, values);
    }

    static Locale locale() {
        return Locale.getDefault(Locale.Category.DISPLAY);
    }
}
