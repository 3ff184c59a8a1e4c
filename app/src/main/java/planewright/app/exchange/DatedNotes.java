package planewright.app.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import planewright.api.journal.Entry;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.Slow;

/** Brings dated notes into a build's log, an entry each. */
public final class DatedNotes {
    private DatedNotes() {}

    /**
     * Looks at notes. A note that its day has already, to the letter, is not brought in again.
     *
     * @param place a file, or a folder of files that end in {@code .txt}, {@code .md} or {@code .markdown}, but for hidden ones
     * @throws ExchangeRefused if nothing is there
     */
    public static Intake look(OpenJournal journal, BuildRecord build, Path place, Watch watch) throws IOException {
        Slow.work("looking at notes");
        var known = new ArrayList<LeftOut>();
        var leftOut = new ArrayList<LeftOut>();
        var changes = new ArrayList<Edit.Change>();
        for (var file : files(place, leftOut)) {
            watch.reached(file.toString());
            var name = file.getFileName().toString();
            try {
                var entry = entry(build, DatedNote.read(file));
                if (isKnown(journal, changes, entry)) {
                    known.add(new LeftOut(
                            name,
                            ExchangeWords.say(
                                    "is in the log already, on {0}",
                                    ExchangeWords.day(entry.at().toLocalDate()))));
                } else {
                    changes.add(new Edit.Change(Optional.empty(), Optional.of(entry)));
                }
            } catch (ExchangeRefused refused) {
                leftOut.add(new LeftOut(name, refused.getMessage()));
            } catch (IOException unreadable) {
                leftOut.add(new LeftOut(
                        name,
                        ExchangeWords.say(
                                "cannot be read ({0})", unreadable.getClass().getSimpleName())));
            }
        }
        if (changes.isEmpty()) {
            return new Intake(List.of(), known, leftOut, nothing -> {});
        }
        var edit = new Edit(ExchangeWords.say("bring in notes"), changes);
        return new Intake(
                Intake.rows(edit, entry -> List.of(heading(entry))), known, leftOut, watching -> journal.apply(edit));
    }

    /** Brings in what {@link #look} has seen, an entry each. */
    public static Brought bring(OpenJournal journal, BuildRecord build, Path place, Watch watch) throws IOException {
        return look(journal, build, place, watch).write(watch);
    }

    private static String heading(EntryRecord entry) {
        return entry.title().isEmpty() ? entry.text().get(0) : entry.title();
    }

    private static EntryRecord entry(BuildRecord build, DatedNote note) {
        return EntryRecord.blank(build.id(), Entry.Kind.NOTE, note.at())
                .withTitle(note.title())
                .withText(note.paragraphs());
    }

    private static boolean isKnown(OpenJournal journal, List<Edit.Change> changes, EntryRecord entry) {
        return Stream.concat(
                        journal.log(entry.build()).stream(),
                        changes.stream().map(change -> (EntryRecord) change.subject()))
                .anyMatch(each -> each.at().toLocalDate().equals(entry.at().toLocalDate())
                        && each.title().equals(entry.title())
                        && each.text().equals(entry.text()));
    }

    private static List<Path> files(Path place, List<LeftOut> leftOut) throws IOException {
        if (Files.isRegularFile(place)) {
            return List.of(place);
        }
        if (!Files.isDirectory(place)) {
            throw new ExchangeRefused(
                    ExchangeWords.say("notes {0} are not there; accepted: a text file, or a folder of them", place));
        }
        return FilesAt.list(place, DatedNotes::isNote, leftOut);
    }

    private static boolean isNote(Path file) {
        var name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return Stream.of(".txt", ".md", ".markdown").anyMatch(name::endsWith);
    }
}
