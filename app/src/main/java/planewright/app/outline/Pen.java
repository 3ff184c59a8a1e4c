package planewright.app.outline;

import java.util.ArrayList;
import java.util.List;
import planewright.api.figure.Outline;
import planewright.api.figure.Point;

/** Draws paths in a file's own coordinates and keeps them in those of the sheet. */
final class Pen {
    private final Transform transform;
    private final List<Outline.Path> paths = new ArrayList<>();
    private List<Outline.Piece> pieces = new ArrayList<>();
    private double startX;
    private double startY;
    private double x;
    private double y;

    Pen(Transform transform) {
        this.transform = transform;
    }

    double x() {
        return x;
    }

    double y() {
        return y;
    }

    void move(double toX, double toY) {
        lift(false);
        startX = x = toX;
        startY = y = toY;
    }

    void line(double toX, double toY) {
        pieces.add(new Outline.Line(transform.apply(toX, toY)));
        x = toX;
        y = toY;
    }

    void cubic(double x1, double y1, double x2, double y2, double toX, double toY) {
        pieces.add(new Outline.Curve(transform.apply(x1, y1), transform.apply(x2, y2), transform.apply(toX, toY)));
        x = toX;
        y = toY;
    }

    /** The same curve as a cubic one, by raising its degree; Farin, Curves and Surfaces for CAGD, 6.1. */
    void quadratic(double x1, double y1, double toX, double toY) {
        cubic(x + (x1 - x) * 2 / 3, y + (y1 - y) * 2 / 3, toX + (x1 - toX) * 2 / 3, toY + (y1 - toY) * 2 / 3, toX, toY);
    }

    void close() {
        lift(true);
        x = startX;
        y = startY;
    }

    List<Outline.Path> done() {
        lift(false);
        return paths;
    }

    private void lift(boolean closed) {
        if (!pieces.isEmpty()) {
            paths.add(new Outline.Path(start(), pieces, closed));
            pieces = new ArrayList<>();
        }
    }

    private Point start() {
        return transform.apply(startX, startY);
    }
}
