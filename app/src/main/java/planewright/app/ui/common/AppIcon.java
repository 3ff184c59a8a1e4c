package planewright.app.ui.common;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.Taskbar;
import java.awt.Window;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;

/** The program's own sign: an aircraft from above on a rounded ground. Drawn anew for each size, so that it is sharp in all. */
public final class AppIcon {
    private static final int[] SIZES = {16, 20, 24, 32, 40, 48, 64, 128, 256};
    private static final Color GROUND = new Color(0x2f6f73);
    private static final Color AIRCRAFT = new Color(0xfffdf9);
    private static final double ROUND = 0.22;

    /** The right half in hundredths of the sign's edge, from the nose round to the tail. */
    private static final double[][] HALF = {
        {50, 14}, {54, 20}, {56, 34}, {90, 58}, {90, 66}, {56, 56}, {54, 76}, {64, 82}, {64, 87}, {50, 85}
    };

    private AppIcon() {}

    /** In all sizes that systems ask for; may be called on any thread. */
    public static List<Image> images() {
        return IntStream.of(SIZES).<Image>mapToObj(AppIcon::image).toList();
    }

    /** Square, with an edge of that many pixels. */
    public static BufferedImage image(int edge) {
        var image = new BufferedImage(edge, edge, BufferedImage.TYPE_INT_ARGB);
        var g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        draw(g, edge);
        g.dispose();
        return image;
    }

    /** On a window, and where the system shows programs. */
    public static void putOn(Window window, List<Image> images) {
        window.setIconImages(images);
        if (Taskbar.isTaskbarSupported() && Taskbar.getTaskbar().isSupported(Taskbar.Feature.ICON_IMAGE)) {
            Taskbar.getTaskbar().setIconImage(images.get(images.size() - 1));
        }
    }

    private static void draw(Graphics2D g, int edge) {
        g.setColor(GROUND);
        g.fill(new RoundRectangle2D.Double(0, 0, edge, edge, edge * ROUND * 2, edge * ROUND * 2));
        g.setColor(AIRCRAFT);
        var half = new Path2D.Double();
        half.moveTo(HALF[0][0], HALF[0][1]);
        for (var point : HALF) {
            half.lineTo(point[0], point[1]);
        }
        half.closePath();
        var right = AffineTransform.getScaleInstance(edge / 100.0, edge / 100.0);
        g.fill(right.createTransformedShape(half));
        right.concatenate(new AffineTransform(-1, 0, 0, 1, 100, 0));
        g.fill(right.createTransformedShape(half));
    }
}
