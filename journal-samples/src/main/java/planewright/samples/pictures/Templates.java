package planewright.samples.pictures;

import static planewright.samples.pictures.Picture.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.Consumer;
import planewright.samples.studio.Drawn;
import planewright.samples.studio.Floors;
import planewright.samples.studio.Lettering;
import planewright.samples.studio.Light;
import planewright.samples.studio.Scene;
import planewright.samples.studio.Skins;
import planewright.samples.studio.Solid;
import planewright.samples.studio.Solids;
import planewright.samples.studio.Thing;

/** Templates that are kept for the next aircraft, with what is written on them. */
final class Templates {
    private static final Color INK = new Color(0x26304f);

    private Templates() {}

    static List<Picture> all() {
        return List.of(
                photo(
                        "wire-pairs",
                        "Slate Ray",
                        "hot wire templates in ply: centre line, break and tip, holes for the pins",
                        Templates::wirePairs),
                photo("penny-ribs", "Two Penny", "rib pair on card with spar notches, 205 and 185", Templates::ribPair),
                photo(
                        "fin-card",
                        "Backwards Goose",
                        "tip fin outline on card, rudder line and 8 degrees noted",
                        Templates::fin));
    }

    private static Thing card(int rgb, double width, double height, Consumer<Graphics2D> drawing, double... outline) {
        var print = Drawn.sheet(width, height, 4, drawing);
        return Thing.of(Solids.plate(1.2, 0.2, outline), Skins.printed(Skins.plain(rgb, 0.04), print, 4, 0.4));
    }

    private static BufferedImage wirePairs() {
        double[] rib = {
            -180, 0, -176, 11, -160, 22, -120, 34, -70, 39, -10, 36, 60, 26, 130, 12, 180, 2, 180, 0, 90, -6, 0, -12,
            -90, -16, -150, -13, -174, -7
        };
        var scene = Scene.on(Floors.bench(167), Light.window());
        String[] names = {"CENTRE 360", "BREAK 300", "TIP 190"};
        double[] scales = {1, 0.833, 0.528};
        for (int i = 0; i < 3; i++) {
            String name = names[i];
            double by = scales[i];
            for (int k = 0; k < 2; k++) {
                Solid plate = Solids.plate(1.5, 0.2, Things.scaled(rib, by));
                for (double hole : new double[] {-110, 70}) {
                    plate = plate.without(Solids.drum(2.4, 20, 0).moved(hole * by, 8 * by, -5));
                }
                var print = Drawn.sheet(380, 90, 4, g -> {
                    FoamBench.pen(g, INK, 0.5);
                    Tools.line(g, -178 * by, 0, 178 * by, 0);
                    Lettering.centred(g, name, -20 * by, 16 * by, 9 * (0.5 + by / 2));
                });
                scene.add(Thing.of(plate, Skins.printed(Skins.ply(1.5), print, 4, 0.4))
                        .turned(k * 4 - 2 + i)
                        .at(-70 + 46 * i * (1 - k) - 20 * i, 175 - 122 * i - 54 * k, 0));
            }
        }
        for (int i = 0; i < 4; i++) {
            for (var part : Tools.pin(0, 0, 0, i % 2 == 0 ? 0xc53a30 : 0x2f66b0)) {
                scene.add(part.pitched(80).turned(40 * i + 20).at(190 + 14 * i, -90 - 20 * i, 3));
            }
        }
        scene.add(Thing.of(Solids.drum(16, 36, 3), Skins.plain(0xefe6c8, 0.5))
                .pitched(90)
                .turned(70)
                .at(215, 60, 16));
        scene.add(Tools.slip(70, 36, 0xf5e27a, "WAX THE", "EDGES").turned(-8).at(200, 150, 0));
        return FoamBench.from(scene, 0, 0, 600, 3);
    }

    private static BufferedImage ribPair() {
        double[] rib = {
            -102, 0, -98, 10, -84, 19, -55, 26, -38, 27.5, -38, 21, -33, 21, -33, 28, 0, 26, 50, 16, 103, 2, 103, 0, 0,
            -4, -33, -5.5, -33, 0, -38, 0, -38, -5.6, -80, -6, -98, -4
        };
        var scene = Scene.on(Floors.board(0xb99d74, 12), Light.lamp());
        for (int i = 0; i < 2; i++) {
            String name = i == 0 ? "UPPER 205 × 16" : "LOWER 185 × 14";
            double by = i == 0 ? 1 : 0.902;
            scene.add(card(
                            0xe6ddc6,
                            220,
                            80,
                            g -> {
                                FoamBench.pen(g, INK, 0.45);
                                Lettering.write(g, name, -22, 6, 6);
                                Tools.line(g, -100 * by, 0, 100 * by, 0);
                            },
                            Things.scaled(rib, by))
                    .turned(i == 0 ? 4 : -3)
                    .at(-16, 70 - 76 * i, 0));
        }
        for (int i = 0; i < 5; i++) {
            scene.add(Thing.of(Solids.plate(1.6, 0.2, rib), Skins.balsa())
                    .turned(-14 + 3 * (i % 3))
                    .at(30 + 3 * i, -96 + 2 * i, 1.7 * i));
        }
        for (var part : Tools.knife()) {
            scene.add(part.turned(140).at(160, 26, 0));
        }
        scene.add(Tools.slip(66, 34, 0xf6f3e6, "KEEP").turned(8).at(-130, -70, 0));
        return FoamBench.from(scene, 0, -4, 380, 2);
    }

    private static BufferedImage fin() {
        double[] outline = {-85, -70, 4, 80, 95, 80, 85, -70};
        var scene = FoamBench.matOnBench(173, 520, 400)
                .add(card(
                                0xd9d2bd,
                                200,
                                170,
                                g -> {
                                    FoamBench.pen(g, INK, 0.5);
                                    Tools.line(g, 42, -69, 58, 79);
                                    Tools.line(g, -80, -62, 84, -62);
                                    Lettering.write(g, "TIP FIN", -38, -30, 8);
                                    Lettering.write(g, "CANT 8°", -38, -46, 7);
                                    Lettering.write(g, "TOE-IN 3 MM", -20, -58, 4.5);
                                    Lettering.write(g, "RUDDER", 56, 0, 4.5);
                                },
                                outline)
                        .turned(-6)
                        .at(-40, 10, 3))
                .add(Thing.of(Solids.plate(5, 0.8, outline), Skins.balsa())
                        .turned(84)
                        .at(130, 10, 3))
                .add(Tools.rule(200).turned(3).at(-30, -110, 3))
                .add(Tools.pencil(0xd8b22e).turned(64).at(20, -80, 4));
        return FoamBench.from(scene, 20, -6, 430, -2);
    }
}
