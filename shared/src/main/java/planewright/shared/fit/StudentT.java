package planewright.shared.fit;

/** Student's distribution, which tells how far a reading may lie from what a few others say. */
final class StudentT {
    private static final int HALVINGS = 60;

    private StudentT() {}

    /**
     * How many standard deviations to either side hold a share of all readings.
     *
     * @param share above 0 and below 1
     * @param degrees degrees of freedom, 1 or more
     */
    static double within(double share, int degrees) {
        double low = 0;
        double high = Math.PI / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (share(middle, degrees) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.sqrt(degrees) * Math.tan((low + high) / 2);
    }

    /**
     * The share that lies within ±√ν tan θ. Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 26.7.3
     * for odd and 26.7.4 for even ν.
     */
    private static double share(double theta, int degrees) {
        double square = Math.cos(theta) * Math.cos(theta);
        boolean odd = degrees % 2 == 1;
        double term = odd ? Math.cos(theta) : 1;
        double sum = degrees > 1 ? term : 0;
        for (int i = odd ? 3 : 2; i < degrees; i += 2) {
            term *= square * (i - 1) / i;
            sum += term;
        }
        return odd ? 2 / Math.PI * (theta + Math.sin(theta) * sum) : Math.sin(theta) * sum;
    }
}
