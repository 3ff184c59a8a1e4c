package planewright.app.pictures;

import planewright.api.figure.Point;

/**
 * A point that somebody has marked on a picture.
 *
 * @param at in pixels of the picture as it is seen upright, x to the right, y down
 * @param spread how well it was pointed at: one standard uncertainty along each axis, in pixels; above 0
 */
public record PictureMark(Point at, double spread) {
    public PictureMark {
        if (!(spread > 0) || Double.isInfinite(spread)) {
            throw new IllegalArgumentException("a mark is true to " + spread + " px; accepted: above 0 px");
        }
    }

    /** In pixels. */
    public double distanceTo(PictureMark other) {
        return Math.hypot(other.at.x() - at.x(), other.at.y() - at.y());
    }
}
