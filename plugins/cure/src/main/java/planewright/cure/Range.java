package planewright.cure;

import planewright.shared.material.MaterialFact;

/**
 * What is usual of a figure: the least, the usual, the most.
 *
 * @param low the least; not above {@code typical}
 * @param typical the usual
 * @param high the most; not below {@code typical}
 */
record Range(double low, double typical, double high) {
    /** Where a source gives no upper end, twice the usual is taken: chosen, no source. */
    private static final double UNTOLD = 2;

    static Range of(MaterialFact fact) {
        double typical = fact.typical().orElseThrow();
        return new Range(fact.low().orElse(typical), typical, fact.high().orElse(UNTOLD * typical));
    }

    static Range exactly(double value) {
        return new Range(value, value, value);
    }

    Range times(double factor) {
        return new Range(low * factor, typical * factor, high * factor);
    }

    /**
     * One standard uncertainty of the usual value, for a triangular distribution between the ends with its peak there:
     * u² = (a² + b² + c² − ab − ac − bc) / 18. The shape is that of JCGM 100:2008, 4.3.9; the variance with an unsymmetric
     * peak is common knowledge (cited from memory).
     */
    double spread() {
        double sum = low * low + typical * typical + high * high - low * typical - low * high - typical * high;
        return Math.sqrt(Math.max(0, sum) / 18);
    }
}
