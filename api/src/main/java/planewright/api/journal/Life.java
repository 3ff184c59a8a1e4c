package planewright.api.journal;

import org.apiguardian.api.API;

/** Where a build stands. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public enum Life {
    SKETCHED("sketched"),
    ON_THE_BENCH("on the bench"),
    READY("ready"),
    FLYING("flying"),
    RESTING("resting"),
    GONE("gone");

    private final String word;

    Life(String word) {
        this.word = word;
    }

    /** The word that is shown and that files carry. */
    public String word() {
        return word;
    }
}
