package planewright.shared.mass;

import java.util.List;

/**
 * Where weights balance along an axis.
 *
 * @param station in the unit of their stations
 * @param spread its standard uncertainty
 */
public record Centre(double station, double spread) {
    /**
     * A weight on the axis.
     *
     * @param mass in any unit, the same for all
     * @param massSpread its standard uncertainty
     * @param station in any unit, the same for all
     * @param stationSpread its standard uncertainty
     */
    public record Weight(double mass, double massSpread, double station, double stationSpread) {}

    /**
     * Mass-weighted mean, x = Σmᵢxᵢ / M. Source: FAA-H-8083-1B, chapter 2, "total moment divided by total weight". Its standard
     * uncertainty for independent readings: u² = Σ((xᵢ − x)·u(mᵢ)/M)² + Σ(mᵢ·u(xᵢ)/M)². Source: JCGM 100:2008 (GUM), 5.1.2,
     * equation (10).
     *
     * @param weights at least one; their masses together above 0
     */
    public static Centre of(List<Weight> weights) {
        double mass = weights.stream().mapToDouble(Weight::mass).sum();
        double mean = weights.stream()
                        .mapToDouble(weight -> weight.mass() * weight.station())
                        .sum()
                / mass;
        double variance = weights.stream()
                .mapToDouble(weight -> square((weight.station() - mean) * weight.massSpread() / mass)
                        + square(weight.mass() * weight.stationSpread() / mass))
                .sum();
        return new Centre(mean, Math.sqrt(variance));
    }

    private static double square(double number) {
        return number * number;
    }
}
