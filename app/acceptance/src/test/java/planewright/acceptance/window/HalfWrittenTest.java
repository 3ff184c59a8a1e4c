package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.journal.Entry;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/** Entries that were being written when the program was killed: offered again, and never instead of what was saved since. */
@SuppressWarnings("try") // the window is open as long as its block runs, whoever looks at it
class HalfWrittenTest {
    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    private Path journal;
    private UserFolders user;
    private BuildRecord build;
    private EntryRecord entry;

    @BeforeEach
    void journalWithAnEntry() throws Exception {
        journal = folder.resolve("journal");
        user = UserFolders.under(folder.resolve("user"));
        JournalFolder.create(journal, "Shed");
        build = BuildRecord.begin("Tin Whistle", LocalDate.of(2026, 10, 3));
        entry = EntryRecord.blank(build.id(), Entry.Kind.WORK, LocalDateTime.of(2026, 11, 27, 20, 0))
                .withTitle("Fin")
                .withText(List.of("Cut."));
        try (var opened = JournalFolder.open(journal, user)) {
            opened.journal().apply(Edit.add("build", build));
            opened.journal().apply(Edit.add("entry", entry));
        }
    }

    @Test
    void aNewEntryIsGoneOnWithAfterTheProgramWasKilled() throws Exception {
        killWhileWriting("new-entry", "Rudder hinged");
        assertThat(log()).as("nothing half-written is in the journal").containsExactly(entry);
        try (var window = OpenWindow.on(journal, user)) {
            Hands.find(JTextArea.class, "that offers it", area -> area.getText().contains("“Rudder hinged”"));
            Hands.click("draft-go-on");
            assertThat(Hands.text("entry-title")).isEqualTo("Rudder hinged");
            Hands.type("entry-text", "And glued.");
            Hands.click("save-entry");
            Hands.waitUntil("the editor gone", () -> !isThere("editor"));
        }
        assertThat(log()).extracting(EntryRecord::title).containsExactly("Fin", "Rudder hinged");
        assertThat(drafts()).isEmpty();
    }

    @Test
    void tabLeavesTheTextOfAnEntryAfterTheLookHasChangedToo() throws Exception {
        try (var window = OpenWindow.on(journal, user)) {
            Hands.click("new-entry");
            var text = Hands.find(JTextArea.class, "entry-text");
            for (boolean changed : List.of(false, true)) {
                Hands.onEventThread(() -> {
                    if (changed) {
                        SwingUtilities.updateComponentTreeUI(text);
                    }
                    text.requestFocusInWindow();
                    return text;
                });
                Hands.waitUntil("the focus in the text", text::isFocusOwner);
                Hands.onEventThread(() -> {
                    text.dispatchEvent(new KeyEvent(
                            text, KeyEvent.KEY_PRESSED, System.currentTimeMillis(), 0, KeyEvent.VK_TAB, '\t'));
                    text.dispatchEvent(new KeyEvent(
                            text, KeyEvent.KEY_TYPED, System.currentTimeMillis(), 0, KeyEvent.VK_UNDEFINED, '\t'));
                    return text;
                });
                Hands.waitUntil("the focus further on", () -> !text.isFocusOwner());
                assertThat(Hands.text("entry-text")).isEmpty();
            }
        }
    }

    @Test
    void aChangedEntryIsGoneOnWithWhereItStands() throws Exception {
        killWhileWriting("edit-entry", "Fin, sanded");
        try (var window = OpenWindow.on(journal, user)) {
            Hands.click("draft-go-on");
            Hands.find(
                    JTextArea.class,
                    "with the saved text",
                    area -> area.getText().equals("Cut."));
            Hands.click("save-entry");
            Hands.waitUntil("the editor gone", () -> !isThere("editor"));
        }
        assertThat(log()).containsExactly(entry.withTitle("Fin, sanded"));
    }

    @Test
    void aNewerSaveStaysAndBothArePutTogetherOnlyWhenTheBuilderSaysSo() throws Exception {
        killWhileWriting("edit-entry", "Fin, sanded");
        var newer = entry.withText(List.of("Cut.", "Weighed."));
        try (var opened = JournalFolder.open(journal, user)) {
            opened.journal().apply(Edit.change("later", entry, newer));
        }
        try (var window = OpenWindow.on(journal, user)) {
            Hands.find(JTextArea.class, "that tells it", area -> area.getText().contains("has been saved since"));
            assertThat(Hands.isThere("draft-go-on")).isFalse();
            Hands.click("draft-merge");
            assertThat(Hands.text("entry-title")).isEqualTo("Fin, sanded");
            assertThat(Hands.text("entry-text")).isEqualTo("Cut.\n\nWeighed.");
            assertThat(log()).as("before it is saved").containsExactly(newer);
            Hands.click("save-entry");
            Hands.waitUntil("the editor gone", () -> !isThere("editor"));
        }
        assertThat(log()).containsExactly(newer.withTitle("Fin, sanded"));
        assertThat(drafts()).isEmpty();
    }

    @Test
    void aNewerSaveStaysBesideAnEntryOfItsOwn() throws Exception {
        killWhileWriting("edit-entry", "Fin, sanded");
        var newer = entry.withTitle("Fin, painted");
        try (var opened = JournalFolder.open(journal, user)) {
            opened.journal().apply(Edit.change("later", entry, newer));
        }
        try (var window = OpenWindow.on(journal, user)) {
            Hands.click("draft-apart");
            Hands.click("save-entry");
            Hands.waitUntil("the editor gone", () -> !isThere("editor"));
        }
        assertThat(log()).extracting(EntryRecord::title).containsExactly("Fin, painted", "Fin, sanded");
        assertThat(log().get(0)).isEqualTo(newer);
        assertThat(drafts()).isEmpty();
    }

    @Test
    void anEntryThatIsSavedByAnotherWayWhileItIsWrittenIsNotReplaced() throws Exception {
        var today = EntryRecord.blank(build.id(), Entry.Kind.WORK, LocalDateTime.of(2026, 11, 28, 18, 0))
                .withTitle("Rudder");
        try (var opened = JournalFolder.open(journal, user)) {
            opened.journal().apply(Edit.add("today", today));
        }
        try (var window = OpenWindow.on(journal, user)) {
            Hands.click("edit-entry");
            Hands.type("entry-title", "Rudder, hinged");
            Hands.type("capture-line", "rudder height 90 mm");
            Hands.enter("capture-line");
            Hands.find(
                    JTextField.class,
                    "that is empty again",
                    field -> "capture-line".equals(field.getName())
                            && field.getText().isEmpty());
            Hands.click("save-entry");
            Hands.find(JTextArea.class, "that tells it", area -> area.getText().contains("was saved meanwhile"));
            assertThat(Hands.text("entry-title")).isEqualTo("Rudder, hinged");
            assertThat(Hands.text("measurements-name-0")).isEqualTo("rudder height");
            Hands.click("save-entry");
            Hands.waitUntil("the editor gone", () -> !isThere("editor"));
        }
        assertThat(log()).last().satisfies(entry -> {
            assertThat(entry.title()).isEqualTo("Rudder, hinged");
            assertThat(entry.measurements()).hasSize(1);
        });
    }

    @Test
    void whatIsThrownAwayOrDiscardedIsOfferedNoMore() throws Exception {
        killWhileWriting("new-entry", "Rudder");
        try (var window = OpenWindow.on(journal, user)) {
            Hands.click("draft-throw-away");
            Hands.waitUntil("the offer gone", () -> !isThere("draft-offer"));
            Hands.click("new-entry");
            Hands.type("entry-title", "Elevator");
            waitForDraft("Elevator");
            Hands.click("discard-entry");
            Hands.waitUntil("the editor gone", () -> !isThere("editor"));
        }
        assertThat(drafts()).isEmpty();
    }

    /** On the event thread. */
    private static boolean isThere(String name) {
        return Hands.all(java.awt.Component.class).stream().anyMatch(each -> name.equals(each.getName()));
    }

    private void killWhileWriting(String button, String title) throws Exception {
        var child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Dplanewright.root=" + System.getProperty("planewright.root"),
                        "-Djava.util.logging.config.class=planewright.app.QuietLibraries",
                        "-cp",
                        System.getProperty("java.class.path"),
                        WritingProgram.class.getName(),
                        journal.toString(),
                        folder.resolve("user").toString(),
                        button,
                        title)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (var out = new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(out.readLine()).isEqualTo("typed");
            waitForDraft(title);
        } finally {
            child.destroyForcibly().waitFor();
        }
    }

    /** The draft is on disk a few seconds after it was typed. */
    private void waitForDraft(String title) throws IOException {
        long end = System.nanoTime() + 60_000_000_000L;
        while (drafts().stream().noneMatch(text -> text.contains("\"" + title + "\""))) {
            if (System.nanoTime() > end) {
                throw new AssertionError("no draft of '" + title + "' in " + drafts());
            }
            Hands.pause();
        }
    }

    private List<String> drafts() throws IOException {
        var place = user.data().resolve("drafts");
        if (!Files.exists(place)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(place)) {
            var texts = new java.util.ArrayList<String>();
            for (var file :
                    files.filter(each -> each.toString().endsWith(".json")).toList()) {
                texts.add(Files.readString(file));
            }
            return texts;
        } catch (java.nio.file.NoSuchFileException | java.io.UncheckedIOException moving) {
            return List.of();
        }
    }

    /** Read from a copy, so that the journal may be open. */
    private List<EntryRecord> log() throws IOException {
        var copy = Copies.copy(journal, folder.resolve("copy-" + System.nanoTime()));
        try (var opened = JournalFolder.open(copy, user)) {
            return opened.journal().log(build.id());
        }
    }
}
