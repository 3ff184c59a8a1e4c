package planewright.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Which moments a mass can have when it may be spread over the pockets at will, up to the room of each: the relaxation that
 * bounds the search over whole pieces.
 *
 * <p>The moments that a given mass can reach form a convex polygon whose edges run along differences of two pockets' places;
 * those that balance form a rectangle. Two convex polygons meet unless a line along an edge of one keeps them apart (separating
 * axes; any text on computational geometry, such as Ericson, Real-Time Collision Detection, 5.2.1, cited from memory), so
 * looking along the normals of all these edges tells exactly whether they meet. Every comparison leaves room for the
 * rounding of doubles on the side of "they meet", so that no solution is ever cut off.
 */
final class MomentReach {
    /** Share of the numbers compared by which rounding might be wrong; a double's own is 1e-16. */
    private static final double ROUNDING = 1e-12;

    private final PieceProblem problem;
    private final List<Direction> directions = new ArrayList<>();

    /** A direction in the plane and the pockets in the order in which they lie along it, the farthest first. */
    private record Direction(double x, double y, int[] order, double[] arm) {}

    /**
     * From the least to the greatest mass.
     *
     * @param least no ballast lighter than this balances
     * @param greatest nor one heavier than this
     */
    record Masses(double least, double greatest) {}

    MomentReach(PieceProblem problem) {
        this.problem = problem;
        both(1, 0);
        both(0, 1);
        for (int i = 0; i < problem.pockets().size(); i++) {
            for (int j = 0; j < i; j++) {
                double x =
                        problem.pockets().get(i).x() - problem.pockets().get(j).x();
                double y =
                        problem.pockets().get(i).y() - problem.pockets().get(j).y();
                if (x != 0 && y != 0) {
                    both(-y / Math.hypot(x, y), x / Math.hypot(x, y));
                }
            }
        }
    }

    private void both(double x, double y) {
        directions.add(direction(x, y));
        directions.add(direction(-x, -y));
    }

    private Direction direction(double x, double y) {
        var arm = problem.pockets().stream()
                .mapToDouble(pocket -> x * pocket.x() + y * pocket.y())
                .toArray();
        int[] order = IntStream.range(0, arm.length)
                .boxed()
                .sorted(Comparator.comparingDouble(pocket -> -arm[pocket]))
                .mapToInt(Integer::intValue)
                .toArray();
        return new Direction(x, y, order, arm);
    }

    /** Steps of work that one look takes, for who keeps count. */
    int work() {
        return directions.size() * (1 + problem.pockets().size());
    }

    /**
     * Whether the rest of a mass can still bring the moments to where it balances.
     *
     * @param mass all of the ballast
     * @param x moment of what is placed already
     * @param y the same along y
     * @param left mass that is still to be placed
     * @param room what each pocket still takes
     * @param factor how many times the tolerance it may be off
     */
    boolean canBalance(long mass, double x, double y, long left, long[] room, double factor) {
        for (var direction : directions) {
            double most = direction.x() * x + direction.y() * y;
            double need = need(direction, mass, factor);
            double scale = Math.abs(most) + Math.abs(need);
            double rest = left;
            for (int pocket : direction.order()) {
                double here = Math.min(rest, room[pocket]);
                most += here * direction.arm()[pocket];
                scale += Math.abs(here * direction.arm()[pocket]);
                rest -= here;
            }
            if (rest > 0 || most < need - ROUNDING * scale) {
                return false;
            }
        }
        return true;
    }

    /** The masses among which the solution must be; empty where there is none, whatever the pieces. */
    Optional<Masses> masses() {
        double most = problem.kinds().stream()
                .mapToDouble(kind -> (double) kind.count() * kind.mass())
                .sum();
        double least = 0;
        for (var direction : directions) {
            var masses = masses(direction);
            if (masses.isEmpty()) {
                return Optional.empty();
            }
            least = Math.max(least, masses.get().least());
            most = Math.min(most, masses.get().greatest());
        }
        return least <= most ? Optional.of(new Masses(least, most)) : Optional.empty();
    }

    /** Along one direction the excess of reach over need is concave in the mass: it rises, then falls. */
    private Optional<Masses> masses(Direction direction) {
        var room = problem.room();
        double need = need(direction, 0, 1);
        double slope = need(direction, 1, 1) - need;
        double mass = 0;
        double excess = -need;
        double slack = ROUNDING * Math.abs(need);
        double least = excess >= -slack ? 0 : Double.NaN;
        double greatest = least;
        for (int pocket : direction.order()) {
            double rate = direction.arm()[pocket] - slope;
            double next = excess + rate * room[pocket];
            slack += ROUNDING * Math.abs(rate * room[pocket]);
            if (Double.isNaN(least) && next >= -slack) {
                least = mass + (rate > 0 ? Math.max(0, (-slack - excess) / rate) : 0);
            }
            if (!Double.isNaN(least) && (excess >= -slack || next >= -slack)) {
                greatest = next >= -slack ? mass + room[pocket] : mass + (-slack - excess) / rate;
            }
            mass += room[pocket];
            excess = next;
        }
        return Double.isNaN(least) ? Optional.empty() : Optional.of(new Masses(least, greatest));
    }

    /** The least moment along a direction among those that balance. */
    private double need(Direction direction, long mass, double factor) {
        var rest = problem.rest();
        double all = factor * (rest.mass() + mass);
        double x = direction.x() > 0
                ? direction.x() * (-rest.toleranceX() * all - rest.xHigh())
                : direction.x() * (rest.toleranceX() * all - rest.xLow());
        double y = direction.y() > 0
                ? direction.y() * (-rest.toleranceY() * all - rest.y())
                : direction.y() * (rest.toleranceY() * all - rest.y());
        return x + y;
    }
}
