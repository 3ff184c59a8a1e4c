package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Point;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.image.BufferedImage;
import java.io.File;
import java.util.Arrays;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.TransferHandler;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityText;

/** Pictures for a new journal, and what a builder does with them on their page. */
abstract class WithPictures extends InNewJournal {
    static final int WIDTH = 400;
    static final int HEIGHT = 300;
    static final Color FIRST = new Color(200, 30, 30);
    static final Color SECOND = new Color(30, 30, 200);

    final File picture(String name, Color colour) throws Exception {
        var image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        var g = image.createGraphics();
        g.setColor(colour);
        g.fillRect(0, 0, WIDTH, HEIGHT);
        g.dispose();
        var file = folder.resolve(name).toFile();
        ImageIO.write(image, "png", file);
        return file;
    }

    static JComponent grid() {
        return Hands.find(JComponent.class, "picture-grid");
    }

    /** What another program lets fall on the page. */
    static void drop(File... files) {
        var dropped = new Transferable() {
            @Override
            public DataFlavor[] getTransferDataFlavors() {
                return new DataFlavor[] {DataFlavor.javaFileListFlavor};
            }

            @Override
            public boolean isDataFlavorSupported(DataFlavor flavor) {
                return flavor.equals(DataFlavor.javaFileListFlavor);
            }

            @Override
            public Object getTransferData(DataFlavor flavor) {
                return Arrays.asList(files);
            }
        };
        var grid = grid();
        assertThat(Hands.onEventThread(
                        () -> grid.getTransferHandler().importData(new TransferHandler.TransferSupport(grid, dropped))))
                .isTrue();
    }

    static void count(String words) {
        Hands.find(javax.swing.JLabel.class, "that counts '" + words + "'", label -> words.equals(label.getText()));
    }

    /** Waits until a colour fills more than a few pixels of a component. */
    static void seeColour(JComponent component, Color colour) {
        Hands.waitUntil("the colour " + colour, () -> {
            var image = new BufferedImage(
                    Math.max(1, component.getWidth()), Math.max(1, component.getHeight()), BufferedImage.TYPE_INT_RGB);
            var g = image.createGraphics();
            component.paint(g);
            g.dispose();
            int seen = 0;
            for (int rgb : image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth())) {
                var pixel = new Color(rgb);
                seen += Math.abs(pixel.getRed() - colour.getRed()) < 12
                                && Math.abs(pixel.getBlue() - colour.getBlue()) < 12
                                && Math.abs(pixel.getGreen() - colour.getGreen()) < 12
                        ? 1
                        : 0;
            }
            return seen > 1000;
        });
    }

    /** Where a pixel of the picture is, fitted into the middle of its view. */
    static Point at(JComponent view, int x, int y) {
        return Hands.onEventThread(() -> {
            double scale = Math.min(2, Math.min((double) view.getWidth() / WIDTH, (double) view.getHeight() / HEIGHT));
            return new Point((int) Math.round((view.getWidth() - WIDTH * scale) / 2 + x * scale), (int)
                    Math.round((view.getHeight() - HEIGHT * scale) / 2 + y * scale));
        });
    }

    static void mark(JComponent view, int x, int y) {
        var at = at(view, x, y);
        Hands.press(view, at.x, at.y);
    }

    static double millimetres(String written) {
        try {
            return QuantityText.in(QuantityText.parse(written, Units.MILLIMETRE).measured(), Units.MILLIMETRE)
                    .value()
                    .getValue()
                    .doubleValue();
        } catch (planewright.shared.quantity.QuantityProblem wrong) {
            throw new AssertionError(wrong);
        }
    }

    static String text(String label) {
        return Hands.all(javax.swing.JLabel.class).stream()
                .filter(each -> label.equals(each.getName()))
                .findFirst()
                .orElseThrow()
                .getText();
    }

    /** Waits until so many labels end in words. */
    static void see(int labels, String words) {
        Hands.waitUntil(
                "'" + words + "'",
                () -> Hands.all(javax.swing.JLabel.class).stream()
                                .filter(label -> label.getText() != null
                                        && label.getText().endsWith(words))
                                .count()
                        == labels);
    }
}
