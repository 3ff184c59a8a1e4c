package planewright.app.outline;

import java.io.IOException;

/** An outline that is not taken in or cannot be read; the message says why and what is accepted. */
public final class OutlineRefused extends IOException {
    private static final long serialVersionUID = 1L;

    public OutlineRefused(String english, Object... values) {
        super(OutlineWords.say(english, values));
    }
}
