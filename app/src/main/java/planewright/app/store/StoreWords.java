package planewright.app.store;

import planewright.app.journal.Said;

/** What is said of the journal's files, in the language that is shown. */
final class StoreWords {
    private StoreWords() {}

    static String say(String english, Object... values) {
        return Said.beside(StoreWords.class, english, values);
    }
}
