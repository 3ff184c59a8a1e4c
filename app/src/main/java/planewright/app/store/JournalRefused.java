package planewright.app.store;

import java.io.IOException;

/** A journal that cannot be opened or made; the message names the folder and says why and what to do. */
public final class JournalRefused extends IOException {
    private static final long serialVersionUID = 1L;

    public JournalRefused(String english, Object... values) {
        super(StoreWords.say(english, values));
    }
}
