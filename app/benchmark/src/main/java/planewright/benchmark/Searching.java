package planewright.benchmark;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** How soon questions are answered, against a search through the files. */
final class Searching implements Section {
    private static final String BY_FILES = "ripgrep for a word through the files";

    @Override
    public void measure(Run run) throws IOException, InterruptedException {
        int times = run.rounds();
        var told = run.child().run(Searches.class, Integer.toString(times), Integer.toString(times));
        told.forEach((name, time) -> run.report().figure("search, ms", name, time));
        double typing = Median.of(Queries.AS_YOU_TYPE.stream()
                .map(kind -> told.get(kind + ", median"))
                .toList());
        var worst = told.entrySet().stream()
                .filter(figure -> figure.getKey().endsWith(", worst"))
                .mapToDouble(figure -> figure.getValue())
                .max()
                .orElseThrow();
        var goal = Goal.under("search as you type, median of the kinds", "ms", typing, 10);
        var files = byFiles(run);
        if (files.isEmpty()) {
            run.report().leftOut("search against " + BY_FILES, "this system has no command rg");
            run.report().goal(goal);
        } else {
            run.report().goal(goal.comparedWith(BY_FILES, Median.of(files), 0.01));
        }
        run.report().goal(Goal.under("search, worst question of all kinds", "ms", worst, 50));
    }

    private static List<Double> byFiles(Run run) throws IOException, InterruptedException {
        var times = new ArrayList<Double>();
        for (var word : new Queries(List.of("any")).words().subList(0, Math.min(2 * run.rounds(), 10))) {
            SystemCommand.milliseconds(run.journal().resolve("builds"), 1, "rg", "-l", "-i", "-w", word, ".")
                    .ifPresent(times::add);
        }
        return times;
    }
}
