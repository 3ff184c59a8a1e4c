package planewright.samples.pictures;

import static planewright.samples.pictures.Picture.photo;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import planewright.samples.studio.Camera;
import planewright.samples.studio.Drawn;
import planewright.samples.studio.Floors;
import planewright.samples.studio.Lettering;
import planewright.samples.studio.Light;
import planewright.samples.studio.Noise;
import planewright.samples.studio.Scene;
import planewright.samples.studio.Skin;
import planewright.samples.studio.Skins;
import planewright.samples.studio.Solid;
import planewright.samples.studio.Solids;
import planewright.samples.studio.Studio;
import planewright.samples.studio.Thing;

/** The bench while balsa aircraft are built: jigs, ribs, frames. */
final class WoodBench {
    private static final double[] RIB = {
        0, 2, 4, 9, 14, 15, 32, 20, 60, 23, 100, 21, 150, 13, 200, 2, 200, 0, 120, -1, 60, -4, 20, -5, 4, -3
    };

    private WoodBench() {}

    static List<Picture> all(Hangar hangar) {
        return List.of(
                photo(
                        "dihedral",
                        "Old Mustard",
                        "outer wing panel on the dihedral jig, block under the spar and a brick on top",
                        WoodBench::dihedral),
                photo(
                        "fuselage-box",
                        "Old Mustard",
                        "fuselage box from above, squared by foam rectangles and clamped while the glue cures",
                        WoodBench::box),
                photo(
                        "ribs",
                        "Long Friday",
                        "wing ribs laid out in order from root to tip, templates beside them",
                        WoodBench::ribs),
                photo(
                        "frame",
                        "Long Friday",
                        "left inner panel on the building board: ribs, carbon spar, pins along the trailing edge",
                        WoodBench::frame),
                photo(
                        "joiner",
                        "Long Friday",
                        "carbon wing joiner drawn half out of its sleeve between the two root ribs",
                        WoodBench::joiner),
                photo(
                        "v-mount",
                        "Long Friday",
                        "V-tail on its mount, both halves at the same height over the board",
                        () -> vMount(hangar)),
                photo(
                        "strut-jig",
                        "Two Penny",
                        "the biplane on the bench from the front quarter, wires tuned, struts dark red",
                        () -> biplane(hangar)),
                photo(
                        "nose-over",
                        "Two Penny",
                        "nose-over in wet grass: on its back, wheels up",
                        () -> noseOver(hangar)),
                photo(
                        "book",
                        "Paperknife",
                        "both halves hinged with tape and opened like a book, glue in the joint",
                        WoodBench::book));
    }

    private static BufferedImage shot(Scene scene, Camera camera) {
        return Studio.take(scene, camera, 1200, 900);
    }

    private static BufferedImage dihedral() {
        Skin board = Skins.plain(0xf1eee4, 0.08);
        Solid inner = Solids.egg(130, 900, 15)
                .moved(0, 0, 0)
                .within(Solids.block(230, 330, 100, 1).moved(0, -165, 0));
        Solid outer =
                Solids.egg(130, 900, 15).within(Solids.block(230, 290, 100, 1).moved(0, 145, 0));
        var scene = Scene.on(Floors.bench(113), Light.window())
                .add(
                        Thing.of(inner, board).at(0, 0, 16).turned(-90),
                        Thing.of(outer, board).rolled(6).at(0, 0, 16).turned(-90))
                .add(Thing.of(Solids.slab(30, 210, 30.3, 1), Skins.ply(30)).at(272, 0, 0));
        Skin brick = (x, y, z, nz) -> Skins.plain(0x9c4a32, 0.03)
                .at(x, y, z, nz)
                .times(0.75 + 0.5 * Noise.rough(x * 0.15, y * 0.15, z * 0.15, 4));
        scene.add(Thing.of(Solids.slab(200, 98, 62, 4), brick)
                .turned(8)
                .pitched(0)
                .at(-170, 0, 31));
        scene.add(Tools.weight(56).pitched(-6).at(150, 10, 46));
        scene.add(Tools.tape(150, 22, 0xe7dcb0).turned(90).at(0, 0, 31.5));
        scene.add(Tools.slip(80, 44, 0xf5e27a, "6° AT 290", "BLOCK 30.3")
                .turned(6)
                .at(250, -150, 0));
        scene.add(Tools.rule(300).turned(3).at(-60, -165, 0));
        return shot(scene, Camera.round(30, -10, 30, 14, 34, 700));
    }

    private static BufferedImage box() {
        var side = Skins.foam(0xf1eee4);
        var scene = FoamBench.matOnBench(127, 620, 450);
        double[] outline = {-260, 0, -260, 46, -120, 58, 40, 58, 260, 26, 260, 0};
        for (double y : new double[] {-45, 45}) {
            scene.add(Thing.of(Solids.plate(5, 0.5, outline).rolled(90), side).at(0, y + 2.5, 3));
            scene.add(Thing.of(
                            Solids.plate(2, 0.3, -260, 0, -260, 44, -120, 55, 40, 55, 70, 0)
                                    .rolled(90),
                            Skins.ply(2))
                    .at(0, y < 0 ? y + 4.6 : y - 2.6, 3));
        }
        for (double x : new double[] {-180, -30, 130}) {
            scene.add(Thing.of(Solids.slab(34, 85, 44, 1), Skins.foam(0xb7c9d4)).at(x, 0, 3));
        }
        scene.add(Thing.of(Solids.slab(4, 92, 44, 0.5), Skins.ply(4)).at(-258, 0, 3));
        for (double[] clamp : new double[][] {{-180, 1}, {130, 1}, {-30, -1}}) {
            for (var part : Tools.springClamp(0x2f66b0)) {
                scene.add(part.turned(clamp[1] > 0 ? 84 : -96).at(clamp[0], clamp[1] * 46, 28));
            }
        }
        for (var part : Tools.square(90, 130)) {
            scene.add(part.turned(180).at(250, 48, 48));
        }
        scene.add(Tools.slip(96, 44, 0xf5e27a, "DIAGONALS", "412 AND 412")
                .turned(-5)
                .at(190, -150, 3));
        scene.add(Tools.pencil(0x3f7d46).turned(16).at(-120, -150, 3));
        return FoamBench.from(scene, 0, 0, 640, 3);
    }

    private static BufferedImage ribs() {
        var scene = FoamBench.matOnBench(131, 660, 470);
        for (int i = 0; i < 12; i++) {
            double by = 1 - 0.037 * i;
            var outline = Things.scaled(RIB, by);
            var rib = Thing.of(
                    Solids.plate(1.6, 0.2, outline)
                            .without(Solids.drum(7 * by, 20, 0).moved(58 * by, 9 * by, -5)),
                    Skins.balsa());
            scene.add(rib.turned((i * 37 % 5) - 2).at(i < 6 ? -290 : -50, 160 - (i % 6) * 50, 3));
        }
        for (int i = 0; i < 2; i++) {
            scene.add(Thing.of(Solids.plate(1.5, 0.2, Things.scaled(RIB, i == 0 ? 1 : 0.6)), Skins.ply(1.5))
                    .turned(-84 + 4 * i)
                    .at(200 + 52 * i, 140, 3));
        }
        scene.add(Tools.sandingBlock().turned(80).at(275, -130, 3));
        scene.add(
                Tools.slip(70, 34, 0xf6f3e6, "ROOT").at(-195, 202, 3),
                Tools.slip(70, 34, 0xf6f3e6, "TIP").turned(3).at(40, -150, 3));
        for (var part : Tools.knife()) {
            scene.add(part.turned(12).at(-150, -180, 3));
        }
        return FoamBench.from(scene, 0, 0, 660, -2);
    }

    private static BufferedImage frame() {
        var plan = Drawn.sheet(700, 300, 2, g -> {
            g.setColor(new Color(0xf4f1e6));
            g.fill(new java.awt.geom.Rectangle2D.Double(-345, -145, 690, 290));
            FoamBench.pen(g, new Color(0x5a6484), 0.5);
            for (int i = 0; i < 12; i++) {
                Tools.line(g, -275 + 50 * i, -110, -275 + 50 * i, 100);
            }
            Tools.line(g, -320, 95, 320, 95);
            Tools.line(g, -320, -100, 320, -100);
            Tools.line(g, -320, 30, 320, 30);
            Lettering.write(g, "LEFT INNER PANEL", -330, 118, 11);
        });
        var scene = Scene.on(Floors.board(0xb99d74, 6), Light.window())
                .add(Thing.of(Solids.slab(700, 300, 0.4, 0.1), Skins.printed(Skins.plain(0xf4f1e6, 0.3), plan, 2)));
        var rib = Thing.of(Solids.plate(1.6, 0.2, RIB).moved(0, 0, -0.8), Skins.balsa())
                .rolled(90)
                .turned(-90);
        for (int i = 0; i < 11; i++) {
            scene.add(rib.at(-275 + 50 * i, 98, 8));
        }
        scene.add(Thing.of(Solids.slab(560, 7, 1.2, 0.2), Skins.carbon()).at(-25, 34, 28.4));
        scene.add(Thing.of(Solids.slab(560, 1.6, 22, 0.2), Skins.balsa()).at(-25, 34, 6));
        scene.add(Thing.of(Solids.barrel(4, 560, 1), Skins.balsa()).at(-305, 97, 10));
        scene.add(Thing.of(Solids.plate(3, 0.3, -280, 0, 280, 0, 280, 22, -280, 22), Skins.balsa())
                .at(-25, -112, 5));
        for (int i = 0; i < 6; i++) {
            for (var part : Tools.pin(-250 + 100 * i, -96, 0, i % 2 == 0 ? 0xc53a30 : 0xe3c13a)) {
                scene.add(part);
            }
            for (var part : Tools.pin(-225 + 100 * i, 105, 0, 0x2f66b0)) {
                scene.add(part);
            }
        }
        scene.add(
                Tools.bar(150, 26, 20, 0x53585e).turned(2).at(-150, 36, 30),
                Tools.bar(150, 26, 20, 0x53585e).turned(-1).at(110, 33, 30));
        scene.add(Tools.tapeRoll(36, 0xe7dcb0).at(310, -185, 0));
        return shot(scene, Camera.round(-10, -10, 10, -10, 50, 720));
    }

    private static BufferedImage joiner() {
        Skin film = Skins.plain(0xf2cf2e, 0.5);
        Solid root = Solids.egg(104, 400, 15).within(Solids.block(200, 130, 80, 1));
        Skin skin = (x, y, z, nz) -> Math.abs(y) > 63.5 ? Skins.balsa().at(x, y, z, nz) : film.at(x, y, z, nz);
        Solid hole = Solids.drum(7.4, 200, 0).moved(0, 0, -100).rolled(90).moved(-34, 0, 0);
        var scene = Scene.on(Floors.bench(137), Light.lamp());
        for (double side : new double[] {-1, 1}) {
            scene.add(Thing.of(root.without(hole), skin).at(0, side * 130, 18).turned(-90));
            scene.add(Thing.of(Solids.barrel(3, 26, 1), Skins.steel())
                    .turned(side > 0 ? 180 : 0)
                    .at(side * 66 - 0, -52, 18));
        }
        scene.add(Thing.of(Solids.barrel(6, 190, 0.8), Skins.carbon()).at(-86, 34, 18));
        scene.add(Thing.of(
                        Solids.barrel(7.2, 12, 0.4)
                                .without(Solids.barrel(6.1, 40, 0).moved(-9, 0, 0)),
                        Skins.woven())
                .at(56, 34, 18));
        scene.add(
                Tools.timber(80, 210, 4).at(-135, 0, 0),
                Tools.timber(80, 210, 4).at(135, 0, 0));
        scene.add(Tools.slip(76, 42, 0xf5e27a, "Ø 12.02", "TWIST OUT").turned(6).at(10, -120, 0));
        return shot(scene, Camera.round(0, -8, 10, -24, 40, 400));
    }

    private static BufferedImage vMount(Hangar hangar) {
        var scene = Scene.on(Floors.board(0xcaa878, 9), Light.window());
        var build = hangar.build("Long Friday");
        var bare = Skins.balsa();
        scene.add(build.surface("V-tail", spot -> bare.at(spot.y(), spot.x(), spot.z(), 1))
                .at(-970, 0, 26)
                .turned(-90));
        scene.add(Thing.of(Solids.barrel(7, 420, 1), Skins.carbon()).turned(-90).at(0, 340, 38));
        scene.add(Thing.of(Solids.slab(34, 120, 3, 0.5).rolled(0), Skins.plain(0xdcd8c6, 0.5))
                .at(0, 10, 42));
        scene.add(
                Tools.timber(60, 60, 30).at(0, 240, 0), Tools.timber(60, 80, 30).at(0, 20, 0));
        for (double side : new double[] {-1, 1}) {
            scene.add(Tools.timber(90, 36, 14).at(side * 236, 0, 0));
            scene.add(Thing.of(Solids.slab(26, 1.2, 230, 0.3), Skins.steel()).at(side * 250, 0, 12));
            scene.add(Thing.of(Solids.rod(0.5, side * 238, 20, 216, 0, 400, 45), Skins.plain(0xb52f26, 0.2)));
        }
        scene.add(Tools.slip(80, 44, 0xf5e27a, "213 BOTH", "DO NOT TOUCH")
                .turned(-8)
                .at(110, -120, 0));
        return shot(scene, Camera.round(0, 20, 90, 14, 20, 660));
    }

    private static BufferedImage biplane(Hangar hangar) {
        var scene = Scene.on(Floors.bench(151), Light.window());
        for (var thing : hangar.whole("Two Penny")) {
            scene.add(thing.at(-200, 0, 0).pitched(0).turned(62).at(0, 0, 176));
        }
        scene.add(Tools.timber(110, 110, 150).at(0, 0, 0).turned(0).at(300, 560, 0));
        return Studio.take(scene, Camera.round(60, 40, 150, 4, 17, 1420), 1200, 900);
    }

    private static BufferedImage noseOver(Hangar hangar) {
        var scene = Scene.on(Floors.grass(1.1, 23, 0x66743a, 0x355f26), Light.day());
        for (var thing : hangar.whole("Two Penny")) {
            scene.add(thing.at(-200, 0, 0).rolled(180).pitched(-9).turned(40).at(0, 0, 178));
        }
        var picture = Studio.take(scene, Camera.round(40, 60, 110, 10, 26, 1500), 1200, 900);
        return new Meadow(picture, 77, 1.05).grass(0.8, 1.08, 0.1, 2600).image();
    }

    private static BufferedImage book() {
        Solid half = Solids.plate(5, 0.6, 0, 300, 0, -300, 380, -250, 380, -140);
        Skin foam = (x, y, z, nz) -> Math.abs(nz) < 0.5
                ? Skins.plain(0xefe9d6, 0.05).at(x, y, z, nz)
                : Skins.plain(0xf4f4f1, 0.1).at(x, y, z, nz);
        var scene = Scene.on(Floors.bench(157), Light.lamp());
        scene.add(Thing.of(half, foam).pitched(-26).at(4, 40, 2));
        scene.add(Thing.of(half.moved(0, 0, 0), foam)
                .rolled(180)
                .turned(180)
                .pitched(26)
                .at(-4, 40, 8));
        scene.add(Thing.of(Solids.slab(3.4, 590, 2.4, 1.1), Skins.plain(0xe2c98a, 0.7))
                .at(0, 40, 5));
        scene.add(
                Tools.timber(40, 190, 60).at(190, -90, 0),
                Tools.timber(40, 190, 60).at(-190, -90, 0));
        scene.add(Thing.of(Solids.barrel(4, 520, 0.5), Skins.carbon()).turned(4).at(-250, -310, 4));
        for (var part : Tools.glueBottle(0xf2f2ee, 0x2f66b0)) {
            scene.add(part.pitched(90).turned(60).at(270, 190, 22));
        }
        return shot(scene, Camera.round(0, 0, 30, 8, 46, 860));
    }
}
