package planewright.benchmark;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.EventQueue;
import java.awt.Graphics;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.WindowConstants;

/** The yardstick: an empty window of the same size and look and feel. Says {@code painted} after its first paint. */
public final class EmptyWindow {
    private static final int WIDTH = 1360;
    private static final int HEIGHT = 860;

    private EmptyWindow() {}

    /**
     * Shows the window.
     *
     * @param words {@code once} closes it after its first paint
     */
    public static void main(String[] words) {
        boolean once = words.length > 0 && words[0].equals("once");
        EventQueue.invokeLater(() -> {
            FlatLightLaf.setup();
            var frame = new JFrame("Empty");
            frame.setSize(WIDTH, HEIGHT);
            frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
            frame.setContentPane(new FirstPaint(() -> {
                System.out.println("painted");
                if (once) {
                    frame.dispose();
                }
            }));
            frame.setVisible(true);
        });
    }

    private static final class FirstPaint extends JPanel {
        private static final long serialVersionUID = 1L;

        private final transient Runnable painted;
        private boolean done;

        FirstPaint(Runnable painted) {
            this.painted = painted;
        }

        @Override
        public void paint(Graphics g) {
            super.paint(g);
            if (!done) {
                done = true;
                EventQueue.invokeLater(painted);
            }
        }
    }
}
