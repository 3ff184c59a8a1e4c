package planewright.app.ui.planform;

import java.util.List;
import java.util.Optional;
import planewright.api.journal.Planform;

/** What lies under the pointer. */
final class Hit {
    private Hit() {}

    /** The surface at a pixel; the smallest as seen, where several are. */
    static Optional<Integer> surface(Planform shape, Sight sight, Ground ground, double x, double y) {
        Integer found = null;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < shape.surfaces().size(); i++) {
            var alone = new Planform(List.of(shape.surfaces().get(i)), List.of());
            for (var placed : ground.outlines(alone, sight)) {
                double size =
                        placed.getBounds2D().getWidth() * placed.getBounds2D().getHeight();
                if (placed.contains(x, y) && size < least) {
                    found = i;
                    least = size;
                }
            }
        }
        return Optional.ofNullable(found);
    }
}
