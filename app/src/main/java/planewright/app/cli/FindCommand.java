package planewright.app.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.app.Program;
import planewright.app.index.Facet;
import planewright.app.index.Hits;
import planewright.app.index.Question;
import planewright.app.journal.BuildRecord;
import planewright.app.store.JsonFiles;

@Command(
        name = "find",
        description = "Find entries by their words and by what they hold. All words must be there;"
                + " words in quotes stand in a row. Without words: the newest first.")
final class FindCommand implements Callable<Integer> {
    private static final int EXCERPT = 90;
    private static final int COUNTS = 6;

    private final Desk desk;

    @Mixin
    private JournalOption common;

    @Parameters(paramLabel = "WORDS", arity = "0..*")
    private List<String> words = List.of();

    @Mixin
    private FilterOptions filter;

    @Option(names = "--limit", paramLabel = "N", description = "How many at most; ${DEFAULT-VALUE} where not said.")
    private int limit = 20;

    FindCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws IOException {
        if (limit < 1) {
            throw CommandFailed.words("--limit is " + limit + "; accepted: 1 or more");
        }
        if (words.isEmpty() && filter.isEmpty()) {
            throw CommandFailed.words(
                    "nothing is looked for; accepted: WORDS, or an option such as --tag, --from or --measurement");
        }
        try (var program = desk.open(common.journal())) {
            var index = program.index().join();
            var typed = words.isEmpty() ? "" : String.join(" ", words) + " ";
            var hits = index.find(new Question(typed, filter.read(program, index), limit));
            if (common.json()) {
                json(program, hits);
            } else {
                tell(program, hits);
            }
        }
        return 0;
    }

    private void tell(Program program, Hits hits) {
        desk.out()
                .println((hits.forgiving() ? "Nothing bears these words; nearly the same: " : "")
                        + Desk.count(hits.total(), "entry", "entries"));
        for (var hit : hits.hits()) {
            var entry = hit.entry();
            desk.out().println();
            desk.out()
                    .println(entry.at().toLocalDate() + "  " + name(program, entry.build()) + "  " + Desk.heading(entry)
                            + "  (" + entry.id().substring(18) + ")");
            hit.excerpts().stream()
                    .filter(excerpt -> !excerpt.where().equals("build"))
                    .limit(3)
                    .forEach(excerpt -> desk.out().println("    " + excerpt.where() + ": " + marked(excerpt)));
        }
        if (hits.total() > 1) {
            desk.out().println();
            for (var facet : Facet.values()) {
                tell(program, facet, hits.of(facet));
            }
        }
    }

    private void tell(Program program, Facet facet, List<Hits.Count> counts) {
        if (counts.size() > 1) {
            desk.out()
                    .println("by " + facet.word() + ": "
                            + counts.stream()
                                    .limit(COUNTS)
                                    .map(count -> shown(program, facet, count.value()) + " " + count.entries())
                                    .collect(Collectors.joining(", "))
                            + (counts.size() > COUNTS ? ", …" : ""));
        }
    }

    private void json(Program program, Hits hits) {
        var node = JsonFiles.object().put("total", hits.total()).put("forgiving", hits.forgiving());
        var array = node.putArray("hits");
        for (var hit : hits.hits()) {
            var entry = hit.entry();
            var each = array.addObject()
                    .put("entry", entry.id())
                    .put("build", entry.build())
                    .put("name", name(program, entry.build()))
                    .put("day", entry.at().toLocalDate().toString())
                    .put("heading", Desk.heading(entry));
            var excerpts = each.putArray("excerpts");
            for (var excerpt : hit.excerpts()) {
                var marks = excerpts.addObject()
                        .put("where", excerpt.where())
                        .put("text", excerpt.text())
                        .putArray("marks");
                excerpt.marks()
                        .forEach(mark -> marks.addArray().add(mark.from()).add(mark.to()));
            }
        }
        var counts = node.putObject("counts");
        for (var facet : Facet.values()) {
            var values = counts.putArray(facet.word());
            for (var count : hits.of(facet)) {
                values.addObject()
                        .put("value", shown(program, facet, count.value()))
                        .put("entries", count.entries());
            }
        }
        desk.json(node);
    }

    private static String shown(Program program, Facet facet, String value) {
        return facet == Facet.BUILD ? name(program, value) : value;
    }

    /** The words around the first mark, found words between » and «. */
    private static String marked(Hits.Excerpt excerpt) {
        int first = excerpt.marks().get(0).from();
        int from = Math.max(0, first - EXCERPT / 3);
        int to = Math.min(excerpt.text().length(), from + EXCERPT);
        var line = new StringBuilder(from > 0 ? "…" : "");
        int at = from;
        for (var mark : excerpt.marks()) {
            if (mark.from() >= at && mark.to() <= to) {
                line.append(excerpt.text(), at, mark.from())
                        .append('»')
                        .append(excerpt.text(), mark.from(), mark.to())
                        .append('«');
                at = mark.to();
            }
        }
        return line.append(excerpt.text(), at, to)
                .append(to < excerpt.text().length() ? "…" : "")
                .toString()
                .replace('\n', ' ');
    }

    private static String name(Program program, String buildId) {
        return program.journal().build(buildId).map(BuildRecord::name).orElse("");
    }
}
