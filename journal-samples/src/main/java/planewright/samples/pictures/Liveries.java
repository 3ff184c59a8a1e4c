package planewright.samples.pictures;

import java.util.ArrayList;
import java.util.List;
import planewright.samples.studio.Noise;
import planewright.samples.studio.Skins;
import planewright.samples.studio.Solids;
import planewright.samples.studio.Thing;
import planewright.samples.studio.Tone;

/** The colours of the workshop's aircraft, and what sticks out of them besides their outlines. */
final class Liveries {
    private static final Tone SLATE = Tone.of(0x4b5966, 0.15);
    private static final Tone FOAM = Tone.of(0xeeeeea, 0.06);
    private static final Tone ORANGE = Tone.of(0xe8601c, 0.2);
    private static final Tone BLACK = Tone.of(0x1b1c1e, 0.5);
    private static final Tone MUSTARD = Tone.of(0xd4a020, 0.25);
    private static final Tone BROWN = Tone.of(0x4a2f1e, 0.25);
    private static final Tone CREAM = Tone.of(0xefe0ba, 0.3);
    private static final Tone DARK_RED = Tone.of(0x7f1f22, 0.35);
    private static final Tone WHITE = Tone.of(0xf2f2ee, 0.25);
    private static final Tone LEAF = Tone.of(0x4e9a35, 0.3);
    private static final Tone YELLOW = Tone.of(0xf2cf2e, 0.4);
    private static final Tone RED = Tone.of(0xc8302a, 0.35);
    private static final Tone BLUE = Tone.of(0x2b5ea8, 0.3);

    private Liveries() {}

    /** A build with its colours, propeller, wheels and wires. */
    static List<Thing> whole(Airframe build) {
        var things = new ArrayList<>(build.painted(paint(build.name())));
        things.addAll(extras(build.name()));
        return things;
    }

    static Paint paint(String build) {
        return switch (build) {
            case "Slate Ray" -> Liveries::slateRay;
            case "Slate Ray Two" -> spot -> hinge(FOAM.times(cells(spot)), spot, 0.77, 0.24, 0.97);
            case "Old Mustard" -> Liveries::oldMustard;
            case "Two Penny" -> Liveries::twoPenny;
            case "Backwards Goose" -> Liveries::goose;
            case "Long Friday" -> Liveries::longFriday;
            case "Paperknife" -> Liveries::paperknife;
            default -> throw new IllegalArgumentException("no colours for '" + build + "'");
        };
    }

    private static double cells(Paint.Spot spot) {
        double bead = Noise.smooth(spot.x() * 0.3, spot.y() * 0.3, spot.z() * 0.3);
        return (Math.abs(bead - 0.5) < 0.06 ? 0.95 : 1)
                * (0.96 + 0.06 * Noise.smooth(spot.x() * 0.02, spot.y() * 0.02, 0));
    }

    private static Tone hinge(Tone tone, Paint.Spot spot, double at, double from, double to) {
        boolean within = spot.span() > from && spot.span() < to;
        boolean line = within && Math.abs(spot.chord() - at) < 0.008;
        boolean end = spot.chord() > at && (Math.abs(spot.span() - from) < 0.003 || Math.abs(spot.span() - to) < 0.003);
        return line || end ? tone.times(0.3) : tone;
    }

    private static Tone slateRay(Paint.Spot spot) {
        if (spot.is("fin")) {
            return ORANGE;
        }
        if (spot.is("centre pod")) {
            boolean canopy = spot.upper()
                    && spot.x() > -118
                    && spot.x() < 60
                    && Math.abs(spot.y()) < 30 + spot.x() * 0.05
                    && spot.z() > 8;
            return canopy ? BLACK : spot.z() > -4 ? SLATE : FOAM;
        }
        var top = spot.span() > 0.86 ? ORANGE : spot.span() > 0.835 ? FOAM : SLATE;
        return hinge(spot.upper() ? top : FOAM.times(cells(spot)), spot, 0.77, 0.24, 0.97);
    }

    private static Tone oldMustard(Paint.Spot spot) {
        boolean band = spot.is("wing") && spot.span() > 0.84 && spot.span() < 0.93
                || spot.is("fin") && spot.span() > 0.5 && spot.span() < 0.72;
        if (spot.is("fuselage") && spot.x() < -170) {
            return Tone.of(0x8d9194, 0.35);
        }
        boolean window = spot.is("fuselage")
                && spot.z() > 12
                && spot.z() < 40
                && spot.x() > -95
                && spot.x() < 95
                && Math.abs(spot.x() + 12) > 5;
        var tone = window ? Tone.of(0x23313a, 0.6) : band ? BROWN : MUSTARD;
        return switch (spot.part()) {
            case "wing" -> hinge(tone, spot, 0.78, 0.52, 0.96);
            case "tail" -> hinge(tone, spot, 0.66, 0.02, 0.99);
            case "fin" -> hinge(tone, spot, 0.6, 0.02, 0.99);
            default -> tone;
        };
    }

    private static Tone twoPenny(Paint.Spot spot) {
        if (spot.is("fuselage")) {
            return spot.x() < -165
                    ? DARK_RED
                    : spot.upper() && Math.abs(spot.y()) < 20 && spot.x() > 95 && spot.x() < 165 ? BROWN : CREAM;
        }
        if (spot.is("upper wing")) {
            boolean band = spot.upper() && spot.span() > 0.62 && spot.span() < 0.82;
            int i = (int) Math.floor((Math.abs(spot.y()) - 329) / 26.5);
            int j = (int) Math.floor(spot.chord() * 7);
            return hinge(rib(band && (i + j & 1) == 0 ? DARK_RED : CREAM, spot), spot, 0.78, 0.45, 0.96);
        }
        if (spot.is("fin") && spot.chord() > 0.55) {
            return ((int) Math.floor(spot.span() * 7) & 1) == 0 ? DARK_RED : CREAM;
        }
        return spot.is("lower wing")
                ? hinge(rib(CREAM, spot), spot, 0.78, 0.45, 0.96)
                : hinge(CREAM, spot, 0.62, 0.02, 0.99);
    }

    private static Tone rib(Tone film, Paint.Spot spot) {
        double across = Math.abs(Math.floorMod((int) Math.floor(Math.abs(spot.y()) * 2), 110) - 55) / 2.0;
        return film.times(across > 25.8 ? 0.84 : Math.abs(spot.chord() - 0.28) < 0.012 ? 0.88 : 1);
    }

    private static Tone goose(Paint.Spot spot) {
        return switch (spot.part()) {
            case "canard" -> hinge(LEAF, spot, 0.7, 0.1, 0.97);
            case "tip fins" -> LEAF;
            case "fuselage" ->
                spot.z() > 2 && spot.z() < 15 && Math.abs(spot.y()) > 8
                        ? LEAF
                        : spot.upper() && spot.x() > 150 && spot.x() < 330 && Math.abs(spot.y()) < 30
                                ? Tone.of(0x28343c, 0.7)
                                : WHITE;
            default -> hinge(WHITE, spot, 0.77, 0.35, 0.95);
        };
    }

    private static Tone longFriday(Paint.Spot spot) {
        if (spot.is("wing")) {
            boolean bay = spot.span() > 0.8 && spot.span() < 0.88 || spot.span() > 0.9 && spot.span() < 0.97;
            double ribs = Math.abs(spot.y()) / 46;
            double dark = ribs - Math.floor(ribs) < 0.07 || Math.abs(spot.chord() - 0.3) < 0.02 ? 0.8 : 1;
            return hinge((bay ? RED : YELLOW).times(dark), spot, 0.8, 0.42, 0.97);
        }
        if (spot.is("V-tail")) {
            return hinge(RED, spot, 0.7, 0.02, 0.99);
        }
        return spot.x() > 240
                ? Tone.of(0x1f2022, 0.45)
                : spot.upper() && spot.x() < -70 && spot.x() > -225 && spot.z() > 8 ? BLACK : WHITE;
    }

    private static Tone paperknife(Paint.Spot spot) {
        if (spot.is("fins")) {
            return BLUE;
        }
        if (spot.is("pod")) {
            return WHITE;
        }
        double ahead = spot.chord() * Airframe.between(620, 120, spot.span());
        return ahead < 34 ? RED : hinge(WHITE, spot, 1 - 70 / Airframe.between(620, 120, spot.span()), 0.16, 0.98);
    }

    static List<Thing> extras(String build) {
        return switch (build) {
            case "Slate Ray", "Slate Ray Two" -> pusher(345, 0, 6, 210);
            case "Paperknife" -> pusher(552, 0, 3, 152);
            case "Backwards Goose" -> canardExtras();
            case "Old Mustard" -> mustardExtras();
            case "Two Penny" -> pennyExtras();
            default -> List.of();
        };
    }

    static List<Thing> pusher(double x, double y, double z, double diameter) {
        return List.of(
                Thing.of(Solids.barrel(14, 24, 2), Skins.plain(0x303338, 0.6)).at(x - 10, y, z),
                Things.propeller(diameter, 0x1d1d1f).at(x + 20, y, z));
    }

    private static List<Thing> canardExtras() {
        var things = new ArrayList<>(pusher(890, 0, -2, 230));
        things.addAll(Things.wheel(150, 0, -92, 22, 18));
        things.addAll(Things.wheel(640, 170, -92, 24, 10));
        things.addAll(Things.wheel(640, -170, -92, 24, 10));
        things.add(Thing.of(Solids.rod(2.2, 150, 0, -30, 150, 0, -92), Skins.steel()));
        things.add(
                Thing.of(Solids.rod(2.4, 640, 170, -92, 640, 30, -40, 640, -30, -40, 640, -170, -92), Skins.steel()));
        return things;
    }

    private static List<Thing> mustardExtras() {
        var things = new ArrayList<Thing>();
        things.add(Things.propeller(254, 0x6b4526).at(-276, 0, -8));
        things.add(Thing.of(Solids.egg(20, 17, 17), Skins.plain(0x8d9194, 0.5)).at(-266, 0, -8));
        things.addAll(Things.wheel(28, 150, -128, 32, 14));
        things.addAll(Things.wheel(28, -150, -128, 32, 14));
        things.add(Thing.of(Solids.rod(2.4, 28, 148, -128, 20, 40, -62, 20, -40, -62, 28, -148, -128), Skins.steel()));
        for (double y : new double[] {-34, 34}) {
            things.add(Thing.of(
                    Solids.rod(1.6, -25, y, 64, 60, y * 0.9, 63, 150, y * 0.8, 58, 245, y, 52),
                    Skins.plain(0x9c6a3a, 0.1)));
        }
        return things;
    }

    private static List<Thing> pennyExtras() {
        var things = new ArrayList<Thing>();
        things.add(Things.propeller(280, 0x7a5230).at(-268, 0, 10));
        things.add(Thing.of(Solids.egg(18, 16, 16), Skins.plain(0x9a9da0, 0.7)).at(-256, 0, 10));
        for (double side : new double[] {-1, 1}) {
            var red = Skins.plain(0x7f1f22, 0.35);
            things.add(Thing.of(Solids.rod(4, 40, side * 360, 158, 112, side * 350, 0), red));
            things.add(Thing.of(Solids.rod(4, 150, side * 360, 160, 205, side * 350, 0), red));
            things.add(Thing.of(Solids.rod(3.4, 40, side * 60, 160, 20, side * 48, 74), red));
            things.add(Thing.of(Solids.rod(3.4, 150, side * 60, 160, 130, side * 48, 76), red));
            things.add(Thing.of(Solids.rod(0.9, 42, side * 358, 156, 110, side * 60, -8), Skins.steel()));
            things.add(Thing.of(Solids.rod(0.9, 40, side * 64, 156, 110, side * 346, 0), Skins.steel()));
            things.addAll(Things.wheel(-12, side * 165, -140, 36, 14));
        }
        things.add(
                Thing.of(Solids.rod(2.6, -12, 162, -140, -15, 42, -50, -15, -42, -50, -12, -162, -140), Skins.steel()));
        return things;
    }
}
