package planewright.app.ui.pictures;

import java.awt.Dimension;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import planewright.api.figure.Point;
import planewright.app.ui.common.Fitted;

/**
 * How a picture lies in its view.
 *
 * @param picture its size in pixels, not turned
 * @param turns quarters of a turn to the right
 * @param scale pixels of the view for one of the picture
 * @param x of the turned picture's left edge in the view
 * @param y of its upper edge
 */
record Viewing(Dimension picture, int turns, double scale, double x, double y) {
    private static final double MOST = 40;
    private static final double LEAST_EDGE = 32;

    /** The whole picture in the middle of the view, no larger than {@code largest}. */
    static Viewing fit(Dimension picture, int turns, Dimension view, double largest) {
        var upright = new Viewing(picture, turns, 1, 0, 0);
        double scale = Math.min(
                largest, Math.min(view.getWidth() / upright.turnedWidth(), view.getHeight() / upright.turnedHeight()));
        return upright.scaled(Math.max(scale, 1e-4)).centred(new Point(0.5, 0.5), view);
    }

    double turnedWidth() {
        return (turns % 2 == 0 ? picture.getWidth() : picture.getHeight()) * scale;
    }

    double turnedHeight() {
        return (turns % 2 == 0 ? picture.getHeight() : picture.getWidth()) * scale;
    }

    private Viewing scaled(double changed) {
        return new Viewing(picture, turns, changed, x, y);
    }

    Viewing moved(double right, double down) {
        return new Viewing(picture, turns, scale, x + right, y + down);
    }

    /** What lies at a point of the view stays there. */
    Viewing zoomedTo(double wanted, double atX, double atY) {
        double least = LEAST_EDGE / Math.max(picture.getWidth(), picture.getHeight());
        double changed = Math.max(least, Math.min(MOST, wanted));
        double factor = changed / scale;
        return new Viewing(picture, turns, changed, atX + (x - atX) * factor, atY + (y - atY) * factor);
    }

    /** A picture that is smaller than the view is in its middle; a larger one leaves no gap at an edge. */
    Viewing within(Dimension view) {
        return new Viewing(
                picture,
                turns,
                scale,
                inside(x, turnedWidth(), view.getWidth()),
                inside(y, turnedHeight(), view.getHeight()));
    }

    private static double inside(double at, double length, double room) {
        return length <= room ? (room - length) / 2 : Math.max(room - length, Math.min(0, at));
    }

    /** What part of the turned picture is in the middle of the view: 0 to 1 along each side. */
    Point centre(Dimension view) {
        return new Point((view.getWidth() / 2 - x) / turnedWidth(), (view.getHeight() / 2 - y) / turnedHeight());
    }

    /** Brings a part of the turned picture into the middle of the view. */
    Viewing centred(Point part, Dimension view) {
        return new Viewing(
                picture,
                turns,
                scale,
                view.getWidth() / 2 - part.x() * turnedWidth(),
                view.getHeight() / 2 - part.y() * turnedHeight());
    }

    /** From pixels of the picture to those of the view. */
    AffineTransform transform() {
        var transform = new AffineTransform(scale, 0, 0, scale, x, y);
        transform.concatenate(Fitted.turn(turns, picture.getWidth(), picture.getHeight()));
        return transform;
    }

    Point toView(Point inPicture) {
        var at = transform().transform(new Point2D.Double(inPicture.x(), inPicture.y()), null);
        return new Point(at.getX(), at.getY());
    }

    Point toPicture(double viewX, double viewY) {
        try {
            var at = transform().inverseTransform(new Point2D.Double(viewX, viewY), null);
            return new Point(at.getX(), at.getY());
        } catch (NoninvertibleTransformException impossible) {
            throw new IllegalStateException("a view of no size", impossible);
        }
    }

    boolean isOn(Point inPicture) {
        return inPicture.x() >= 0
                && inPicture.y() >= 0
                && inPicture.x() <= picture.getWidth()
                && inPicture.y() <= picture.getHeight();
    }
}
