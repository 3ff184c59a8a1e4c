package planewright.app.journal;

import com.github.f4b6a3.ulid.UlidCreator;
import java.security.SecureRandom;

/** Names for new records. */
public final class Ids {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final String DIGITS = "abcdefghjkmnpqrstvwxyz0123456789";

    private Ids() {}

    /** A ULID: 26 characters that sort by the time they were made. */
    public static String next() {
        return UlidCreator.getMonotonicUlid().toString();
    }

    /** Six random characters: enough to tell the rows of one file apart, on two machines as well. */
    public static String small() {
        var id = new StringBuilder(6);
        for (int i = 0; i < 6; i++) {
            id.append(DIGITS.charAt(RANDOM.nextInt(DIGITS.length())));
        }
        return id.toString();
    }
}
