package planewright.app.figure;

import java.util.stream.Stream;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;

/** The points a shape must have room for. */
final class Corners {
    private Corners() {}

    static Stream<Point> of(Drawing.Shape shape) {
        if (shape instanceof Drawing.Path path) {
            return path.points().stream();
        } else if (shape instanceof Drawing.Disc disc) {
            double r = disc.radius();
            return Stream.of(
                    new Point(disc.centre().x() - r, disc.centre().y() - r),
                    new Point(disc.centre().x() + r, disc.centre().y() + r));
        } else if (shape instanceof Drawing.Mark mark) {
            return Stream.of(mark.at());
        } else if (shape instanceof Drawing.Dimension dimension) {
            return Stream.of(dimension.from(), dimension.to());
        }
        return Stream.of(((Drawing.Note) shape).at());
    }
}
