package planewright.samples.pictures;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import planewright.samples.studio.Noise;
import planewright.samples.studio.Skin;
import planewright.samples.studio.Thing;

/** The shape of a build as its record gives it, as bodies to photograph: x aft, y right, z up from its datum. */
final class Airframe {
    private static final Set<String> BOARDS = Set.of("fin", "fins", "tip fins", "tail", "V-tail");

    private final String name;
    private final JsonNode planform;

    private Airframe(String name, JsonNode planform) {
        this.name = name;
        this.planform = planform;
    }

    static Airframe read(Path buildFile) throws IOException {
        var build = new ObjectMapper().readTree(buildFile.toFile());
        return new Airframe(build.path("name").asText(), build.path("planform"));
    }

    String name() {
        return name;
    }

    List<String> surfaceNames() {
        var names = new ArrayList<String>();
        planform.path("surfaces")
                .forEach(surface -> names.add(surface.path("name").asText()));
        return names;
    }

    /** A surface's pieces from the root outwards. */
    List<Panel> panels(String surfaceName) {
        return panels(find("surfaces", surfaceName));
    }

    Hull hull(String bodyName) {
        return Hull.of(find("bodies", bodyName));
    }

    /** The whole aircraft painted so. */
    List<Thing> painted(Paint paint) {
        var things = new ArrayList<Thing>();
        planform.path("surfaces").forEach(surface -> things.add(surface(surface, paint)));
        planform.path("bodies").forEach(body -> things.add(body(body, paint)));
        return things;
    }

    /** One surface by itself. */
    Thing surface(String surfaceName, Paint paint) {
        return surface(find("surfaces", surfaceName), paint);
    }

    private JsonNode find(String list, String partName) {
        for (var part : planform.path(list)) {
            if (part.path("name").asText().equals(partName)) {
                return part;
            }
        }
        throw new IllegalArgumentException("'" + name + "' has no part '" + partName + "'");
    }

    private Thing surface(JsonNode surface, Paint paint) {
        var panels = panels(surface);
        String part = surface.path("name").asText();
        boolean mirrored = surface.path("mirrored").asBoolean();
        boolean sheet = name.equals("Paperknife");
        boolean flat = sheet || BOARDS.contains(part);
        double thick = flat ? (sheet ? 5 : 6) : 0.115;
        Skin skin = (x, y, z, nz) -> {
            double side = mirrored ? Math.abs(y) : y;
            var panel = nearest(panels, side, z);
            return paint.at(
                    new Paint.Spot(part, panel.chordShare(x, side, z), panel.spanShare(side, z), x, y, z, nz > 0));
        };
        return Thing.estimated(
                (x, y, z) -> {
                    double side = mirrored ? Math.abs(y) : y;
                    double least = Double.MAX_VALUE;
                    for (var panel : panels) {
                        least = Math.min(least, panel.distance(x, side, z, thick, flat));
                    }
                    return least;
                },
                skin,
                reach(panels, mirrored));
    }

    private static Panel nearest(List<Panel> panels, double y, double z) {
        var best = panels.get(0);
        for (var panel : panels) {
            best = panel.outside(y, z) < best.outside(y, z) ? panel : best;
        }
        return best;
    }

    private static List<Panel> panels(JsonNode surface) {
        double whole = 0;
        for (var panel : surface.path("panels")) {
            whole += panel.path("span").asDouble();
        }
        var panels = new ArrayList<Panel>();
        double x = surface.path("x").asDouble();
        double y = surface.path("y").asDouble();
        double z = surface.path("z").asDouble();
        double from = 0;
        for (var panel : surface.path("panels")) {
            double span = panel.path("span").asDouble();
            double sweep = radians(panel, "sweep");
            double dihedral = radians(panel, "dihedral");
            double to = from + span / whole;
            panels.add(new Panel(
                    x,
                    y,
                    z,
                    panel.path("rootChord").asDouble(),
                    panel.path("tipChord").asDouble(),
                    span,
                    sweep,
                    dihedral,
                    radians(panel, "twist"),
                    from,
                    to));
            x += span * Math.tan(sweep);
            y += span * Math.cos(dihedral);
            z += span * Math.sin(dihedral);
            from = to;
        }
        return panels;
    }

    private static double radians(JsonNode panel, String field) {
        return Math.toRadians(panel.path(field).asDouble());
    }

    private static double[] reach(List<Panel> panels, boolean mirrored) {
        double[] reach = {1e9, 1e9, 1e9, -1e9, -1e9, -1e9};
        for (var panel : panels) {
            double end = panel.x() + panel.span() * Math.tan(panel.sweep());
            double y = panel.y() + panel.span() * Math.cos(panel.dihedral());
            double z = panel.z() + panel.span() * Math.sin(panel.dihedral());
            double thick = panel.root() * 0.09 + 4;
            cover(reach, panel.x(), panel.y(), panel.z(), thick);
            cover(reach, panel.x() + panel.root(), panel.y(), panel.z(), thick);
            cover(reach, end, y, z, thick);
            cover(reach, end + panel.tip(), y, z, thick);
        }
        if (mirrored) {
            reach[1] = -reach[4];
        }
        return reach;
    }

    private static void cover(double[] reach, double x, double y, double z, double thick) {
        double[] at = {x, y, z};
        double[] more = {3, 3 + thick / 3, thick};
        for (int k = 0; k < 3; k++) {
            reach[k] = Math.min(reach[k], at[k] - more[k]);
            reach[k + 3] = Math.max(reach[k + 3], at[k] + more[k]);
        }
    }

    private static Thing body(JsonNode body, Paint paint) {
        var hull = Hull.of(body);
        String part = body.path("name").asText();
        Skin skin = (x, y, z, nz) -> paint.at(new Paint.Spot(part, hull.share(x), 0, x, y, z, nz > 0));
        return Thing.estimated(hull, skin, hull.reach());
    }

    /** Smoothly spread between values. */
    static double between(double a, double b, double share) {
        return Noise.mix(a, b, Math.max(0, Math.min(1, share)));
    }
}
