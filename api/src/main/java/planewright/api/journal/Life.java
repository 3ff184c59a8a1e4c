package planewright.api.journal;

/** Where a build stands. */
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
