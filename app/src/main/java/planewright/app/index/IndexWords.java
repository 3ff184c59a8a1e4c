package planewright.app.index;

import planewright.app.journal.Said;

/** What is said of the search, in the language that is shown. */
final class IndexWords {
    private IndexWords() {}

    static String say(String english, Object... values) {
        return Said.beside(IndexWords.class, english, values);
    }
}
