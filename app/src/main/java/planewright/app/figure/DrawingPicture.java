package planewright.app.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.Optional;
import planewright.api.figure.Drawing;
import planewright.api.figure.Point;

/** Paints a drawing, fitted into an area with a scale, or at true size. */
public final class DrawingPicture {
    private static final double SIGN = 7;
    private static final double MARGIN = 26;
    private static final double TITLE_BASE = 18;
    private static final double TITLE_HEIGHT = 23;
    private static final double MM_PER_POINT = 25.4 / 72;

    /** A line to cut along, mm. */
    private static final double TRUE_SIZE_PEN = 0.2;

    private final Graphics2D g;
    private final AffineTransform place;
    private final FigureColours colours;
    private final double unit;
    private final double pen;
    private final Labels labels;

    /**
     * @param unit a pixel of the screen, a point on paper
     * @param pen how wide a line is; finer where one cuts along it
     */
    private DrawingPicture(
            Graphics2D g, AffineTransform place, FigureColours colours, double unit, double pen, Rectangle2D area) {
        this.g = g;
        this.place = place;
        this.colours = colours;
        this.unit = unit;
        this.pen = pen;
        this.labels = new Labels(g, colours, unit, area);
    }

    /** Paints a drawing as large as it fits, with its title and a bar that tells the scale. */
    public static void paint(Drawing drawing, Graphics2D g, Rectangle2D area, FigureColours colours) {
        var own = (Graphics2D) g.create();
        own.setColor(colours.paper());
        own.fill(area);
        title(drawing, own, area, colours);
        var inner = new Rectangle2D.Double(
                area.getX() + MARGIN,
                area.getY() + MARGIN + 6,
                Math.max(1, area.getWidth() - 2 * MARGIN),
                Math.max(1, area.getHeight() - 2 * MARGIN - 24));
        var bounds = bounds(drawing).orElse(new Rectangle2D.Double(-50, -50, 100, 100));
        double scale = Math.min(inner.getWidth() / bounds.getWidth(), inner.getHeight() / bounds.getHeight());
        var place = new AffineTransform();
        place.translate(inner.getCenterX(), inner.getCenterY());
        place.scale(scale, -scale);
        place.translate(-bounds.getCenterX(), -bounds.getCenterY());
        var picture = new DrawingPicture(own, place, colours, 1, 1.1, belowTitle(area));
        picture.layers(drawing);
        picture.scaleBar(area, scale);
        own.dispose();
    }

    /**
     * Paints a drawing at true size onto a graphics whose unit is the millimetre.
     *
     * @param left where the drawing's least x goes
     * @param top where its greatest y goes
     * @param words where its words may stand
     */
    public static void paintTrueSize(
            Drawing drawing, Graphics2D g, double left, double top, Rectangle2D words, FigureColours colours) {
        var bounds = bounds(drawing).orElseThrow(() -> new IllegalArgumentException("an empty drawing has no size"));
        var own = (Graphics2D) g.create();
        var place = new AffineTransform(1, 0, 0, -1, left - bounds.getMinX(), top + bounds.getMaxY());
        new DrawingPicture(own, place, colours, MM_PER_POINT, TRUE_SIZE_PEN, words).layers(drawing);
        own.dispose();
    }

    /** What a drawing covers, in its own millimetres; empty where it holds nothing. */
    public static Optional<Rectangle2D> bounds(Drawing drawing) {
        var points = drawing.layers().stream()
                .flatMap(layer -> layer.shapes().stream())
                .flatMap(Corners::of)
                .toList();
        if (points.isEmpty()) {
            return Optional.empty();
        }
        var bounds = new Rectangle2D.Double(points.get(0).x(), points.get(0).y(), 0, 0);
        points.forEach(point -> bounds.add(point.x(), point.y()));
        bounds.width = Math.max(bounds.width, 1);
        bounds.height = Math.max(bounds.height, 1);
        return Optional.of(bounds);
    }

    private void layers(Drawing drawing) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        for (var layer : drawing.layers()) {
            layer.shapes().forEach(shape -> shape(shape, layer.use()));
        }
        labels.paint();
    }

    private void shape(Drawing.Shape shape, Drawing.Use use) {
        if (shape instanceof Drawing.Path path) {
            path(path, use);
        } else if (shape instanceof Drawing.Disc disc) {
            disc(disc, use);
        } else if (shape instanceof Drawing.Mark mark) {
            mark(mark);
        } else if (shape instanceof Drawing.Dimension dimension) {
            dimension(dimension);
        } else if (shape instanceof Drawing.Note note) {
            labels.add(at(note.at()), note.text(), colours.ink(), 0);
        }
    }

    private void path(Drawing.Path path, Drawing.Use use) {
        var line = new Path2D.Double();
        Point2D before = null;
        for (var point : path.points()) {
            var at = at(point);
            if (before == null) {
                line.moveTo(at.getX(), at.getY());
            } else {
                line.lineTo(at.getX(), at.getY());
                labels.avoid(new Line2D.Double(before, at));
            }
            before = at;
        }
        if (path.closed()) {
            line.closePath();
            labels.avoid(new Line2D.Double(before, at(path.points().get(0))));
            fill(use).ifPresent(colour -> {
                g.setColor(colour);
                g.fill(line);
            });
        }
        g.setColor(colour(use));
        g.setStroke(stroke(use));
        g.draw(line);
    }

    private Color colour(Drawing.Use use) {
        return switch (use) {
            case OUTLINE, MARK -> colours.quiet();
            case PART -> colours.accent();
            case FOLD -> colours.second();
            default -> colours.ink();
        };
    }

    private Optional<Color> fill(Drawing.Use use) {
        return switch (use) {
            case OUTLINE -> Optional.of(colours.faint(colours.quiet(), 28));
            case PART -> Optional.of(colours.faint(colours.accent(), 60));
            default -> Optional.empty();
        };
    }

    private Stroke stroke(Drawing.Use use) {
        float width = (float) pen;
        float dash = (float) (4 * unit);
        return switch (use) {
            case CUT -> new BasicStroke(1.4f * width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
            case FOLD ->
                new BasicStroke(
                        1.4f * width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {dash, dash / 2}, 0);
            case MARK, DIMENSION, NOTE -> new BasicStroke(0.7f * width);
            default -> new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        };
    }

    private void disc(Drawing.Disc disc, Drawing.Use use) {
        var centre = at(disc.centre());
        double radius = Math.max(2 * unit, disc.radius() * Math.abs(place.getScaleX()));
        var circle = new Ellipse2D.Double(centre.getX() - radius, centre.getY() - radius, 2 * radius, 2 * radius);
        g.setColor(fill(use).orElse(colours.faint(colours.ink(), 60)));
        g.fill(circle);
        g.setColor(use == Drawing.Use.PART ? colours.accent() : colours.ink());
        g.setStroke(stroke(use));
        g.draw(circle);
        labels.add(centre, disc.label(), colours.ink(), radius);
    }

    private void mark(Drawing.Mark mark) {
        var at = at(mark.at());
        double r = SIGN * unit;
        g.setStroke(new BasicStroke((float) (1.4 * unit)));
        switch (mark.sign()) {
            case BALANCE_POINT -> quartered(at, r);
            case TARGET -> target(at, r);
            case DATUM -> datum(at, r);
            case SUPPORT -> support(at, r);
        }
        labels.add(at, mark.label(), mark.sign() == Drawing.Sign.TARGET ? colours.second() : colours.ink(), r);
    }

    private void quartered(Point2D at, double r) {
        g.setColor(colours.paper());
        g.fill(circle(at, r));
        g.setColor(colours.ink());
        g.fill(new Arc2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r, 0, 90, Arc2D.PIE));
        g.fill(new Arc2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r, 180, 90, Arc2D.PIE));
        g.draw(circle(at, r));
    }

    private void target(Point2D at, double r) {
        g.setColor(colours.second());
        g.draw(circle(at, r));
        cross(at, 1.5 * r);
    }

    private void datum(Point2D at, double r) {
        g.setColor(colours.quiet());
        cross(at, 2 * r);
        g.draw(new Rectangle2D.Double(at.getX() - r / 3, at.getY() - r / 3, 2 * r / 3, 2 * r / 3));
    }

    private void support(Point2D at, double r) {
        var triangle = new Path2D.Double();
        triangle.moveTo(at.getX(), at.getY());
        triangle.lineTo(at.getX() - r, at.getY() + 1.6 * r);
        triangle.lineTo(at.getX() + r, at.getY() + 1.6 * r);
        triangle.closePath();
        g.setColor(colours.accent());
        g.fill(triangle);
    }

    private void dimension(Drawing.Dimension dimension) {
        var from = at(dimension.from());
        var to = at(dimension.to());
        g.setColor(colours.ink());
        g.setStroke(stroke(Drawing.Use.DIMENSION));
        g.draw(new Line2D.Double(from, to));
        labels.avoid(new Line2D.Double(from, to));
        tick(from, to);
        tick(to, from);
        labels.add(
                new Point2D.Double((from.getX() + to.getX()) / 2, (from.getY() + to.getY()) / 2),
                dimension.text(),
                colours.ink(),
                2 * unit);
    }

    /** A short stroke across the end of a dimension line. */
    private void tick(Point2D end, Point2D other) {
        double length = end.distance(other);
        if (length > 0) {
            double dx = (other.getX() - end.getX()) / length * 4 * unit;
            double dy = (other.getY() - end.getY()) / length * 4 * unit;
            g.draw(new Line2D.Double(end.getX() - dy, end.getY() + dx, end.getX() + dy, end.getY() - dx));
        }
    }

    private void cross(Point2D at, double r) {
        g.draw(new Line2D.Double(at.getX() - r, at.getY(), at.getX() + r, at.getY()));
        g.draw(new Line2D.Double(at.getX(), at.getY() - r, at.getX(), at.getY() + r));
    }

    private static Ellipse2D circle(Point2D at, double r) {
        return new Ellipse2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r);
    }

    private Point2D at(Point point) {
        return place.transform(new Point2D.Double(point.x(), point.y()), null);
    }

    private void scaleBar(Rectangle2D area, double scale) {
        double millimetres = roundBelow(0.25 * area.getWidth() / scale);
        double length = millimetres * scale;
        double x = area.getX() + 12;
        double y = area.getMaxY() - 10;
        g.setColor(colours.ink());
        g.setStroke(new BasicStroke(1.2f));
        g.draw(new Line2D.Double(x, y, x + length, y));
        g.draw(new Line2D.Double(x, y - 4, x, y + 1));
        g.draw(new Line2D.Double(x + length, y - 4, x + length, y + 1));
        g.setFont(colours.font().deriveFont(10f));
        g.drawString(String.format(Locale.ROOT, "%.0f mm", millimetres), (float) (x + length + 6), (float) y + 1);
    }

    /** 1, 2 or 5 times a power of ten. */
    private static double roundBelow(double length) {
        double power = Math.pow(10, Math.floor(Math.log10(Math.max(length, 1))));
        return length >= 5 * power ? 5 * power : length >= 2 * power ? 2 * power : power;
    }

    private static Rectangle2D belowTitle(Rectangle2D area) {
        double title = Math.min(TITLE_HEIGHT, area.getHeight());
        return new Rectangle2D.Double(area.getX(), area.getY() + title, area.getWidth(), area.getHeight() - title);
    }

    private static void title(Drawing drawing, Graphics2D g, Rectangle2D area, FigureColours colours) {
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        var font = colours.font().deriveFont(Font.BOLD, 12f);
        g.setFont(font);
        g.setColor(colours.ink());
        double width = g.getFontMetrics().stringWidth(drawing.title());
        g.drawString(drawing.title(), (float) (area.getCenterX() - width / 2), (float) (area.getY() + TITLE_BASE));
    }
}
