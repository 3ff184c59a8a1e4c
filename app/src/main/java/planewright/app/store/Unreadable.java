package planewright.app.store;

import java.io.IOException;

/** A file that holds something else than it should; the message says what, in words that follow the file's name. */
public final class Unreadable extends IOException {
    private static final long serialVersionUID = 1L;

    public Unreadable(String english, Object... values) {
        super(StoreWords.say(english, values));
    }
}
