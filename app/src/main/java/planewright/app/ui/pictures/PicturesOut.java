package planewright.app.ui.pictures;

import java.awt.Image;
import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.TransferHandler;
import planewright.app.pictures.PictureShelf;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.PictureIntake;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Workroom;

/**
 * Pictures on their way out, by dragging and by the clipboard: copies under names that tell what they show, without the place
 * where they were taken. Copies are made as soon as a picture is pressed, for a drag cannot wait.
 */
final class PicturesOut extends TransferHandler {
    private static final long serialVersionUID = 1L;
    private static final int MOST_MADE_READY = 60;
    private static final int LARGEST_IMAGE = 3000;

    private final transient Workroom room;
    private final transient Supplier<List<LoggedPicture>> chosen;
    private final transient Background.Latest making;
    private transient List<LoggedPicture> readyFor = List.of();
    private transient Optional<Copies> ready = Optional.empty();
    private transient String notReady = "";
    private transient Optional<Path> folder = Optional.empty();

    PicturesOut(Workroom room, Supplier<List<LoggedPicture>> chosen) {
        this.room = room;
        this.chosen = chosen;
        this.making = room.background().latest();
    }

    /** Makes copies of what is chosen now, if it is not too much to be made by the way. */
    void prepare() {
        var wanted = chosen.get();
        if (wanted.equals(readyFor)) {
            return;
        }
        var unused = ready;
        ready = Optional.empty();
        readyFor = wanted;
        boolean tooMany = wanted.size() > MOST_MADE_READY;
        notReady = (tooMany ? Texts.PICTURES_DRAG_MANY : Texts.PICTURES_DRAG_LATER).text(MOST_MADE_READY);
        making.ask(() -> makeReady(tooMany ? List.of() : wanted, unused), Runnable::run);
    }

    /** What to do on the event thread once copies are made; why they could not be is told to whoever wants to drag them. */
    private Runnable makeReady(List<LoggedPicture> wanted, Optional<Copies> unused) {
        try {
            for (var file : unused.map(Copies::files).orElse(List.of())) {
                Files.deleteIfExists(file.toPath());
            }
            var made = copies(wanted, false);
            return () -> ready = Optional.of(made).filter(copies -> !wanted.isEmpty());
        } catch (IOException | RuntimeException failure) {
            return () -> notReady = failure.getLocalizedMessage();
        }
    }

    /** Puts what is chosen on the clipboard, as files, and one alone as an image too; where nothing is, the clipboard stays. */
    void copy() {
        var wanted = chosen.get();
        if (wanted.isEmpty()) {
            return;
        }
        room.background().run(() -> copies(wanted, wanted.size() == 1), made -> {
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(made, null);
            room.say(Texts.PICTURES_COPIED.text(made.files().size()));
        });
    }

    private Copies copies(List<LoggedPicture> wanted, boolean withImage) throws IOException {
        var files = new ArrayList<File>();
        var beside = Files.createTempDirectory(folder(), "");
        beside.toFile().deleteOnExit();
        for (var picture : wanted) {
            var file = freeFile(beside, picture);
            room.program().pictures().handOn(picture.picture(), file, false);
            file.toFile().deleteOnExit();
            files.add(file.toFile());
        }
        Optional<Image> image =
                withImage ? Optional.of(PictureShelf.view(files.get(0).toPath(), LARGEST_IMAGE)) : Optional.empty();
        return new Copies(files, image);
    }

    private synchronized Path folder() throws IOException {
        if (folder.isEmpty()) {
            var made = Files.createTempDirectory("planewright-pictures");
            made.toFile().deleteOnExit();
            folder = Optional.of(made);
        }
        return folder.get();
    }

    /** A file that is not there yet; a copy that another program may still read is not overwritten. */
    static synchronized Path freeFile(Path folder, LoggedPicture picture) {
        var name = picture.fileName();
        var ending = "." + picture.picture().type();
        var file = folder.resolve(name + ending);
        for (int number = 2; Files.exists(file); number++) {
            file = folder.resolve(name + " " + number + ending);
        }
        return file;
    }

    @Override
    public int getSourceActions(JComponent component) {
        return COPY;
    }

    @Override
    protected Transferable createTransferable(JComponent component) {
        var out = ready;
        if (out.isEmpty()) {
            room.say(notReady);
        }
        ready = Optional.empty();
        readyFor = List.of();
        return out.orElse(null);
    }

    @Override
    public void exportToClipboard(JComponent component, Clipboard clipboard, int action) {
        copy();
    }

    /** Files, and an image where there is one. */
    private record Copies(List<File> files, Optional<Image> image) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return image.isPresent()
                    ? new DataFlavor[] {DataFlavor.javaFileListFlavor, DataFlavor.imageFlavor, PictureIntake.OWN}
                    : new DataFlavor[] {DataFlavor.javaFileListFlavor, PictureIntake.OWN};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return List.of(getTransferDataFlavors()).contains(flavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
            if (flavor.equals(DataFlavor.javaFileListFlavor)) {
                return files;
            }
            if (flavor.equals(PictureIntake.OWN)) {
                return this;
            }
            if (flavor.equals(DataFlavor.imageFlavor) && image.isPresent()) {
                return image.get();
            }
            throw new UnsupportedFlavorException(flavor);
        }
    }
}
