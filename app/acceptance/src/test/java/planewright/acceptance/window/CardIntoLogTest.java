package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JCheckBox;
import org.junit.jupiter.api.Test;
import planewright.app.Program;
import planewright.app.exchange.Camera;
import planewright.app.ui.common.PictureTile;

/** A camera's card, looked at by days in the log itself, and brought in by one edit. */
class CardIntoLogTest extends InNewJournal {
    @Test
    void whatIsTickedOfACardJoinsTheDaysEntriesByOneEdit() throws Exception {
        var card = card();
        try (var window = open()) {
            assertThat(window.frame().isShowing()).isTrue();
            begin("Teal");
            Hands.click("pictures-from-card");
            Hands.chooseFile("place-chooser", card);
            Hands.find(JCheckBox.class, "card-day-2026-11-20");
            see("upside.jpg: was taken on 2027-03-01, which is still to come");
            assertThat(Hands.onEventThread(CardIntoLogTest::bringText)).isEqualTo("Bring in 4 pictures");
            Hands.click("pick-DCIM/b.jpg");
            Hands.waitUntil("three", () -> bringText().equals("Bring in 3 pictures"));
            Hands.click("card-day-2026-11-20");
            Hands.waitUntil("two", () -> bringText().equals("Bring in 2 pictures"));
            Hands.click("card-day-2026-11-20");
            Hands.waitUntil("none left out", () -> bringText().equals("Bring in 4 pictures"));
            Hands.click("pick-DCIM/b.jpg");
            Hands.click("card-bring");
            Hands.waitUntil("in the log", () -> Hands.all(PictureTile.class).size() == 3);
            assertThat(Hands.isThere("card-preview")).isFalse();
            Hands.click("undo");
            Hands.waitUntil(
                    "all gone by one step", () -> Hands.all(PictureTile.class).isEmpty());
            Hands.click("redo");
            Hands.waitUntil("again", () -> Hands.all(PictureTile.class).size() == 3);
        }
        try (var program = Program.open(journal, user, List.of(), OpenWindow.CLOCK)) {
            var log = program.journal().log(program.journal().builds().get(0).id());
            assertThat(log)
                    .extracting(entry -> entry.at().toString())
                    .containsExactly("2026-11-20T20:15", "2026-11-21T09:00", "2026-11-28T19:30");
        }
    }

    @Test
    void aCardThatIsLeftWritesNothing() throws Exception {
        var card = card();
        try (var window = open()) {
            assertThat(window.frame().isShowing()).isTrue();
            begin("Teal");
            Hands.click("pictures-from-card");
            Hands.chooseFile("place-chooser", card);
            Hands.find(JCheckBox.class, "card-day-2026-11-21");
            Hands.click("card-leave");
            Hands.waitUntil(
                    "left",
                    () -> Hands.all(java.awt.Component.class).stream()
                            .noneMatch(each -> "card-preview".equals(each.getName())));
            assertThat(Hands.onEventThread(() -> Hands.all(PictureTile.class))).isEmpty();
        }
    }

    /** Two pictures of one evening, one of the next morning, one that does not say when, one from the future. */
    private Path card() throws IOException {
        var card = folder.resolve("card");
        Camera.write(card.resolve("DCIM/a.jpg"), Camera.taken(0x806040, "2026:11:20 20:15:00"));
        Camera.write(card.resolve("DCIM/b.jpg"), Camera.taken(0x406080, "2026:11:20 20:40:00"));
        Camera.write(card.resolve("DCIM/c.jpg"), Camera.taken(0x608040, "2026:11:21 09:00:00"));
        Camera.write(card.resolve("DCIM/plain.jpg"), Camera.plain(0x204060));
        Camera.write(card.resolve("upside.jpg"), Camera.taken(0x602040, "2027:03:01 10:00:00"));
        return card;
    }

    private static String bringText() {
        var button = Hands.all(AbstractButton.class).stream()
                .filter(each -> "card-bring".equals(each.getName()))
                .findFirst();
        return button.map(AbstractButton::getText).orElse("");
    }
}
