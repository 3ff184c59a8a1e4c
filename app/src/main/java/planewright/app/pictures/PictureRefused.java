package planewright.app.pictures;

import java.io.IOException;

/** A picture that is not taken in; the message names the file and says why. */
public final class PictureRefused extends IOException {
    private static final long serialVersionUID = 1L;

    public PictureRefused(String english, Object... values) {
        super(PictureWords.say(english, values));
    }
}
