package planewright.samples.pictures;

import java.util.Arrays;
import java.util.List;
import planewright.samples.studio.Skins;
import planewright.samples.studio.Solid;
import planewright.samples.studio.Solids;
import planewright.samples.studio.Thing;

/** Small parts of aircraft. */
final class Things {
    private Things() {}

    /** A two-bladed propeller that turns about the x axis, its blades along y. */
    static Thing propeller(double diameter, int rgb) {
        double r = diameter / 2;
        double[] shape = {-4, 4, 4, 4, 8.5, 22, 11, 40, 10, 64, 7, 84, 3, 97, -1, 100, -4, 95, -7, 78, -9, 52, -8, 26};
        Solid blade = Solids.plate(r * 0.03, r * 0.013, scaled(shape, r / 100)).pitched(52);
        Solid shank = Solids.rod(r * 0.04, 0, 0, 0, 0, r * 0.16, 0);
        Solid hub = Solids.barrel(r * 0.09, 9, 1.5).moved(-4.5, 0, 0);
        Solid one = blade.blended(shank, 4);
        Solid both = (x, y, z) -> y >= 0 ? one.at(x, y, z) : one.at(x, -y, -z);
        return Thing.estimated(
                both.with(hub), Skins.plain(rgb, 0.4), -r * 0.12, -r - 1, -r * 0.12, r * 0.14, r + 1, r * 0.12);
    }

    /** A wheel that rolls along x. */
    static List<Thing> wheel(double x, double y, double z, double radius, double wide) {
        Solid tyre =
                Solids.drum(radius, wide, wide * 0.42).moved(0, 0, -wide / 2).rolled(90);
        Solid hub = Solids.drum(radius * 0.5, wide + 2, 1)
                .moved(0, 0, -wide / 2 - 1)
                .rolled(90);
        return List.of(
                Thing.of(tyre, Skins.plain(0x232325, 0.12)).at(x, y, z),
                Thing.of(hub, Skins.plain(0xd9dadb, 0.4)).at(x, y, z));
    }

    static double[] scaled(double[] outline, double by) {
        return Arrays.stream(outline).map(value -> value * by).toArray();
    }
}
