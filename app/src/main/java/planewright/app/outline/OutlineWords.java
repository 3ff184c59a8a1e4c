package planewright.app.outline;

import planewright.app.journal.Said;

/** What is said of outlines, in the language that is shown. */
final class OutlineWords {
    private OutlineWords() {}

    static String say(String english, Object... values) {
        return Said.beside(OutlineWords.class, english, values);
    }
}
