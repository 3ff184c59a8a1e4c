package planewright.samples.pictures;

import static planewright.samples.pictures.Picture.photo;

import java.awt.image.BufferedImage;
import java.util.List;
import planewright.samples.studio.Camera;
import planewright.samples.studio.Floors;
import planewright.samples.studio.Light;
import planewright.samples.studio.Noise;
import planewright.samples.studio.Scene;
import planewright.samples.studio.Skin;
import planewright.samples.studio.Skins;
import planewright.samples.studio.Solid;
import planewright.samples.studio.Solids;
import planewright.samples.studio.Studio;
import planewright.samples.studio.Thing;

/** The tailless wings close up: fin, canopy, camera, motor. */
final class RayCloseUps {
    private RayCloseUps() {}

    static List<Picture> all() {
        return List.of(
                photo(
                        "fin",
                        "Slate Ray",
                        "fin glued to the centre section with a fillet along both sides",
                        RayCloseUps::fin),
                photo(
                        "canopy",
                        "Slate Ray",
                        "foam canopy turned over and hollowed by hand, pencil line round the rim, crumbs on the mat",
                        RayCloseUps::canopy),
                photo(
                        "camera",
                        "Slate Ray",
                        "action camera in the nose behind its fairing, lens just clear of the foam",
                        RayCloseUps::camera),
                photo(
                        "motor",
                        "Slate Ray",
                        "pusher motor on its plywood mount with the propeller and a note to keep clear",
                        RayCloseUps::motor),
                photo(
                        "two-fins",
                        "Slate Ray Two",
                        "both fins on the centre section, held by masking tape, square between them",
                        RayCloseUps::twoFins),
                photo(
                        "ballast",
                        "Slate Ray",
                        "a 2.6 g steel washer let into the right tip, orange tape ready to cover it",
                        RayCloseUps::ballast));
    }

    private static BufferedImage shot(Scene scene, Camera camera) {
        return Studio.take(scene, camera, 1200, 900);
    }

    private static BufferedImage upright(Scene scene, Camera camera) {
        return Studio.take(scene, camera, 900, 1200);
    }

    private static BufferedImage fin() {
        Solid deck = Solids.slab(520, 560, 60, 18).moved(0, 0, -26);
        Solid fin =
                Solids.plate(9, 4, -75, 0, 15, 165, 105, 165, 75, 0).rolled(90).moved(0, 4.5, 26);
        var orange = Skins.plain(0xe8601c, 0.18);
        var grey = Skins.plain(0x4b5966, 0.12);
        var filler = Skins.plain(0xdfd7c2, 0.1);
        Skin skin = (x, y, z, nz) -> {
            double paint = Noise.step(0.3, 1.3, Math.min(fin.at(x, y, z), deck.at(x, y, z)));
            var below = fin.at(x, y, z) < deck.at(x, y, z) ? orange : grey;
            return below.at(x, y, z, nz).mixed(filler.at(x, y, z, nz), paint);
        };
        var scene = Scene.on(Floors.bench(12), Light.window())
                .add(Thing.estimated(deck.blended(fin, 36), skin, -260, -320, -40, 300, 320, 200)
                        .turned(-14));
        scene.add(Tools.tape(60, 19, 0xe7dcb0).turned(74).at(-112, 62, 60.2));
        return upright(scene, Camera.round(10, 0, 112, 30, 28, 280));
    }

    private static BufferedImage canopy() {
        Solid outer = Solids.egg(150, 60, 56)
                .within(Solids.block(400, 400, 100, 1).moved(0, 0, 50))
                .moved(0, 0, 0);
        Solid inner = Solids.egg(132, 44, 42);
        Solid shell = Solids.egg(150, 60, 56)
                .without(inner)
                .within(Solids.block(400, 400, 100, 0.5).moved(0, 0, 50));
        Skin skin = (x, y, z, nz) -> {
            boolean rim = z < 2.5;
            double line = Math.abs(Math.hypot(x / 141, y / 52) - 1);
            return rim && line < 0.012
                    ? Skins.plain(0x4a4e63, 0.05).at(x, y, z, nz)
                    : Skins.foam(0xf0f0ec).at(x, y, z, nz);
        };
        var scene = Scene.on(Floors.bench(19), Light.window())
                .add(Tools.cuttingMat(600, 430).turned(9))
                .add(Thing.estimated(shell, skin, -152, -62, -1, 152, 62, 58)
                        .rolled(180)
                        .turned(16)
                        .at(0, 20, 60))
                .add(Tools.sandingBlock().turned(-24).at(-150, -105, 3));
        scene.add(Thing.of(outer.within(Solids.block(60, 40, 26, 6).moved(20, 0, 20)), Skins.foam(0xeeeeea))
                .at(60, -110, -4));
        for (int i = 0; i < 16; i++) {
            scene.add(crumb(i));
        }
        for (var part : Tools.knife()) {
            scene.add(part.turned(196).at(215, -85, 3));
        }
        return shot(scene, Camera.round(0, 0, 12, -14, 48, 460));
    }

    private static Thing crumb(int i) {
        double a = i * 2.4;
        double r = 60 + 9 * i % 83;
        return Thing.of(Solids.ball(2 + i % 3), Skins.foam(0xf2f2ee))
                .at(60 + r * Math.cos(a), -100 + r * 0.5 * Math.sin(a), 5);
    }

    private static BufferedImage camera() {
        Solid nose = Solids.egg(190, 66, 52).blended(Solids.egg(260, 300, 24).moved(170, 0, -8), 40);
        Solid bay = Solids.block(46, 66, 52, 3)
                .moved(-150, 0, 8)
                .blended(Solids.block(80, 44, 40, 8).moved(-190, 0, 8), 3);
        Skin skin = (x, y, z, nz) -> x > -176 && x < -124 && Math.abs(y) < 33 && z < 40 && z > -16 && nz < 0.2
                ? Skins.foam(0xeeeeea).at(x, y, z, nz)
                : Math.abs(y) < 36 && z > 12 && x > -112 && x < 70
                        ? Skins.plain(0x1b1c1e, 0.6).at(x, y, z, nz)
                        : z > -12
                                ? Skins.plain(0x4b5966, 0.14).at(x, y, z, nz)
                                : Skins.foam(0xeeeeea).at(x, y, z, nz);
        var scene = Scene.on(Floors.bench(27), Light.window())
                .add(Thing.estimated(nose.without(bay), skin, -192, -300, -54, 430, 300, 54)
                        .at(60, 0, 54));
        var body = Skins.plain(0x3a3d42, 0.3);
        scene.add(Thing.of(Solids.block(34, 58, 42, 4), body).at(-84, 0, 62));
        scene.add(Thing.of(Solids.barrel(15, 14, 2), Skins.plain(0x16171a, 0.7)).at(-114, 8, 66));
        scene.add(Thing.of(Solids.egg(5, 10.5, 10.5), Skins.plain(0x27405e, 1)).at(-113, 8, 66));
        scene.add(Thing.of(Solids.ring(12.5, 1.3).pitched(90), Skins.plain(0xa8acb0, 0.8))
                .at(-114, 8, 66));
        scene.add(Thing.of(Solids.ball(2), Skins.plain(0xd23a2e, 0.6)).at(-101, -18, 75));
        scene.add(Tools.slip(74, 40, 0xf5e27a, "LENS 2 MM", "CLEAR").turned(-62).at(-196, 66, 0));
        return shot(scene, Camera.round(-30, 0, 50, -62, 24, 430));
    }

    private static BufferedImage motor() {
        var ply = Skins.ply(6);
        var scene = Scene.on(Floors.bench(33), Light.window());
        Solid block = Solids.block(240, 300, 60, 14).moved(-170, 0, 0);
        scene.add(Thing.of(
                        block,
                        (x, y, z, nz) -> nz > -0.3 && z > -10
                                ? Skins.plain(0x4b5966, 0.12).at(x, y, z, nz)
                                : Skins.foam(0xeeeeea).at(x, y, z, nz))
                .at(0, 0, 85));
        scene.add(Thing.of(
                        Solids.plate(6, 1.5, -34, -27, 34, -27, 34, 27, -34, 27)
                                .turned(90)
                                .pitched(90),
                        ply)
                .at(-50, 0, 85));
        for (double[] screw : new double[][] {{-20, 18}, {20, 18}, {-20, -18}, {20, -18}}) {
            scene.add(Thing.of(Solids.barrel(3.2, 3, 0.8), Skins.steel()).at(-44, screw[0], 85 + screw[1]));
        }
        scene.add(Thing.of(Solids.barrel(15, 12, 1.5), Skins.steel()).at(-43, 0, 85));
        Skin can = (x, y, z, nz) -> {
            double slots = Math.sin(Math.atan2(y, z) * 12);
            return x > 18 && slots > 0.35 && Math.hypot(y, z) < 15.4
                    ? Skins.plain(0xb06b3a, 0.5).at(x, y, z, nz)
                    : Skins.plain(0x2b2e33, 0.75).at(x, y, z, nz);
        };
        scene.add(Thing.of(Solids.barrel(17, 30, 2), can).at(-31, 0, 85));
        scene.add(Thing.of(Solids.barrel(3, 34, 0.6), Skins.steel()).at(-2, 0, 85));
        scene.add(Things.propeller(215, 0x24262a).rolled(24).at(14, 0, 85));
        scene.add(Thing.of(Solids.barrel(8, 7, 1), Skins.steel()).at(20, 0, 85));
        scene.add(Thing.of(Solids.barrel(5, 9, 2.5), Skins.steel()).at(26, 0, 85));
        for (int i = -1; i <= 1; i++) {
            int[] colours = {0x1f1f21, 0xc23a2e, 0xd9b534};
            scene.add(Thing.of(
                    Solids.wire(1.7, -24, 6 * i, 69, -46, 9 * i, 52, -70, 7 * i, 54, -100, 5 * i, 60),
                    Skins.plain(colours[i + 1], 0.35)));
        }
        scene.add(Tools.timber(200, 200, 56).at(-180, 0, 0));
        scene.add(Tools.slip(96, 52, 0xf5e27a, "KEEP CLEAR", "PROPELLER OFF", "FOR SETTING UP")
                .turned(52)
                .at(118, -50, 0));
        return shot(scene, Camera.round(10, -10, 66, 52, 26, 380));
    }

    private static BufferedImage twoFins() {
        Solid deck = Solids.plate(30, 8, -230, 150, -20, 260, 200, 260, 200, -260, -20, -260, -230, -150);
        Solid fin = Solids.plate(8, 3, -70, 0, 10, 138, 95, 138, 70, 0).rolled(90);
        var foam = Skins.foam(0xf0f0ec);
        var scene = Scene.on(Floors.bench(44), Light.lamp())
                .add(
                        Thing.of(deck, foam).at(0, 0, 10),
                        Tools.timber(150, 80, 10).at(-60, 0, 0),
                        Tools.timber(120, 420, 10).at(120, 0, 0));
        for (double side : new double[] {-130, 130}) {
            scene.add(Thing.of(fin, Skins.balsa()).at(60, side + 4, 38));
            scene.add(Tools.tape(60, 19, 0xe7dcb0).rolled(52).turned(0).at(60, side - 18, 46));
            scene.add(Tools.tape(60, 19, 0xe7dcb0).rolled(-52).at(60, side + 18, 46));
        }
        for (var part : Tools.square(110, 150)) {
            scene.add(part.rolled(90).turned(0).at(20, 40, 62));
        }
        return shot(scene, Camera.round(30, 0, 70, 62, 26, 560));
    }

    private static BufferedImage ballast() {
        Solid tip = Solids.plate(24, 9, -180, -220, -60, 160, 80, 160, 130, -220);
        Solid pocket = Solids.drum(12, 30, 1).moved(20, 105, 17);
        var grey = Skins.plain(0x4b5966, 0.12);
        Skin skin = (x, y, z, nz) -> z < 22 && Math.hypot(x - 20, y - 105) < 14
                ? Skins.foam(0xeeeeea).at(x, y, z, nz)
                : y > 50
                        ? Skins.plain(0xe8601c, 0.15).at(x, y, z, nz)
                        : y > 42 ? Skins.foam(0xeeeeea).at(x, y, z, nz) : grey.at(x, y, z, nz);
        Solid washer = Solids.drum(10, 2, 0.4).without(Solids.drum(4.2, 9, 0).moved(0, 0, -4));
        var scene = Scene.on(Floors.bench(51), Light.window())
                .add(Thing.of(tip.without(pocket), skin).turned(-20))
                .add(Thing.of(washer, Skins.steel()).at(20, 105, 18.5).turned(-20))
                .add(Thing.of(washer, Skins.steel()).at(150, 40, 0))
                .add(Tools.tape(60, 48, 0xe8601c).pitched(2).turned(14).at(160, -20, 1))
                .add(Tools.slip(76, 42, 0xf5e27a, "RIGHT TIP", "WASHER 2.6 G")
                        .turned(4)
                        .at(186, 112, 0));
        for (var part : Tools.knife()) {
            scene.add(part.turned(76).at(-70, 20, 24));
        }
        return shot(scene, Camera.above(50, 70, 360));
    }
}
