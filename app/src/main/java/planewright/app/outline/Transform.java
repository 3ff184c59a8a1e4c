package planewright.app.outline;

import java.util.regex.Pattern;
import planewright.api.figure.Point;

/** x' = ax + cy + e, y' = bx + dy + f: the matrix of SVG 2 (CSS Transforms 1). */
record Transform(double a, double b, double c, double d, double e, double f) {
    static final Transform NONE = new Transform(1, 0, 0, 1, 0, 0);

    private static final Pattern CALL = Pattern.compile("\\s*,?\\s*(\\w+)\\s*\\(([^)]*)\\)");

    Point apply(double x, double y) {
        return new Point(a * x + c * y + e, b * x + d * y + f);
    }

    /** This one after another has been applied. */
    Transform after(Transform first) {
        return new Transform(
                a * first.a + c * first.b,
                b * first.a + d * first.b,
                a * first.c + c * first.d,
                b * first.c + d * first.d,
                a * first.e + c * first.f + e,
                b * first.e + d * first.f + f);
    }

    /** The attribute {@code transform} as SVG 1.1, 7.6 writes it. */
    static Transform of(String text) throws OutlineRefused {
        var all = NONE;
        var call = CALL.matcher(text);
        int read = 0;
        while (call.find() && call.start() == read) {
            all = all.after(one(call.group(1), new PathNumbers(call.group(2)).all(), call.group()));
            read = call.end();
        }
        if (!text.substring(read).isBlank()) {
            throw new OutlineRefused(
                    "transform is '{0}'; accepted: matrix, translate, scale, rotate, skewX, skewY with numbers", text);
        }
        return all;
    }

    private static Transform one(String name, double[] by, String said) throws OutlineRefused {
        int many = by.length;
        if (name.equals("matrix") && many == 6) {
            return new Transform(by[0], by[1], by[2], by[3], by[4], by[5]);
        }
        if (name.equals("translate") && (many == 1 || many == 2)) {
            return shift(by[0], many == 2 ? by[1] : 0);
        }
        if (name.equals("scale") && (many == 1 || many == 2)) {
            return new Transform(by[0], 0, 0, many == 2 ? by[1] : by[0], 0, 0);
        }
        if (name.equals("rotate") && (many == 1 || many == 3)) {
            var turn = turn(Math.toRadians(by[0]));
            return many == 1 ? turn : shift(by[1], by[2]).after(turn).after(shift(-by[1], -by[2]));
        }
        if (name.equals("skewX") && many == 1) {
            return new Transform(1, 0, Math.tan(Math.toRadians(by[0])), 1, 0, 0);
        }
        if (name.equals("skewY") && many == 1) {
            return new Transform(1, Math.tan(Math.toRadians(by[0])), 0, 1, 0, 0);
        }
        throw new OutlineRefused(
                "transform has '{0}'; accepted: matrix, translate, scale, rotate, skewX, skewY with numbers",
                said.strip());
    }

    private static Transform shift(double x, double y) {
        return new Transform(1, 0, 0, 1, x, y);
    }

    private static Transform turn(double angle) {
        return new Transform(Math.cos(angle), Math.sin(angle), -Math.sin(angle), Math.cos(angle), 0, 0);
    }
}
