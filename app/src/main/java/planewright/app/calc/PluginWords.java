package planewright.app.calc;

import java.util.Locale;
import planewright.app.journal.Said;

/** What is said of plugins, in the language that is shown. */
final class PluginWords {
    private PluginWords() {}

    static Locale locale() {
        return Locale.getDefault(Locale.Category.DISPLAY);
    }

    static String say(String english, Object... values) {
        return Said.beside(PluginWords.class, english, values);
    }
}
