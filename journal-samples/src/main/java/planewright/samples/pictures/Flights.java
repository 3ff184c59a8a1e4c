package planewright.samples.pictures;

import static planewright.samples.pictures.Picture.photo;

import java.awt.image.BufferedImage;
import java.util.List;
import planewright.samples.studio.Camera;
import planewright.samples.studio.Drawn;
import planewright.samples.studio.Light;
import planewright.samples.studio.Scene;
import planewright.samples.studio.Studio;

/** Aircraft in the air and coming down. */
final class Flights {
    private Flights() {}

    static List<Picture> all(Hangar hangar) {
        return List.of(
                photo(
                        "ray-grass",
                        "Slate Ray",
                        "landing in long grass, nose just above the blades",
                        () -> landing(hangar)),
                photo(
                        "ray-clouds",
                        "Slate Ray",
                        "the wing banking against summer clouds, white foam below",
                        () -> flight(
                                hangar,
                                "Slate Ray",
                                Skies.summer(1.5, 4),
                                1,
                                Light.day(),
                                new double[] {34, 6, 196},
                                view(30, -24, 2300, 90, 60),
                                1600)),
                photo(
                        "ray-dusk",
                        "Slate Ray",
                        "last flight of the day, the wing small and dark before an orange sky",
                        () -> flight(
                                hangar,
                                "Slate Ray",
                                Skies.evening(0.86, 9),
                                0.22,
                                Light.dusk(),
                                new double[] {-22, 8, 150},
                                view(0, -9, 3600, -500, -250),
                                1600)),
                photo(
                        "mustard-field",
                        "Old Mustard",
                        "the trainer over fields and hedges, power off in a thermal",
                        () -> flight(
                                hangar,
                                "Old Mustard",
                                Skies.summer(0.42, 12),
                                1,
                                Light.day(),
                                new double[] {-18, 3, 205},
                                view(0, 9, 3300, 100, -60),
                                1600)),
                photo(
                        "knife-pass",
                        "Paperknife",
                        "the delta in a fast pass, red edges and dark belly against a grey sky",
                        () -> flight(
                                hangar,
                                "Paperknife",
                                Skies.grey(1.3, 21),
                                1,
                                Light.day(),
                                new double[] {-38, 10, 15},
                                view(0, -14, 1750, 200, 0),
                                1200)),
                photo(
                        "friday-sky",
                        "Long Friday",
                        "the glider from below, light through the yellow wing and its red bays",
                        () -> flight(
                                hangar,
                                "Long Friday",
                                Skies.summer(1.7, 31),
                                1,
                                glow(),
                                new double[] {14, 4, 235},
                                view(0, -42, 3300, 250, 100),
                                1600)),
                photo(
                        "goose-nod",
                        "Backwards Goose",
                        "the canard at the top of its nod, nose high over the strip",
                        () -> flight(
                                hangar,
                                "Backwards Goose",
                                Skies.grey(0.8, 5),
                                0.9,
                                Light.day(),
                                new double[] {6, 19, 168},
                                view(0, -4, 2300, -100, -80),
                                1200)),
                photo(
                        "penny-last-light",
                        "Two Penny",
                        "the biplane in the last light above the hedges",
                        () -> flight(
                                hangar,
                                "Two Penny",
                                Skies.evening(0.74, 17),
                                0.3,
                                warm(),
                                new double[] {14, 4, 22},
                                view(0, -4, 2600, 100, 60),
                                1600)));
    }

    /** Sliding into long grass, the nearest blades before the wing. */
    private static BufferedImage landing(Hangar hangar) {
        var backdrop = Skies.summer(0.3, 41).painted(1200, 900, 1);
        var scene = Scene.inAir(Light.day());
        for (var thing : hangar.whole("Slate Ray")) {
            scene.add(thing.at(-200, 0, 0).rolled(-5).pitched(7).turned(152));
        }
        var wing = Studio.take(scene, Camera.round(-40, 0, 60, 0, 10, 1450), 1200, 900);
        return new Meadow(backdrop, 5, 1)
                .grass(0.33, 0.66, 0.3, 9000)
                .thing(wing)
                .grass(0.66, 1.2, 0.3, 5200)
                .image();
    }

    private static Camera view(double round, double height, double field, double x, double z) {
        return Camera.round(x, 0, z, round, height, field);
    }

    private static Light glow() {
        return new Light(
                Light.day().sun(),
                Light.day().direct(),
                Light.day().sky(),
                Light.day().sky().mixed(Light.day().direct(), 0.2),
                20);
    }

    private static Light warm() {
        return new Light(
                Light.dusk().sun(),
                Light.dusk().direct(),
                Light.dusk().sky().times(1.5),
                Light.dusk().bounce().times(2),
                16);
    }

    /** An aircraft with bank, pitch and heading before a sky. */
    private static BufferedImage flight(
            Hangar hangar,
            String name,
            Skies sky,
            double dim,
            Light light,
            double[] attitude,
            Camera camera,
            int width) {
        var scene = Scene.inAir(light);
        for (var thing : hangar.whole(name)) {
            scene.add(thing.at(-200, 0, 0)
                    .rolled(attitude[0])
                    .pitched(attitude[1])
                    .turned(attitude[2]));
        }
        var backdrop = sky.painted(width, 900, dim);
        var g = backdrop.createGraphics();
        Drawn.smooth(g);
        g.drawImage(Studio.take(scene, camera, width, 900), 0, 0, null);
        g.dispose();
        return backdrop;
    }
}
