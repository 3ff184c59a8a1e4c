package planewright.app.ui.common;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.PictureRecord;
import planewright.app.pictures.PictureShelf;

/** A picture as large as the window allows, with its caption. Escape closes it. */
final class PictureView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int LARGEST = 1600;

    private transient BufferedImage image;

    private PictureView() {
        setOpaque(false);
    }

    static void show(Component over, Workroom room, PictureRecord picture) {
        var owner = SwingUtilities.getWindowAncestor(over);
        var dialog = new JDialog(owner, picture.caption());
        dialog.setName("picture");
        dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
        var view = new PictureView();
        view.getAccessibleContext().setAccessibleName(Texts.PICTURE.text(picture.caption()));
        var content = new JPanel(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill][]"));
        content.add(view, "wrap");
        if (!picture.caption().isEmpty()) {
            var caption = Look.sized(new javax.swing.JLabel(picture.caption()), 1, java.awt.Font.PLAIN);
            caption.setBorder(BorderFactory.createEmptyBorder(8, 12, 10, 12));
            content.add(caption);
        }
        dialog.setContentPane(content);
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> dialog.dispose(),
                        KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
                        JComponent.WHEN_IN_FOCUSED_WINDOW);
        var around = owner.getSize();
        dialog.setSize(new Dimension(around.width * 4 / 5, around.height * 4 / 5));
        dialog.setLocationRelativeTo(owner);
        dialog.setVisible(true);
        room.background().run(() -> PictureShelf.view(room.program().pictures().file(picture), LARGEST), read -> {
            view.image = read;
            view.repaint();
        });
    }

    @Override
    protected void paintComponent(Graphics g) {
        if (image == null) {
            return;
        }
        var own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        double scale = Math.min((double) getWidth() / image.getWidth(), (double) getHeight() / image.getHeight());
        int width = (int) (image.getWidth() * scale);
        int height = (int) (image.getHeight() * scale);
        own.drawImage(image, (getWidth() - width) / 2, (getHeight() - height) / 2, width, height, null);
        own.dispose();
    }
}
