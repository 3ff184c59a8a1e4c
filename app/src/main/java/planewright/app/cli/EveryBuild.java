package planewright.app.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import planewright.api.calculator.Finding;
import planewright.app.calc.Calculation;
import planewright.app.calc.Described;
import planewright.app.calc.Outcome;
import planewright.app.calc.Prefill;
import planewright.app.calc.ResultView;
import planewright.app.calc.Runs;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.store.JsonFiles;

/**
 * One calculator on every build of a journal.
 *
 * @param given inputs that hold for all of them; the others come from each build's journal
 */
record EveryBuild(Desk desk, Described described, ObjectNode given) {
    /** More columns than these no terminal shows; JSON has all. */
    private static final int COLUMNS = 4;

    private record Answer(BuildRecord build, Outcome outcome) {}

    void write(OpenJournal journal, boolean json) {
        var answers = journal.builds().stream()
                .map(build -> new Answer(build, outcome(journal, build)))
                .toList();
        if (json) {
            writeJson(answers);
        } else {
            writeTable(answers);
        }
    }

    private Outcome outcome(OpenJournal journal, BuildRecord build) {
        var inputs = Prefill.of(described, journal, build.id()).inputs().deepCopy();
        inputs.setAll(given);
        return Calculation.run(described, inputs, Runs.unwatched(journal, desk.now()));
    }

    private void writeJson(List<Answer> answers) {
        var node = JsonFiles.object()
                .put("calculator", described.id())
                .put("version", described.about().version());
        var array = node.putArray("builds");
        for (var answer : answers) {
            var build = array.addObject().put("build", answer.build().name());
            if (answer.outcome() instanceof Outcome.Answered answered) {
                build.set("inputs", answered.inputs());
                build.set("results", answered.json());
            } else {
                build.put("problem", problem(answer.outcome()));
            }
        }
        desk.json(node);
    }

    private void writeTable(List<Answer> answers) {
        var rows = new ArrayList<List<String>>();
        var problems = new ArrayList<String>();
        List<String> headings = List.of();
        for (var answer : answers) {
            if (answer.outcome() instanceof Outcome.Answered answered) {
                var view = ResultView.of(described, answered);
                var values = view.values().stream().limit(COLUMNS).toList();
                if (headings.size() < values.size()) {
                    headings = values.stream().map(ResultView.Value::label).toList();
                }
                var row = new ArrayList<String>();
                row.add(answer.build().name());
                values.forEach(value -> row.add(value.text()));
                row.add(worst(view));
                rows.add(row);
            } else {
                problems.add(answer.build().name() + ": " + problem(answer.outcome()));
            }
        }
        int columns = headings.size();
        if (!rows.isEmpty()) {
            var first = new ArrayList<String>();
            first.add("BUILD");
            headings.forEach(heading -> first.add(heading.toUpperCase(Locale.ROOT)));
            first.add("REMARKS");
            rows.forEach(row -> {
                while (row.size() < columns + 2) {
                    row.add(row.size() - 1, "");
                }
            });
            rows.add(0, first);
            var right = new ArrayList<Boolean>();
            right.add(false);
            headings.forEach(heading -> right.add(true));
            right.add(false);
            desk.table(right, rows);
        }
        if (!problems.isEmpty()) {
            desk.out().println((rows.isEmpty() ? "" : "\n") + "Not computed:");
            problems.forEach(line -> desk.out().println("  " + line));
        }
    }

    private static String worst(ResultView view) {
        return view.findings().stream()
                .map(Finding::grade)
                .max(Enum::compareTo)
                .map(Finding.Grade::word)
                .orElse("");
    }

    private static String problem(Outcome outcome) {
        if (outcome instanceof Outcome.Refused refused) {
            return refused.message();
        }
        return outcome instanceof Outcome.Failed failed ? failed.message() : "stopped";
    }
}
