package planewright.app.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Words beside things. Each takes the first place around its thing that is free of words and lines, nearest first; where none
 * is near, a thin line leads to it. Where lines are everywhere it stands on one; a label that finds no place at all is left
 * out.
 */
public final class Labels {
    private static final int DIRECTIONS = 16;
    private static final int RINGS = 7;

    private final Graphics2D g;
    private final FigureColours colours;
    private final double unit;
    private final Rectangle2D area;
    private final List<Label> wanted = new ArrayList<>();
    private final List<Rectangle2D> taken = new ArrayList<>();
    private final List<Line2D> lines = new ArrayList<>();

    /**
     * @param unit px of a point of letters
     * @param area that labels stay within
     */
    public Labels(Graphics2D g, FigureColours colours, double unit, Rectangle2D area) {
        this.g = g;
        this.colours = colours;
        this.unit = unit;
        this.area = area;
    }

    /**
     * Words beside a thing; a thing without words only keeps its place free.
     *
     * @param clearance how wide the thing is
     */
    public void add(Point2D at, String text, Color colour, double clearance) {
        taken.add(new Rectangle2D.Double(
                at.getX() - clearance / 2,
                at.getY() - clearance / 2,
                Math.max(clearance, unit),
                Math.max(clearance, unit)));
        if (!text.isEmpty()) {
            wanted.add(new Label(at, text, colour, clearance));
        }
    }

    /** A line that words should not cover. */
    public void avoid(Line2D line) {
        lines.add(line);
    }

    /** Later labels belong to more important things and choose first. */
    public void paint() {
        g.setFont(colours.font().deriveFont((float) (10.5 * unit)));
        for (int i = wanted.size() - 1; i >= 0; i--) {
            paint(wanted.get(i));
        }
    }

    private void paint(Label label) {
        var metrics = g.getFontMetrics();
        double width = metrics.getStringBounds(label.text(), g).getWidth() + 4 * unit;
        double height = 13 * unit;
        if (!place(label, width, height, lines)) {
            place(label, width, height, List.of());
        }
    }

    private boolean place(Label label, double width, double height, List<Line2D> avoided) {
        for (int ring = 0; ring < RINGS; ring++) {
            for (int direction = 0; direction < DIRECTIONS; direction++) {
                var box = box(label, ring, direction, width, height);
                if (area.contains(box)
                        && taken.stream().noneMatch(box::intersects)
                        && avoided.stream().noneMatch(box::intersectsLine)) {
                    taken.add(box);
                    paint(label, box, ring > 0);
                    return true;
                }
            }
        }
        return false;
    }

    private Rectangle2D box(Label label, int ring, int direction, double width, double height) {
        double angle = 2 * Math.PI * direction / DIRECTIONS;
        double gap = label.clearance() + (4 + 13 * ring) * unit;
        double x = label.at().getX() + Math.cos(angle) * (gap + width / 2) - width / 2;
        double y = label.at().getY() - Math.sin(angle) * (gap + height / 2) - height / 2;
        return new Rectangle2D.Double(x, y, width, height);
    }

    private void paint(Label label, Rectangle2D box, boolean led) {
        if (led) {
            g.setColor(colours.quiet());
            g.setStroke(new BasicStroke((float) (0.7 * unit)));
            double x =
                    Math.max(box.getMinX(), Math.min(box.getMaxX(), label.at().getX()));
            double y =
                    Math.max(box.getMinY(), Math.min(box.getMaxY(), label.at().getY()));
            g.draw(new Line2D.Double(label.at(), new Point2D.Double(x, y)));
        }
        g.setColor(label.colour());
        g.drawString(label.text(), (float) (box.getX() + 2 * unit), (float) (box.getMaxY() - 3 * unit));
    }

    private record Label(Point2D at, String text, Color colour, double clearance) {}
}
