package planewright.app.outline;

/** The attribute {@code d} of a path: SVG 1.1, 8.3. */
final class PathData {
    private final PathNumbers numbers;
    private final Pen pen;
    private char before = 'M';
    private double controlX;
    private double controlY;

    private PathData(String text, Pen pen) {
        this.numbers = new PathNumbers(text);
        this.pen = pen;
    }

    static void draw(String text, Pen pen) throws OutlineRefused {
        new PathData(text, pen).draw();
    }

    private void draw() throws OutlineRefused {
        boolean begun = false;
        while (!numbers.isAtEnd()) {
            var place = numbers.wrong("M or m first");
            char command = numbers.letter();
            if (!begun && Character.toUpperCase(command) != 'M') {
                throw place;
            }
            begun = true;
            many(command);
        }
    }

    /** A command with as many sets of numbers as follow it; more points after a move are lines. */
    private void many(char command) throws OutlineRefused {
        if (Character.toUpperCase(command) == 'Z') {
            pen.close();
            before = 'Z';
            return;
        }
        char now = command;
        do {
            one(Character.toUpperCase(now), Character.isLowerCase(now));
            if (now == 'M' || now == 'm') {
                now = now == 'M' ? 'L' : 'l';
            }
        } while (!numbers.isAtEnd() && !numbers.isLetter());
    }

    private void one(char command, boolean relative) throws OutlineRefused {
        double x = relative ? pen.x() : 0;
        double y = relative ? pen.y() : 0;
        switch (command) {
            case 'M' -> pen.move(x + numbers.number(), y + numbers.number());
            case 'L' -> pen.line(x + numbers.number(), y + numbers.number());
            case 'H' -> pen.line(x + numbers.number(), pen.y());
            case 'V' -> pen.line(pen.x(), y + numbers.number());
            case 'C' -> cubic(x + numbers.number(), y + numbers.number(), x, y);
            case 'S' -> cubic(mirrored("CS", pen.x(), controlX), mirrored("CS", pen.y(), controlY), x, y);
            case 'Q' -> quadratic(x + numbers.number(), y + numbers.number(), x, y);
            case 'T' -> quadratic(mirrored("QT", pen.x(), controlX), mirrored("QT", pen.y(), controlY), x, y);
            case 'A' -> arc(x, y);
            default ->
                throw new OutlineRefused(
                        "path data has the command '{0}'; accepted: M, L, H, V, C, S, Q, T, A and Z, large or small",
                        command);
        }
        before = command;
    }

    /** The last control point seen from the other side of the present point, after a curve of the same kind. */
    private double mirrored(String kinds, double at, double control) {
        return kinds.indexOf(before) >= 0 ? 2 * at - control : at;
    }

    private void cubic(double x1, double y1, double x, double y) throws OutlineRefused {
        double x2 = x + numbers.number();
        double y2 = y + numbers.number();
        pen.cubic(x1, y1, x2, y2, x + numbers.number(), y + numbers.number());
        controlX = x2;
        controlY = y2;
    }

    private void quadratic(double x1, double y1, double x, double y) throws OutlineRefused {
        pen.quadratic(x1, y1, x + numbers.number(), y + numbers.number());
        controlX = x1;
        controlY = y1;
    }

    private void arc(double x, double y) throws OutlineRefused {
        var arc = new Arc(
                numbers.number(), numbers.number(), Math.toRadians(numbers.number()), numbers.flag(), numbers.flag());
        arc.draw(pen, x + numbers.number(), y + numbers.number());
    }
}
