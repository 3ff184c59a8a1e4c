package planewright.app.journal;

import java.util.Locale;
import planewright.api.calculator.Language;

/** What the journal says about what was typed, in the language that is shown. */
final class Said {
    private Said() {}

    static String say(String english, Object... values) {
        return Language.of(locale(), Said.class).say(english, values);
    }

    static Locale locale() {
        return Locale.getDefault(Locale.Category.DISPLAY);
    }
}
