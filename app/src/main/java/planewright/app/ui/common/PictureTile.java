package planewright.app.ui.common;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import javax.swing.JPanel;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.PictureRecord;
import planewright.app.pictures.ThumbnailSize;

/** A picture in small; read in the background, a frame until it is there. A click shows it large. */
public final class PictureTile extends JPanel {
    private static final long serialVersionUID = 1L;
    private final int height;
    private transient BufferedImage image;

    /** A click shows it among the pictures of the build that is shown, or alone where it is not among them. */
    public static PictureTile of(Workroom room, PictureRecord picture, int height) {
        return new PictureTile(room, picture, height, () -> room.showPicture(picture));
    }

    /** A click shows it among the pictures of its build. */
    public static PictureTile of(Workroom room, EntryRecord entry, PictureRecord picture, int height) {
        return new PictureTile(room, picture, height, () -> room.showPicture(entry.build(), entry.id(), picture));
    }

    /** A click does what is given. */
    public static PictureTile of(Workroom room, PictureRecord picture, int height, Runnable open) {
        return new PictureTile(room, picture, height, open);
    }

    private PictureTile(Workroom room, PictureRecord picture, int height, Runnable open) {
        this.height = height;
        double pixels = Fitted.density() * height;
        var size = ThumbnailSize.filling((int) (pixels * 4 / 3));
        setOpaque(false);
        setPreferredSize(new Dimension(height * 4 / 3, height));
        setToolTipText(picture.caption().isEmpty() ? null : picture.caption());
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        getAccessibleContext()
                .setAccessibleName(Texts.PICTURE.text(picture.caption().isEmpty() ? "" : picture.caption()));
        room.background()
                .run(
                        () -> {
                            var thumbnail = room.program().pictures().thumbnail(picture, size);
                            return Fitted.within(
                                    thumbnail, 0, thumbnail.getWidth(), Math.min(pixels, thumbnail.getHeight()));
                        },
                        this::show,
                        missing -> setToolTipText(missing.getLocalizedMessage()));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                open.run();
            }
        });
    }

    /** Whether the picture is there; for tests. */
    public boolean isShown() {
        return image != null;
    }

    private void show(BufferedImage read) {
        image = read;
        setPreferredSize(new Dimension(Math.max(24, height * read.getWidth() / read.getHeight()), height));
        revalidate();
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        var own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        own.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
        if (image == null) {
            own.setColor(Look.colour("line"));
            own.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        } else {
            double scale = Math.min((double) getWidth() / image.getWidth(), (double) getHeight() / image.getHeight());
            own.drawImage(image, 0, 0, (int) (image.getWidth() * scale), (int) (image.getHeight() * scale), null);
        }
        own.dispose();
    }
}
