package planewright.samples.studio;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Takes the picture: follows the light back from every dot, finer where two things meet. */
public final class Studio {
    private static final double EDGE = 0.045;
    private static final double[][] QUARTERS = {{-0.25, -0.25}, {0.25, -0.25}, {-0.25, 0.25}, {0.25, 0.25}};

    private final Scene scene;
    private final Camera camera;
    private final Shading shading;
    private final int width;
    private final int height;
    private final boolean grazing;

    private Studio(Scene scene, Camera camera, int width, int height) {
        this.scene = scene;
        this.camera = camera;
        this.width = width;
        this.height = height;
        this.grazing = camera.forward()[2] > -0.7;
        this.shading = new Shading(scene, camera.field());
    }

    /** A picture without a background: what the camera sees nothing at stays transparent. */
    public static BufferedImage take(Scene scene, Camera camera, int width, int height) {
        return new Studio(scene, camera, width, height).picture();
    }

    private BufferedImage picture() {
        var dots = new Dot[height][width];
        IntStream.range(0, height).parallel().forEach(y -> {
            for (int x = 0; x < width; x++) {
                dots[y][x] = dot(x + 0.5, y + 0.5);
            }
        });
        var picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        IntStream.range(0, height).parallel().forEach(y -> {
            var row = new int[width];
            for (int x = 0; x < width; x++) {
                row[x] = edge(dots, x, y) ? fine(x, y) : dots[y][x].argb();
            }
            synchronized (picture) {
                picture.setRGB(0, y, width, 1, row, 0, width);
            }
        });
        return picture;
    }

    private boolean edge(Dot[][] dots, int x, int y) {
        var here = dots[y][x];
        return x > 0 && here.unlike(dots[y][x - 1], grazing)
                || y > 0 && here.unlike(dots[y - 1][x], grazing)
                || x + 1 < width && here.unlike(dots[y][x + 1], grazing)
                || y + 1 < height && here.unlike(dots[y + 1][x], grazing);
    }

    private int fine(int x, int y) {
        double[] sum = new double[4];
        for (var quarter : QUARTERS) {
            var dot = dot(x + 0.5 + quarter[0], y + 0.5 + quarter[1]);
            sum[0] += dot.r() / 4;
            sum[1] += dot.g() / 4;
            sum[2] += dot.b() / 4;
            sum[3] += dot.cover() / 4;
        }
        return new Dot(sum[0], sum[1], sum[2], sum[3], null).argb();
    }

    private Dot dot(double px, double py) {
        double[] ray = camera.ray((px - width / 2.0) / width, (py - height / 2.0) / width);
        double[] eye = camera.eye();
        double end = scene.floor().isPresent() && ray[2] < -1e-6 ? -eye[2] / ray[2] : camera.distance() * 4;
        boolean grounded = scene.floor().isPresent() && ray[2] < -1e-6;
        var near = near(eye, ray, end);
        double fine = camera.field() / width / camera.distance() * 0.4;
        double t = 0;
        for (int i = 0; i < 260 && t < end && !near.isEmpty(); i++) {
            double x = eye[0] + ray[0] * t;
            double y = eye[1] + ray[1] * t;
            double z = eye[2] + ray[2] * t;
            double least = Double.MAX_VALUE;
            Thing hit = null;
            for (var thing : near) {
                double box = thing.outside(x, y, z);
                double d = box >= least ? box : box > 2 ? box : thing.distance(x, y, z);
                if (d < least) {
                    least = d;
                    hit = thing;
                }
            }
            if (least < fine * t) {
                return Dot.of(shading.body(hit, x, y, z, ray, fine * t), hit);
            }
            t += least;
        }
        if (!grounded) {
            return new Dot(0, 0, 0, 0, scene);
        }
        return Dot.of(shading.floor(eye[0] + ray[0] * end, eye[1] + ray[1] * end, ray), scene);
    }

    private List<Thing> near(double[] eye, double[] ray, double end) {
        var near = new ArrayList<Thing>();
        for (var thing : scene.things()) {
            if (thing.near(eye, ray, end, 0.5)) {
                near.add(thing);
            }
        }
        return near;
    }

    /** Developed red, green and blue, premultiplied by the cover, and what is seen there. */
    private record Dot(double r, double g, double b, double cover, Object what) {
        static Dot of(double[] light, Object what) {
            return new Dot(develop(light[0]), develop(light[1]), develop(light[2]), 1, what);
        }

        /** A film's curve: soft in the lights, then as screens expect it. */
        private static double develop(double light) {
            double x = Math.max(0, light * 0.62);
            double film = x * (2.51 * x + 0.03) / (x * (2.43 * x + 0.59) + 0.14);
            return Math.pow(Math.min(1, film), 1 / 2.2);
        }

        boolean unlike(Dot other, boolean fine) {
            return what != other.what
                    || (fine || what instanceof Thing)
                            && Math.abs(r - other.r) + Math.abs(g - other.g) + Math.abs(b - other.b) > 3 * EDGE;
        }

        int argb() {
            double share = Math.max(cover, 1e-9);
            return channel(cover) << 24 | channel(r / share) << 16 | channel(g / share) << 8 | channel(b / share);
        }

        private static int channel(double value) {
            return (int) Math.round(255 * Math.max(0, Math.min(1, value)));
        }
    }
}
