package planewright.samples.pictures;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import planewright.samples.studio.Drawn;
import planewright.samples.studio.Lettering;
import planewright.samples.studio.Skin;
import planewright.samples.studio.Skins;
import planewright.samples.studio.Solid;
import planewright.samples.studio.Solids;
import planewright.samples.studio.Thing;

/** What lies about on a bench. Everything stands on z = 0 about the origin unless said otherwise. */
final class Tools {
    private Tools() {}

    static Thing cuttingMat(double width, double height) {
        var print = Drawn.sheet(width, height, 2, g -> {
            g.setColor(new Color(0xb9d8b0));
            for (int i = 0; i * 10 <= width / 2; i++) {
                g.setStroke(new BasicStroke(i % 5 == 0 ? 0.7f : 0.25f));
                line(g, i * 10, -height / 2 + 12, i * 10, height / 2 - 12);
                line(g, -i * 10, -height / 2 + 12, -i * 10, height / 2 - 12);
            }
            for (int i = 0; i * 10 <= height / 2; i++) {
                g.setStroke(new BasicStroke(i % 5 == 0 ? 0.7f : 0.25f));
                line(g, -width / 2 + 12, i * 10, width / 2 - 12, i * 10);
                line(g, -width / 2 + 12, -i * 10, width / 2 - 12, -i * 10);
            }
            g.setColor(new Color(0x90ffffff & 0xb0e0f0e0, true));
            g.setStroke(new BasicStroke(0.3f));
            for (int i = 0; i < 14; i++) {
                double x = (i * 97 % 100 / 100.0 - 0.5) * width * 0.8;
                double y = (i * 53 % 100 / 100.0 - 0.5) * height * 0.8;
                line(g, x, y, x + (i * 31 % 60) - 30, y + (i * 17 % 50) - 25);
            }
        });
        return Thing.of(Solids.slab(width, height, 3, 1), Skins.printed(Skins.plain(0x2c6b4a, 0.14), print, 2));
    }

    static Thing rule(double length) {
        var print = Drawn.sheet(length, 26, 4, g -> {
            g.setColor(new Color(0x26282b));
            for (int i = 0; i <= length - 10; i++) {
                g.setStroke(new BasicStroke(i % 10 == 0 ? 0.4f : 0.22f));
                double x = -length / 2 + 5 + i;
                line(g, x, 13, x, i % 10 == 0 ? 5.5 : i % 5 == 0 ? 8 : 10);
                if (i % 10 == 0 && i > 0) {
                    Lettering.centred(g, String.valueOf(i / 10), x, 2.2, 4);
                }
            }
        });
        return Thing.of(Solids.slab(length, 26, 1.2, 0.3), Skins.printed(Skins.steel(), print, 4));
    }

    /** A try square: the stock along x, its inner corner at the origin, the blade along y. */
    static List<Thing> square(double stock, double blade) {
        return List.of(
                Thing.of(Solids.slab(stock, 24, 14, 1.5), Skins.wood(0x6b3320, 0.5))
                        .at(stock / 2 - 24, -12, 0),
                Thing.of(Solids.slab(24, blade, 1.6, 0.3), Skins.steel()).at(-12, blade / 2, 5));
    }

    /** A steel weight with a knob, of so many mm across. */
    static Thing weight(double across) {
        Solid body = Solids.drum(across / 2, across * 0.55, across * 0.05);
        Solid neck = Solids.drum(across * 0.11, across * 0.8, 1)
                .with(Solids.egg(across * 0.2, across * 0.2, across * 0.13).moved(0, 0, across * 0.82));
        return Thing.of(body.blended(neck, across * 0.08), Skins.plain(0x9a8a5a, 0.75));
    }

    static Thing bar(double length, double wide, double high, int rgb) {
        return Thing.of(Solids.slab(length, wide, high, 2), Skins.plain(rgb, 0.55));
    }

    /** A strip of tape lying on height z. */
    static Thing tape(double length, double wide, int rgb) {
        return Thing.of(Solids.slab(length, wide, 0.35, 0.1), Skins.plain(rgb, 0.12));
    }

    static Thing tapeRoll(double radius, int rgb) {
        var core = Skins.plain(0xb99a6b, 0.05);
        var side = Skins.plain(rgb, 0.15);
        Skin skin = (x, y, z, nz) -> Math.hypot(x, y) < radius * 0.66
                ? core.at(x, y, z, nz)
                : side.at(x, y, z, nz).times(nz > 0.5 ? 0.8 + 0.2 * Math.abs(Math.sin(Math.hypot(x, y) * 5)) : 1);
        return Thing.of(
                Solids.drum(radius, 22, 0.6)
                        .without(Solids.drum(radius * 0.62, 60, 0).moved(0, 0, -10)),
                skin);
    }

    /** A knife along x, its tip at the right. */
    static List<Thing> knife() {
        return List.of(
                Thing.of(
                                Solids.barrel(5.2, 110, 2),
                                (x, y, z, nz) -> x > 78
                                        ? Skins.plain(0x5b5e63, 0.6)
                                                .at(x, y, z, nz)
                                                .times(Math.sin(x * 4 + z) > 0 ? 1 : 0.6)
                                        : Skins.plain(0x9fa3a8, 0.6).at(x, y, z, nz))
                        .at(0, 0, 5.2),
                Thing.of(Solids.plate(0.7, 0.2, 108, -4, 118, -4, 146, 4, 140, 4, 108, 4), Skins.steel())
                        .at(0, 0, 5));
    }

    /** A pencil along x, its point at the right. */
    static Thing pencil(int rgb) {
        Skin skin = (x, y, z, nz) -> x > 164
                ? Skins.plain(0x2a2a2c, 0.3).at(x, y, z, nz)
                : x > 148
                        ? Skins.balsa().at(x, y, z, nz)
                        : Skins.plain(rgb, 0.4).at(x, y, z, nz);
        Solid shaft = Solids.barrel(3.6, 172, 0.3);
        Solid point = (x, y, z) -> (Math.hypot(y, z) - (172 - x) * 0.155) * 0.95;
        return Thing.of(shaft.within(point), skin).at(0, 0, 3.6);
    }

    static List<Thing> pin(double x, double y, double z, int rgb) {
        return List.of(
                Thing.of(Solids.rod(0.5, 0, 0, 0, 1.5, 1, 22), Skins.steel()).at(x, y, z),
                Thing.of(Solids.ball(3.4), Skins.plain(rgb, 0.55)).at(x + 1.6, y + 1.1, z + 23));
    }

    /** A spring clamp seen from above, its jaws towards −x, gripping at the origin, at height z = 0. */
    static List<Thing> springClamp(int rgb) {
        Solid upper = Solids.plate(14, 3, -4, 3, 24, 7, 46, 10, 92, 34, 98, 27, 56, 3, 22, 0.5, -4, 0.5);
        var skin = Skins.plain(rgb, 0.35);
        return List.of(
                Thing.of(upper, skin),
                Thing.of((x, y, z) -> upper.at(x, -y, z), skin),
                Thing.of(Solids.drum(9, 16, 1), Skins.steel()).at(44, 0, -1));
    }

    /** A wooden block that stands behind things. */
    static Thing timber(double lx, double ly, double lz) {
        return Thing.of(Solids.slab(lx, ly, lz, 1.2), Skins.wood(0xc79d66, 1));
    }

    static Thing sandingBlock() {
        Skin skin = (x, y, z, nz) -> z < 3
                ? Skins.plain(0x8a4b32, 0.02).at(x, y, z, nz)
                : Skins.wood(0xd0ad7a, 1).at(x, y, z, nz);
        return Thing.of(Solids.slab(110, 48, 30, 1.5), skin);
    }

    /** A squeeze bottle without a label. */
    static List<Thing> glueBottle(int rgb, int cap) {
        Solid nozzle = (x, y, z) -> (Math.hypot(x, y) - (12 - (z - 92) * 0.24)) * 0.95;
        return List.of(
                Thing.of(Solids.drum(22, 82, 9), Skins.plain(rgb, 0.35)),
                Thing.of(nozzle.within(Solids.drum(13, 42, 1).moved(0, 0, 80)), Skins.plain(cap, 0.4)));
    }

    /** A paper slip with one or two lines. */
    static Thing slip(double width, double height, int paper, String... lines) {
        var print = Drawn.sheet(width, height, 6, g -> {
            g.setColor(new Color(0x20264a));
            double step = height / (lines.length + 0.6);
            for (int i = 0; i < lines.length; i++) {
                double letters = Math.min(step * 0.58, height * 0.5);
                while (Lettering.width(lines[i], letters) > width * 0.88) {
                    letters *= 0.95;
                }
                Lettering.centred(g, lines[i], 0, height / 2 - step * (i + 0.8), letters);
            }
        });
        return Thing.of(Solids.slab(width, height, 0.6, 0.2), Skins.printed(Skins.plain(paper, 0.05), print, 6));
    }

    /** A kitchen scale with a reading at its front edge. */
    static List<Thing> scale(String reading) {
        var print = Drawn.sheet(160, 190, 4, g -> {
            g.setColor(new Color(0xa9b8a4));
            g.fill(new Rectangle2D.Double(-34, -84, 68, 30));
            g.setColor(new Color(0x1d241c));
            Segments.write(g, reading, 27, -79.5, 21);
            g.setColor(new Color(0xc6c9cc));
            g.fill(new java.awt.geom.Ellipse2D.Double(46, -75, 13, 13));
            g.fill(new java.awt.geom.Ellipse2D.Double(-59, -75, 13, 13));
        });
        return List.of(
                Thing.of(Solids.slab(160, 190, 22, 6), Skins.printed(Skins.plain(0x2b2d31, 0.35), print, 4)),
                Thing.of(Solids.slab(146, 120, 5, 2), Skins.plain(0xd5d8da, 0.6))
                        .at(0, 26, 22));
    }

    static void line(Graphics2D g, double x1, double y1, double x2, double y2) {
        g.draw(new Line2D.Double(x1, y1, x2, y2));
    }
}
