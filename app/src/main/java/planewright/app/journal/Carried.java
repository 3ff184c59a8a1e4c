package planewright.app.journal;

import java.util.stream.DoubleStream;
import planewright.api.journal.Entry;
import planewright.api.journal.Planform;
import planewright.shared.planform.Outlines;

/** What of a build still is as it was carried over from another, and so says nothing that was not known before. */
public final class Carried {
    /** Far below what anybody builds to, and far above what is lost in writing numbers down; against the span. Chosen. */
    private static final double ALIKE = 1e-4;

    private Carried() {}

    /** Whether the values of an entry were carried over. */
    public static boolean isIn(Entry entry) {
        return entry.tags().contains(CarryOver.TAG);
    }

    /** Whether a build's planform is that of the build it was begun from, at any size; no where that one is gone. */
    public static boolean isShapeOf(OpenJournal journal, BuildRecord build) {
        return build.planform()
                .flatMap(shape -> build.begunFrom()
                        .flatMap(proven -> journal.build(proven.build()))
                        .flatMap(BuildRecord::planform)
                        .filter(proven -> isSimilar(shape, proven)))
                .isPresent();
    }

    private static boolean isSimilar(Planform one, Planform other) {
        var these = numbers(one);
        var those = numbers(other);
        if (these.length != those.length) {
            return false;
        }
        for (int i = 0; i < these.length; i++) {
            if (!(Math.abs(these[i] - those[i]) <= ALIKE)) {
                return false;
            }
        }
        return true;
    }

    /** Its angles, and its lengths against the span. */
    private static double[] numbers(Planform shape) {
        double span = Outlines.span(shape);
        return DoubleStream.concat(
                        shape.surfaces().stream().flatMapToDouble(surface -> surface(surface, span)),
                        shape.bodies().stream()
                                .flatMap(body -> body.sections().stream())
                                .flatMapToDouble(
                                        each -> DoubleStream.of(each.x(), each.width(), each.top(), each.bottom())
                                                .map(length -> length / span)))
                .toArray();
    }

    private static DoubleStream surface(Planform.Surface surface, double span) {
        return DoubleStream.concat(
                DoubleStream.of(surface.x() / span, surface.y() / span, surface.z() / span),
                surface.panels().stream()
                        .flatMapToDouble(panel -> DoubleStream.of(
                                panel.rootChord() / span,
                                panel.tipChord() / span,
                                panel.span() / span,
                                panel.sweep(),
                                panel.dihedral(),
                                panel.twist())));
    }
}
