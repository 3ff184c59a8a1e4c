package planewright.app.calc;

import planewright.app.journal.Said;

/** What is said of plugins, in the language that is shown. */
final class PluginWords {
    private PluginWords() {}

    static String say(String english, Object... values) {
        return Said.beside(PluginWords.class, english, values);
    }
}
