package planewright.samples.pictures;

import static planewright.samples.pictures.Picture.photo;

import java.awt.image.BufferedImage;
import java.util.List;
import planewright.samples.studio.Camera;
import planewright.samples.studio.Floor;
import planewright.samples.studio.Floors;
import planewright.samples.studio.Light;
import planewright.samples.studio.Scene;
import planewright.samples.studio.Studio;
import planewright.samples.studio.Thing;

/** Whole aircraft from above. */
final class PlanViews {
    private static final Floor MOWN = Floors.grass(1.6, 7, 0x6f7a35, 0x4a6e2c);

    private PlanViews() {}

    static List<Picture> all(Hangar hangar) {
        return List.of(
                photo(
                        "ray-bench",
                        "Slate Ray",
                        "the finished wing from above on the bench, slate grey with orange tips and fin",
                        () -> above(hangar, "Slate Ray", Floors.bench(3), Light.window(), 1640, -94, 190, 60)),
                photo(
                        "mustard-grass",
                        "Old Mustard",
                        "the trainer from above on the grass, mustard yellow with brown bands",
                        () -> above(hangar, "Old Mustard", MOWN, Light.day(), 1960, -84, 290, 163)),
                photo(
                        "penny-grass",
                        "Two Penny",
                        "the biplane from above on the grass, chequered band on the upper wing",
                        () -> above(
                                hangar,
                                "Two Penny",
                                Floors.grass(1.5, 19, 0x7d8440, 0x4c7030),
                                Light.day(),
                                1880,
                                -98,
                                290,
                                178)),
                photo(
                        "goose-board",
                        "Backwards Goose",
                        "the canard from above on the painted hall floor, white and leaf green",
                        () -> above(
                                hangar,
                                "Backwards Goose",
                                Floors.board(0x8c8f8a, 4),
                                Light.window(),
                                1780,
                                -84,
                                480,
                                118)),
                photo(
                        "friday-grass",
                        "Long Friday",
                        "the glider from above on the slope, yellow wing with red bays, red V-tail",
                        () -> above(
                                hangar,
                                "Long Friday",
                                Floors.grass(1.8, 3, 0x9a8f52, 0x5f7a38),
                                Light.day(),
                                2680,
                                -80,
                                360,
                                45)),
                photo(
                        "knife-bench",
                        "Paperknife",
                        "the foam board delta from above, red leading edges and blue fins",
                        () -> above(hangar, "Paperknife", Floors.bench(29), Light.lamp(), 1180, -97, 300, 30)),
                photo(
                        "two-bench",
                        "Slate Ray Two",
                        "the second wing from above, bare foam, nothing painted yet",
                        () -> above(hangar, "Slate Ray Two", Floors.bench(37), Light.window(), 1760, -88, 210, 60)));
    }

    private static BufferedImage above(
            Hangar hangar,
            String name,
            Floor floor,
            Light light,
            double field,
            double turn,
            double middle,
            double high) {
        var scene = Scene.on(floor, light);
        for (Thing thing : hangar.whole(name)) {
            scene.add(thing.at(-middle, 0, high).turned(turn));
        }
        return Studio.take(scene, Camera.above(0, 0, field), field > 2000 ? 1600 : 1200, 900);
    }
}
