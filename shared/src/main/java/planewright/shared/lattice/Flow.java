package planewright.shared.lattice;

/**
 * The vortices of a lattice in one state.
 *
 * @param circulation of each horseshoe, per unit of what causes it
 * @param symmetry how the left side goes with the right one, where the lattice holds the right one only
 */
public record Flow(double[] circulation, Symmetry symmetry) {
    /**
     * Both together.
     *
     * @throws IllegalArgumentException where one is symmetric and the other is not
     */
    public Flow plus(Flow other) {
        if (symmetry != other.symmetry) {
            throw new IllegalArgumentException("a flow is " + symmetry + ", the other " + other.symmetry);
        }
        var sum = circulation.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += other.circulation[i];
        }
        return new Flow(sum, symmetry);
    }

    public Flow times(double factor) {
        var product = circulation.clone();
        for (int i = 0; i < product.length; i++) {
            product[i] *= factor;
        }
        return new Flow(product, symmetry);
    }
}
