package planewright.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.api.journal.Entry;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.store.JournalFolder;

class DatedNotesTest {
    @TempDir
    private Path folder;

    private JournalFolder opened;
    private BuildRecord build;

    @BeforeEach
    void journal() throws IOException {
        opened = Bench.newJournal(folder.resolve("journal"));
        build = Bench.build("Grey heron");
        opened.journal().apply(Edit.add("build", build));
        Files.createDirectories(folder.resolve("notes"));
    }

    @AfterEach
    void close() throws IOException {
        opened.close();
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            delimiter = '~',
            value = {
                "a.txt                        ~ `2025-03-14 Fin glued\n\nHeld.`        ~ 2025-03-14T12:00 ~ Fin glued ~ Held.",
                "a.md                         ~ `# 2025-03-14: Fin glued\nHeld.`       ~ 2025-03-14T12:00 ~ Fin glued ~ Held.",
                "a.md                         ~ `2025-03-14T20:15 – Fin\n\nHeld.`      ~ 2025-03-14T20:15 ~ Fin       ~ Held.",
                "a.md                         ~ `Date: 2025-03-14 20:15\n# Fin\nHeld.` ~ 2025-03-14T20:15 ~ Fin       ~ Held.",
                "2025-03-14.md                ~ `Held.`                                ~ 2025-03-14T12:00 ~ ``        ~ Held.",
                "2025-03-14-fin_glued.txt     ~ `Held.`                                ~ 2025-03-14T12:00 ~ fin glued ~ Held.",
                "Heron 2025-03-14 evening.md  ~ `# Fin #\n\nHeld.`                     ~ 2025-03-14T12:00 ~ Fin       ~ Held.",
                "2020-01-01.md                ~ `2025-03-14\n\nHeld.`                  ~ 2025-03-14T12:00 ~ ``        ~ Held."
            })
    void dateAndTitleStandInTheFirstLineOrInTheName(String name, String text, String at, String title, String body)
            throws Exception {
        note(name, text);
        assertThat(bring()).isEqualTo(new Brought(1, 1, List.of(), List.of()));
        var entry = log().get(0);
        assertThat(entry.at()).isEqualTo(at);
        assertThat(entry.title()).isEqualTo(title);
        assertThat(entry.text()).containsExactly(body);
        assertThat(entry.kind()).isEqualTo(Entry.Kind.NOTE);
    }

    @Test
    void blocksStayWhole() throws Exception {
        note("a.md", """
                2025-03-14 Long
                First
                goes on.

                ```
                code

                more
                ```

                - one

                  still one
                - two
                """);
        bring();
        assertThat(log().get(0).text())
                .containsExactly("First\ngoes on.", "```\ncode\n\nmore\n```", "- one\n\n  still one\n- two");
    }

    @Test
    void linksKeepTheirPlaces() throws Exception {
        note("a.md", "2025-03-14 Long\n\nSee [plan].\n\nMore.\n\n[plan]: https://example.org/plan\n");
        bring();
        assertThat(log().get(0).text()).containsExactly("See [plan].\n\nMore.\n\n[plan]: https://example.org/plan");
    }

    @Test
    void whatHasNoDateIsToldAndTheRestComesIn() throws Exception {
        note("good.md", "2025-03-14 Fin");
        note("undated.md", "Once upon a time");
        note("2025-02-30.md", "No such day");
        note("12025-03-14.md", "No year of ours");
        note("empty.md", "2025-03-14");
        Files.write(folder.resolve("notes/latin.txt"), "2025-03-14 Flügel".getBytes(StandardCharsets.ISO_8859_1));
        Files.write(folder.resolve("notes/binary.txt"), "2025-03-14 \0\0".getBytes(StandardCharsets.ISO_8859_1));
        note("other.doc", "2025-03-14 not asked for");
        var told = bring();
        assertThat(told.things()).isEqualTo(1);
        assertThat(told.leftOut())
                .containsExactly(
                        new LeftOut(
                                "12025-03-14.md",
                                "has no date; accepted: one such as 2025-03-14 at the beginning of its first line, or in its name"),
                        new LeftOut(
                                "2025-02-30.md",
                                "has the date '2025-02-30', which does not exist; accepted: such as 2025-03-14"),
                        new LeftOut("binary.txt", "is not text"),
                        new LeftOut("empty.md", "says nothing besides its date"),
                        new LeftOut("latin.txt", "is not UTF-8 text; save it as UTF-8"),
                        new LeftOut(
                                "undated.md",
                                "has no date; accepted: one such as 2025-03-14 at the beginning of its first line, or in its name"));
    }

    @Test
    void allNotesAreOneEditAndNoneComesInTwice() throws Exception {
        note("a.md", "2025-03-14 Fin");
        note("b.md", "2025-03-15 Rib");
        bring();
        var again = bring();
        assertThat(again.things()).isZero();
        assertThat(again.known()).extracting(LeftOut::what).containsExactly("a.md", "b.md");
        assertThat(opened.journal().undo().map(Edit::what)).contains("bring in notes");
        assertThat(log()).isEmpty();
    }

    @Test
    void whatLiesInHiddenFoldersIsNotBroughtIn() throws Exception {
        note("good.md", "2025-03-14 Fin");
        for (var hidden : List.of(".Trash-1000/files", ".git")) {
            Files.createDirectories(folder.resolve("notes").resolve(hidden));
            note(hidden + "/thrown away.md", "2025-03-15 Rib");
        }
        note(".hidden.md", "2025-03-16 Spar");
        assertThat(bring()).isEqualTo(new Brought(1, 1, List.of(), List.of()));
        assertThat(log()).extracting(EntryRecord::title).containsExactly("Fin");
    }

    /** Its path is longer than Linux takes, so that not even an administrator can read it. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aFolderThatCannotBeReadIsToldAndTheRestComesIn() throws Exception {
        note("good.md", "2025-03-14 Fin");
        var deep = folder.resolve("notes");
        var tail = folder.resolve("long");
        for (int i = 0; i < 12; i++) {
            deep = deep.resolve("d".repeat(180));
            tail = tail.resolve("l".repeat(180));
        }
        Files.createDirectories(deep);
        Files.createDirectories(tail);
        Files.move(folder.resolve("long"), deep.resolve("long"));
        try {
            var told = bring();
            assertThat(told.things()).isEqualTo(1);
            assertThat(told.leftOut())
                    .singleElement()
                    .satisfies(left -> assertThat(left.what()).contains("/long/"))
                    .satisfies(left -> assertThat(left.reason()).startsWith("cannot be read ("));
        } finally {
            Files.move(deep.resolve("long"), folder.resolve("long"));
        }
    }

    @Test
    void aLinkToANoteIsTold() throws Exception {
        note("good.md", "2025-03-14 Fin");
        Files.createSymbolicLink(folder.resolve("notes/link.md"), folder.resolve("notes/good.md"));
        Files.createSymbolicLink(folder.resolve("notes/link.jpg"), folder.resolve("notes/good.md"));
        assertThat(bring().leftOut()).containsExactly(new LeftOut("link.md", "is a link or a device"));
    }

    @Test
    void endedOnTheWayItHasWrittenNothing() throws Exception {
        note("a.md", "2025-03-14 Fin");
        note("b.md", "2025-03-15 Rib");
        assertThatThrownBy(() -> DatedNotes.bring(opened.journal(), build, folder.resolve("notes"), what -> {
                    if (what.endsWith("b.md")) {
                        throw new CancellationException("enough");
                    }
                }))
                .isInstanceOf(CancellationException.class);
        assertThat(log()).isEmpty();
        assertThatThrownBy(() -> DatedNotes.bring(opened.journal(), build, folder.resolve("none"), Watch.NONE))
                .isInstanceOf(ExchangeRefused.class)
                .hasMessageContaining("are not there");
    }

    private Brought bring() throws IOException {
        return DatedNotes.bring(opened.journal(), build, folder.resolve("notes"), Watch.NONE);
    }

    private void note(String name, String text) throws IOException {
        Files.writeString(folder.resolve("notes").resolve(name), text);
    }

    private List<EntryRecord> log() {
        return opened.journal().log(build.id());
    }
}
