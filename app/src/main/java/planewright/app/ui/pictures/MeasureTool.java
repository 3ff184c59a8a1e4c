package planewright.app.ui.pictures;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import planewright.api.figure.Point;
import planewright.api.quantity.Measured;
import planewright.app.pictures.PictureMark;
import planewright.app.pictures.PictureScale;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Look;

/**
 * Marks set on a picture: first both ends of a known length, then those of what is measured. A mark is moved by dragging it. Each
 * counts as true to one pixel of the picture or of the screen, whichever is larger: so closer is surer (common practice, no source).
 */
final class MeasureTool implements ZoomView.Tool {
    private static final double REACH = 10;
    private static final double RADIUS = 5;

    /** What is measured, and how many marks it needs. */
    enum Kind {
        LENGTH(2),
        ANGLE(3);

        private final int marks;

        Kind(int marks) {
            this.marks = marks;
        }
    }

    private final Runnable changed;
    private final List<PictureMark> ends = new ArrayList<>();
    private final List<PictureMark> marks = new ArrayList<>();
    private Optional<Measured<Length>> known = Optional.empty();
    private Kind kind = Kind.LENGTH;
    private List<PictureMark> held = List.of();
    private int heldPlace;

    /**
     * @param changed runs when marks are other ones
     */
    MeasureTool(Runnable changed) {
        this.changed = changed;
    }

    /** Ends of the known length that are marked. */
    int ends() {
        return ends.size();
    }

    Kind kind() {
        return kind;
    }

    void measure(Kind wanted) {
        kind = wanted;
        marks.clear();
        changed.run();
    }

    /** How long what lies between both ends is. */
    void calibrate(Measured<Length> length) {
        known = Optional.of(length);
        changed.run();
    }

    Optional<Measured<Length>> known() {
        return known;
    }

    /** Forgets the known length and all marks. */
    void startAnew() {
        ends.clear();
        marks.clear();
        known = Optional.empty();
        changed.run();
    }

    Optional<PictureScale> scale() {
        return ends.size() == 2 && ends.get(0).distanceTo(ends.get(1)) > 0
                ? known.map(length -> new PictureScale(ends.get(0), ends.get(1), length))
                : Optional.empty();
    }

    /** What the marks say; empty until there are enough. */
    Optional<Measured<?>> result() {
        boolean apart = marks.size() == kind.marks
                && marks.get(0).distanceTo(marks.get(1)) > 0
                && (kind == Kind.LENGTH || marks.get(1).distanceTo(marks.get(2)) > 0);
        if (!apart) {
            return Optional.empty();
        }
        return kind == Kind.ANGLE
                ? Optional.of(PictureScale.angle(marks.get(1), marks.get(0), marks.get(2)))
                : scale().map(scale -> scale.between(marks.get(0), marks.get(1)));
    }

    @Override
    public boolean press(MouseEvent event, Viewing viewing) {
        for (var list : List.of(marks, ends)) {
            for (int place = 0; place < list.size(); place++) {
                var at = viewing.toView(list.get(place).at());
                if (Math.hypot(at.x() - event.getX(), at.y() - event.getY()) <= REACH) {
                    hold(list, place);
                    return true;
                }
            }
        }
        return set(event.getX(), event.getY(), viewing);
    }

    /** Sets the next mark. */
    boolean set(double x, double y, Viewing viewing) {
        var at = viewing.toPicture(x, y);
        if (!viewing.isOn(at)) {
            return false;
        }
        if (known.isEmpty() && ends.size() == 2) {
            ends.clear();
        }
        if (ends.size() < 2) {
            add(ends, mark(at, viewing));
        } else {
            if (marks.size() == kind.marks) {
                marks.clear();
            }
            add(marks, mark(at, viewing));
        }
        return true;
    }

    private void add(List<PictureMark> list, PictureMark mark) {
        list.add(mark);
        hold(list, list.size() - 1);
        changed.run();
    }

    private void hold(List<PictureMark> list, int place) {
        held = list;
        heldPlace = place;
    }

    @Override
    public void drag(MouseEvent event, Viewing viewing) {
        var at = viewing.toPicture(event.getX(), event.getY());
        if (viewing.isOn(at) && heldPlace < held.size()) {
            held.set(heldPlace, mark(at, viewing));
            changed.run();
        }
    }

    private static PictureMark mark(Point at, Viewing viewing) {
        return new PictureMark(at, Math.max(1, 1 / viewing.scale()));
    }

    @Override
    public void paint(Graphics2D g, Viewing viewing, Dimension view) {
        draw(g, viewing, ends, true);
        draw(g, viewing, marks, false);
        known.filter(length -> ends.size() == 2).ifPresent(length -> label(g, viewing, view, ends, Amounts.of(length)));
        result().ifPresent(value -> label(g, viewing, view, marks, Amounts.of(value)));
    }

    private static void draw(Graphics2D g, Viewing viewing, List<PictureMark> marks, boolean dashed) {
        var path = new Path2D.Double();
        for (var mark : marks) {
            var at = viewing.toView(mark.at());
            if (path.getCurrentPoint() == null) {
                path.moveTo(at.x(), at.y());
            } else {
                path.lineTo(at.x(), at.y());
            }
        }
        if (marks.size() > 1) {
            ZoomView.stroke(g, dashed ? dashes(path) : path);
        }
        for (var mark : marks) {
            var at = viewing.toView(mark.at());
            ZoomView.stroke(g, new Ellipse2D.Double(at.x() - RADIUS, at.y() - RADIUS, 2 * RADIUS, 2 * RADIUS));
            ZoomView.stroke(g, new Line2D.Double(at.x() - 1, at.y(), at.x() + 1, at.y()));
        }
    }

    /** The known length is told from what is measured by more than its colour. */
    private static java.awt.Shape dashes(java.awt.Shape path) {
        return new BasicStroke(0.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {10, 7}, 0)
                .createStrokedShape(path);
    }

    /** Beside its line, within the view. */
    private static void label(Graphics2D g, Viewing viewing, Dimension view, List<PictureMark> marks, String words) {
        var first = viewing.toView(marks.get(0).at());
        var second = viewing.toView(marks.get(1).at());
        boolean corner = marks.size() == 3;
        double x = corner ? second.x() : (first.x() + second.x()) / 2;
        double y = corner ? second.y() : (first.y() + second.y()) / 2;
        g.setFont(javax.swing.UIManager.getFont("Label.font").deriveFont(java.awt.Font.BOLD));
        var metrics = g.getFontMetrics();
        int width = metrics.stringWidth(words) + 14;
        int left = Math.max(0, Math.min((int) x + 10, view.width - width));
        int top = Math.max(0, Math.min((int) y - metrics.getHeight() - 12, view.height - metrics.getHeight() - 6));
        g.setColor(Look.colour("card"));
        g.fillRoundRect(left, top, width, metrics.getHeight() + 6, 8, 8);
        g.setColor(javax.swing.UIManager.getColor("Label.foreground"));
        g.drawString(words, left + 7, top + 3 + metrics.getAscent());
    }
}
