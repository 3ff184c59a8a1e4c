package planewright.app.cli;

import java.io.IOException;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import planewright.app.Program;
import planewright.app.journal.Edit;
import planewright.app.store.Binned;
import planewright.app.store.JsonFiles;

@Command(name = "bin", description = "List what was deleted, bring one back, or throw one away for good.")
final class BinCommand implements Callable<Integer> {
    private static final int ENDING = 8;

    private final Desk desk;

    @Mixin
    private JournalOption common;

    @Option(names = "--restore", paramLabel = "ID", description = "Bring this one back; the ending of an id will do.")
    private Optional<String> restore = Optional.empty();

    @Option(names = "--throw-away", paramLabel = "ID", description = "Delete this one for good.")
    private Optional<String> throwAway = Optional.empty();

    BinCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws IOException {
        if (restore.isPresent() && throwAway.isPresent()) {
            throw CommandFailed.words("--restore and --throw-away are both given; accepted: one of them");
        }
        try (var program = desk.open(common.journal())) {
            var deleted = program.folder().binned();
            if (restore.isPresent()) {
                var wanted = find(deleted, restore.get());
                program.journal().apply(Edit.add("restored " + wanted.title(), wanted.record()));
                tell("Brought back", wanted);
            } else if (throwAway.isPresent()) {
                var wanted = find(deleted, throwAway.get());
                program.folder().forget(wanted);
                tell("Threw away", wanted);
            } else {
                list(program, deleted);
            }
        }
        return 0;
    }

    private void list(Program program, List<Binned> deleted) {
        if (common.json()) {
            var node = JsonFiles.object();
            var array = node.putArray("deleted");
            deleted.forEach(each -> array.addObject()
                    .put("id", each.record().id())
                    .put("kind", each.kind())
                    .put("title", each.title())
                    .put("deleted", day(program, each)));
            desk.json(node);
            return;
        }
        desk.out().println(deleted.isEmpty() ? "The bin is empty." : Desk.count(deleted.size(), "thing", "things"));
        desk.table(
                List.of(false, false, false, false),
                deleted.stream()
                        .map(each -> List.of(ending(each.record().id()), day(program, each), each.kind(), each.title()))
                        .toList());
    }

    private void tell(String done, Binned wanted) {
        if (common.json()) {
            desk.json(JsonFiles.object()
                    .put("id", wanted.record().id())
                    .put("kind", wanted.kind())
                    .put("title", wanted.title()));
        } else {
            desk.out().println(done + ": " + wanted.kind() + " '" + wanted.title() + "'");
        }
    }

    private static Binned find(List<Binned> deleted, String id) {
        var found = deleted.stream()
                .filter(each -> each.record()
                        .id()
                        .toUpperCase(Locale.ROOT)
                        .endsWith(id.strip().toUpperCase(Locale.ROOT)))
                .toList();
        if (found.size() != 1 || id.isBlank()) {
            throw CommandFailed.work("'" + id + "' is "
                    + (found.isEmpty() ? "not in the bin" : "not the only one so called")
                    + "; accepted: an id that 'bin' lists");
        }
        return found.get(0);
    }

    private static String ending(String id) {
        return id.substring(Math.max(0, id.length() - ENDING));
    }

    private static String day(Program program, Binned deleted) {
        return LocalDateTime.ofInstant(deleted.deleted(), program.clock().getZone())
                .truncatedTo(ChronoUnit.MINUTES)
                .toString();
    }
}
