package planewright.samples.studio;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;

/** Flat pictures drawn in millimetres about their middle, y up: what is printed or drawn on a surface. */
public final class Drawn {
    private Drawn() {}

    /** A see-through sheet of this size in mm with so many dots a mm. */
    public static BufferedImage sheet(double width, double height, double dots, Consumer<Graphics2D> drawing) {
        var image = new BufferedImage(
                (int) Math.round(width * dots), (int) Math.round(height * dots), BufferedImage.TYPE_INT_ARGB);
        onto(image, dots, drawing);
        return image;
    }

    /** Draws in mm about the middle of a picture. */
    public static void onto(BufferedImage image, double dots, Consumer<Graphics2D> drawing) {
        var g = image.createGraphics();
        smooth(g);
        g.translate(image.getWidth() / 2.0, image.getHeight() / 2.0);
        g.scale(dots, -dots);
        drawing.accept(g);
        g.dispose();
    }

    public static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    }
}
