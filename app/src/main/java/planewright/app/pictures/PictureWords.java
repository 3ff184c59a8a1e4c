package planewright.app.pictures;

import planewright.app.journal.Said;

/** What is said of pictures, in the language that is shown. */
final class PictureWords {
    private PictureWords() {}

    static String say(String english, Object... values) {
        return Said.beside(PictureWords.class, english, values);
    }
}
