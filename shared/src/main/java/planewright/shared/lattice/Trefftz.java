package planewright.shared.lattice;

import java.util.ArrayList;
import java.util.List;

/**
 * Induced drag from the wake far behind, where each strip's trailing vortices are straight lines: D = ½ρ Σ Γ(v·l_z − w·l_y)
 * with the wake's own velocity v, w at the middle of the strip. Source: Drela, section 5.7.
 */
public final class Trefftz {
    private Trefftz() {}

    /**
     * Drag of strips with given circulations, both sides together, in a symmetric flow.
     *
     * @param lattice whose strips they are
     * @param circulation of each strip, per unit speed, m
     * @return per ρU², m²
     */
    public static double drag(Lattice lattice, double[] circulation) {
        var wake = wake(lattice, circulation, 1);
        return wake.stream().mapToDouble(trace -> trace.drag(wake)).sum();
    }

    /**
     * Yawing moment, nose right positive, that the drag of two flows together makes beyond that of each alone: adverse yaw.
     * The drag of each strip acts where the strip stands.
     *
     * @return per ρU² and unit of both, m³
     */
    public static double yaw(Lattice lattice, Flow one, Flow other) {
        var first = wake(lattice, lattice.stripCirculation(one), one.symmetry().image());
        var second =
                wake(lattice, lattice.stripCirculation(other), other.symmetry().image());
        double sum = 0;
        for (int i = 0; i < first.size(); i++) {
            double y = first.get(i).middle().y();
            sum += y * (first.get(i).drag(second) + second.get(i).drag(first));
        }
        return sum;
    }

    private static List<Trace> wake(Lattice lattice, double[] circulation, int image) {
        var wake = new ArrayList<Trace>();
        for (int i = 0; i < circulation.length; i++) {
            var strip = lattice.strips().get(i);
            var trace = new Trace(strip.from(), strip.to(), strip.middle(), circulation[i]);
            wake.add(trace);
            if (lattice.bothSidesAlike() && !strip.inPlane()) {
                wake.add(trace.mirrored(image));
            }
        }
        return wake;
    }

    /** Where a strip crosses the plane far behind. */
    private record Trace(Vector from, Vector to, Vector middle, double circulation) {
        Trace mirrored(int image) {
            return new Trace(to.mirrored(), from.mirrored(), middle.mirrored(), image * circulation);
        }

        double drag(List<Trace> wake) {
            double right = 0;
            double up = 0;
            for (var other : wake) {
                double[] legs = {-other.circulation, other.circulation};
                var places = new Vector[] {other.from, other.to};
                for (int i = 0; i < 2; i++) {
                    double y = middle.y() - places[i].y();
                    double z = middle.z() - places[i].z();
                    double turn = legs[i] / (2 * Math.PI * (y * y + z * z));
                    right -= turn * z;
                    up += turn * y;
                }
            }
            return circulation * (right * (to.z() - from.z()) - up * (to.y() - from.y())) / 2;
        }
    }
}
