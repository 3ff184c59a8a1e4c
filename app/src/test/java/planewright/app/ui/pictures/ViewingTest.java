package planewright.app.ui.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Dimension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.api.figure.Point;

/** A picture in its view: corners go where a turn by hand puts them, and what is under the pointer stays there. */
class ViewingTest {
    private static final Dimension PICTURE = new Dimension(400, 300);
    private static final Dimension VIEW = new Dimension(800, 800);

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void theCornersOfATurnedPictureLieWhereTheHandPutsThem(int turns) {
        var viewing = Viewing.fit(PICTURE, turns, VIEW, 10);
        assertThat(viewing.scale()).isEqualTo(2, within(1e-12));
        var upperLeft = viewing.toView(new Point(0, 0));
        var wanted = switch (turns) {
            case 1 -> new Point(700, 0);
            case 2 -> new Point(800, 700);
            case 3 -> new Point(100, 800);
            default -> new Point(0, 100);
        };
        assertThat(upperLeft.x()).isEqualTo(wanted.x(), within(1e-9));
        assertThat(upperLeft.y()).isEqualTo(wanted.y(), within(1e-9));
        var back = viewing.toPicture(upperLeft.x(), upperLeft.y());
        assertThat(back.x()).isEqualTo(0, within(1e-9));
        assertThat(back.y()).isEqualTo(0, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.5, 1, 3, 1e9})
    void whatIsUnderThePointerStaysThere(double scale) {
        var before = Viewing.fit(PICTURE, 1, VIEW, 10);
        var after = before.zoomedTo(scale, 333, 222);
        assertThat(after.scale()).isBetween(0.05, 40.0);
        assertThat(after.toPicture(333, 222).x())
                .isEqualTo(before.toPicture(333, 222).x(), within(1e-6));
        assertThat(after.toPicture(333, 222).y())
                .isEqualTo(before.toPicture(333, 222).y(), within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 2, 9})
    void noGapIsLeftAtAnEdgeAndASmallOneIsInTheMiddle(double scale) {
        var moved = Viewing.fit(PICTURE, 0, VIEW, 10)
                .zoomedTo(scale, 400, 400)
                .moved(1e5, -1e5)
                .within(VIEW);
        if (scale * 400 <= 800) {
            assertThat(moved.centre(VIEW).x()).isEqualTo(0.5, within(1e-9));
        } else {
            assertThat(moved.x()).isZero();
            assertThat(moved.y() + moved.turnedHeight()).isEqualTo(800, within(1e-6));
        }
    }
}
