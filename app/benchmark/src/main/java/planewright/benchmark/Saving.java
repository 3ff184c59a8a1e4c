package planewright.benchmark;

import java.io.IOException;

/** How long a save takes until it is safe, and until it is found. */
final class Saving implements Section {
    private static final int ENTRIES_A_ROUND = 20;

    @Override
    public void measure(Run run) throws IOException, InterruptedException {
        var told = run.child().run(Saves.class, Integer.toString(ENTRIES_A_ROUND * run.rounds()));
        run.report()
                .goal(Goal.under("durable save, median", "ms", told.get("save"), 10)
                        .comparedWith("the same bytes written to a new file and forced", told.get("bare write"), 2));
        run.report().goal(Goal.under("saved entry found, median", "ms", told.get("found"), 50));
    }
}
