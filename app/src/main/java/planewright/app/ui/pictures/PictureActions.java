package planewright.app.ui.pictures;

import java.awt.Component;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JButton;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Workroom;

/** What can be done with pictures wherever they are shown: showing their entry, copying, saving copies. */
final class PictureActions {
    private final Component over;
    private final Workroom room;
    private final Supplier<List<LoggedPicture>> chosen;
    private final PicturesOut out;

    /**
     * @param over dialogs stand over it
     * @param chosen the pictures that it is about, at least one while a button can be pressed
     */
    PictureActions(Component over, Workroom room, Supplier<List<LoggedPicture>> chosen) {
        this.over = over;
        this.room = room;
        this.chosen = chosen;
        out = new PicturesOut(room, chosen);
    }

    PicturesOut out() {
        return out;
    }

    /**
     * Buttons that go by the names of tests.
     *
     * @param prefix of the names
     */
    List<JButton> buttons(String prefix) {
        return List.of(
                Buttons.with(Icons.ENTRY, Buttons.plain(prefix + "-entry", Texts.SHOW_ENTRY.text(), this::showEntry)),
                Buttons.with(Icons.COPY, Buttons.plain(prefix + "-copy", Texts.COPY.text(), out::copy)),
                tipped(
                        Buttons.with(
                                Icons.SAVE, Buttons.plain(prefix + "-save", Texts.SAVE_COPY.text(), () -> save(false))),
                        Texts.SAVE_COPY_HINT),
                tipped(
                        Buttons.with(
                                Icons.AS_TAKEN,
                                Buttons.plain(prefix + "-save-as-taken", Texts.SAVE_AS_TAKEN.text(), () -> save(true))),
                        Texts.SAVE_AS_TAKEN_HINT));
    }

    private static JButton tipped(JButton button, Texts hint) {
        button.setToolTipText(hint.text());
        return button;
    }

    private void showEntry() {
        chosen.get().stream()
                .findFirst()
                .ifPresent(picture ->
                        room.showEntry(picture.entry().build(), picture.entry().id()));
    }

    private void save(boolean asTaken) {
        var wanted = chosen.get();
        if (wanted.size() == 1) {
            var one = wanted.get(0);
            Files.savePicture(
                    over,
                    room,
                    one.fileName(),
                    one.picture().type(),
                    file -> room.program().pictures().handOn(one.picture(), file, asTaken));
        } else if (!wanted.isEmpty()) {
            Files.chooseFolder(over)
                    .ifPresent(folder -> room.background()
                            .run(
                                    () -> saveInto(folder, wanted, asTaken),
                                    count -> room.say(Texts.PICTURES_SAVED.text(count, folder))));
        }
    }

    private int saveInto(Path folder, List<LoggedPicture> wanted, boolean asTaken) throws IOException {
        java.nio.file.Files.createDirectories(folder);
        for (var picture : wanted) {
            room.program().pictures().handOn(picture.picture(), PicturesOut.freeFile(folder, picture), asTaken);
        }
        return wanted.size();
    }
}
