package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.journal.Entry;
import planewright.app.Bench;
import planewright.app.journal.EntryDraft;
import planewright.app.journal.EntryRecord;

class DraftsTest {
    @TempDir
    private Path folder;

    private final EntryRecord full = Bench.fullEntry(Bench.build("Grey heron"));
    private final EntryRecord blank = EntryRecord.blank(full.build(), Entry.Kind.REPAIR, Bench.EVENING);

    @Test
    void everythingTypedComesBackRightOrWrong() throws IOException {
        var typed = new EntryDraft(
                "tomorrow?",
                Entry.Kind.FLIGHT,
                "Löwenzahn 🌼",
                "a\n\n\n  b \t",
                ",,",
                List.of(new EntryDraft.Measuring("", "fin", "3 1/2 spans", "")),
                List.of(new EntryDraft.Joining("abc", "fin", "glue", "now", "12 h", "never")),
                List.of(new EntryDraft.Setting("throw", "much")),
                full.pictures(),
                List.of(new EntryDraft.Flying("", "7", "calm", "")),
                List.of(new EntryDraft.Mending("", "fin", "", "glued", "2 spoons")),
                List.of(new EntryDraft.Doing("", "sanding", "an hour")));
        drafts().keep(new KeptDraft(Bench.EVENING, full, true, typed));
        assertThat(drafts().all()).singleElement().satisfies(kept -> {
            assertThat(kept.written()).isEqualTo(typed);
            assertThat(kept.kept()).isEqualTo(Bench.EVENING);
            assertThat(kept.saved()).isTrue();
            assertThat(JsonFiles.text(RecordFiles.json(kept.begun())))
                    .isEqualTo(JsonFiles.text(RecordFiles.json(full)));
        });
    }

    @Test
    void aLaterDraftOfAnEntryReplacesTheEarlierAndOthersStay() throws IOException {
        drafts().keep(draft(full, "one", 0));
        drafts().keep(draft(blank, "other", 1));
        drafts().keep(draft(full, "two", 2));
        assertThat(drafts().all()).extracting(draft -> draft.written().title()).containsExactly("two", "other");
        drafts().drop(full.id());
        drafts().drop(full.id());
        assertThat(drafts().all()).extracting(draft -> draft.written().title()).containsExactly("other");
    }

    @Test
    void aDraftOfAnOlderProgramSaysLessAndIsNotLost() throws IOException {
        drafts().keep(draft(full, "half", 0));
        var file = Bench.only(folder, ".json");
        var tree = JsonFiles.read(file);
        ((com.fasterxml.jackson.databind.node.ObjectNode) tree.get("written")).remove(List.of("tasks", "repairs"));
        Files.writeString(file, JsonFiles.text(tree));
        assertThat(drafts().all()).singleElement().satisfies(draft -> {
            assertThat(draft.written().title()).isEqualTo("half");
            assertThat(draft.written().tasks()).isEqualTo(EntryDraft.of(full).tasks());
        });
    }

    @Test
    void whatCannotBeReadStaysWhereItIsAndHidesNothing() throws IOException {
        drafts().keep(draft(full, "half", 0));
        for (var text : List.of("", "{", "{}", "{\"begun\": {}, \"written\": {}}", "{\"kept\": \"soon\"}")) {
            Files.writeString(folder.resolve("damaged" + text.hashCode() + ".json"), text);
        }
        assertThat(drafts().all()).hasSize(1);
        assertThat(folder.toFile().list()).hasSize(6);
    }

    @Test
    void withoutAFolderThereIsNothing() throws IOException {
        assertThat(new Drafts(folder.resolve("none")).all()).isEmpty();
        new Drafts(folder.resolve("none")).drop(full.id());
        assertThat(folder.resolve("none")).doesNotExist();
    }

    private static KeptDraft draft(EntryRecord begun, String title, int minutes) {
        return new KeptDraft(Bench.EVENING.plusMinutes(minutes), begun, true, EntryDraft.of(begun.withTitle(title)));
    }

    private Drafts drafts() {
        return new Drafts(folder);
    }
}
