package planewright.shared.lattice;

/**
 * What coefficients are made with.
 *
 * @param area m²
 * @param span m
 * @param chord mean aerodynamic chord, m
 * @param centre about which moments are taken, m
 */
public record Reference(double area, double span, double chord, Vector centre) {
    public Reference {
        if (!(area > 0) || !(span > 0) || !(chord > 0)) {
            throw new IllegalArgumentException("a reference has area " + area + " m², span " + span + " m and chord "
                    + chord + " m; accepted: above 0 each");
        }
    }
}
