package planewright.app.across;

/** Where a value comes from. */
public enum Source {
    MEASUREMENT("measurement"),
    SETTING("set-up value"),
    FLIGHT("flight"),
    REPAIR("repair"),
    TASK("task"),
    LEDGER("mass ledger"),
    /** Taken over from another build: it says nothing new. */
    CARRIED("carried over"),
    PLANFORM("planform"),
    /** Of a planform that is still as it was taken over. What was measured beside it is of this build all the same. */
    CARRIED_SHAPE("carried-over planform"),
    LOG("log");

    private final String word;

    Source(String word) {
        this.word = word;
    }

    /** Whether it is a size or a count, none of which is below 0. */
    boolean isFigure() {
        return this == PLANFORM || this == CARRIED_SHAPE || this == LOG;
    }

    /** The word that people and JSON carry. */
    public String word() {
        return word;
    }
}
