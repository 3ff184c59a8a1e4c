package planewright.samples.pictures;

import static planewright.samples.pictures.Picture.photo;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
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

/** Servo, pack, leads, scales and balance stand. */
final class Electrics {
    private Electrics() {}

    static List<Picture> all(Hangar hangar) {
        return List.of(
                photo(
                        "servo",
                        "Slate Ray",
                        "elevon servo in its pocket with pushrod and control horn, elevon at neutral",
                        Electrics::servo),
                photo(
                        "battery",
                        "Slate Ray",
                        "battery bay with the pack under its strap, leads led aft",
                        Electrics::battery),
                photo(
                        "loom",
                        "Slate Ray",
                        "wiring loom laid out on the mat with every lead labelled for the hand-over",
                        Electrics::loom),
                photo(
                        "scales",
                        "Slate Ray",
                        "the wing on three kitchen scales, one under the nose and one under each panel, reading 451, 575 and 570 g with their blocks",
                        () -> scales(hangar)),
                photo(
                        "balance",
                        "Slate Ray",
                        "the wing level on the balance stand, points at 203 mm under the marks",
                        () -> balance(hangar)));
    }

    static List<Thing> servoBody(int arm) {
        var body = Skins.plain(0x22304a, 0.5);
        var things = new ArrayList<Thing>();
        things.add(Thing.of(
                        Solids.block(24, 12, 23, 1)
                                .with(Solids.block(33, 12, 2, 0.5).moved(0, 0, 5)),
                        body)
                .at(0, 0, 0));
        things.add(Thing.of(Solids.drum(5.6, 4, 0.5), body).at(-6, 0, 11));
        things.add(
                Thing.of(Solids.drum(2.6, 5, 0.3), Skins.plain(0xd9d7cf, 0.4)).at(-6, 0, 14));
        Solid horn = Solids.plate(1.8, 0.5, -3.5, -3, 3.5, -3, 2.2, 17, -2.2, 17);
        things.add(Thing.of(horn.turned(arm), Skins.plain(0xf0eee6, 0.35)).at(-6, 0, 17));
        return things;
    }

    private static BufferedImage servo() {
        Solid wing = Solids.plate(26, 3, -150, -170, 60, -170, 60, 170, -150, 170);
        Solid pocket = Solids.block(36, 15, 30, 1.5).moved(-55, -10, 26);
        Solid elevon = Solids.block(96, 330, 12, 4);
        var grey = Skins.plain(0x4b5966, 0.12);
        var scene = Scene.on(Floors.bench(6), Light.window())
                .add(Thing.of(
                        wing.without(pocket),
                        (x, y, z, nz) -> z < 24 && Math.abs(x + 55) < 19 && Math.abs(y + 10) < 9
                                ? Skins.foam(0xeeeeea).at(x, y, z, nz)
                                : grey.at(x, y, z, nz)))
                .add(Thing.of(elevon, grey).pitched(3).at(111, 0, 17));
        for (var part : servoBody(0)) {
            scene.add(part.turned(0).at(-55, -10, 22));
        }
        scene.add(Thing.of(Solids.rod(0.9, -61, 4, 41, -61, 4, 36, -60, 5, 38, 74, 8, 42, 76, 8, 42), Skins.steel()));
        Solid horn = Solids.plate(2, 0.5, -10, 0, 12, 0, 4, 24, -2, 24).rolled(90);
        scene.add(Thing.of(horn.with(Solids.block(26, 16, 1.6, 0.4)), Skins.plain(0xf0eee6, 0.4))
                .at(76, 9, 23.5));
        scene.add(
                Thing.of(Solids.barrel(2.4, 9, 0.5), Skins.plain(0xc9a24a, 0.8)).at(66, 8, 42));
        for (int i = 0; i < 3; i++) {
            int[] colours = {0x5a3a22, 0xb5382c, 0xd9822e};
            scene.add(Thing.of(
                    Solids.wire(
                            0.8,
                            -68,
                            -14 + 1.6 * i,
                            26,
                            -86,
                            -30 + 1.6 * i,
                            28,
                            -110,
                            -60 + 1.6 * i,
                            27,
                            -128,
                            -170,
                            27),
                    Skins.plain(colours[i], 0.3)));
        }
        scene.add(Tools.tape(90, 19, 0xe7dcb0).turned(86).at(-118, -95, 26.8));
        scene.add(Tools.tape(330, 24, 0x66727e).turned(90).at(60, 0, 25.4));
        return Studio.take(scene, Camera.round(2, -6, 30, 20, 40, 225), 1200, 900);
    }

    static List<Thing> pack(double length) {
        var print = Drawn.sheet(length, 36, 6, g -> {
            g.setColor(new Color(0xf2efe2));
            g.fill(new java.awt.geom.Rectangle2D.Double(-length * 0.3, -11, length * 0.6, 22));
            g.setColor(new Color(0x20264a));
            Lettering.centred(g, "PACK 2", 0, 4.5, 6);
            Lettering.centred(g, "3 CELLS", 0, -5, 5);
        });
        return List.of(
                Thing.of(Solids.slab(length, 36, 24, 3), Skins.printed(Skins.plain(0x2d4f8f, 0.4), print, 6)),
                Thing.of(Solids.block(5, 30, 18, 1), Skins.plain(0xe9dfae, 0.2)).at(length / 2, 0, 12));
    }

    private static BufferedImage battery() {
        Solid hull = Solids.block(420, 170, 90, 24);
        Solid bay = Solids.block(210, 58, 60, 5)
                .moved(-20, 0, 40)
                .with(Solids.block(90, 20, 30, 4).moved(120, 0, 44));
        var scene = Scene.on(Floors.bench(61), Light.lamp())
                .add(Thing.of(
                                hull.without(bay),
                                (x, y, z, nz) -> Math.abs(y) < 30 && z < 44 && z > 5 && Math.abs(x + 5) < 172
                                        ? Skins.foam(0xeeeeea).at(x, y, z, nz)
                                        : Skins.plain(0x4b5966, 0.12).at(x, y, z, nz))
                        .at(0, 0, 45));
        scene.add(Thing.of(Solids.slab(206, 54, 2, 0.5), Skins.ply(2)).at(-20, 0, 55));
        for (var part : pack(120)) {
            scene.add(part.at(-40, 0, 57));
        }
        Solid strap = Solids.block(20, 44, 28, 4).without(Solids.block(30, 40.5, 25, 3));
        scene.add(
                Thing.of(strap, Skins.woven()).at(-62, 0, 69.5),
                Thing.of(strap, Skins.woven()).at(0, 0, 69.5));
        scene.add(Thing.of(
                Solids.wire(2.4, 20, 7, 70, 40, 14, 76, 62, 4, 80, 90, 2, 84, 140, 4, 78),
                Skins.plain(0xb52f26, 0.35)));
        scene.add(Thing.of(
                Solids.wire(2.4, 20, -7, 70, 44, -16, 74, 64, -6, 78, 90, -4, 84, 140, -5, 78),
                Skins.plain(0x1d1d1f, 0.35)));
        scene.add(Thing.of(Solids.block(24, 16, 9, 1.5), Skins.plain(0xd9a52c, 0.4))
                .at(94, -1, 85));
        int[] leads = {0x1d1d1f, 0xb52f26, 0xd9b534, 0xe8e6de};
        for (int i = 0; i < 4; i++) {
            double y = 10 - i * 1.9;
            scene.add(Thing.of(
                    Solids.wire(0.8, 20, y, 78, 28, y + 4, 84, 20, y + 10, 86, 0, y + 14, 88, -18, y + 13, 86),
                    Skins.plain(leads[i], 0.3)));
        }
        scene.add(Thing.of(Solids.block(10, 11, 5, 0.6), Skins.plain(0xecebe4, 0.3))
                .at(-22, 20, 87));
        scene.add(Tools.slip(110, 52, 0xf5e27a, "CHARGE OUTSIDE", "THE MODEL, NEVER", "ALONE")
                .turned(5)
                .at(-90, -132, 0));
        return Studio.take(scene, Camera.round(-10, -30, 50, 10, 52, 390), 1200, 900);
    }

    private static BufferedImage loom() {
        var scene = FoamBench.matOnBench(71, 620, 450);
        String[] labels = {"L ELEVON", "R ELEVON", "MOTOR", "CAMERA", "RECEIVER", "SPARE"};
        int[] colours = {0xb5382c, 0xd9822e, 0x1f1f21, 0x2f66b0, 0x5a3a22, 0xe0dcd0};
        for (int i = 0; i < 6; i++) {
            double y = 130 - 52 * i;
            for (int k = 0; k < 3; k++) {
                double d = (k - 1) * 2.4;
                int colour = k == 0 ? 0x3a2a20 : k == 1 ? 0xb5382c : colours[i];
                scene.add(Thing.of(
                        Solids.wire(
                                1.1,
                                -190,
                                d + 6 - 2 * i,
                                6 + k,
                                -120,
                                d + 4,
                                6 + k,
                                -60 + 6 * i,
                                d + y * 0.25,
                                5,
                                20,
                                d + y * 0.86,
                                5,
                                90,
                                d + y,
                                5,
                                128,
                                d + y,
                                5),
                        Skins.plain(colour, 0.3)));
            }
            scene.add(Thing.of(Solids.slab(20, 9, 6, 0.8), Skins.plain(0x1d1d1f, 0.3))
                    .at(136, y, 3));
            scene.add(Tools.slip(86, 24, i % 2 == 0 ? 0xf6f3e6 : 0xf5e27a, labels[i])
                    .turned(i * 3 % 7 - 3)
                    .at(206, y, 3));
            scene.add(Thing.of(Solids.barrel(3.6, 8, 1), Skins.plain(0x1d1d1f, 0.3))
                    .turned(0)
                    .at(76, y, 5.4));
        }
        scene.add(
                Thing.of(Solids.slab(52, 34, 14, 2), Skins.plain(0x2b2d31, 0.4)).at(-214, 0, 3));
        for (double x : new double[] {-150, -110}) {
            scene.add(Thing.of(Solids.block(4, 18, 10, 1.5), Skins.plain(0xefeee8, 0.3))
                    .at(x, 3, 6.5));
        }
        scene.add(Tools.slip(120, 60, 0xf6f3e6, "HAND-OVER", "CH1 L  CH2 R", "CH3 MOTOR")
                .turned(-7)
                .at(-190, -140, 3));
        scene.add(Tools.pencil(0x3f7d46).turned(34).at(-270, 90, 3));
        return FoamBench.from(scene, 0, -4, 600, 2);
    }

    private static BufferedImage scales(Hangar hangar) {
        var scene = Scene.on(Floors.bench(3), Light.window());
        String[] readings = {"451", "575", "570"};
        double[][] places = {{80, 152}, {-300, -340}, {300, -340}};
        double[][] feet = {{26, 122, 88}, {-300, -270, 98}, {300, -270, 98}};
        for (int i = 0; i < 3; i++) {
            for (var part : Tools.scale(readings[i])) {
                scene.add(part.at(places[i][0], places[i][1], 0));
            }
            scene.add(Tools.timber(34, 46, feet[i][2]).at(feet[i][0], feet[i][1], 27));
        }
        for (var thing : hangar.whole("Slate Ray")) {
            scene.add(thing.turned(-90).at(0, 60, 136));
        }
        return Studio.take(scene, Camera.round(0, -110, 60, 0, 74, 1580), 1600, 900);
    }

    private static BufferedImage balance(Hangar hangar) {
        var scene = Scene.on(Floors.bench(14), Light.lamp());
        for (double side : new double[] {-110, 110}) {
            scene.add(Tools.timber(150, 70, 20).at(side, 0, 0));
            scene.add(Tools.timber(28, 28, 200).at(side, 0, 20));
            scene.add(Thing.of(Solids.rod(2.4, side, 0, 216, side, 0, 240), Skins.steel()));
            scene.add(Thing.of(Solids.ball(5), Skins.plain(0x2a2a2c, 0.2)).at(side, 0, 240));
        }
        scene.add(Tools.timber(240, 22, 14).at(0, 0, 30));
        for (var thing : hangar.whole("Slate Ray")) {
            scene.add(thing.turned(-90).at(0, 203, 262));
        }
        scene.add(Tools.rule(300).turned(12).at(-60, 200, 0));
        scene.add(Tools.slip(120, 62, 0xf5e27a, "203 MM AFT", "OF THE DATUM")
                .turned(160)
                .at(190, 210, 0));
        return Studio.take(scene, Camera.round(0, 20, 170, 152, 19, 1500), 1200, 900);
    }
}
