package planewright.app.ui.planform;

import java.util.ArrayList;
import java.util.List;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Control;
import planewright.api.journal.Planform.Surface;
import planewright.shared.planform.Place;
import planewright.shared.planform.Shaping;

/**
 * A point of a surface that can be taken hold of.
 *
 * @param surface which surface, from 0
 * @param part what it moves
 * @param number which section or control surface, from 0
 */
record Handle(int surface, Part part, int number) {
    /** The least that a control surface keeps of its surface, and of the chord. */
    private static final double LEAST = 0.01;

    /** What a handle moves. */
    enum Part {
        /** The leading edge of a section; that of the root takes the surface along. */
        EDGE,
        /** The end of a section's chord. */
        CHORD,
        /** Where a control surface begins. */
        FROM,
        /** Where it ends. */
        TO,
        /** Its hinge at its begin; at its end too while both are alike. */
        HINGE,
        /** Its hinge at its end. */
        HINGE_TO;

        boolean isOfControl() {
            return this != EDGE && this != CHORD;
        }
    }

    /** Those of a surface, in the order in which one goes through them. */
    static List<Handle> of(Planform planform, int surface) {
        var handles = new ArrayList<Handle>();
        var shown = planform.surfaces().get(surface);
        for (int i = 0; i <= shown.panels().size(); i++) {
            handles.add(new Handle(surface, Part.EDGE, i));
            handles.add(new Handle(surface, Part.CHORD, i));
        }
        for (int i = 0; i < shown.controls().size(); i++) {
            handles.add(new Handle(surface, Part.FROM, i));
            handles.add(new Handle(surface, Part.TO, i));
            handles.add(new Handle(surface, Part.HINGE, i));
            handles.add(new Handle(surface, Part.HINGE_TO, i));
        }
        return handles;
    }

    /** Whether a shape has it still. */
    boolean isIn(Planform planform) {
        return surface < planform.surfaces().size() && of(planform, surface).contains(this);
    }

    /** Where it is. */
    Place place(Planform planform) {
        var on = planform.surfaces().get(surface);
        if (!part.isOfControl()) {
            var station = Shaping.stations(on).get(number);
            var edge = station.edge();
            return part == Part.EDGE ? edge : new Place(edge.x() + station.chord(), edge.y(), edge.z());
        }
        var control = on.controls().get(number);
        return switch (part) {
            case FROM -> Shaping.place(on, control.from(), (1 + control.hinge()) / 2);
            case TO -> Shaping.place(on, control.to(), (1 + control.hingeTo()) / 2);
            case HINGE -> Shaping.place(on, control.from(), control.hinge());
            default -> Shaping.place(on, control.to(), control.hingeTo());
        };
    }

    /**
     * The shape with the handle as near to a point as it can be.
     *
     * @param across station across the drawing, m
     * @param x station, m
     * @param snap steps to which stations are rounded, m; 0 for none. Shares are rounded to whole percent where it is above 0
     */
    Planform moved(Planform planform, Sight sight, double across, double x, double snap) {
        var on = planform.surfaces().get(surface);
        var changed = part.isOfControl() ? hinged(on, sight, across, x, snap) : section(on, sight, across, x, snap);
        return Shaping.surface(planform, surface, changed);
    }

    /**
     * The shape with the handle some steps further, as by keys.
     *
     * @param across steps across the drawing
     * @param aft steps aft
     * @param step of a length, m; that of a share is one percent
     */
    Planform stepped(Planform planform, Sight sight, int across, int aft, double step) {
        var on = planform.surfaces().get(surface);
        if (part.isOfControl()) {
            var control = on.controls().get(number);
            double by = LEAST * (part == Part.FROM || part == Part.TO ? across : aft);
            return Shaping.surface(planform, surface, with(on, shared(control, by)));
        }
        var place = place(planform);
        return moved(planform, sight, sight.across(place) + across * step, place.x() + aft * step, step);
    }

    private Surface section(Surface on, Sight sight, double across, double x, double snap) {
        var edge = Shaping.stations(on).get(number).edge();
        if (part == Part.CHORD) {
            return Shaping.chord(on, number, Math.max(0, rounded(x, snap) - edge.x()));
        }
        var moved = number == 0 || rounded(across, snap) == rounded(sight.across(edge), snap)
                ? on
                : Shaping.along(on, number, sight.alongEnd(on, number - 1, rounded(across, snap)));
        return Shaping.edge(moved, number, rounded(x, snap));
    }

    private Surface hinged(Surface on, Sight sight, double across, double x, double snap) {
        var control = on.controls().get(number);
        if (part == Part.FROM || part == Part.TO) {
            double whole = Shaping.stations(on).get(on.panels().size()).along();
            double share = percent(sight.along(on, across) / whole, snap);
            return with(on, shared(control, share - (part == Part.FROM ? control.from() : control.to())));
        }
        double along = part == Part.HINGE ? control.from() : control.to();
        double front = Shaping.place(on, along, 0).x();
        double back = Shaping.place(on, along, 1).x();
        if (!(back > front)) {
            return on;
        }
        double share = percent((x - front) / (back - front), snap);
        return with(on, shared(control, share - (part == Part.HINGE ? control.hinge() : control.hingeTo())));
    }

    /** The control surface with this handle's share greater, as far as it goes. */
    private Control shared(Control control, double by) {
        return switch (part) {
            case FROM -> control(control, limited(control.from() + by, 0, control.to() - LEAST), control.to());
            case TO -> control(control, control.from(), limited(control.to() + by, control.from() + LEAST, 1));
            case HINGE -> {
                double hinge = limited(control.hinge() + by, 0, 1 - LEAST);
                yield hinges(control, hinge, control.hinge() == control.hingeTo() ? hinge : control.hingeTo());
            }
            default -> hinges(control, control.hinge(), limited(control.hingeTo() + by, 0, 1 - LEAST));
        };
    }

    private Surface with(Surface on, Control changed) {
        return Shaping.controls(on, Shaping.replaced(on.controls(), number, changed));
    }

    private static Control control(Control old, double from, double to) {
        return new Control(old.name(), old.role(), from, to, old.hinge(), old.hingeTo());
    }

    private static Control hinges(Control old, double hinge, double hingeTo) {
        return new Control(old.name(), old.role(), old.from(), old.to(), hinge, hingeTo);
    }

    /** To a millionth, so that a share of whole percent stays one. */
    private static double limited(double share, double least, double most) {
        return Math.rint(Math.max(least, Math.min(most, share)) * 1e6) / 1e6;
    }

    private static double rounded(double length, double snap) {
        return snap > 0 ? Math.rint(length / snap) * snap : length;
    }

    private static double percent(double share, double snap) {
        return snap > 0 ? Math.rint(share * 100) / 100 : share;
    }
}
