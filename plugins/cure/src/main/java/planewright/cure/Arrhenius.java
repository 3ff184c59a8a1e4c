package planewright.cure;

/**
 * How much faster a reaction runs when it is warmer: k₂/k₁ = exp(E/R · (1/T₁ − 1/T₂)). Source: S. Arrhenius, Zeitschrift für
 * physikalische Chemie 4 (1889) 226-248, in the form of any textbook of physical chemistry.
 */
final class Arrhenius {
    /** Molar gas constant, J/(mol·K): exact since the SI of 2019, CODATA. */
    static final double GAS_CONSTANT = 8.314462618;

    private Arrhenius() {}

    /**
     * The rate as a multiple of that at the reference.
     *
     * @param energy activation energy, J/mol; 0 for what does not care
     * @param kelvin above 0
     * @param reference above 0, K
     */
    static double rate(double energy, double kelvin, double reference) {
        return Math.exp(energy / GAS_CONSTANT * (1 / reference - 1 / kelvin));
    }

    /** The activation energy, J/mol, with which a rate changes by that ratio between two temperatures, K. */
    static double energy(double ratio, double from, double to) {
        return GAS_CONSTANT * Math.log(ratio) / (1 / from - 1 / to);
    }
}
