package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;

/** What does not belong into a journal is set aside with its reason, stays as it is, and hides nothing else. */
class HostileFilesTest {
    private static final String GOOD = """
            {"schema": 1, "id": "01JBX000000000000000000001", "build": "BUILD", "at": "2025-03-14T20:15",
             "kind": "work", "title": "Weighing",
             "measurements": [{"id": "k3f9q2", "name": "fin", "value": "18", "unit": "g"}]}
            """;

    @TempDir
    private Path temp;

    private Path journal;
    private Path entries;
    private BuildRecord build;
    private EntryRecord sound;

    @BeforeEach
    void makeJournal() throws IOException {
        journal = temp.resolve("journal");
        build = Bench.build("Grey heron");
        sound = Bench.entry(build, "Cut the cores");
        try (var open = Bench.newJournal(journal)) {
            open.journal().apply(Edit.add("build", build));
            open.journal().apply(Edit.add("entry", sound));
        }
        entries = Bench.only(journal, sound.id() + ".json").getParent();
    }

    @Test
    void theFileThatIsSpoiltHereIsGoodBeforeThat() throws IOException {
        put("good.json", GOOD);
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).isEmpty();
            assertThat(open.journal().log(build.id())).hasSize(2);
        }
    }

    /** Journals lie on sticks, among other people's files. */
    @Test
    void whatSomebodyKeepsBesideOurFilesIsLeftAlone() throws IOException {
        var theirs = Files.createDirectories(journal.resolve("mine")).resolve(".letter.4711-3.tmp");
        var ours = entries.resolve(".01JBX000000000000000000001.json.4711-3.tmp");
        Files.writeString(theirs, "Dear");
        Files.writeString(ours, "{");
        Bench.open(journal).close();
        assertThat(theirs).hasContent("Dear");
        assertThat(ours).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "kind": "work"     | "kind": "work"   <<<<<<<   | not JSON, line 2
            "title": "Weighing"| "title": "Weighing", "title": "x" | title
            "title": "Weighing"| "title": 7                 | 'title' is 7, a text
            "title": "Weighing"| "title": null              | 'title' is null, a text
            "schema": 1        | "schema": 1.5              | 'schema' is 1.5
            "schema": 1        | "schema": 99999999999999999999999 | 'schema'
            "schema": 1        | "skema": 1                 | 'schema' is missing
            2025-03-14T20:15   | yesterday                  | 'at', yesterday, 2025-03-14T20:15
            2025-03-14T20:15   | 2025-02-30T20:15           | 'at', 2025-02-30T20:15
            "kind": "work"     | "kind": "WORK"             | 'kind', WORK, work, set-up
            "unit": "g"        | "unit": "furlong"          | measurements[0].unit, furlong, UCUM
            "value": "18"      | "value": 18                | measurements[0].value, 18
            "value": "18"      | "value": "about ten"       | measurements[0], about ten, 3 1/2
            "value": "18"      | "value": "1e999"           | measurements[0], 1e999
            "value": "18"      | "value": "1/0"             | measurements[0], 1/0
            "name": "fin"      | "name": " "                | measurements[0], name of a measurement
            "id": "k3f9q2"     | "id": ""                   | measurements[0].id, empty, a text
            "measurements": [  | "joints": [{"id": "a"}], "measurements": [ | joints[0].name, missing
            "measurements": [  | "pictures": [{"hash": "../../x", "type": "jpg"}], "measurements": [ | pictures[0], ../../x
            "measurements": [  | "flight": [], "measurements": [ | 'flight'
            "measurements": [  | "text": "one", "measurements": [ | 'text' is "one", a list
            "measurements": [  | "text": [1], "measurements": [ | 'text' is 1, texts
            01JBX000000000000000000001 | ../../../../etc/passwd | ../../../../etc/passwd, ULID
            01JBX000000000000000000001 | 01jbx000000000000000000001 | 01jbx000000000000000000001, ULID
            01JBX000000000000000000001 | 01JBX00000000000000000000L | 01JBX00000000000000000000L, ULID
            "build": "BUILD"   | "build": "01JBX0000000000000000000XY" | 'build', 01JBX0000000000000000000XY
            """)
    void aWrongEntryIsSetAsideWithWhatIsWrong(String part, String instead, String told) throws IOException {
        assertThat(GOOD).contains(part);
        assertSetAside(put("01JBX000000000000000000001.json", GOOD.replace(part, instead)), told.split(", "));
    }

    @Test
    void aFileCutAtAnyPlaceIsSetAside() throws IOException {
        var whole = GOOD.strip();
        for (int length = 0; length < whole.length(); length += 13) {
            assertSetAside(put("cut.json", whole.substring(0, length)), "");
        }
    }

    @Test
    void aFileNestedTooDeepIsSetAside() throws IOException {
        var deep = "[".repeat(100_000) + "]".repeat(100_000);
        assertSetAside(put("deep.json", GOOD.replace("\"title\"", "\"x\": " + deep + ", \"title\"")), "64");
    }

    @Test
    void numbersTooLongOrTooLargeHarmNothing() throws IOException {
        assertSetAside(put("long.json", GOOD.replace("\"schema\": 1", "\"schema\": 1" + "0".repeat(1_000_000))), "100");
        put("long.json", GOOD.replace("\"title\"", "\"unknown\": 1e999999999, \"title\""));
        try (var open = Bench.open(journal)) {
            var entry = open.journal()
                    .entry(build.id(), "01JBX000000000000000000001")
                    .orElseThrow();
            open.journal().apply(Edit.change("title", entry, entry.withTitle("changed")));
        }
        assertThat(entries.resolve("long.json")).content().contains("1E+999999999", "changed");
    }

    @Test
    void aFileThatIsTooLargeIsSetAside() throws IOException {
        assertSetAside(put("large.json", GOOD.replace("Weighing", "x".repeat(9 << 20))), "bytes", "8388608");
    }

    @Test
    void bytesThatAreNoTextAreSetAside() throws IOException {
        var file = entries.resolve("bytes.json");
        Files.write(file, new byte[] {'{', '"', (byte) 0xC3, '"', ':', '1', '}'});
        assertSetAside(file, "UTF-8");
        Files.write(file, GOOD.getBytes(StandardCharsets.UTF_16));
        assertSetAside(file, "");
    }

    @Test
    void theCharacterThatStandsForSpoiltOnesIsTextToo() throws IOException {
        put("01JBX000000000000000000001.json", GOOD.replace("Weighing", "W\uFFFDighing"));
        try (var open = Bench.open(journal)) {
            assertThat(open.journal().entry(build.id(), "01JBX000000000000000000001"))
                    .hasValueSatisfying(entry -> assertThat(entry.title()).isEqualTo("W\uFFFDighing"));
        }
    }

    @Test
    void anEntryThatIsNoObjectIsSetAside() throws IOException {
        for (var text : List.of("[]", "7", "\"entry\"", "null", "{} {}", "")) {
            assertSetAside(put("other.json", text), "");
        }
    }

    @Test
    void aCopyOfAnEntryIsSetAsideAndTheEntryItselfIsNot() throws IOException {
        var own = entries.resolve(sound.id() + ".json");
        var copy = entries.resolve(sound.id() + " (copy).json");
        Files.copy(own, copy);
        assertSetAside(copy, sound.id() + ".json");
    }

    @Test
    void aCopyOfABuildIsSetAsideAndTheBuildItselfIsNot() throws IOException {
        var own = Bench.only(journal, "build.json").getParent();
        var copy = own.resolveSibling("Copy of " + own.getFileName());
        Files.createDirectories(copy.resolve("entries/2025"));
        Files.copy(own.resolve("build.json"), copy.resolve("build.json"));
        Files.copy(entries.resolve(sound.id() + ".json"), copy.resolve("entries/2025/" + sound.id() + ".json"));
        try (var open = Bench.open(journal)) {
            assertThat(open.journal().builds()).containsExactly(build);
            assertThat(open.journal().log(build.id())).containsExactly(sound);
            assertThat(open.setAside()).hasSize(2).allMatch(each -> each.file().startsWith(copy));
            open.journal().apply(Edit.change("title", sound, sound.withTitle("mine")));
        }
        assertThat(entries.resolve(sound.id() + ".json")).content().contains("mine");
    }

    @Test
    void aBrokenBuildIsSetAsideWithItsEntriesAndOthersAreNot() throws IOException {
        var crane = Bench.build("Red crane");
        try (var open = Bench.open(journal)) {
            open.journal().apply(Edit.add("build", crane));
        }
        var head = entries.resolve("../../build.json").normalize();
        Files.writeString(head, Files.readString(head).replace("sketched", "crashed"));
        try (var open = Bench.open(journal)) {
            assertThat(open.journal().builds()).containsExactly(crane);
            assertThat(open.setAside())
                    .extracting(SetAside::file)
                    .containsExactly(head, entries.resolve(sound.id() + ".json"));
            assertThat(open.setAside().get(0).reason()).contains("'life'", "crashed", "on the bench");
        }
    }

    @Test
    void anEntryWithoutItsBuildIsNotHidden() throws IOException {
        Files.delete(entries.resolve("../../build.json"));
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside())
                    .extracting(SetAside::reason)
                    .containsExactly("it is missing", "its build cannot be read");
        }
    }

    @Test
    void linksAreNotFollowed() throws IOException {
        var secret = Files.writeString(temp.resolve("secret.json"), GOOD.replace("BUILD", build.id()));
        var link = Files.createSymbolicLink(entries.resolve("01JBX000000000000000000001.json"), secret);
        assertSetAside(link, "link");
        var endless = Files.createSymbolicLink(entries.resolve("endless.json"), Path.of("/dev/zero"));
        assertSetAside(endless, "link");
        var elsewhere = Files.createSymbolicLink(entries.resolve("elsewhere"), temp);
        assertSetAside(elsewhere, "link");
        var circle = Files.createSymbolicLink(journal.resolve("builds/circle"), journal.resolve("builds"));
        assertSetAside(circle, "link");
    }

    @Test
    void aFolderNamedLikeAnEntryHarmsNothing() throws IOException {
        Files.createDirectories(entries.resolve("odd.json"));
        Files.createDirectories(journal.resolve("builds/.git/objects"));
        Files.writeString(journal.resolve("builds/notes.txt"), "not ours");
        Files.writeString(entries.resolve("Thumbs.db"), "not ours");
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).isEmpty();
            assertThat(open.journal().log(build.id())).containsExactly(sound);
        }
        assertThat(entries.resolve("Thumbs.db")).exists();
    }

    @Test
    void oddNamesOfFilesAreRead() throws IOException {
        put("Löwe ' \" * ?\n.json", GOOD);
        try (var open = Bench.open(journal)) {
            assertThat(open.journal().entry(build.id(), "01JBX000000000000000000001"))
                    .isPresent();
        }
    }

    @Test
    void whatCouldNotBeReadAgainIsNotSaved() throws IOException {
        try (var open = Bench.open(journal)) {
            var huge = Bench.entry(build, "x".repeat(9 << 20));
            assertThatExceptionOfType(IOException.class)
                    .isThrownBy(() -> open.journal().apply(Edit.add("huge", huge)))
                    .withMessageContainingAll(huge.id() + ".json", "bytes");
            assertThat(open.journal().entry(build.id(), huge.id())).isEmpty();
            // a combining mark after an escaped character must not melt into the escape
            var odd = Bench.entry(build, "line\n\u0303\t\u0307 \"\u0338 and \u0000\u2028\uD83C\uDF3C");
            open.journal().apply(Edit.add("odd", odd));
        }
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).isEmpty();
            assertThat(open.journal().log(build.id()))
                    .extracting(EntryRecord::title)
                    .contains("line\n\u0303\t\u0307 \"\u0338 and \u0000\u2028\uD83C\uDF3C");
        }
    }

    private Path put(String name, String text) throws IOException {
        return Files.writeString(entries.resolve(name), text.replace("BUILD", build.id()));
    }

    private void assertSetAside(Path file, String... told) throws IOException {
        var before = Files.isRegularFile(file) && Files.size(file) > 0
                ? Files.readString(file, StandardCharsets.ISO_8859_1)
                : "";
        try (var open = Bench.open(journal)) {
            assertThat(open.setAside()).singleElement().satisfies(each -> {
                assertThat(each.file()).isEqualTo(file);
                assertThat(each.reason()).isNotBlank().contains(told);
            });
            assertThat(open.journal().log(build.id())).containsExactly(sound);
        }
        assertThat(Files.exists(file, LinkOption.NOFOLLOW_LINKS)).isTrue();
        if (!Files.isSymbolicLink(file)) {
            assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).isEqualTo(before);
        }
        Files.delete(file);
    }
}
