package planewright.balance;

import java.util.List;
import java.util.function.ToDoubleFunction;
import planewright.balance.MassPoint.Vector;
import planewright.shared.mass.Centre;

/**
 * All-up mass, balance point and moments of inertia of a list of parts.
 *
 * <p>Balance point: see {@link Centre}; every ± here likewise by JCGM 100:2008 (GUM), 5.1.2, equation (10). Inertia: each part
 * a uniform box, m(b² + c²)/12, and the parallel-axis theorem. Source: any text on mechanics, such as McLean and Nelson, Engineering Mechanics, chapter 15. Its ± needs no term for the
 * balance point's own, for about the balance point Σm·x = 0.
 *
 * @param mass kg
 * @param balance m from the datum, along each axis
 * @param roll moment of inertia about the x axis through the balance point, kg·m²
 * @param pitch the same about y
 * @param yaw the same about z
 * @param rollYaw product of inertia Σm·x·z about the balance point, kg·m²
 * @param parts what it is made of
 */
record MassProperties(
        Value mass, Balance balance, Value roll, Value pitch, Value yaw, Value rollYaw, List<MassPoint> parts) {
    /**
     * A computed number.
     *
     * @param value SI
     * @param spread its standard uncertainty
     */
    record Value(double value, double spread) {}

    /** Three stations. */
    record Balance(Value x, Value y, Value z) {
        Vector at() {
            return new Vector(x.value(), y.value(), z.value());
        }
    }

    /**
     * @param parts at least one
     */
    static MassProperties of(List<MassPoint> parts) {
        double mass = parts.stream().mapToDouble(MassPoint::mass).sum();
        double spread = Math.sqrt(
                parts.stream().mapToDouble(part -> square(part.massSpread())).sum());
        var balance = new Balance(mean(parts, Vector::x), mean(parts, Vector::y), mean(parts, Vector::z));
        var at = balance.at();
        return new MassProperties(
                new Value(mass, spread),
                balance,
                inertia(parts, at, Vector::y, Vector::z),
                inertia(parts, at, Vector::x, Vector::z),
                inertia(parts, at, Vector::x, Vector::y),
                product(parts, at),
                parts);
    }

    /** How far the balance point would go along x were the part left out, m; 0 for the only part. */
    Value shiftWithout(MassPoint part) {
        double all = mass.value();
        double rest = all - part.mass();
        if (rest <= 0) {
            return new Value(0, 0);
        }
        double x = balance.x().value();
        double shift = part.mass() * (x - part.at().x()) / rest;
        double variance = 0;
        for (var other : parts) {
            double arm = (x - other.at().x()) / all;
            double weight = -other.mass() / all;
            if (other != part) {
                arm += (other.at().x() - x - shift) / rest;
                weight += other.mass() / rest;
            }
            variance += square(arm * other.massSpread())
                    + square(weight * other.atSpread().x());
        }
        return new Value(shift, Math.sqrt(variance));
    }

    /** How far one part must go along x for the balance point to be at the target, m: Δx = M·(target − x)/m. */
    Value moveFor(double target, MassPoint part) {
        double move = missing(target) / part.mass();
        return new Value(move, Math.sqrt(movedVariance(target, part, move)) / part.mass());
    }

    /** Where that part then sits, m. Where it sat before does not matter, and no more does the ± of that. */
    Value stationFor(double target, MassPoint part) {
        double move = missing(target) / part.mass();
        double variance = movedVariance(target, part, move)
                - square(part.mass() * part.atSpread().x());
        return new Value(part.at().x() + move, Math.sqrt(Math.max(0, variance)) / part.mass());
    }

    /**
     * The mass to add where a part sits for the balance point to be at the target, kg: m = M·(target − x)/(station − target).
     * Source: FAA-H-8083-1B, chapter 7, "Permanent Ballast". Negative or infinite where none there would do.
     */
    Value ballastFor(double target, MassPoint part) {
        double arm = part.at().x() - target;
        double ballast = missing(target) / arm;
        double variance = missingVariance(target)
                - square(part.mass() * part.atSpread().x())
                + square((part.mass() + ballast) * part.atSpread().x());
        return new Value(ballast, Math.sqrt(Math.max(0, variance)) / Math.abs(arm));
    }

    /** The part's share of the variance of the balance point along x, 0 to 1; 0 where nothing is uncertain. */
    double varianceShare(MassPoint part) {
        double spread = balance.x().spread() * mass.value();
        return spread == 0
                ? 0
                : square((part.at().x() - balance.x().value()) * part.massSpread() / spread)
                        + square(part.mass() * part.atSpread().x() / spread);
    }

    /** The moment along x that is missing at a target, which counts as exact, kg·m. */
    private double missing(double target) {
        return mass.value() * (target - balance.x().value());
    }

    private double missingVariance(double target) {
        return parts.stream()
                .mapToDouble(part -> square((target - part.at().x()) * part.massSpread())
                        + square(part.mass() * part.atSpread().x()))
                .sum();
    }

    /** The variance of the moment that moving a part must bring, which the mass of that part itself divides. */
    private double movedVariance(double target, MassPoint part, double move) {
        double arm = target - part.at().x();
        double variance =
                missingVariance(target) - square(arm * part.massSpread()) + square((arm - move) * part.massSpread());
        return Math.max(0, variance);
    }

    private static Value mean(List<MassPoint> parts, ToDoubleFunction<Vector> along) {
        var centre = Centre.of(parts.stream()
                .map(part -> new Centre.Weight(
                        part.mass(),
                        part.massSpread(),
                        along.applyAsDouble(part.at()),
                        along.applyAsDouble(part.atSpread())))
                .toList());
        return new Value(centre.station(), centre.spread());
    }

    /** About the axis across both directions. */
    private static Value inertia(
            List<MassPoint> parts, Vector about, ToDoubleFunction<Vector> one, ToDoubleFunction<Vector> other) {
        double sum = 0;
        double variance = 0;
        for (var part : parts) {
            double each = 0;
            for (var along : List.of(one, other)) {
                double arm = along.applyAsDouble(part.at()) - along.applyAsDouble(about);
                double size = along.applyAsDouble(part.size());
                each += square(arm) + square(size) / 12;
                variance += square(2 * part.mass() * arm * along.applyAsDouble(part.atSpread()))
                        + square(part.mass() * size / 6 * along.applyAsDouble(part.sizeSpread()));
            }
            sum += part.mass() * each;
            variance += square(each * part.massSpread());
        }
        return new Value(sum, Math.sqrt(variance));
    }

    private static Value product(List<MassPoint> parts, Vector about) {
        double sum = 0;
        double variance = 0;
        for (var part : parts) {
            double x = part.at().x() - about.x();
            double z = part.at().z() - about.z();
            sum += part.mass() * x * z;
            variance += square(x * z * part.massSpread())
                    + square(part.mass() * z * part.atSpread().x())
                    + square(part.mass() * x * part.atSpread().z());
        }
        return new Value(sum, Math.sqrt(variance));
    }

    private static double square(double number) {
        return number * number;
    }
}
