package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.StepRecord;
import planewright.app.store.JournalFolder;
import planewright.app.ui.build.BuildPage;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.log.CaptureBar;
import planewright.app.ui.log.LogPage;
import planewright.app.ui.shelf.ShelfPage;
import planewright.app.ui.templates.TemplatesPage;

/** While a save waits behind long work, its form is typed on in, gets pictures, and is saved again: nothing is lost, nothing written twice. */
class TypedOnTest extends InNewJournal {
    @BeforeEach
    void build() throws IOException {
        try (var opened = JournalFolder.open(journal, user)) {
            opened.journal().apply(Edit.add("build", BuildRecord.begin("Teal", LocalDate.of(2026, 10, 3))));
        }
    }

    @Test
    void whatIsTypedIntoAnEntryWhileItsSaveWaitsStaysAndIsSavedNext() throws Exception {
        try (var window = HeldWindow.on(journal, user, TypedOnTest::pages)) {
            Hands.click("new-entry");
            Hands.type("entry-title", "Fin");
            Hands.click("add-measurements");
            Hands.type("measurements-name-0", "fin");
            Hands.type("measurements-quantity-0", "12 g");
            window.holdEdits();
            Hands.click("save-entry");
            Hands.type("entry-text", "Sanded after that.");
            window.letGo();
            assertThat(Hands.text("entry-text")).isEqualTo("Sanded after that.");
            var first = window.log();
            assertThat(first).extracting(EntryRecord::title).containsExactly("Fin");
            assertThat(Hands.isThere("delete-entry")).as("it is in the log").isTrue();
            Hands.click("save-entry");
            gone("editor");
            assertThat(window.log()).singleElement().isEqualTo(first.get(0).withText(List.of("Sanded after that.")));
        }
    }

    @Test
    void anEntryThatIsSavedTwiceInTheWaitIsSavedAsItWasAtLast() throws Exception {
        try (var window = HeldWindow.on(journal, user, TypedOnTest::pages)) {
            Hands.click("new-entry");
            Hands.type("entry-title", "Fin");
            window.holdEdits();
            Hands.click("save-entry");
            Hands.type("entry-title", "Fin, sanded");
            Hands.click("save-entry");
            see("an earlier save waits its turn");
            window.letGo();
            gone("editor");
            assertThat(window.log()).extracting(EntryRecord::title).containsExactly("Fin, sanded");
        }
    }

    @Test
    void anEntryIsSavedOnceItsPicturesAreThere() throws Exception {
        var file = picture();
        try (var window = HeldWindow.on(journal, user, TypedOnTest::pages)) {
            Hands.click("new-entry");
            Hands.type("entry-title", "Fin set");
            window.holdRest();
            Hands.click("add-picture");
            Hands.chooseFile("picture-chooser", file);
            gone("picture-chooser");
            Hands.click("save-entry");
            see("Pictures are still coming in");
            window.letGo();
            gone("editor");
            assertThat(window.log())
                    .singleElement()
                    .satisfies(entry -> assertThat(entry.pictures()).hasSize(1));
        }
    }

    @Test
    void aPictureThatIsRefusedIsToldAndNothingIsSavedWithoutIt() throws Exception {
        var file = Files.writeString(folder.resolve("fin.png"), "no picture");
        try (var window = HeldWindow.on(journal, user, TypedOnTest::pages)) {
            Hands.click("new-entry");
            Hands.type("entry-title", "Fin set");
            window.holdRest();
            Hands.click("add-picture");
            Hands.chooseFile("picture-chooser", file);
            gone("picture-chooser");
            Hands.click("save-entry");
            see("Pictures are still coming in");
            window.letGo();
            see("fin.png");
            assertThat(Hands.text("entry-title")).isEqualTo("Fin set");
            assertThat(window.log()).isEmpty();
        }
    }

    @Test
    void whatIsTypedIntoTheHeaderWhileItsSaveWaitsStays() throws Exception {
        try (var window = HeldWindow.on(journal, user, TypedOnTest::pages)) {
            Hands.click("edit-build");
            Hands.type("build-datum", "nose");
            window.holdEdits();
            Hands.click("save-build");
            Hands.type("build-datum", "leading edge");
            window.letGo();
            assertThat(window.program().journal().builds().get(0).datum()).isEqualTo("nose");
            assertThat(Hands.text("build-datum")).isEqualTo("leading edge");
            Hands.enter("build-datum");
            gone("build-datum");
            assertThat(window.program().journal().builds().get(0).datum()).isEqualTo("leading edge");
        }
    }

    @Test
    void whatIsTypedIntoATemplateWhileItsSaveWaitsStays() throws Exception {
        try (var window = HeldWindow.on(journal, user, room -> new TemplatesPage(room, id -> {}))) {
            Hands.click("new-procedure");
            Hands.type("template-name", "Hinge");
            Hands.type("steps-text-0", "cut the slots");
            window.holdEdits();
            Hands.click("save-template");
            Hands.type("template-notes", "With tape.");
            window.letGo();
            var first = window.program().journal().templates().get(0);
            assertThat(first.notes()).isEmpty();
            assertThat(Hands.text("template-notes")).isEqualTo("With tape.");
            Hands.click("save-template");
            gone("template-form");
            assertThat(window.program().journal().templates()).singleElement().satisfies(saved -> {
                assertThat(saved.notes()).containsExactly("With tape.");
                assertThat(saved.steps())
                        .extracting(StepRecord::id)
                        .isEqualTo(first.steps().stream().map(StepRecord::id).toList());
            });
        }
    }

    @Test
    void enterTwiceWritesALineOnceAndBeginsOneBuild() throws Exception {
        try (var window = HeldWindow.on(journal, user, TypedOnTest::pages)) {
            window.holdEdits();
            Hands.type("capture-line", "fin 12 g");
            Hands.enter("capture-line");
            Hands.enter("capture-line");
            Hands.type("new-build-name", "Plover");
            Hands.enter("new-build-name");
            Hands.enter("new-build-name");
            window.letGo();
            assertThat(Hands.text("capture-line")).isEmpty();
            assertThat(Hands.text("new-build-name")).isEmpty();
            assertThat(window.program().journal().builds())
                    .extracting(BuildRecord::name)
                    .containsExactlyInAnyOrder("Teal", "Plover");
            var teal = window.program().journal().builds().stream()
                    .filter(build -> build.name().equals("Teal"))
                    .findFirst()
                    .orElseThrow();
            assertThat(window.program().journal().log(teal.id()))
                    .singleElement()
                    .satisfies(entry -> assertThat(entry.measurements()).hasSize(1));
        }
    }

    @Test
    void theSameLineIsWrittenAgainWhereItWasTypedAgain() throws Exception {
        try (var window = HeldWindow.on(journal, user, TypedOnTest::pages)) {
            window.holdEdits();
            Hands.type("capture-line", "fin 12 g");
            Hands.enter("capture-line");
            Hands.type("capture-line", "fin 12 g");
            Hands.enter("capture-line");
            window.letGo();
            assertThat(window.log())
                    .singleElement()
                    .satisfies(entry -> assertThat(entry.measurements()).hasSize(2));
        }
    }

    @Test
    void aNameThatIsTypedWhileABuildIsBegunStays() throws Exception {
        try (var window = HeldWindow.on(journal, user, TypedOnTest::pages)) {
            window.holdEdits();
            Hands.type("new-build-name", "Plover");
            Hands.enter("new-build-name");
            Hands.type("new-build-name", "plover");
            Hands.enter("new-build-name");
            see("'plover' is in the journal already");
            Hands.type("new-build-name", "Snipe");
            window.letGo();
            assertThat(Hands.text("new-build-name")).isEqualTo("Snipe");
            assertThat(window.program().journal().builds())
                    .extracting(BuildRecord::name)
                    .containsExactlyInAnyOrder("Teal", "Plover");
        }
    }

    @Test
    void aDraftIsKeptWhileEditsWait() throws Exception {
        try (var window = HeldWindow.on(journal, user, TypedOnTest::pages)) {
            Hands.click("new-entry");
            window.holdEdits();
            Hands.type("entry-title", "Half a fin");
            var kept = new CompletableFuture<Workroom>();
            Hands.onEventThread(() -> {
                Hands.all(LogPage.class).get(0).keepDrafts();
                window.room().drafts().run(window::room, kept::complete);
                return kept;
            });
            Hands.waitUntil("drafts kept", kept::isDone);
            assertThat(window.program().drafts().all())
                    .extracting(draft -> draft.written().title())
                    .containsExactly("Half a fin");
            assertThat(window.log()).isEmpty();
        }
    }

    private static JComponent pages(Workroom room) {
        var build = new BuildPage(room, () -> {});
        var pages = new JPanel(new BorderLayout());
        pages.add(new ShelfPage(room, () -> {}), BorderLayout.WEST);
        pages.add(build);
        pages.add(new CaptureBar(room, build.log()), BorderLayout.SOUTH);
        return pages;
    }

    private Path picture() throws IOException {
        var file = folder.resolve("fin.png");
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
        return file;
    }

    private static void gone(String name) {
        Hands.waitUntil(
                name + " gone",
                () -> Hands.all(Component.class).stream().noneMatch(each -> name.equals(each.getName())));
    }
}
