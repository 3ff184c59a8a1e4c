package planewright.app.ui.log;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import planewright.app.exchange.SeenPictures.Seen;
import planewright.app.pictures.PictureShelf;
import planewright.app.ui.common.Fitted;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.Workroom;

/** A picture that may come in, in small, with a tick; it is read when it is first to be seen. */
final class PickTile extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int TALL = 90;
    private static final int WIDE = 120;

    private final transient Seen seen;
    private final JCheckBox tick;

    /**
     * @param changed hears when it is ticked or not
     */
    PickTile(Workroom room, Seen seen, Runnable changed) {
        super(new BorderLayout());
        this.seen = seen;
        setOpaque(false);
        tick = new JCheckBox(Times.clock(seen.at(), seen.at().toLocalDate()), true);
        tick.setName("pick-" + seen.name());
        tick.setOpaque(false);
        tick.setToolTipText(seen.name());
        tick.getAccessibleContext().setAccessibleName(seen.name() + ", " + tick.getText());
        tick.addItemListener(event -> changed.run());
        add(new Small(room));
        add(tick, BorderLayout.PAGE_END);
    }

    Seen seen() {
        return seen;
    }

    boolean isPicked() {
        return tick.isSelected();
    }

    void pick(boolean picked) {
        tick.setSelected(picked);
    }

    private final class Small extends JComponent {
        private static final long serialVersionUID = 1L;

        private final transient Workroom room;
        private transient BufferedImage image;
        private boolean asked;

        Small(Workroom room) {
            this.room = room;
            setPreferredSize(new Dimension(WIDE, TALL));
            setToolTipText(seen.name());
            addMouseListener(new MouseAdapter() {
                @Override
                public void mousePressed(MouseEvent event) {
                    tick.doClick(0);
                }
            });
        }

        @Override
        protected void paintComponent(Graphics g) {
            if (!asked) {
                asked = true;
                int edge = (int) Math.ceil(WIDE * Fitted.density());
                room.background().run(() -> PictureShelf.view(seen.file(), edge), this::show);
            }
            if (image == null) {
                g.setColor(Look.colour("line"));
                g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
            } else {
                double scale =
                        Math.min((double) getWidth() / image.getWidth(), (double) getHeight() / image.getHeight());
                int w = (int) (image.getWidth() * scale);
                int h = (int) (image.getHeight() * scale);
                g.drawImage(image, (getWidth() - w) / 2, (getHeight() - h) / 2, w, h, null);
            }
        }

        private void show(BufferedImage read) {
            image = read;
            repaint();
        }
    }
}
