package planewright.app.ui.log;

import java.awt.EventQueue;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.PictureRecord;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.PictureTile;
import planewright.app.ui.common.Saves;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.common.Wrapping;

/** The pictures of an entry that is written, with their captions. */
final class PictureRows extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 110;

    private final transient Workroom room;
    private final transient Saves<?> saves;
    private final transient Consumer<String> refused;
    private final transient List<Row> rows = new ArrayList<>();

    private record Row(PictureRecord picture, JTextField caption) {
        PictureRecord captioned() {
            return new PictureRecord(
                    picture.hash(), picture.type(), caption.getText().strip());
        }
    }

    /**
     * @param saves wait for the pictures that are on their way
     * @param refused hears why a picture does not come
     */
    PictureRows(Workroom room, Saves<?> saves, Consumer<String> refused) {
        super(new Wrapping(10));
        this.room = room;
        this.saves = saves;
        this.refused = refused;
        setOpaque(false);
        setName("entry-pictures");
    }

    /** Adds a picture that has been taken in; one that is there already is not added twice. */
    void add(PictureRecord picture) {
        if (rows.stream().anyMatch(row -> row.picture().hash().equals(picture.hash()))) {
            return;
        }
        var caption =
                Words.named(new JTextField(picture.caption()), Texts.CAPTION.text(), "entry-caption-" + rows.size());
        var row = new Row(picture, caption);
        var framed = new JPanel(new MigLayout("insets 0, gap 4 3, wrap 2", "[grow,fill][]"));
        framed.setOpaque(false);
        framed.add(
                PictureTile.of(room, picture, HEIGHT, () -> room.showPicture(row.captioned(), caption::setText)),
                "span 2, growx 0");
        framed.add(caption, "wmin 110");
        framed.add(Buttons.plain("remove-picture-" + rows.size(), Texts.REMOVE.text(), () -> {
            rows.remove(row);
            remove(framed);
            revalidate();
            repaint();
        }));
        rows.add(row);
        add(framed);
        revalidate();
    }

    /** Takes pictures that the builder chooses. */
    void choose() {
        saves.hold();
        try {
            takeFiles(Files.choosePictures(this));
        } finally {
            saves.release(true);
        }
    }

    void takeFiles(List<Path> files) {
        files.forEach(file -> take(() -> room.program().pictures().add(file, "")));
    }

    /** Takes a picture that comes from no file. */
    void takePasted(BufferedImage image) {
        take(() -> room.program().pictures().add(image, ""));
    }

    private void take(Callable<PictureRecord> taking) {
        saves.hold();
        room.background()
                .run(
                        taking,
                        picture -> {
                            taken(picture);
                            saves.release(true);
                        },
                        failure -> {
                            saves.release(false);
                            refused.accept(Words.reason(failure));
                        });
    }

    /** Adds a picture, and brings it into sight once it has its place. */
    private void taken(PictureRecord picture) {
        add(picture);
        EventQueue.invokeLater(() -> {
            var view = SwingUtilities.getAncestorOfClass(JViewport.class, this);
            if (view != null && getComponentCount() > 0) {
                view.validate();
                scrollRectToVisible(getComponent(getComponentCount() - 1).getBounds());
            }
        });
    }

    List<PictureRecord> records() {
        return rows.stream().map(Row::captioned).toList();
    }
}
