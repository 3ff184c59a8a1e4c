package planewright.app.ui.common;

import java.awt.Image;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.InputEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.TransferHandler;

/** Takes dropped and pasted pictures; what else was possible with the component stays so. */
public final class PictureIntake extends TransferHandler {
    private static final long serialVersionUID = 1L;

    /** Borne by what is dragged out of the journal, so that it is not taken in where it came from. */
    public static final DataFlavor OWN = new DataFlavor(
            DataFlavor.javaJVMLocalObjectMimeType + ";class=" + PictureIntake.class.getName(),
            "pictures of the journal");

    private final TransferHandler before;
    private final transient Consumer<List<Path>> files;
    private final transient Consumer<BufferedImage> pasted;

    private PictureIntake(TransferHandler before, Consumer<List<Path>> files, Consumer<BufferedImage> pasted) {
        this.before = before;
        this.files = files;
        this.pasted = pasted;
    }

    /**
     * From now on the component takes pictures.
     *
     * @param files gets files, whatever they hold
     * @param pasted gets a picture that comes from no file
     */
    public static void on(JComponent component, Consumer<List<Path>> files, Consumer<BufferedImage> pasted) {
        component.setTransferHandler(new PictureIntake(component.getTransferHandler(), files, pasted));
    }

    @Override
    public boolean canImport(TransferSupport support) {
        if (support.isDrop() && support.isDataFlavorSupported(OWN)) {
            return false;
        }
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
                || support.isDataFlavorSupported(DataFlavor.imageFlavor)
                || before != null && before.canImport(support);
    }

    @Override
    public boolean importData(TransferSupport support) {
        try {
            var data = support.getTransferable();
            if (support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
                files.accept(((List<?>) data.getTransferData(DataFlavor.javaFileListFlavor))
                        .stream().map(file -> ((File) file).toPath()).toList());
                return true;
            }
            if (support.isDataFlavorSupported(DataFlavor.imageFlavor)) {
                pasted.accept(drawn((Image) data.getTransferData(DataFlavor.imageFlavor)));
                return true;
            }
        } catch (UnsupportedFlavorException | IOException gone) {
            return false;
        }
        return before != null && before.importData(support);
    }

    @Override
    public int getSourceActions(JComponent component) {
        return before == null ? NONE : before.getSourceActions(component);
    }

    @Override
    public void exportAsDrag(JComponent component, InputEvent event, int action) {
        if (before != null) {
            before.exportAsDrag(component, event, action);
        }
    }

    @Override
    public void exportToClipboard(JComponent component, Clipboard clipboard, int action) {
        if (before != null) {
            before.exportToClipboard(component, clipboard, action);
        }
    }

    private static BufferedImage drawn(Image image) {
        if (image instanceof BufferedImage buffered) {
            return buffered;
        }
        var copy = new BufferedImage(image.getWidth(null), image.getHeight(null), BufferedImage.TYPE_INT_RGB);
        var graphics = copy.createGraphics();
        graphics.drawImage(image, 0, 0, null);
        graphics.dispose();
        return copy;
    }
}
