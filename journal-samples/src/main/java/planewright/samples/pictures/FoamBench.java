package planewright.samples.pictures;

import static planewright.samples.pictures.Picture.photo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.Consumer;
import planewright.samples.studio.Camera;
import planewright.samples.studio.Drawn;
import planewright.samples.studio.Floors;
import planewright.samples.studio.Lettering;
import planewright.samples.studio.Light;
import planewright.samples.studio.Scene;
import planewright.samples.studio.Skins;
import planewright.samples.studio.Solid;
import planewright.samples.studio.Solids;
import planewright.samples.studio.Studio;
import planewright.samples.studio.Thing;

/** The bench from above while foam wings are built. */
final class FoamBench {
    private static final Color PENCIL = new Color(70, 74, 90, 190);
    private static final Color MARKER = new Color(190, 40, 40, 210);

    private FoamBench() {}

    static List<Picture> all() {
        return List.of(
                photo(
                        "glued",
                        "Slate Ray",
                        "both centre sections glued on the mat, centre line drawn, weights on the joint",
                        FoamBench::glued),
                photo(
                        "squared",
                        "Slate Ray",
                        "wing halves squared against the straight edge, try square at the root",
                        FoamBench::squared),
                photo(
                        "inlet",
                        "Slate Ray",
                        "outline of the submerged cooling inlet drawn on the foam, ramp already cut",
                        FoamBench::inlet),
                photo(
                        "exit",
                        "Slate Ray",
                        "exit slot for the cooling air beside the motor, cut with the knife",
                        FoamBench::exit),
                photo(
                        "spar",
                        "Slate Ray Two",
                        "carbon strip laid into its slot before gluing, the second one waiting above",
                        FoamBench::spar),
                photo(
                        "blank",
                        "Slate Ray Two",
                        "foam block with both rib templates pinned to its ends, ready for the hot wire",
                        FoamBench::blank),
                photo(
                        "tapes",
                        "Paperknife",
                        "red tape along the leading edges of the foam board delta",
                        FoamBench::tapes));
    }

    static Thing panel(double thick, int rgb, Consumer<Graphics2D> lines, double... outline) {
        var print = Drawn.sheet(900, 900, 2, lines);
        return Thing.of(Solids.plate(thick, 1.2, outline), Skins.printed(Skins.foam(rgb), print, 2, 0.6));
    }

    static Scene matOnBench(int seed, double width, double height) {
        return Scene.on(Floors.bench(seed), Light.window()).add(Tools.cuttingMat(width, height));
    }

    static BufferedImage from(Scene scene, double x, double y, double field, double tilt) {
        return Studio.take(scene, Camera.above(x, y, field).tilted(tilt), 1200, 900);
    }

    static void pen(Graphics2D g, Color colour, double width) {
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    }

    private static void dashed(Graphics2D g, Color colour, double width) {
        g.setColor(colour);
        g.setStroke(new BasicStroke(
                (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {14, 4, 3, 4}, 0));
    }

    private static BufferedImage glued() {
        Consumer<Graphics2D> lines = g -> {
            dashed(g, MARKER, 0.9);
            Tools.line(g, 0, -190, 0, 190);
            pen(g, PENCIL, 0.6);
            Tools.line(g, -130, -190, -130, 190);
            Tools.line(g, 130, -190, 130, 190);
            Lettering.write(g, "CL", 5, -150, 9);
            Lettering.write(g, "L", -118, -150, 9);
            Lettering.write(g, "R", 112, -150, 9);
        };
        var scene = matOnBench(11, 600, 430)
                .add(panel(34, 0xf0f0ec, lines, 0, 180, -135, 100, -135, -160, 0, -180)
                        .at(-0.4, 5, 3))
                .add(panel(34, 0xedeee9, lines, 135, 100, 0, 180, 0, -180, 135, -160)
                        .at(0.4, 5, 3))
                .add(
                        Tools.weight(62).at(-30, 95, 37),
                        Tools.weight(62).at(34, -20, 37),
                        Tools.bar(120, 38, 30, 0x53585e).turned(84).at(2, -105, 37))
                .add(
                        Tools.tape(90, 19, 0xe7dcb0).turned(3).at(0, 45, 37),
                        Tools.tape(84, 19, 0xe7dcb0).turned(-2).at(0, -160 + 118, 37))
                .add(Tools.rule(300).turned(88).at(-215, 20, 3))
                .add(Tools.pencil(0x2f5f9e).turned(62).at(175, -140, 3))
                .add(Tools.tapeRoll(48, 0xe7dcb0).at(232, 120, 3));
        for (var part : Tools.glueBottle(0xf2f2ee, 0xb5382c)) {
            scene.add(part.pitched(90).turned(200).at(-190, -215 + 60, 24));
        }
        return from(scene, 0, 0, 640, 4);
    }

    private static BufferedImage squared() {
        Consumer<Graphics2D> lines = g -> {
            pen(g, PENCIL, 0.6);
            Tools.line(g, -260, 40, 260, 40);
        };
        var scene = Scene.on(Floors.bench(23), Light.window())
                .add(panel(26, 0xf1f1ed, lines, -6, 150, -380, -40, -380, -165, -6, -55)
                        .at(0, 20, 0))
                .add(panel(26, 0xeceee9, lines, 6, 150, 6, -55, 380, -165, 380, -40)
                        .at(0, 20, 0))
                .add(Thing.of(Solids.slab(860, 40, 22, 1), Skins.plain(0xbfc3c7, 0.7))
                        .at(0, 200, 0))
                .add(Tools.weight(70).at(-210, -10, 26), Tools.weight(70).at(220, -14, 26));
        for (var part : Tools.square(150, 210)) {
            scene.add(part.turned(180).at(-18, 180, 26));
        }
        for (var part : Tools.springClamp(0xd9631e)) {
            scene.add(part.turned(70).at(-330, 214, 10));
            scene.add(part.turned(104).at(330, 214, 10));
        }
        scene.add(Tools.pencil(0xd8b22e).turned(-20).at(-60, -150, 0));
        scene.add(Tools.slip(70, 44, 0xf5e27a, "ROOT 90°", "OK BOTH").turned(-6).at(160, -200, 0));
        return from(scene, 0, 10, 800, -3);
    }

    private static BufferedImage inlet() {
        double[] naca = {
            -92, 9, -60, 11, -30, 15, 0, 21, 25, 29, 48, 41, 56, 46, 56, -46, 48, -41, 25, -29, 0, -21, -30, -15, -60,
            -11, -92, -9
        };
        Solid foam = Solids.slab(420, 300, 46, 4);
        Solid ramp = Solids.plate(40, 1, naca).pitched(7.5).moved(0, 0, 33).moved(2, 0, 0);
        var print = Drawn.sheet(420, 300, 3, g -> {
            pen(g, MARKER, 0.9);
            double s = 1.16;
            for (int i = 0; i < naca.length; i += 2) {
                int j = (i + 2) % naca.length;
                Tools.line(g, naca[i] * s + 4, naca[i + 1] * s, naca[j] * s + 4, naca[j + 1] * s);
            }
            dashed(g, PENCIL, 0.6);
            Tools.line(g, -190, 0, 190, 0);
            pen(g, PENCIL, 0.5);
            Tools.line(g, 70, -62, 70, 62);
            Lettering.write(g, "INLET 7°", -180, 12, 9);
            Lettering.write(g, "AIR", -150, -26, 9);
            Tools.line(g, -172, -34, -116, -34);
            Tools.line(g, -116, -34, -124, -30);
            Tools.line(g, -116, -34, -124, -38);
        });
        var scene = matOnBench(5, 600, 430)
                .add(Thing.of(foam.without(ramp), Skins.printed(Skins.foam(0xf0f0ec), print, 3))
                        .turned(-12)
                        .at(0, 10, 3))
                .add(Tools.sandingBlock().turned(60).at(225, -60, 3));
        for (var part : Tools.knife()) {
            scene.add(part.turned(20).at(-130, -205, 3));
        }
        return from(scene, 10, -30, 600, 2);
    }

    private static BufferedImage exit() {
        Solid foam = Solids.slab(300, 210, 44, 4);
        Solid slot =
                Solids.plate(60, 3, -34, -4, 28, -7, 34, 7, -34, 4).pitched(-16).moved(0, 40, 22);
        Solid notch = Solids.block(120, 52, 120, 5).moved(180, -40, 0);
        var print = Drawn.sheet(420, 280, 3, g -> {
            pen(g, MARKER, 0.8);
            Tools.line(g, -44, 47, 44, 52);
            Tools.line(g, -44, 33, 44, 28);
            Tools.line(g, -44, 33, -44, 47);
            pen(g, PENCIL, 0.6);
            Tools.line(g, -144, -50, 112, -50);
            Lettering.write(g, "EXIT 6.2 CM2", -44, 60, 8);
            Lettering.write(g, "MOTOR", 66, -44, 8);
        });
        var scene = matOnBench(17, 600, 430)
                .add(Thing.of(foam.without(slot).without(notch), Skins.printed(Skins.foam(0xf0f0ec), print, 3))
                        .turned(8)
                        .at(0, 0, 3))
                .add(Tools.rule(200).turned(-82).at(-178, 0, 3));
        scene.add(Thing.of(Solids.plate(18, 1, -60, -12, 50, -20, 60, 18, -60, 12), Skins.foam(0xf0f0ec))
                .turned(-34)
                .at(110, -140, 3));
        for (var part : Tools.knife()) {
            scene.add(part.turned(172).at(60, 142, 3));
        }
        return from(scene, 0, 0, 430, -5);
    }

    private static BufferedImage spar() {
        Solid foam = Solids.plate(30, 4, -330, 70, 330, 20, 330, -110, -330, -140);
        Solid channel = Solids.block(640, 8.4, 16, 0.3).turned(-2.2).moved(0, -14, 30);
        Consumer<Graphics2D> lines = g -> {
            pen(g, PENCIL, 0.6);
            Tools.line(g, -322, 8, 322, -16);
            Tools.line(g, -322, -12, 322, -36);
            Lettering.write(g, "STRIP 7 × 1", -150, 18, 9);
        };
        var scene = Scene.on(Floors.bench(31), Light.lamp())
                .add(Thing.of(
                        foam.without(channel), Skins.printed(Skins.foam(0xeff0ec), Drawn.sheet(700, 300, 2, lines), 2)))
                .add(Thing.of(Solids.slab(580, 7, 1, 0.2), Skins.carbon())
                        .turned(-2.2)
                        .at(-20, -13.2, 27))
                .add(Thing.of(Solids.slab(580, 7, 1, 0.2), Skins.carbon())
                        .turned(-9)
                        .at(-20, 130, 0))
                .add(Tools.slip(84, 40, 0xf5e27a, "WEAR A MASK", "WHEN SANDING")
                        .turned(5)
                        .at(230, 150, 0));
        for (int i = 0; i < 5; i++) {
            double x = -240 + 120 * i;
            scene.add(Tools.pin(x, 13 - x * 0.038 - 14, 18, i % 2 == 0 ? 0xc53a30 : 0x2f66b0));
        }
        for (var part : Tools.glueBottle(0xe9d79a, 0x33363a)) {
            scene.add(part.pitched(90).turned(24).at(-270, -205, 22));
        }
        return from(scene, 0, -10, 740, 3);
    }

    private static BufferedImage blank() {
        double[] rib = {
            -120, 4, -112, 16, -90, 26, -50, 32, -10, 31, 40, 23, 90, 11, 120, 3, 120, 0, 60, -2, 0, -8, -60, -12, -104,
            -10, -118, -3
        };
        var scene = Scene.on(Floors.bench(8), Light.window())
                .add(Thing.of(Solids.slab(330, 420, 80, 2), Skins.foam(0xf0e3c8))
                        .at(0, 220, 0));
        var template = Thing.of(Solids.plate(3, 0.3, rib), Skins.ply(3)).rolled(90);
        scene.add(template.at(0, 9, 36));
        var print = Drawn.sheet(300, 120, 4, g -> {
            pen(g, new Color(40, 44, 60), 0.6);
            Tools.line(g, -140, 0, 140, 0);
        });
        scene.add(Thing.of(Solids.slab(300, 0.5, 0.5, 0.1), Skins.printed(Skins.plain(0x333333, 0), print, 4))
                .at(0, 9, 36));
        for (double x : new double[] {-70, 60}) {
            for (var part : Tools.pin(0, 0, 0, 0xc53a30)) {
                scene.add(part.rolled(90).at(x, 14, 46));
            }
        }
        scene.add(Tools.weight(74).at(-70, 180, 80), Tools.weight(74).at(80, 260, 80));
        scene.add(Tools.slip(120, 50, 0xf3f1e4, "HOT WIRE: WINDOW OPEN", "MASK ON, NO DRAUGHT AT WIRE")
                .rolled(0)
                .at(-20, -80, 0));
        scene.add(Tools.rule(300).turned(4).at(-10, -160, 0));
        return Studio.take(scene, Camera.round(0, 90, 40, 24, 32, 560), 1200, 900);
    }

    private static BufferedImage tapes() {
        var white = Skins.plain(0xf4f4f1, 0.1);
        var scene = Scene.on(Floors.bench(41), Light.window())
                .add(Thing.of(Solids.plate(5, 0.8, 0, 310, -400, -166, -400, -300, 400, -300, 400, -166), white)
                        .at(0, 0, 0));
        double angle = Math.toDegrees(Math.atan2(476, 400));
        scene.add(Tools.tape(628, 36, 0xc4261f).turned(angle).at(-188, 62, 5));
        scene.add(Tools.tape(360, 36, 0xc4261f).turned(-angle).at(104, 163, 5));
        scene.add(Tools.tape(90, 36, 0xc4261f).pitched(7).turned(-angle).at(240, 1, 11));
        scene.add(Tools.tapeRoll(52, 0xc4261f).rolled(90).turned(-angle).at(278, -50, 52));
        scene.add(Tools.rule(300).turned(8).at(-20, -120, 5));
        for (var part : Tools.knife()) {
            scene.add(part.turned(-60).at(-120, 40, 5));
        }
        return from(scene, 0, 10, 840, 6);
    }
}
