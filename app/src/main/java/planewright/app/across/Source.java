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
    LOG("log");

    private final String word;

    Source(String word) {
        this.word = word;
    }

    /** The word that people and JSON carry. */
    public String word() {
        return word;
    }
}
