package planewright.samples.studio;

import java.util.ArrayList;

/** How much light a point of a surface sends to the camera: direct, from the sky, from below, and its shine. */
final class Shading {
    private final Scene scene;
    private final Light light;
    private final double size;

    Shading(Scene scene, double size) {
        this.scene = scene;
        this.light = scene.light();
        this.size = size;
    }

    double[] body(Thing hit, double x, double y, double z, double[] ray, double fine) {
        double e = Math.max(0.03, fine);
        double[] n = Camera.unit(new double[] {
            hit.distance(x + e, y, z) - hit.distance(x - e, y, z),
            hit.distance(x, y + e, z) - hit.distance(x, y - e, z),
            hit.distance(x, y, z + e) - hit.distance(x, y, z - e) + 1e-12
        });
        return lit(hit.tone(x, y, z, n), x, y, z, n, ray);
    }

    double[] floor(double x, double y, double[] ray) {
        var tone = scene.floor().orElseThrow().tone(x, y);
        return lit(tone, x, y, 0, new double[] {0, 0, 1}, ray);
    }

    private double[] lit(Tone tone, double x, double y, double z, double[] n, double[] ray) {
        double[] sun = light.sun();
        double facing = dot(n, sun);
        double open = open(x, y, z, n);
        double direct = facing <= 0 ? 0 : facing * unshadowed(x, y, z, n);
        double up = 0.5 + 0.5 * n[2];
        double shine = tone.shine();
        double[] half = Camera.unit(new double[] {sun[0] - ray[0], sun[1] - ray[1], sun[2] - ray[2]});
        double glance = Math.max(0, dot(n, half));
        double spark =
                direct <= 0 ? 0 : Math.pow(glance, 8 + 90 * shine) * shine * 1.1 * direct / Math.max(0.1, facing);
        double rim = Math.pow(1 - Math.max(0, -dot(n, ray)), 4) * (0.1 + 0.5 * shine) * open * up;
        return new double[] {
            light(tone.r(), light.direct().r(), light.sky().r(), light.bounce().r(), direct, open, up, spark, rim),
            light(tone.g(), light.direct().g(), light.sky().g(), light.bounce().g(), direct, open, up, spark, rim),
            light(tone.b(), light.direct().b(), light.sky().b(), light.bounce().b(), direct, open, up, spark, rim)
        };
    }

    private static double light(
            double tone,
            double sun,
            double sky,
            double below,
            double direct,
            double open,
            double up,
            double spark,
            double rim) {
        return tone * (sun * direct + open * (sky * up + below * (1 - up))) + sun * spark + sky * rim;
    }

    /** How much of the sky a point sees, by how soon something stands before it. */
    private double open(double x, double y, double z, double[] n) {
        double reach = size * 0.075;
        double shut = 0;
        double weight = 0.9;
        for (int i = 1; i <= 5; i++) {
            double h = reach * i * i / 25 + size * 0.0008;
            double d = around(x + n[0] * h, y + n[1] * h, z + n[2] * h, h);
            shut += weight * Math.max(0, h - d) / h;
            weight *= 0.62;
        }
        return Math.max(0.08, 1 - 0.62 * shut);
    }

    private double around(double x, double y, double z, double reach) {
        double least = scene.floor().isPresent() ? Math.min(reach, Math.abs(z)) : reach;
        for (var thing : scene.things()) {
            double box = thing.outside(x, y, z);
            if (box < least) {
                least = Math.min(least, thing.distance(x, y, z));
            }
        }
        return least;
    }

    private double unshadowed(double x, double y, double z, double[] n) {
        double lift = size * 0.0016;
        double[] from = {x + n[0] * lift, y + n[1] * lift, z + n[2] * lift};
        double[] sun = light.sun();
        double reach = size * 1.4;
        var near = new ArrayList<Thing>();
        for (var thing : scene.things()) {
            if (thing.near(from, sun, reach, size * 0.05)) {
                near.add(thing);
            }
        }
        double free = 1;
        double t = lift;
        for (int i = 0; i < 70 && t < reach && free > 0.01 && !near.isEmpty(); i++) {
            double least = Double.MAX_VALUE;
            for (var thing : near) {
                double px = from[0] + sun[0] * t;
                double py = from[1] + sun[1] * t;
                double pz = from[2] + sun[2] * t;
                double box = thing.outside(px, py, pz);
                if (box < least) {
                    least = Math.min(
                            least,
                            box * light.hardness() > t * free && box > size * 0.01 ? box : thing.distance(px, py, pz));
                }
            }
            free = Math.min(free, light.hardness() * Math.max(0, least) / t);
            t += Math.max(size * 0.001, least * 0.8);
        }
        return free * free * (3 - 2 * free);
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
