package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;

class ReadOnlyTest {
    @TempDir
    Path temp;

    private Path folder;
    private BuildRecord build;
    private EntryRecord entry;

    @BeforeEach
    void journal() throws IOException {
        folder = temp.resolve("journal");
        build = Bench.build("Heron");
        entry = Bench.entry(build, "Fin glued");
        try (var open = Bench.newJournal(folder)) {
            open.journal().apply(Edit.add("build", build));
            open.journal().apply(Edit.add("entry", entry));
        }
    }

    @Test
    void aJournalOfANewerFormatIsReadButNotWritten() throws IOException {
        var head = folder.resolve("journal.json");
        Files.writeString(head, Files.readString(head).replace("\"minReader\": 3", "\"minReader\": 7"));
        assertReadButNotWritten("newer version", "7");
    }

    @Test
    void aJournalWhoseFolderCannotBeWrittenInIsReadButNotWritten() throws IOException {
        Files.delete(folder.resolve(".lock"));
        Files.createDirectories(folder.resolve(".lock"));
        assertReadButNotWritten("cannot be written in", "copy the journal");
        try (var first = Bench.open(folder);
                var second = Bench.open(folder)) {
            assertThat(first.readOnly()).isPresent();
            assertThat(second.journal().builds()).hasSize(1);
        }
    }

    @Test
    void aRecordOfANewerFormatIsShownAndCannotBeChanged() throws IOException {
        var file = Bench.only(folder, entry.id() + ".json");
        Files.writeString(
                file, Files.readString(file).replace("\"schema\": 2", "\"schema\": 3,\n  \"mood\": \"cheerful\""));
        var before = Bench.records(folder);
        try (var open = Bench.open(folder)) {
            assertThat(open.setAside()).isEmpty();
            var shown = open.journal().entry(entry.build(), entry.id()).orElseThrow();
            assertThat(shown.title()).isEqualTo("Fin glued");
            assertThatExceptionOfType(JournalRefused.class)
                    .isThrownBy(() -> open.journal().apply(Edit.change("title", shown, shown.withTitle("x"))))
                    .withMessageContainingAll(entry.id(), "newer version", "schema is 3");
            assertThat(open.journal().entry(entry.build(), entry.id())).contains(shown);
        }
        assertThat(Bench.records(folder)).isEqualTo(before);
    }

    private void assertReadButNotWritten(String... told) throws IOException {
        Map<String, String> before = Bench.records(folder);
        try (var open = Bench.open(folder)) {
            assertThat(open.readOnly().orElseThrow()).contains(told);
            assertThat(open.journal().log(build.id())).hasSize(1);
            var shown = open.journal().entry(entry.build(), entry.id()).orElseThrow();
            assertRefused(() -> open.journal().apply(Edit.change("title", shown, shown.withTitle("x"))), told);
            assertRefused(() -> open.journal().apply(Edit.remove("delete", shown)), told);
            assertRefused(() -> open.journal().apply(Edit.add("build", Bench.build("Grebe"))), told);
            assertRefused(() -> open.pictures().add(new BufferedImage(9, 9, BufferedImage.TYPE_INT_RGB), "fin"), told);
            assertThat(open.journal().log(build.id())).containsExactly(shown);
        }
        assertThat(Bench.records(folder)).isEqualTo(before);
    }

    private static void assertRefused(ThrowingCallable work, String... told) {
        assertThatExceptionOfType(JournalRefused.class)
                .isThrownBy(work)
                .withMessageContaining("reading only")
                .withMessageContainingAll(told);
    }
}
