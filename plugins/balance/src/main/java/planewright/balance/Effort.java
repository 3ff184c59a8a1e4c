package planewright.balance;

import planewright.api.calculator.Run;

/** Work that a search may do before it must answer; lets the builder stop it meanwhile. */
final class Effort {
    private static final long BETWEEN_REPORTS = 1_000_000;

    private final Run run;
    private final String doing;
    private final long most;
    private long used;
    private long reportAt;

    /**
     * @param run hears how far it is
     * @param doing what it is at
     * @param most steps of work
     */
    Effort(Run run, String doing, long most) {
        this.run = run;
        this.doing = doing;
        this.most = most;
    }

    /** Counts steps; throws {@link Run.Cancelled} where the builder has stopped it. */
    void spend(long steps) {
        used += steps;
        if (used >= reportAt) {
            reportAt = used + BETWEEN_REPORTS;
            run.progress(Math.min(1, (double) used / most), doing);
        }
    }

    long used() {
        return used;
    }

    boolean spent() {
        return used >= most;
    }
}
