package planewright.app.outline;

/**
 * An arc of an ellipse between two points, as path data writes it, drawn as cubic curves.
 *
 * @param rx half axis along the turned x
 * @param ry half axis along the turned y
 * @param turn of the x axis, rad
 * @param large whether it takes the long way
 * @param sweep whether its angle grows
 */
record Arc(double rx, double ry, double turn, boolean large, boolean sweep) {
    /** A curve over an angle of 30° strays from a unit circle by 4e-7: 0.0004 mm on a radius of a metre. */
    private static final double MOST_ANGLE = Math.PI / 6;

    /** Source: SVG 1.1, appendix F.6.5 (from end points to centre) and F.6.6 (radii too small, or none). */
    void draw(Pen pen, double toX, double toY) {
        double x1 = pen.x();
        double y1 = pen.y();
        if (x1 == toX && y1 == toY) {
            return;
        }
        if (rx == 0 || ry == 0) {
            pen.line(toX, toY);
            return;
        }
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        double px = cos * (x1 - toX) / 2 + sin * (y1 - toY) / 2;
        double py = -sin * (x1 - toX) / 2 + cos * (y1 - toY) / 2;
        double reach = Math.hypot(px / rx, py / ry);
        double a = Math.abs(rx) * Math.max(1, reach);
        double b = Math.abs(ry) * Math.max(1, reach);
        double shortfall = Math.hypot(px / a, py / b);
        double length = Math.sqrt(Math.max(0, 1 / (shortfall * shortfall) - 1));
        double side = large == sweep ? -length : length;
        double cx = side * a * py / b;
        double cy = -side * b * px / a;
        double from = Math.atan2((py - cy) / b, (px - cx) / a);
        double to = Math.atan2((-py - cy) / b, (-px - cx) / a);
        double angle = to - from;
        if (sweep && angle < 0) {
            angle += 2 * Math.PI;
        } else if (!sweep && angle > 0) {
            angle -= 2 * Math.PI;
        }
        var ellipse =
                new Ellipse(cos * cx - sin * cy + (x1 + toX) / 2, sin * cx + cos * cy + (y1 + toY) / 2, a, b, cos, sin);
        ellipse.draw(pen, from, angle, toX, toY);
    }

    /** An ellipse about a centre. */
    private record Ellipse(double cx, double cy, double a, double b, double cos, double sin) {
        /** Control points lie 4/3·tan(θ/4) along the tangents; Riškus, Information Technology and Control 35 (2006). */
        void draw(Pen pen, double from, double angle, double toX, double toY) {
            int steps = (int) Math.ceil(Math.abs(angle) / MOST_ANGLE - 1e-9);
            double step = angle / steps;
            double k = 4.0 / 3 * Math.tan(step / 4);
            for (int i = 0; i < steps; i++) {
                double t = from + i * step;
                double u = t + step;
                boolean last = i == steps - 1;
                pen.cubic(
                        x(Math.cos(t) - k * Math.sin(t), Math.sin(t) + k * Math.cos(t)),
                        y(Math.cos(t) - k * Math.sin(t), Math.sin(t) + k * Math.cos(t)),
                        x(Math.cos(u) + k * Math.sin(u), Math.sin(u) - k * Math.cos(u)),
                        y(Math.cos(u) + k * Math.sin(u), Math.sin(u) - k * Math.cos(u)),
                        last ? toX : x(Math.cos(u), Math.sin(u)),
                        last ? toY : y(Math.cos(u), Math.sin(u)));
            }
        }

        private double x(double u, double v) {
            return cx + cos * a * u - sin * b * v;
        }

        private double y(double u, double v) {
            return cy + sin * a * u + cos * b * v;
        }
    }
}
