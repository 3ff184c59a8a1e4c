package planewright.samples.studio;

/** A body given by the distance to its surface, mm; negative inside. */
@FunctionalInterface
public interface Solid {
    double at(double x, double y, double z);

    default Solid moved(double dx, double dy, double dz) {
        return (x, y, z) -> at(x - dx, y - dy, z - dz);
    }

    /** Turned about the x axis, degrees. */
    default Solid rolled(double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        return (x, y, z) -> at(x, c * y + s * z, c * z - s * y);
    }

    /** Turned about the y axis, degrees. */
    default Solid pitched(double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        return (x, y, z) -> at(c * x - s * z, y, c * z + s * x);
    }

    /** Turned about the z axis, degrees. */
    default Solid turned(double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        return (x, y, z) -> at(c * x + s * y, c * y - s * x, z);
    }

    default Solid with(Solid other) {
        return (x, y, z) -> Math.min(at(x, y, z), other.at(x, y, z));
    }

    /** Joined with a fillet of about this radius. */
    default Solid blended(Solid other, double radius) {
        return (x, y, z) -> {
            double a = at(x, y, z);
            double b = other.at(x, y, z);
            double h = Math.max(radius - Math.abs(a - b), 0) / radius;
            return Math.min(a, b) - h * h * radius / 4;
        };
    }

    default Solid without(Solid other) {
        return (x, y, z) -> Math.max(at(x, y, z), -other.at(x, y, z));
    }

    default Solid within(Solid other) {
        return (x, y, z) -> Math.max(at(x, y, z), other.at(x, y, z));
    }

    default Solid grown(double by) {
        return (x, y, z) -> at(x, y, z) - by;
    }

    /** Both this and what a mirror at y = 0 shows of it. */
    default Solid mirrored() {
        return (x, y, z) -> at(x, Math.abs(y), z);
    }
}
