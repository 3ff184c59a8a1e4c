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

/** The program's own sign: a tailless aircraft from above on a rounded ground. Drawn anew for each size, so that it is sharp in all. */
public final class AppIcon {
    private static final int[] SIZES = {16, 20, 24, 32, 40, 48, 64, 128, 256};
    private static final Color GROUND = new Color(0x2f6f73);
    private static final Color AIRCRAFT = new Color(0xfffdf9);
    private static final Color CONTROLS = new Color(0xe39a63);
    private static final double ROUND = 0.22;

    /** The right half in hundredths of the sign's edge: a pod and a swept wing, from the nose round to the tail. */
    private static final double[][] HALF = {
        {50, 19}, {54, 22}, {57, 30}, {58, 40}, {94, 66}, {94, 80}, {57, 68}, {55, 77}, {50, 80}
    };

    private static final double[][] ELEVON = {{61, 63}, {61, 69.3}, {90, 78.7}, {90, 72}};

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
        fillBothSides(g, edge, HALF);
        g.setColor(CONTROLS);
        fillBothSides(g, edge, ELEVON);
    }

    private static void fillBothSides(Graphics2D g, int edge, double[][] points) {
        var half = new Path2D.Double();
        half.moveTo(points[0][0], points[0][1]);
        for (var point : points) {
            half.lineTo(point[0], point[1]);
        }
        half.closePath();
        var side = AffineTransform.getScaleInstance(edge / 100.0, edge / 100.0);
        g.fill(side.createTransformedShape(half));
        side.concatenate(new AffineTransform(-1, 0, 0, 1, 100, 0));
        g.fill(side.createTransformedShape(half));
    }
}
