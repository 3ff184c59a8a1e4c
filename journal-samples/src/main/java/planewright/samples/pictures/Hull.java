package planewright.samples.pictures;

import com.fasterxml.jackson.databind.JsonNode;
import planewright.samples.studio.Solid;

/** A body between its sections: rounded rectangles, drawn together at nose and tail. */
record Hull(double y, double[] x, double[] width, double[] top, double[] bottom) implements Solid {
    private static final double SOFT = 14;

    static Hull of(JsonNode body) {
        var sections = body.path("sections");
        return new Hull(
                body.path("y").asDouble(),
                column(sections, "x"),
                column(sections, "width"),
                column(sections, "top"),
                column(sections, "bottom"));
    }

    private static double[] column(JsonNode sections, String field) {
        var column = new double[sections.size()];
        for (int i = 0; i < column.length; i++) {
            column[i] = sections.get(i).path(field).asDouble();
        }
        return column;
    }

    double share(double px) {
        return (px - x[0]) / (x[x.length - 1] - x[0]);
    }

    double[] reach() {
        double w = max(width) / 2 + 2;
        double low = 0;
        for (double b : bottom) {
            low = Math.min(low, b);
        }
        return new double[] {x[0] - 2, y - w, low - 2, x[x.length - 1] + 2, y + w, max(top) + 2};
    }

    @Override
    public double at(double px, double py, double pz) {
        double wide = soft(width, px) / 2;
        double upper = soft(top, px);
        double lower = soft(bottom, px);
        double high = (upper - lower) / 2;
        double front = x[0] - px;
        double back = px - x[x.length - 1];
        double close = draw(-front / (high * 1.1)) * draw(-back / (high * 0.6));
        double hw = Math.max(0.8, wide * close);
        double hh = Math.max(0.8, high * close);
        double round = 0.62 * Math.min(hw, hh);
        double qy = Math.abs(py - y) - hw + round;
        double qz = Math.abs(pz - (upper + lower) / 2) - hh + round;
        double across = Math.hypot(Math.max(qy, 0), Math.max(qz, 0)) + Math.min(0, Math.max(qy, qz)) - round;
        double along = Math.max(front, back);
        return Math.hypot(Math.max(across, 0), Math.max(along, 0)) + Math.min(0, Math.max(across, along));
    }

    private static double draw(double share) {
        double e = 1 - Math.max(0, Math.min(1, share));
        return Math.sqrt(1 - e * e);
    }

    private double soft(double[] values, double px) {
        return (value(values, px - SOFT) + 2 * value(values, px) + value(values, px + SOFT)) / 4;
    }

    private double value(double[] values, double px) {
        int i = 0;
        while (i < x.length - 2 && px > x[i + 1]) {
            i++;
        }
        return Airframe.between(values[i], values[i + 1], (px - x[i]) / (x[i + 1] - x[i]));
    }

    private static double max(double[] values) {
        double most = values[0];
        for (double value : values) {
            most = Math.max(most, value);
        }
        return most;
    }
}
