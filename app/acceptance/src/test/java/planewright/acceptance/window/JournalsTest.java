package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Settings;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;
import planewright.app.ui.MainWindow;
import planewright.app.ui.common.WindowMemory;
import planewright.app.ui.journals.RecentJournals;

/** Several journals in turn: the one that is open gives way only to one that can be read. */
class JournalsTest {
    @RegisterExtension
    final EventThread eventThread = new EventThread();

    @TempDir
    Path folder;

    private UserFolders user;
    private Path loft;
    private Path shed;

    @BeforeEach
    void journals() throws Exception {
        user = UserFolders.under(folder.resolve("user"));
        loft = journal("loft", "The loft", "Tin Whistle");
        shed = journal("shed", "shed", "Brass Monkey");
    }

    private Path journal(String in, String name, String build) throws Exception {
        var place = folder.resolve(in);
        JournalFolder.create(place, name);
        try (var opened = JournalFolder.open(place, user)) {
            opened.journal().apply(Edit.add("build", BuildRecord.begin(build, LocalDate.of(2026, 10, 3))));
        }
        return place;
    }

    @Test
    void anotherJournalIsOpenedAndTheFirstStaysWhereItCannotBe() throws Exception {
        try (var window = OpenWindow.on(loft, user)) {
            Hands.click("show-journals");
            Hands.click("open-journal");
            Hands.chooseFile("place-chooser", Files.createDirectories(folder.resolve("nothing here")));
            Hands.waitUntil("a refusal", () -> text("journals-problem").contains("nothing here"));
            assertThat(shelf()).contains("Tin Whistle");
            Hands.click("open-journal");
            Hands.chooseFile("place-chooser", shed);
            waitForBuild("Brass Monkey");
            assertThat(window.frame().getTitle()).startsWith("shed");
            Hands.type("new-build-name", "Second Helping");
            Hands.click("new-build");
            waitForBuild("Second Helping");
            Hands.click("show-journals");
            Hands.hasKeyboard("new-journal-name");
            Hands.find(Component.class, "journal-shed");
            Hands.find(JTextArea.class, "with the journal's name", area -> "The loft".equals(area.getText()));
            Hands.click("open-recent");
            waitForBuild("Tin Whistle");
            Hands.click("show-journals");
            Hands.find(Component.class, "journal-shed");
            Hands.click("open-recent");
            waitForBuild("Second Helping");
        }
        try (var opened = JournalFolder.open(shed, user)) {
            assertThat(opened.journal().builds()).extracting(BuildRecord::name).contains("Second Helping");
        }
        assertThat(new RecentJournals(WindowMemory.read(user)).all()).containsExactly(real(shed), real(loft));
    }

    /** Nothing in it is, as behind other windows. */
    @Test
    void aJournalIsOpenedWhereTheWindowIsNotPainted() throws Exception {
        AWTEventListener unseen = event -> {
            if (event.getSource() instanceof JFrame frame && frame.isShowing()) {
                frame.getRootPane().setVisible(false);
            }
        };
        Toolkit.getDefaultToolkit().addAWTEventListener(unseen, AWTEvent.HIERARCHY_EVENT_MASK);
        try {
            MainWindow.start(new Settings(user, List.of(), Optional.of(loft)), Optional.of(loft), OpenWindow.CLOCK);
            var frame = Hands.find(JFrame.class, "planewright");
            Hands.waitUntil("the journal open", () -> frame.getTitle().startsWith("The loft"));
            OpenWindow.close(frame);
        } finally {
            Toolkit.getDefaultToolkit().removeAWTEventListener(unseen);
        }
    }

    @Test
    void buttonsStandApartInANarrowWindow() throws Exception {
        try (var window = OpenWindow.on(loft, user)) {
            Hands.click("show-journals");
            var begin = Hands.find(JButton.class, "begin-journal");
            var other = Hands.find(JButton.class, "open-journal");
            for (int width : new int[] {1200, 900, 760}) {
                Hands.onEventThread(() -> {
                    window.frame().setSize(width, 600);
                    window.frame().validate();
                    return width;
                });
                Hands.waitUntil("a gap at " + width, () -> other.getX() - begin.getX() - begin.getWidth() >= 8);
            }
        }
    }

    @Test
    void withoutAJournalOneIsBegunAndOpenedAgainTheNextTime() throws Exception {
        var settings = new Settings(user, OpenWindow.plugins(), Optional.empty());
        MainWindow.start(settings, Optional.empty(), OpenWindow.CLOCK);
        Hands.find(Component.class, "journals");
        Hands.click("begin-journal");
        Hands.waitUntil("a name is asked for", () -> !text("journals-problem").isEmpty());
        Hands.type("new-journal-name", "My workshop");
        Hands.click("begin-journal");
        Hands.chooseFile("place-chooser", Files.createDirectories(folder.resolve("mine")));
        Hands.find(JList.class, "builds");
        assertThat(Hands.find(JFrame.class, "planewright").getTitle()).startsWith("My workshop");
        OpenWindow.close(Hands.find(JFrame.class, "planewright"));
        MainWindow.start(settings, Optional.empty(), OpenWindow.CLOCK);
        Hands.find(JList.class, "builds");
        var frame = Hands.find(JFrame.class, "planewright");
        assertThat(frame.getTitle()).startsWith("My workshop");
        OpenWindow.close(frame);
    }

    private static Path real(Path path) {
        return path.toAbsolutePath().normalize();
    }

    private static void waitForBuild(String name) {
        Hands.waitUntil("build " + name, () -> shelfNow().contains(name));
    }

    private static List<String> shelf() {
        return Hands.onEventThread(JournalsTest::shelfNow);
    }

    private static List<String> shelfNow() {
        return Hands.all(JList.class).stream()
                .filter(list -> "builds".equals(list.getName()))
                .flatMap(list -> java.util.stream.IntStream.range(
                                0, list.getModel().getSize())
                        .mapToObj(i -> list.getModel().getElementAt(i).toString()))
                .toList();
    }

    private static String text(String area) {
        return Hands.all(JTextArea.class).stream()
                .filter(each -> area.equals(each.getName()))
                .map(JTextArea::getText)
                .findFirst()
                .orElse("");
    }
}
