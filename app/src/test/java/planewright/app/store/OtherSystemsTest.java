package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.TemplateRecord;

/**
 * A journal may be carried to any system: its names suit all of them, and what a system leaves in folders does no harm. Device
 * names and the dots and spaces at the end: Microsoft Learn, Naming Files, Paths, and Namespaces. Companions of files, which
 * begin with {@code ._}: RFC 1740, AppleDouble, as macOS writes them on foreign disks.
 */
class OtherSystemsTest {
    private static final List<String> NAMES = List.of(
            "Grey heron",
            "grey HERON",
            "Lo\u0308we",
            "L\u00F6we",
            "CON",
            "nul",
            "Aux.",
            "COM1",
            "LPT9 ",
            "com\u00B9",
            "trailing dots...",
            "...",
            ".hidden",
            "~",
            "a/b\\c:d*e?f\"g<h>i|j",
            "../../etc",
            "tab\tand\nline",
            "\u202Edrawkcab",
            "\uD83D\uDEE9\uFE0F",
            "\u5929\u7A7A",
            "x".repeat(5_000),
            "-rf",
            "\u0130stanbul");

    @TempDir
    private Path temp;

    @Test
    void eachBuildAndTemplateHasANameThatEverySystemTakes() throws IOException {
        var like = (TemplateRecord) Bench.full("procedure");
        var builds = NAMES.stream().map(Bench::build).toList();
        var journal = temp.resolve("journal");
        try (var open = Bench.newJournal(journal)) {
            for (var build : builds) {
                open.journal().apply(Edit.add("build", build));
                open.journal().apply(Edit.add("entry", Bench.entry(build, "About " + build.name())));
                open.journal()
                        .apply(Edit.add("template", TemplateRecord.of(build.name(), build.begun(), like.content())));
            }
        }
        for (var folder : List.of("builds", "templates")) {
            var names = List.of(journal.resolve(folder).toFile().list());
            assertThat(names)
                    .hasSameSizeAs(NAMES)
                    .allSatisfy(name -> assertThat(name)
                            .matches("[a-z0-9-]{1,47}(\\.json)?")
                            .doesNotMatch("(con|prn|aux|nul|com\\d|lpt\\d)(\\..*)?"));
            assertThat(names.stream().map(name -> name.toLowerCase(Locale.ROOT)).distinct())
                    .hasSameSizeAs(NAMES);
        }
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).isEmpty();
            assertThat(open.journal().builds())
                    .extracting(BuildRecord::name)
                    .containsExactlyInAnyOrderElementsOf(NAMES.stream()
                            .map(name -> Normalizer.normalize(name.strip(), Normalizer.Form.NFC))
                            .toList());
        }
    }

    @Test
    void whatOtherSystemsLeaveInFoldersIsNoRecord() throws IOException {
        var build = Bench.build("Grey heron");
        var entry = Bench.entry(build, "First flight");
        var journal = temp.resolve("journal");
        try (var open = Bench.newJournal(journal)) {
            open.journal().apply(Edit.add("build", build));
            open.journal().apply(Edit.add("entry", entry));
            open.journal().apply(Edit.add("template", Bench.full("procedure")));
        }
        List<Path> folders;
        try (Stream<Path> all = Files.walk(journal)) {
            folders = all.filter(Files::isDirectory).toList();
        }
        for (var folder : folders) {
            for (var name :
                    List.of(".DS_Store", "Thumbs.db", "desktop.ini", ".directory", "Icon\r", ".nfs0000000001")) {
                Files.write(folder.resolve(name), new byte[] {0, 5, 22, 7});
            }
            for (var file : folder.toFile().list()) {
                Files.write(folder.resolve("._" + file), new byte[] {0, 5, 22, 7, 0, 2, 0, 0});
            }
        }
        Files.createDirectories(journal.resolve("builds/$RECYCLE.BIN"));
        Files.createDirectories(journal.resolve("builds/System Volume Information"));
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).isEmpty();
            assertThat(open.journal().builds()).containsExactly(build);
            assertThat(open.journal().log(build.id())).containsExactly(entry);
            assertThat(open.journal().templates()).hasSize(1);
            open.journal().apply(Edit.remove("remove", entry));
            assertThat(open.binned()).extracting(Binned::record).containsExactly(entry);
            open.journal().undo();
        }
    }

    /** Some editors put the byte order mark before UTF-8 text: RFC 8259 section 8.1 lets readers ignore it and forbids writing it. */
    @Test
    void theMarkThatAnEditorPutsBeforeTextIsReadOverAndNotWritten() throws IOException {
        var build = Bench.build("Grey heron");
        var entry = Bench.entry(build, "First flight");
        var journal = temp.resolve("journal");
        try (var open = Bench.newJournal(journal)) {
            open.journal().apply(Edit.add("build", build));
            open.journal().apply(Edit.add("entry", entry));
        }
        var files = List.of(
                journal.resolve("journal.json"),
                Bench.only(journal, "build.json"),
                Bench.only(journal, entry.id() + ".json"));
        for (var file : files) {
            Files.writeString(file, "\uFEFF" + Files.readString(file));
        }
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).isEmpty();
            assertThat(open.journal().name()).isEqualTo("Loft workshop");
            assertThat(open.journal().builds()).containsExactly(build);
            assertThat(open.journal().log(build.id())).containsExactly(entry);
            open.journal().apply(Edit.change("name", build, build.withName("Red crane")));
            open.journal().apply(Edit.change("title", entry, entry.withTitle("Second flight")));
        }
        assertThat(files.get(1)).content(StandardCharsets.UTF_8).startsWith("{").contains("Red crane");
        assertThat(files.get(2)).content(StandardCharsets.UTF_8).startsWith("{").contains("Second flight");
    }

    /** FAT shows short names in capitals. */
    @Test
    void anEndingInCapitalsHidesNoEntry() throws IOException {
        var build = Bench.build("Grey heron");
        var entry = Bench.entry(build, "First flight");
        var journal = temp.resolve("journal");
        try (var open = Bench.newJournal(journal)) {
            open.journal().apply(Edit.add("build", build));
            open.journal().apply(Edit.add("entry", entry));
        }
        var file = Bench.only(journal, entry.id() + ".json");
        Files.move(file, file.resolveSibling(entry.id() + ".JSON"));
        try (var open = Bench.open(journal)) {
            assertThat(open.journal().log(build.id())).containsExactly(entry);
            var changed = entry.withTitle("Second flight");
            open.journal().apply(Edit.change("change", entry, changed));
        }
        assertThat(file.resolveSibling(entry.id() + ".JSON"))
                .content(StandardCharsets.UTF_8)
                .contains("Second flight");
    }
}
