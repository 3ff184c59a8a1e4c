package planewright.shared.planform;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import planewright.api.journal.Planform;
import planewright.shared.curve.SmoothLine;

/** Sections of a body with others between them, on smooth lines through their widths, tops and bottoms. */
final class SmoothSections {
    private static final int STEPS = 8;

    /** Sections nearer to each other than this have no slope between them, m. */
    private static final double CLOSEST = 1e-6;

    private SmoothSections() {}

    /** The sections with others between them; as they are where they are two, or do not run from nose to tail. */
    static List<Planform.Section> through(List<Planform.Section> sections) {
        if (sections.size() < 3 || !runAft(sections)) {
            return sections;
        }
        var width = line(sections, Planform.Section::width);
        var top = line(sections, Planform.Section::top);
        var bottom = line(sections, Planform.Section::bottom);
        var all = new ArrayList<Planform.Section>();
        for (int i = 0; i + 1 < sections.size(); i++) {
            all.add(sections.get(i));
            double from = sections.get(i).x();
            double piece = sections.get(i + 1).x() - from;
            for (int step = 1; step < STEPS; step++) {
                double x = from + piece * step / STEPS;
                all.add(new Planform.Section(x, width.at(x), top.at(x), bottom.at(x)));
            }
        }
        all.add(sections.get(sections.size() - 1));
        return all;
    }

    private static boolean runAft(List<Planform.Section> sections) {
        for (int i = 1; i < sections.size(); i++) {
            if (!(sections.get(i).x() - sections.get(i - 1).x() > CLOSEST)) {
                return false;
            }
        }
        return true;
    }

    private static SmoothLine line(List<Planform.Section> sections, ToDoubleFunction<Planform.Section> value) {
        return SmoothLine.through(
                sections.stream().mapToDouble(Planform.Section::x).toArray(),
                sections.stream().mapToDouble(value).toArray());
    }
}
