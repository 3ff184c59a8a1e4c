package planewright.app.store;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.OpenJournal;

/** Saves without end; says {@code saved ID NUMBER} after each save, and {@code removing ID} before and {@code removed ID} after a removal. */
final class SavingProgram {
    private static final String FILLING = "Sanded, weighed, sanded again. ".repeat(300);

    private final OpenJournal journal;
    private final BuildRecord build;
    private final OutputStream out;
    private int number;

    private SavingProgram(OpenJournal journal, int number, OutputStream out) {
        this.journal = journal;
        this.build = journal.builds().get(0);
        this.number = number;
        this.out = out;
    }

    /** The words are the journal's folder and the first number. */
    public static void main(String[] words) throws IOException {
        try (var folder = Bench.open(Path.of(words[0]));
                var out = new FileOutputStream(FileDescriptor.out)) {
            new SavingProgram(folder.journal(), Integer.parseInt(words[1]), out).saveWithoutEnd();
        }
    }

    private void saveWithoutEnd() throws IOException {
        while (true) {
            var first = add();
            var passing = add();
            changed(first);
            say("removing " + passing.id());
            journal.apply(Edit.remove("remove", passing));
            say("removed " + passing.id());
        }
    }

    private EntryRecord add() throws IOException {
        var entry = Bench.entry(build, title()).withText(List.of(FILLING));
        journal.apply(Edit.add("add", entry));
        say("saved " + entry.id() + " " + number);
        return entry;
    }

    private void changed(EntryRecord entry) throws IOException {
        journal.apply(Edit.change("change", entry, entry.withTitle(title())));
        say("saved " + entry.id() + " " + number);
    }

    /** In one write, so that a line is said wholly or not at all. */
    private void say(String line) throws IOException {
        out.write((line + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private String title() {
        return Integer.toString(++number);
    }
}
