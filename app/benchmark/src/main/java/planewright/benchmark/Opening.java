package planewright.benchmark;

import java.io.IOException;
import java.util.ArrayList;
import planewright.benchmark.kernel.Folders;

/** How soon an opened journal is there: whole processes, each timed from its {@code main}. */
final class Opening implements Section {
    private static final String PARSE = "one full parse: every file read and parsed on one thread, cold";

    @Override
    public void measure(Run run) throws IOException, InterruptedException {
        var parses = new ArrayList<Double>();
        var rebuilds = new ArrayList<Double>();
        var screens = new ArrayList<Double>();
        var searches = new ArrayList<Double>();
        var parse = run.child().archivedFor(FullParse.class);
        var program = run.child().archivedFor(SearchReady.class);
        for (int round = 0; round < run.rounds(); round++) {
            parses.add(parse.measure(FullParse.class));
            if (round == 0 || round == run.rounds() - 1) {
                Folders.delete(run.user());
                rebuilds.add(program.measure(SearchReady.class));
            }
            screens.add(program.measure(FirstScreen.class));
            searches.add(program.measure(SearchReady.class));
        }
        scan(run);
        double yardstick = Median.of(parses);
        var report = run.report();
        report.figure("opening", "full parse, ms", yardstick);
        report.goal(Goal.under("first screen of a warm start", "ms", Median.of(screens), 600)
                .comparedWith(PARSE, yardstick, 0.25));
        report.goal(Goal.under("search ready at a warm start", "ms", Median.of(searches), 1_500)
                .comparedWith(PARSE, yardstick, 0.4));
        report.goal(Goal.under("index and catalogue made anew", "ms", Median.of(rebuilds), 20_000)
                .comparedWith(PARSE, yardstick, 6));
    }

    private static void scan(Run run) throws IOException, InterruptedException {
        var scans = new ArrayList<Double>();
        var first = new ArrayList<Double>();
        var lists = new ArrayList<Double>();
        for (int round = 0; round < run.rounds(); round++) {
            var told = run.child().run(OutsideScan.class);
            first.add(told.get("first"));
            scans.add(told.get("later"));
            SystemCommand.milliseconds(run.journal(), 1, "find", "builds", "-printf", "%s %T@")
                    .ifPresent(lists::add);
        }
        run.report().figure("opening", "first look of a process at all files, ms", Median.of(first));
        var goal = Goal.under("scan for outside changes, nothing changed", "ms", Median.of(scans), 600);
        if (lists.isEmpty()) {
            run.report().leftOut("scan against find -printf", "this system has no command find");
            run.report().goal(goal);
        } else {
            run.report().goal(goal.comparedWith("find -printf over the same files", Median.of(lists), 1));
        }
    }
}
