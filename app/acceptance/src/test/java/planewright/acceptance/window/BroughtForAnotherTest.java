package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import planewright.app.exchange.Camera;
import planewright.app.exchange.JournalArchive;
import planewright.app.exchange.PictureForm;
import planewright.app.exchange.Watch;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.store.JournalFolder;
import planewright.app.ui.exchange.ExchangePage;

/** What was looked at counts for what is asked then, and for nothing that is asked later. */
class BroughtForAnotherTest extends InNewJournal {
    private final BuildRecord teal = BuildRecord.begin("Teal", LocalDate.of(2026, 10, 3));
    private final BuildRecord snipe = BuildRecord.begin("Snipe", LocalDate.of(2026, 10, 4));
    private Path card;

    @BeforeEach
    void buildsAndACard() throws Exception {
        try (var opened = JournalFolder.open(journal, user)) {
            opened.journal().apply(Edit.add("build", teal));
            opened.journal().apply(Edit.add("build", snipe));
        }
        card = folder.resolve("card");
        Camera.write(card.resolve("DCIM/a.jpg"), Camera.taken(0x806040, "2026:11:20 20:15:00"));
    }

    @Test
    void aLookForOneBuildIsForgottenWhenAnotherIsShown() throws Exception {
        try (var window = HeldWindow.on(journal, user, ExchangePage::new)) {
            show(window, teal);
            look();
            Hands.find(JTable.class, "preview");
            assertThat(Hands.find(AbstractButton.class, "bring").isEnabled()).isTrue();
            show(window, snipe);
            assertThat(Hands.isThere("preview")).isFalse();
            assertThat(Hands.find(AbstractButton.class, "bring").isEnabled()).isFalse();
        }
    }

    @Test
    void aLookThatEndsAfterAFieldWasChangedIsNotShown() throws Exception {
        try (var window = HeldWindow.on(journal, user, ExchangePage::new)) {
            show(window, teal);
            window.holdRest();
            look();
            Hands.waitUntil("the work", () -> isThere("bring-stop"));
            Hands.type("bring-day", "2026-11-21");
            assertThat(Hands.isThere("bring-stop")).isFalse();
            window.letGo();
            assertThat(Hands.isThere("preview")).isFalse();
            assertThat(Hands.find(AbstractButton.class, "bring").isEnabled()).isFalse();
            Hands.click("bring-look");
            Hands.find(JTable.class, "preview");
        }
    }

    @Test
    void undoIsOfferedOnlyForWhatWasBroughtIn() throws Exception {
        try (var window = HeldWindow.on(journal, user, ExchangePage::new)) {
            show(window, teal);
            bringIn();
            edit(window, BuildRecord.begin("Plover", LocalDate.of(2026, 11, 28)));
            Hands.waitUntil("no undo", () -> !isThere("bring-undo"));
            see("Brought in one thing");
        }
    }

    @Test
    void undoTakesNothingElseBackThatCameMeanwhile() throws Exception {
        try (var window = HeldWindow.on(journal, user, ExchangePage::new)) {
            show(window, teal);
            bringIn();
            window.holdEdits();
            edit(window, BuildRecord.begin("Plover", LocalDate.of(2026, 11, 28)));
            Hands.click("bring-undo");
            window.letGo();
            assertThat(window.said()).anyMatch(words -> words.contains("nothing was taken back: bring in pictures"));
            assertThat(window.program().journal().builds())
                    .extracting(BuildRecord::name)
                    .contains("Plover");
            assertThat(window.program().journal().log(teal.id())).hasSize(1);
        }
    }

    @Test
    void anArchiveGoesWhereItWasSentThoughTheFieldIsEmptyByNow() throws Exception {
        var zip = folder.resolve("shed.zip");
        var target = folder.resolve("brought");
        try (var opened = JournalFolder.open(journal, user)) {
            JournalArchive.take(opened, PictureForm.PLAIN, zip, false, Watch.NONE);
        }
        try (var window = HeldWindow.on(journal, user, ExchangePage::new)) {
            JComboBox<?> kind = Hands.find(JComboBox.class, "bring-kind");
            Hands.onEventThread(() -> {
                kind.setSelectedIndex(kind.getItemCount() - 1);
                return kind;
            });
            Hands.type("bring-from", zip.toString());
            Hands.type("bring-folder", target.toString());
            window.holdRest();
            Hands.click("bring");
            Hands.waitUntil("the work", () -> isThere("bring-stop"));
            Hands.type("bring-folder", "");
            window.letGo();
            see("Open it with: planewright open " + target);
            Hands.type("bring-folder", target.toString());
            assertThat(Hands.find(AbstractButton.class, "bring").isEnabled()).isTrue();
        }
    }

    private void look() {
        Hands.type("bring-from", card.toString());
        Hands.click("bring-look");
    }

    private void bringIn() {
        look();
        Hands.find(JTable.class, "preview");
        Hands.click("bring");
        Hands.find(AbstractButton.class, "bring-undo");
    }

    private static void show(HeldWindow window, BuildRecord build) {
        Hands.onEventThread(() -> {
            window.room().show(build.id());
            return build;
        });
        JComboBox<?> choice = Hands.find(JComboBox.class, "bring-build");
        Hands.waitUntil(
                build.name() + " chosen",
                () -> choice.getSelectedItem() instanceof Optional<?> chosen
                        && chosen.filter(each -> ((BuildRecord) each).id().equals(build.id()))
                                .isPresent());
    }

    private static void edit(HeldWindow window, BuildRecord added) {
        Hands.onEventThread(() -> {
            window.room().edit(Edit.add("build", added), () -> {});
            return List.of(added);
        });
    }

    /** On the event thread. */
    private static boolean isThere(String name) {
        return Hands.all(Component.class).stream().anyMatch(each -> name.equals(each.getName()));
    }
}
