package planewright.app.ui.common;

import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;

/** Pictures in the size and kind in which the screen draws them without further work, so that little is kept of each. */
public final class Fitted {
    private Fitted() {}

    /** So many pixels of the screen are one of ours, along each side. */
    public static double density() {
        return GraphicsEnvironment.getLocalGraphicsEnvironment()
                .getDefaultScreenDevice()
                .getDefaultConfiguration()
                .getDefaultTransform()
                .getScaleX();
    }

    /** Takes points of a picture to where they lie once it is turned by quarters to the right; the upper left corner is 0, 0 again. */
    public static AffineTransform turn(int quarters, double width, double height) {
        return switch (Math.floorMod(quarters, 4)) {
            case 1 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 2 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 3 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }

    /** A picture turned by quarters to the right, as large as both sides allow; not on the event thread. */
    public static BufferedImage within(BufferedImage picture, int quarters, double width, double height) {
        boolean across = Math.floorMod(quarters, 2) == 1;
        double w = across ? picture.getHeight() : picture.getWidth();
        double h = across ? picture.getWidth() : picture.getHeight();
        double scale = Math.min(width / w, height / h);
        var image = new BufferedImage(
                Math.max(1, (int) (w * scale)), Math.max(1, (int) (h * scale)), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        var place = AffineTransform.getScaleInstance(image.getWidth() / w, image.getHeight() / h);
        place.concatenate(turn(quarters, picture.getWidth(), picture.getHeight()));
        g.drawImage(picture, place, null);
        g.dispose();
        return image;
    }
}
