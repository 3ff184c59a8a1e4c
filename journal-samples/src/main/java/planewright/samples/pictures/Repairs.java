package planewright.samples.pictures;

import static planewright.samples.pictures.Picture.photo;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import planewright.samples.studio.Camera;
import planewright.samples.studio.Drawn;
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

/** What broke and how it was mended. */
final class Repairs {
    private static final Skin MUSTARD = Skins.plain(0xd4a020, 0.2);
    private static final Skin WHITE = Skins.plain(0xf2f2ee, 0.15);

    private Repairs() {}

    static List<Picture> all() {
        return List.of(
                photo(
                        "dent",
                        "Old Mustard",
                        "left leading edge after the post: a dent 40 mm wide with cracks running back",
                        Repairs::dent),
                photo(
                        "wedge",
                        "Old Mustard",
                        "the dent cut back to a clean wedge, foam board offcut glued in, held with tape",
                        Repairs::wedge),
                photo(
                        "seat",
                        "Old Mustard",
                        "wing seat from above with strips of glass cloth over the crack, resin still wet",
                        Repairs::seat),
                photo(
                        "broken-nose",
                        "Paperknife",
                        "the pod's nose broken off at the first former, pieces laid out on the mat",
                        Repairs::brokenNose),
                photo(
                        "new-nose",
                        "Paperknife",
                        "new front scarfed on, glue under tape, two clamps and a stop at the tip",
                        Repairs::newNose),
                photo(
                        "fin-stump",
                        "Slate Ray",
                        "the fin broken off with its tongue beside the slot cut clean again",
                        Repairs::finStump),
                photo(
                        "strip",
                        "Slate Ray",
                        "carbon strip let in across a crack in the lower side, weighted film over it",
                        Repairs::strip));
    }

    private static BufferedImage shot(Scene scene, Camera camera) {
        return Studio.take(scene, camera, 1200, 900);
    }

    private static Solid mustardEdge() {
        return Solids.egg(92, 900, 24)
                .moved(70, 0, 0)
                .with(Solids.block(300, 1200, 40, 3).moved(200, 0, 0))
                .within(Solids.block(290, 420, 200, 1).moved(120, 0, 0));
    }

    private static BufferedImage dent() {
        Solid blow = Solids.drum(17, 200, 0)
                .moved(-20, 0, -100)
                .with(Solids.egg(26, 24, 30).moved(-14, 0, 4));
        Skin skin = (x, y, z, nz) -> {
            double ragged = Math.hypot(x + 16, y) + 9 * Noise.rough(y * 0.12, z * 0.12, 3, 3);
            double crack = Math.abs(y - 12 * Math.sin(x * 0.05) - 0.18 * x + 4 * Noise.smooth(x * 0.2, 1, 1));
            double other = Math.abs(y + 0.42 * x - 5 * Noise.smooth(x * 0.15, 7, 1));
            boolean cracked =
                    x > -8 && x < 78 && crack < 0.9 - x * 0.008 || x > -8 && x < 46 && other < 0.8 - x * 0.012;
            return ragged < 31
                    ? Skins.foam(0xf4f1e8).at(x, y, z, nz)
                    : cracked ? Skins.plain(0x3d2a12, 0).at(x, y, z, nz) : MUSTARD.at(x, y, z, nz);
        };
        var scene = Scene.on(Floors.bench(73), Light.window())
                .add(Thing.estimated(mustardEdge().without(blow), skin, -26, -212, -26, 268, 212, 26)
                        .turned(-90)
                        .at(0, 0, 30))
                .add(
                        Tools.timber(200, 40, 10).at(-90, -90, 0),
                        Tools.timber(200, 40, 10).at(100, -120, 0))
                .add(Tools.rule(200).turned(2).at(10, 78, 0));
        for (int i = 0; i < 9; i++) {
            scene.add(Thing.of(Solids.block(4 + i % 3, 3 + i % 2, 2, 0.6), i % 2 == 0 ? MUSTARD : WHITE)
                    .turned(i * 41)
                    .at(-30 + 9 * i, 46 + 13 * (i * 7 % 4), 1));
        }
        return shot(scene, Camera.round(10, -8, 26, 160, 46, 300));
    }

    private static BufferedImage wedge() {
        Skin skin = (x, y, z, nz) -> {
            double edge = 34 - Math.max(0, x + 22) * 0.36;
            double line = Math.abs(Math.abs(y) - edge);
            return x < 50 && Math.abs(y) < edge
                    ? (line < 1
                            ? Skins.plain(0xc9a95e, 0.3).at(x, y, z, nz)
                            : Skins.foam(0xf2efe6).at(x, y, z, nz))
                    : MUSTARD.at(x, y, z, nz);
        };
        var scene = Scene.on(Floors.bench(73), Light.lamp())
                .add(Thing.estimated(mustardEdge(), skin, -26, -212, -26, 268, 212, 26)
                        .turned(-90)
                        .at(0, 0, 30))
                .add(
                        Tools.timber(200, 40, 10).at(-90, -90, 0),
                        Tools.timber(200, 40, 10).at(100, -120, 0))
                .add(Tools.sandingBlock().turned(30).at(-120, 72, 0));
        scene.add(
                Tools.tape(96, 14, 0xe7dcb0).turned(2).at(0, -36, 52.4),
                Tools.tape(84, 14, 0xe7dcb0).turned(-3).at(2, -58, 52.8));
        scene.add(Thing.of(Solids.plate(5, 0.4, -40, -20, 46, -26, 30, 24, -34, 18), Skins.foam(0xf2efe6))
                .turned(20)
                .at(120, 66, 0));
        for (var part : Tools.glueBottle(0xf2f2ee, 0xb5382c)) {
            scene.add(part.pitched(90).turned(150).at(40, 92, 22));
        }
        return shot(scene, Camera.round(4, -4, 26, 168, 48, 340));
    }

    private static BufferedImage seat() {
        Solid box = Solids.block(330, 96, 110, 5);
        Solid open = Solids.block(230, 80, 100, 2).moved(-10, 0, 30);
        var cloth = Skins.plain(0xdfe5dc, 0.7);
        Skin weave = (x, y, z, nz) -> cloth.at(x, y, z, nz)
                .times(0.8
                        + 0.12 * Math.sin(x * 3.4)
                        + 0.12 * Math.sin(y * 3.4)
                        + 0.1 * Noise.smooth(x * 0.2, y * 0.2, 1));
        Skin skin = (x, y, z, nz) -> nz > 0.6 && z > 50
                ? Skins.plain(0xe9dcc0, 0.05).at(x, y, z, nz)
                : Math.abs(y) < 41 && z > -25 && Math.abs(x + 10) < 117
                        ? Skins.balsa().at(x, y, z, nz)
                        : MUSTARD.at(x, y, z, nz);
        var scene = Scene.on(Floors.bench(83), Light.window())
                .add(Thing.of(box.without(open), skin).at(0, 0, 55));
        for (double side : new double[] {-1, 1}) {
            scene.add(Thing.of(Solids.slab(120, 30, 0.7, 0.3), weave)
                    .rolled(side * -88)
                    .at(20, side * 49, 92));
            scene.add(Thing.of(Solids.slab(120, 9, 0.7, 0.3), weave).at(20, side * 44, 110));
            scene.add(Thing.of(Solids.barrel(4, 140, 1), Skins.wood(0xc79d66, 1))
                    .turned(90)
                    .at(side < 0 ? -92 : 96, -70, 90));
        }
        scene.add(Thing.of(
                        Solids.drum(30, 22, 3).without(Solids.drum(26, 30, 2).moved(0, 0, 3)),
                        Skins.plain(0xe8e6de, 0.4))
                .at(120, -110, 0));
        scene.add(Thing.of(
                Solids.rod(2.2, 100, -130, 20, 150, -96, 34)
                        .with(Solids.block(20, 9, 4, 1).turned(30).moved(100, -130, 19)),
                Skins.wood(0xd8b074, 1)));
        scene.add(Tools.slip(104, 52, 0xf5e27a, "GLOVES, WINDOW", "WET TILL SUNDAY")
                .turned(-5)
                .at(-90, -110, 0));
        return shot(scene, Camera.round(0, -25, 60, 14, 50, 390));
    }

    private static Solid pod(double from, double to) {
        return Solids.egg(230, 31, 27)
                .moved(140, 0, 0)
                .within(Solids.block(to - from, 400, 400, 0).moved((from + to) / 2, 0, 0));
    }

    private static BufferedImage brokenNose() {
        Skin skin =
                (x, y, z, nz) -> WHITE.at(x, y, z, nz).times(0.92 + 0.1 * Noise.rough(x * 0.1, y * 0.1, z * 0.1, 3));
        Solid ragged = (x, y, z) -> 30 - x + 16 * Noise.rough(y * 0.09, z * 0.09, 5, 3);
        Solid hollow = Solids.egg(214, 25, 21).moved(140, 0, 0);
        var scene = FoamBench.matOnBench(91, 620, 450)
                .add(Thing.estimated(pod(-100, 240).within(ragged).without(hollow), skin, 20, -32, -28, 242, 32, 28)
                        .turned(7)
                        .at(-10, 40, 31))
                .add(Thing.estimated(pod(-100, 20).without(hollow), skin, -92, -32, -28, 22, 32, 28)
                        .rolled(38)
                        .turned(58)
                        .at(-100, -20, 26));
        double[][] bits = {
            {-30, -60, 30}, {20, -90, 80}, {-70, 80, 140}, {70, -70, 10}, {120, -110, 200}, {-160, 70, 300}
        };
        for (var bit : bits) {
            scene.add(Thing.of(Solids.plate(4, 0.5, -14, -8, 12, -12, 18, 4, 2, 12, -12, 6), skin)
                    .turned(bit[2])
                    .at(bit[0], bit[1], 3));
        }
        scene.add(Thing.of(Solids.plate(3, 0.4, -22, -18, 22, -18, 22, 8, 10, 18, -10, 18, -22, 6), Skins.ply(3))
                .turned(-20)
                .at(170, -40, 3));
        scene.add(Thing.of(Solids.slab(38, 18, 6, 2), Skins.plain(0x7f858b, 0.5))
                .turned(32)
                .at(-205, -90, 3));
        for (var part : Electrics.pack(92)) {
            scene.add(part.turned(-14).at(40, 150, 3));
        }
        scene.add(Tools.slip(112, 44, 0xf5e27a, "DENTED: OUT OF USE", "STORE OUTSIDE")
                .turned(-8)
                .at(186, 148, 3));
        return FoamBench.from(scene, 0, 10, 540, 3);
    }

    private static BufferedImage newNose() {
        Skin skin = (x, y, z, nz) -> {
            double scarf = x - 40 - z * 1.3;
            return Math.abs(scarf) < 1.2
                    ? Skins.plain(0xc2a25a, 0.3).at(x, y, z, nz)
                    : scarf < 0
                            ? Skins.foam(0xf4f3ee).at(x, y, z, nz)
                            : WHITE.at(x, y, z, nz).times(0.95);
        };
        var scene = Scene.on(Floors.bench(97), Light.lamp())
                .add(Thing.of(Solids.slab(460, 120, 16, 1), Skins.wood(0xcaa36c, 1))
                        .at(60, 0, 0))
                .add(Thing.estimated(pod(-100, 260), skin, -92, -32, -28, 262, 32, 28)
                        .at(0, 0, 44));
        scene.add(Tools.timber(30, 90, 60).at(-110, 0, 16));
        scene.add(
                Thing.of(Solids.block(20, 63, 57, 20).without(Solids.block(40, 61, 55, 19)), Skins.plain(0xe7dcb0, 0.1))
                        .at(26, 0, 44));
        scene.add(
                Thing.of(Solids.block(20, 65, 59, 20).without(Solids.block(40, 63, 57, 19)), Skins.plain(0xe7dcb0, 0.1))
                        .at(64, 0, 44));
        for (double side : new double[] {-1, 1}) {
            for (var part : Tools.springClamp(0xd9631e)) {
                scene.add(part.turned(side > 0 ? 78 : -80).at(side > 0 ? 44 : 50, side * 36, 38));
            }
        }
        scene.add(Tools.pencil(0xd8b22e).turned(10).at(120, -110, 0));
        scene.add(Tools.slip(90, 46, 0xf5e27a, "GLUED 16:20", "HANDS OFF")
                .turned(-6)
                .at(-20, -130, 0));
        return shot(scene, Camera.round(50, -20, 40, 24, 44, 430));
    }

    private static BufferedImage finStump() {
        var grey = Skins.plain(0x4b5966, 0.12);
        Solid deck = Solids.slab(460, 300, 40, 14);
        Solid slot = Solids.block(150, 7, 60, 0.5).moved(10, 0, 40);
        Skin skin = (x, y, z, nz) -> Math.abs(y) < 4.5 && Math.abs(x - 10) < 77 && z < 39
                ? Skins.foam(0xeeeeea).at(x, y, z, nz)
                : nz > 0.5 && Math.abs(y) < 16 + 3 * Noise.smooth(x * 0.1, 1, 1) && Math.abs(x - 10) < 92
                        ? Skins.foam(0xe9e4d4).at(x, y, z, nz)
                        : z > 12 ? grey.at(x, y, z, nz) : Skins.foam(0xeeeeea).at(x, y, z, nz);
        Skin broken = (x, y, z, nz) -> y < 4 + 3 * Noise.smooth(x * 0.2, 3, 3)
                ? Skins.balsa().at(x, y, z, nz)
                : Skins.plain(0xe8601c, 0.2).at(x, y, z, nz);
        Solid fin = Solids.plate(
                5, 2, -70, -14, -60, -20, -40, -13, -10, -19, 20, -12, 40, -18, 66, -12, 75, 4, 110, 165, 30, 165, -75,
                4);
        var scene = Scene.on(Floors.bench(101), Light.window())
                .add(Thing.of(deck.without(slot), skin).turned(-8))
                .add(Thing.of(fin, broken).turned(-58).at(-60, -116, 40));
        for (int i = 0; i < 7; i++) {
            scene.add(Thing.of(Solids.block(7 - i % 4, 2, 1.5, 0.4), Skins.balsa())
                    .turned(i * 50)
                    .at(-40 + i * 21, -34 - 9 * (i * 3 % 4), 41));
        }
        for (var part : Tools.knife()) {
            scene.add(part.turned(158).at(150, 52, 40));
        }
        return shot(scene, Camera.above(10, -30, 420));
    }

    private static BufferedImage strip() {
        Solid wing = Solids.plate(24, 6, -240, 120, 240, 60, 240, -110, -240, -150);
        Solid groove = Solids.block(210, 5, 8, 0.2).turned(-6).moved(0, -10, 24);
        Skin skin = (x, y, z, nz) -> {
            double crack = Math.abs(x - 8 - 10 * Math.sin(y * 0.06) - 5 * Noise.smooth(y * 0.15, 2, 2));
            return nz > 0.5 && crack < 0.7 && y < 62
                    ? Skins.plain(0x6f6c63, 0).at(x, y, z, nz)
                    : Skins.foam(0xefefeb).at(x, y, z, nz);
        };
        var lines = Drawn.sheet(480, 280, 2, g -> {
            FoamBench.pen(g, new Color(70, 74, 90, 190), 0.6);
            Tools.line(g, -112, 8, 112, -15);
            Tools.line(g, -112, -1, 112, -24);
        });
        var scene = Scene.on(Floors.bench(107), Light.window())
                .add(Thing.of(wing.without(groove), Skins.printed(skin, lines, 2)))
                .add(Thing.of(Solids.slab(200, 3, 3, 0.2), Skins.carbon())
                        .turned(-6)
                        .at(0, -10, 21.5))
                .add(Thing.of(Solids.slab(70, 60, 0.3, 0.1), Skins.plain(0xdfe9ee, 0.8))
                        .turned(4)
                        .at(150, 10, 24.2))
                .add(Tools.weight(60).at(150, 10, 24.6), Tools.weight(44).at(-160, 0, 24))
                .add(Tools.slip(86, 44, 0xf5e27a, "SAND CARBON WET", "MASK ON")
                        .turned(6)
                        .at(20, 160, 0));
        for (var part : Tools.knife()) {
            scene.add(part.turned(-12).at(-70, -200, 0));
        }
        return shot(scene, Camera.above(0, -6, 630).tilted(-4));
    }
}
