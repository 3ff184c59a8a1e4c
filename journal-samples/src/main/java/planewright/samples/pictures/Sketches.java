package planewright.samples.pictures;

import static planewright.samples.pictures.Picture.sketch;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.Consumer;
import planewright.samples.studio.Drawn;
import planewright.samples.studio.Lettering;

/** Drawings on squared paper, scanned flat: shapes from the builds' records with their dimensions. */
final class Sketches {
    private static final Color INK = new Color(0x26304f);
    private static final Color RED = new Color(0xb03a2e);
    private static final Color SOFT = new Color(0x8c93a8);

    private Sketches() {}

    static List<Picture> all(Hangar hangar) {
        return List.of(
                sketch(
                        "ray-sketch",
                        "Slate Ray",
                        "right half of the swept wing on squared paper with chords, spans and sweep",
                        () -> half(hangar, "Slate Ray", "SLATE RAY  RIGHT HALF  MM", 0.235, false)),
                sketch(
                        "two-sketch",
                        "Slate Ray Two",
                        "the longer outer panel of the second wing drawn over the first one's outline",
                        () -> longer(hangar)),
                sketch(
                        "knife-sketch",
                        "Paperknife",
                        "the delta on squared paper: apex, chords, half span and fins",
                        () -> half(hangar, "Paperknife", "PAPERKNIFE  ONE EVENING  MM", 0.225, true)),
                sketch(
                        "mustard-side",
                        "Old Mustard",
                        "side view of the trainer with its stations from the wing datum",
                        () -> side(hangar)),
                sketch(
                        "goose-sketch",
                        "Backwards Goose",
                        "canard and wing on squared paper with the stations from the nose",
                        () -> half(hangar, "Backwards Goose", "GOOSE  STATIONS FROM THE NOSE", 0.145, true)),
                sketch(
                        "friday-v",
                        "Long Friday",
                        "the V-tail from behind: 38 degrees each side, tips 213 above the board",
                        Sketches::vTail));
    }

    /** A sheet of 240 by 180 mm ruled in 5 mm squares. */
    static BufferedImage paper(Consumer<Graphics2D> drawing) {
        var sheet = new BufferedImage(1200, 900, BufferedImage.TYPE_INT_RGB);
        Drawn.onto(sheet, 5, g -> {
            g.setColor(new Color(0xf7f4ea));
            g.fill(new java.awt.geom.Rectangle2D.Double(-130, -100, 260, 200));
            for (int i = -24; i <= 24; i++) {
                g.setColor(i % 4 == 0 ? new Color(0xb3cbd6) : new Color(0xd6e2e4));
                g.setStroke(new BasicStroke(i % 4 == 0 ? 0.3f : 0.2f));
                Tools.line(g, i * 5, -90, i * 5, 90);
                Tools.line(g, -120, i * 5, 120, i * 5);
            }
            drawing.accept(g);
        });
        return sheet;
    }

    static void pen(Graphics2D g, Color colour, double width) {
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    }

    static void chain(Graphics2D g, double x1, double y1, double x2, double y2) {
        g.setColor(SOFT);
        g.setStroke(new BasicStroke(
                0.35f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {6, 1.6f, 1, 1.6f}, 0));
        Tools.line(g, x1, y1, x2, y2);
    }

    static void outline(Graphics2D g, double... points) {
        var path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        path.closePath();
        g.draw(path);
    }

    /** A dimension between two points with its number beside it. */
    static void dimension(Graphics2D g, double x1, double y1, double x2, double y2, String text) {
        pen(g, RED, 0.3);
        Tools.line(g, x1, y1, x2, y2);
        double length = Math.hypot(x2 - x1, y2 - y1);
        double ux = (x2 - x1) / length;
        double uy = (y2 - y1) / length;
        for (int end = 0; end < 2; end++) {
            double x = end == 0 ? x1 : x2;
            double y = end == 0 ? y1 : y2;
            double s = end == 0 ? 1 : -1;
            Tools.line(g, x, y, x + s * 2.4 * ux - 0.8 * uy, y + s * 2.4 * uy + 0.8 * ux);
            Tools.line(g, x, y, x + s * 2.4 * ux + 0.8 * uy, y + s * 2.4 * uy - 0.8 * ux);
            Tools.line(g, x - 1.6 * uy, y + 1.6 * ux, x + 1.6 * uy, y - 1.6 * ux);
        }
        double wide = Lettering.width(text, 3.2) + 2;
        boolean level = Math.abs(uy) < 0.1;
        boolean upright = Math.abs(ux) < 0.1;
        double right = level ? 0 : upright ? wide / 2 + 1 : -5 * uy - wide / 3;
        double up = level ? 3 : upright ? 0 : 5 * ux;
        Lettering.centred(g, text, (x1 + x2) / 2 + right, (y1 + y2) / 2 + up, 3.2);
    }

    private static BufferedImage half(Hangar hangar, String name, String title, double scale, boolean both) {
        var build = hangar.build(name);
        return paper(g -> {
            double top = 66;
            double left = both ? 0 : -84;
            for (var surface : build.surfaceNames()) {
                for (var panel : build.panels(surface)) {
                    if (panel.dihedral() < 1) {
                        pen(g, INK, 0.6);
                        trapezoid(g, panel, scale, left, top, 1);
                        if (both) {
                            trapezoid(g, panel, scale, left, top, -1);
                        }
                        labels(g, panel, scale, left, top);
                    } else {
                        pen(g, INK, 1.1);
                        Tools.line(
                                g,
                                left + panel.y() * scale,
                                top - panel.x() * scale,
                                left + panel.y() * scale,
                                top - (panel.x() + panel.root()) * scale);
                        Tools.line(
                                g,
                                left - panel.y() * scale,
                                top - panel.x() * scale,
                                left - panel.y() * scale,
                                top - (panel.x() + panel.root()) * scale);
                    }
                }
            }
            chain(g, left, 77, left, -84);
            Lettering.write(g, "CL", left + 2, 70, 3.6);
            pen(g, INK, 0.4);
            Lettering.write(g, title, -112, 81, 4.2);
        });
    }

    private static void trapezoid(Graphics2D g, Panel p, double s, double left, double top, int side) {
        double end = p.x() + p.span() * Math.tan(p.sweep());
        double outer = p.y() + p.span() * Math.cos(p.dihedral());
        outline(
                g,
                left + side * p.y() * s,
                top - p.x() * s,
                left + side * outer * s,
                top - end * s,
                left + side * outer * s,
                top - (end + p.tip()) * s,
                left + side * p.y() * s,
                top - (p.x() + p.root()) * s);
    }

    private static void labels(Graphics2D g, Panel p, double s, double left, double top) {
        double end = p.x() + p.span() * Math.tan(p.sweep());
        double outer = p.y() + p.span() * Math.cos(p.dihedral());
        double low = top - Math.max(p.x() + p.root(), end + p.tip()) * s - 7;
        dimension(g, left + p.y() * s, low, left + outer * s, low, number(p.span()));
        if (p.to() > 0.99) {
            dimension(
                    g,
                    left + outer * s + 3,
                    top - end * s,
                    left + outer * s + 3,
                    top - (end + p.tip()) * s,
                    number(p.tip()));
        }
        dimension(
                g,
                left + p.y() * s + 4,
                top - p.x() * s - 2,
                left + p.y() * s + 4,
                top - (p.x() + p.root()) * s,
                number(p.root()));
        pen(g, RED, 0.3);
        if (p.sweep() > 0.01) {
            Lettering.write(
                    g,
                    number(Math.toDegrees(p.sweep())) + "°",
                    left + (p.y() + outer) / 2 * s + 3,
                    top - (p.x() + end) / 2 * s + 3,
                    3.2);
        }
    }

    static String number(double value) {
        double rounded = Math.round(value * 10) / 10.0;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }

    private static BufferedImage longer(Hangar hangar) {
        return paper(g -> {
            double s = 0.225;
            for (var panel : hangar.build("Slate Ray").panels("wing")) {
                g.setColor(SOFT);
                g.setStroke(new BasicStroke(
                        0.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {2.4f, 1.6f}, 0));
                trapezoid(g, panel, s, -96, 62, 1);
            }
            for (var panel : hangar.build("Slate Ray Two").panels("wing")) {
                pen(g, INK, 0.65);
                trapezoid(g, panel, s, -96, 62, 1);
                labels(g, panel, s, -96, 62);
            }
            var fin = hangar.build("Slate Ray Two").panels("fins").get(0);
            pen(g, INK, 1.3);
            Tools.line(g, -96 + fin.y() * s, 62 - fin.x() * s, -96 + fin.y() * s, 62 - (fin.x() + fin.root()) * s);
            pen(g, INK, 0.35);
            Lettering.write(g, "FIN", -96 + fin.y() * s + 2, 62 - fin.x() * s - 20, 3.4);
            chain(g, -96, 84, -96, -70);
            pen(g, INK, 0.4);
            Lettering.write(g, "RAY TWO  70 LONGER  ONE DEGREE MORE", -84, 76, 4.2);
            pen(g, SOFT, 0.4);
            Lettering.write(g, "DASHED: THE FIRST ONE", 20, 66, 3.4);
        });
    }

    private static BufferedImage side(Hangar hangar) {
        return paper(g -> {
            double s = 0.17;
            double left = -60;
            var build = hangar.build("Old Mustard");
            var hull = build.hull("fuselage");
            int n = hull.x().length;
            var points = new double[4 * n];
            for (int i = 0; i < n; i++) {
                points[2 * i] = left + hull.x()[i] * s;
                points[2 * i + 1] = 10 + hull.top()[i] * s;
                points[4 * n - 2 - 2 * i] = left + hull.x()[i] * s;
                points[4 * n - 1 - 2 * i] = 10 + hull.bottom()[i] * s;
            }
            pen(g, INK, 0.6);
            outline(g, points);
            var fin = build.panels("fin").get(0);
            double end = fin.x() + fin.span() * Math.tan(fin.sweep());
            outline(
                    g,
                    left + fin.x() * s,
                    10 + fin.z() * s,
                    left + end * s,
                    10 + (fin.z() + fin.span()) * s,
                    left + (end + fin.tip()) * s,
                    10 + (fin.z() + fin.span()) * s,
                    left + (fin.x() + fin.root()) * s,
                    10 + fin.z() * s);
            var wing = build.panels("wing").get(0);
            g.draw(new Ellipse2D.Double(left, 10 + wing.z() * s - 1.5, wing.root() * s, 5));
            Tools.line(g, left + 20 * s, 10 - 62 * s, left + 28 * s, 10 - 128 * s);
            g.draw(new Ellipse2D.Double(left + 28 * s - 5.4, 10 - 128 * s - 5.4, 10.8, 10.8));
            chain(g, left, 50, left, -46);
            chain(g, -112, 10, 104, 10);
            dimension(g, left + hull.x()[0] * s, -38, left, -38, number(-hull.x()[0]));
            dimension(g, left, -38, left + hull.x()[n - 1] * s, -38, number(hull.x()[n - 1]));
            dimension(g, left, 34, left + wing.root() * s, 34, number(wing.root()));
            dimension(g, left, 58, left + fin.x() * s, 58, number(fin.x()));
            pen(g, INK, 0.4);
            Lettering.write(g, "DATUM", left + 2, -52, 3.6);
            Lettering.write(g, "TRAINER  SIDE  1:6  MM", -112, 78, 4.2);
            Lettering.write(g, "2° RIGHT  3° DOWN", -112, -70, 3.6);
        });
    }

    private static BufferedImage vTail() {
        return paper(g -> {
            double c = Math.cos(Math.toRadians(38));
            double d = Math.sin(Math.toRadians(38));
            double r = 300 * 0.33;
            chain(g, -112, -30, 112, -30);
            chain(g, 0, -60, 0, 70);
            for (int side : new int[] {-1, 1}) {
                pen(g, INK, 0.6);
                outline(
                        g,
                        0,
                        -31,
                        side * r * c + side * d,
                        -31 + r * d,
                        side * r * c - side * d,
                        -29 + r * d + 1,
                        0,
                        -28);
                pen(g, RED, 0.3);
                Lettering.centred(g, "38°", side * 37, -23, 3.6);
                g.draw(new java.awt.geom.Arc2D.Double(
                        -26, -56, 52, 52, side > 0 ? -38 : 180, 38, java.awt.geom.Arc2D.OPEN));
                dimension(g, side * (r * c + 8), -62, side * (r * c + 8), -29 + r * d, "213");
            }
            pen(g, INK, 0.6);
            g.draw(new Ellipse2D.Double(-3, -36, 6, 6));
            Tools.line(g, -112, -62, 112, -62);
            dimension(g, 4, -18, 4 + (r - 8) * c, -18 + (r - 8) * d, "300");
            pen(g, INK, 0.4);
            Lettering.write(g, "V-TAIL FROM BEHIND", -112, 78, 4.2);
            Lettering.centred(g, "104° BETWEEN", 0, 20, 3.6);
            Lettering.write(g, "BOARD", -110, -70, 3.6);
        });
    }
}
