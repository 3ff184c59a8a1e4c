package planewright.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.journal.Edit;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/** A journal that its owner has packed with what the system has for it, while the journal was open. */
class ZippedFolderTest {
    private static final String REASON = "it is no part of the journal";

    @TempDir
    private Path folder;

    private JournalFolder opened;

    @BeforeEach
    void journal() throws IOException {
        opened = Bench.newJournal(folder.resolve("workshop"));
        opened.journal().apply(Edit.add("build", Bench.build("Grey heron")));
        Files.writeString(folder.resolve("workshop/.DS_Store"), "view");
        Files.writeString(folder.resolve("workshop/builds/.DS_Store"), "view");
    }

    @AfterEach
    void close() throws IOException {
        opened.close();
    }

    @Test
    void theFolderComesIn() throws Exception {
        var zip = packed("workshop/")
                .with("__MACOSX/", "")
                .with("__MACOSX/._workshop", "attributes")
                .with("__MACOSX/workshop/._journal.json", "attributes")
                .with(".DS_Store", "view");
        assertThat(bring(zip))
                .isEqualTo(new Unpacked(
                        "Loft workshop",
                        1,
                        0,
                        List.of(),
                        Stream.of(
                                        "workshop/.DS_Store",
                                        "workshop/.lock",
                                        "workshop/builds/.DS_Store",
                                        "__MACOSX",
                                        ".DS_Store")
                                .map(name -> new LeftOut(name, REASON))
                                .toList()));
        for (var name : List.of(".gitignore", ".gitattributes", "journal.json", "README.md")) {
            assertThat(folder.resolve("copy").resolve(name))
                    .hasSameBinaryContentAs(folder.resolve("workshop").resolve(name));
        }
        try (Stream<Path> files = Files.walk(folder.resolve("copy"))) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .doesNotContain(".lock", ".DS_Store", "__MACOSX", "workshop");
        }
    }

    @Test
    void theContentOfTheFolderComesIn() throws Exception {
        assertThat(bring(packed("").with("__MACOSX/._journal.json", "attributes"))
                        .leftOut())
                .extracting(LeftOut::what)
                .containsExactly(".DS_Store", ".lock", "builds/.DS_Store", "__MACOSX");
        assertThat(folder.resolve("copy/.gitignore")).exists();
    }

    private Unpacked bring(ZipBench zip) throws IOException {
        return ArchiveIntake.bring(
                zip.write(folder.resolve("archive.zip")),
                folder.resolve("copy"),
                UserFolders.under(folder.resolve("user")),
                Watch.NONE);
    }

    private ZipBench packed(String prefix) throws IOException {
        var zip = new ZipBench();
        var root = folder.resolve("workshop");
        try (Stream<Path> files = Files.walk(root)) {
            for (var file : files.sorted().toList()) {
                var name = prefix + Tree.name(root, file);
                if (Files.isRegularFile(file)) {
                    zip.with(name, Files.readAllBytes(file));
                } else if (!name.isEmpty()) {
                    zip.with(name.endsWith("/") ? name : name + "/", "");
                }
            }
        }
        return zip;
    }
}
