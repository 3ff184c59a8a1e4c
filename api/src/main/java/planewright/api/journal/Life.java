package planewright.api.journal;

import org.apiguardian.api.API;

/** Where a build stands. */
@API(status = API.Status.MAINTAINED, since = "0.1.0")
public enum Life {
    /** An idea with numbers; nothing is cut yet. */
    SKETCHED("sketched"),
    /** It is being built, or repaired at length. */
    ON_THE_BENCH("on the bench"),
    /** Finished, not flown yet. */
    READY("ready"),
    /** It is flown. */
    FLYING("flying"),
    /** Whole, but not flown at present. */
    RESTING("resting"),
    /** Given away, sold, lost or broken up; its log stays. */
    GONE("gone");

    private final String word;

    Life(String word) {
        this.word = word;
    }

    /** {@return the word that is shown and that files carry} */
    public String word() {
        return word;
    }
}
