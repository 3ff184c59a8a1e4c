package planewright.app.ui.planform;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Control;
import planewright.api.journal.Planform.Surface;
import planewright.app.figure.FigureColours;
import planewright.app.ui.common.Texts;
import planewright.shared.lattice.BalanceBand;
import planewright.shared.planform.Place;
import planewright.shared.planform.Shaping;

/** Paints a shape with its handles, its mean chord and where it should balance. */
final class PlanformPicture {
    static final double RADIUS = 4.5;

    private static final int FAINT = 26;
    private static final int CLEAR = 70;
    private static final int HALO = 190;
    private static final double MARK = 9;
    private static final BasicStroke THIN = new BasicStroke(1);
    private static final BasicStroke FINE = new BasicStroke(1.3f);
    private static final BasicStroke WIDE = new BasicStroke(4, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);

    private final Graphics2D g;
    private final Planform shape;
    private final Sight sight;
    private final Ground ground;
    private final FigureColours colours;

    PlanformPicture(Graphics2D g, Planform shape, Sight sight, Ground ground, FigureColours colours) {
        this.g = g;
        this.shape = shape;
        this.sight = sight;
        this.ground = ground;
        this.colours = colours;
        Silhouette.smooth(g);
    }

    /** Surfaces and bodies; the chosen one stands out. */
    void surfaces(int chosen) {
        g.setStroke(THIN);
        outlines(new Planform(List.of(), shape.bodies()), colours.quiet(), FAINT);
        for (int i = 0; i < shape.surfaces().size(); i++) {
            var surface = shape.surfaces().get(i);
            g.setStroke(i == chosen ? FINE : THIN);
            outlines(
                    new Planform(List.of(surface), List.of()),
                    i == chosen ? colours.accent() : colours.quiet(),
                    i == chosen ? CLEAR : FAINT);
            surface.controls().forEach(control -> control(surface, control));
        }
    }

    /** The lines along which the panels of a surface meet. */
    void sections(Surface surface) {
        g.setStroke(THIN);
        g.setColor(colours.faint(colours.accent(), 150));
        for (var station : Shaping.stations(surface)) {
            var edge = station.edge();
            g.draw(new Line2D.Double(
                    ground.at(edge, sight), ground.at(sight.across(edge), edge.x() + station.chord())));
        }
    }

    /** Where it balances now, m aft of the datum. */
    void balancePoint(double x) {
        var at = ground.at(0, x);
        g.setColor(colours.ink());
        g.fill(new Ellipse2D.Double(at.getX() - MARK / 2, at.getY() - MARK / 2, MARK, MARK));
        label(Texts.PLANFORM_BALANCES.text(), at.getX() - MARK, at.getY(), true);
    }

    /** Mean chord, neutral point and range, on the side where it is seen. */
    void balance(BalanceBand band) {
        var wing = band.wing();
        double out = sight == Sight.ABOVE
                ? wing.leadingEdge().y()
                : wing.leadingEdge().z();
        g.setStroke(FINE);
        g.setColor(colours.second());
        var front = ground.at(out, wing.leadingEdge().x());
        var back = ground.at(out, wing.leadingEdge().x() + wing.meanChord());
        g.draw(new Line2D.Double(front, back));
        end(front);
        end(back);
        label(Texts.PLANFORM_MAC.text(), back.getX(), back.getY() + MARK, false);
        g.setStroke(WIDE);
        g.setColor(colours.second());
        g.draw(new Line2D.Double(ground.at(0, band.from()), ground.at(0, band.to())));
        g.setStroke(FINE);
        var neutral = ground.at(0, band.neutral());
        g.draw(new Line2D.Double(neutral.getX() - MARK, neutral.getY(), neutral.getX() + MARK, neutral.getY()));
        g.draw(new Line2D.Double(neutral.getX(), neutral.getY() - MARK / 2, neutral.getX(), neutral.getY() + MARK / 2));
        label(Texts.PLANFORM_NEUTRAL.text(), neutral.getX() + MARK, neutral.getY(), false);
    }

    void handles(List<Handle> handles, Optional<Handle> held, boolean focused) {
        g.setStroke(FINE);
        for (var handle : handles) {
            var at = ground.at(handle.place(shape), sight);
            boolean isHeld = held.filter(handle::equals).isPresent();
            double radius = isHeld ? RADIUS + 1.5 : RADIUS;
            var knob = handle.part().isOfControl()
                    ? (java.awt.Shape) diamond(at, radius)
                    : new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius);
            g.setColor(isHeld ? colours.second() : colours.paper());
            g.fill(knob);
            g.setColor(isHeld && focused ? colours.ink() : colours.accent());
            g.draw(knob);
        }
    }

    /** The datum as a cross of thin lines. */
    void datum(int width, int height) {
        Silhouette.datum(g, ground, width, height, colours);
    }

    private void outlines(Planform part, Color colour, int strength) {
        Silhouette.paint(g, part, sight, ground, colour, colours.faint(colour, strength));
    }

    /** On both sides, where the surface is. */
    private void control(Surface surface, Control control) {
        var corners = List.of(
                Shaping.place(surface, control.from(), control.hinge()),
                Shaping.place(surface, control.to(), control.hingeTo()),
                Shaping.place(surface, control.to(), 1),
                Shaping.place(surface, control.from(), 1));
        control(corners);
        if (surface.mirrored() && sight == Sight.ABOVE) {
            control(corners.stream()
                    .map(place -> new Place(place.x(), -place.y(), place.z()))
                    .toList());
        }
    }

    private void control(List<Place> corners) {
        var line = new Path2D.Double();
        for (var corner : corners) {
            var at = ground.at(corner, sight);
            if (line.getCurrentPoint() == null) {
                line.moveTo(at.getX(), at.getY());
            } else {
                line.lineTo(at.getX(), at.getY());
            }
        }
        line.closePath();
        g.setStroke(THIN);
        g.setColor(colours.faint(colours.second(), CLEAR));
        g.fill(line);
        g.setColor(colours.faint(colours.second(), 200));
        g.draw(line);
    }

    private void end(Point2D at) {
        g.draw(new Line2D.Double(at.getX() - MARK / 2, at.getY(), at.getX() + MARK / 2, at.getY()));
    }

    private void label(String words, double x, double y, boolean left) {
        g.setFont(colours.font());
        var metrics = g.getFontMetrics();
        double wide = metrics.stringWidth(words);
        double begin = left ? x - 4 - wide : x + 4;
        g.setColor(colours.faint(colours.paper(), HALO));
        g.fill(new Rectangle2D.Double(begin - 2, y - metrics.getHeight() / 2.0, wide + 4, metrics.getHeight()));
        g.setColor(colours.ink());
        g.drawString(words, (float) begin, (float) (y + metrics.getAscent() / 2.0 - 1));
    }

    private static Path2D diamond(Point2D at, double radius) {
        var diamond = new Path2D.Double();
        double r = radius * 1.2;
        diamond.moveTo(at.getX(), at.getY() - r);
        diamond.lineTo(at.getX() + r, at.getY());
        diamond.lineTo(at.getX(), at.getY() + r);
        diamond.lineTo(at.getX() - r, at.getY());
        diamond.closePath();
        return diamond;
    }
}
