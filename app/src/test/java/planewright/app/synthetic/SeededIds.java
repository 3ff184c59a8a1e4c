package planewright.app.synthetic;

import com.github.f4b6a3.ulid.Ulid;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Random;

/** Names of records that follow from the seed. */
final class SeededIds {
    private static final String DIGITS = "abcdefghjkmnpqrstvwxyz0123456789";

    private final Random random;

    SeededIds(Random random) {
        this.random = random;
    }

    String ulid(LocalDateTime made) {
        var bytes = new byte[10];
        random.nextBytes(bytes);
        return new Ulid(made.toInstant(ZoneOffset.UTC).toEpochMilli(), bytes).toString();
    }

    String small() {
        var id = new StringBuilder(6);
        for (int i = 0; i < 6; i++) {
            id.append(DIGITS.charAt(random.nextInt(DIGITS.length())));
        }
        return id.toString();
    }
}
