package planewright.balance;

import java.util.List;
import java.util.function.ToDoubleFunction;
import planewright.balance.MassPoint.Vector;

/**
 * All-up mass, balance point and moments of inertia of a list of parts.
 *
 * <p>Balance point: x = Σmᵢxᵢ / M. Source: FAA-H-8083-1B, chapter 2, "total moment divided by total weight". Its standard
 * uncertainty for independent readings: u² = Σ((xᵢ − x)·u(mᵢ)/M)² + Σ(mᵢ·u(xᵢ)/M)². Source: JCGM 100:2008 (GUM), 5.1.2,
 * equation (10). Inertia: each part a uniform box, m(b² + c²)/12, and the parallel-axis theorem. Source: any text on
 * mechanics, such as McLean and Nelson, Engineering Mechanics, chapter 15.
 *
 * @param mass kg
 * @param massSpread kg
 * @param balance m from the datum
 * @param balanceSpread m
 * @param roll moment of inertia about the x axis through the balance point, kg·m²
 * @param pitch the same about y
 * @param yaw the same about z
 * @param rollYaw product of inertia Σm·x·z about the balance point, kg·m²
 */
record MassProperties(
        double mass,
        double massSpread,
        Vector balance,
        Vector balanceSpread,
        double roll,
        double pitch,
        double yaw,
        double rollYaw) {

    /**
     * @param parts at least one
     */
    static MassProperties of(List<MassPoint> parts) {
        double mass = parts.stream().mapToDouble(MassPoint::mass).sum();
        double massSpread = root(parts, part -> part.massSpread());
        var balance = new Vector(
                mean(parts, mass, part -> part.at().x()),
                mean(parts, mass, part -> part.at().y()),
                mean(parts, mass, part -> part.at().z()));
        var spread = new Vector(
                spread(
                        parts,
                        mass,
                        balance.x(),
                        part -> part.at().x(),
                        part -> part.atSpread().x()),
                spread(
                        parts,
                        mass,
                        balance.y(),
                        part -> part.at().y(),
                        part -> part.atSpread().y()),
                spread(
                        parts,
                        mass,
                        balance.z(),
                        part -> part.at().z(),
                        part -> part.atSpread().z()));
        double xx = 0;
        double yy = 0;
        double zz = 0;
        double xz = 0;
        for (var part : parts) {
            double x = part.at().x() - balance.x();
            double y = part.at().y() - balance.y();
            double z = part.at().z() - balance.z();
            xx += part.mass() * (x * x + square(part.size().x()) / 12);
            yy += part.mass() * (y * y + square(part.size().y()) / 12);
            zz += part.mass() * (z * z + square(part.size().z()) / 12);
            xz += part.mass() * x * z;
        }
        return new MassProperties(mass, massSpread, balance, spread, yy + zz, xx + zz, xx + yy, xz);
    }

    /** How far the balance point would go along x were the part left out, m; 0 for the only part. */
    double shiftWithout(MassPoint part) {
        double rest = mass - part.mass();
        return rest <= 0 ? 0 : part.mass() * (balance.x() - part.at().x()) / rest;
    }

    /** How far one part must go along x for the balance point to be at the target, m: Δx = M·(target − x)/m. */
    double moveFor(double target, MassPoint part) {
        return mass * (target - balance.x()) / part.mass();
    }

    /**
     * The mass to add at a station for the balance point to be at the target, kg: m = M·(target − x)/(station − target).
     * Source: FAA-H-8083-1B, chapter 7, "Permanent Ballast". Negative or infinite where none there would do.
     */
    double ballastFor(double target, double station) {
        return mass * (target - balance.x()) / (station - target);
    }

    /** The part's share of the variance of the balance point along x, 0 to 1; 0 where nothing is uncertain. */
    double varianceShare(MassPoint part) {
        double spread = balanceSpread.x() * mass;
        return spread == 0
                ? 0
                : square((part.at().x() - balance.x()) * part.massSpread() / spread)
                        + square(part.mass() * part.atSpread().x() / spread);
    }

    private static double mean(List<MassPoint> parts, double mass, ToDoubleFunction<MassPoint> at) {
        return parts.stream()
                        .mapToDouble(part -> part.mass() * at.applyAsDouble(part))
                        .sum()
                / mass;
    }

    private static double spread(
            List<MassPoint> parts,
            double mass,
            double balance,
            ToDoubleFunction<MassPoint> at,
            ToDoubleFunction<MassPoint> atSpread) {
        return Math.hypot(
                root(parts, part -> (at.applyAsDouble(part) - balance) * part.massSpread() / mass),
                root(parts, part -> part.mass() * atSpread.applyAsDouble(part) / mass));
    }

    private static double root(List<MassPoint> parts, ToDoubleFunction<MassPoint> term) {
        return Math.sqrt(parts.stream()
                .mapToDouble(part -> square(term.applyAsDouble(part)))
                .sum());
    }

    private static double square(double number) {
        return number * number;
    }
}
