package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;

class BinTest {
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
    void aDeletedEntryIsInTheBinAndComesBackByteForByteInALaterSession() throws IOException {
        var file = fileOf(entry);
        var written = Files.readString(file).replace("\"title\"", "\"mine\": [1.50],\n  \"title\"");
        Files.writeString(file, written);
        try (var open = Bench.open(folder)) {
            open.journal().apply(Edit.remove("delete", read(open)));
            assertThat(file).doesNotExist();
        }
        try (var open = Bench.open(folder)) {
            assertThat(open.journal().log(build.id())).isEmpty();
            var deleted = open.binned();
            assertThat(deleted).extracting(Binned::title).containsExactly("Fin glued");
            open.journal().apply(Edit.add("bring back", deleted.get(0).record()));
            assertThat(open.binned()).isEmpty();
        }
        assertThat(file).hasContent(written.strip());
        assertThat(Files.readString(file)).isEqualTo(written);
    }

    @Test
    void undoTakesTheEntryOutOfTheBinAgain() throws IOException {
        try (var open = Bench.open(folder)) {
            open.journal().apply(Edit.remove("delete", read(open)));
            assertThat(open.binned()).hasSize(1);
            open.journal().undo();
            assertThat(open.binned()).isEmpty();
            assertThat(open.journal().log(build.id())).hasSize(1);
        }
    }

    @Test
    void whatIsThrownAwayIsGone() throws IOException {
        try (var open = Bench.open(folder)) {
            open.journal().apply(Edit.remove("delete", read(open)));
            open.forget(open.binned().get(0));
            assertThat(open.binned()).isEmpty();
            assertThat(files(folder.resolve("bin"))).isEmpty();
        }
    }

    @Test
    void anEntryDeletedAndWrittenAgainDifferentlyIsWhatIsWritten() throws IOException {
        try (var open = Bench.open(folder)) {
            open.journal().apply(Edit.remove("delete", read(open)));
            open.journal().apply(Edit.add("again", entry.withTitle("Fin glued anew")));
            assertThat(open.binned()).isEmpty();
        }
        try (var open = Bench.open(folder)) {
            assertThat(open.journal().log(build.id()))
                    .extracting(EntryRecord::title)
                    .containsExactly("Fin glued anew");
        }
    }

    @Test
    void aKillBetweenKeepingAndDeletingShowsTheEntryOnce() throws IOException {
        Files.createDirectories(folder.resolve("bin"));
        Files.copy(fileOf(entry), folder.resolve("bin").resolve(entry.id() + ".json"));
        try (var open = Bench.open(folder)) {
            assertThat(open.journal().log(build.id())).hasSize(1);
            assertThat(open.binned()).isEmpty();
        }
    }

    @Test
    void anEntryWhoseBuildIsGoneComesBackAfterItsBuild() throws IOException {
        try (var open = Bench.open(folder)) {
            open.journal().apply(Edit.remove("delete", read(open)));
            open.journal()
                    .apply(Edit.remove(
                            "delete", open.journal().build(build.id()).orElseThrow()));
            var deleted = open.binned();
            assertThat(deleted).extracting(Binned::title).containsExactlyInAnyOrder("Fin glued", "Heron");
            assertThatExceptionOfType(IOException.class)
                    .isThrownBy(() -> open.journal().apply(Edit.add("bring back", of(deleted, "Fin glued"))))
                    .withMessageContainingAll("belongs to build", "make the build first");
            open.journal().apply(Edit.add("bring back", of(deleted, "Heron")));
            open.journal().apply(Edit.add("bring back", of(deleted, "Fin glued")));
            assertThat(open.journal().log(build.id())).hasSize(1);
        }
    }

    @Test
    void filesInTheBinThatAreNoRecordsOfOursAreLeftAlone() throws IOException {
        var stray = folder.resolve("bin/stray.json");
        Files.createDirectories(stray.getParent());
        Files.writeString(stray, "{ half");
        Files.copy(fileOf(entry), folder.resolve("bin/copy.json"));
        try (var open = Bench.open(folder)) {
            assertThat(open.binned()).isEmpty();
        }
        assertThat(stray).hasContent("{ half");
    }

    private static Kept of(List<Binned> deleted, String title) {
        return deleted.stream()
                .filter(each -> each.title().equals(title))
                .findFirst()
                .orElseThrow()
                .record();
    }

    private EntryRecord read(JournalFolder open) {
        return open.journal().entry(entry.build(), entry.id()).orElseThrow();
    }

    private Path fileOf(EntryRecord record) throws IOException {
        return Bench.only(folder.resolve("builds"), record.id() + ".json");
    }

    private static List<Path> files(Path below) throws IOException {
        try (var files = Files.walk(below)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }
}
