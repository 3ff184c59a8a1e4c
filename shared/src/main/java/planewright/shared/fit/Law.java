package planewright.shared.fit;

/** How one thing goes with another. */
public enum Law {
    /** y = a + b·x. */
    STRAIGHT {
        @Override
        double in(double value) {
            return value;
        }

        @Override
        double out(double value) {
            return value;
        }
    },
    /**
     * y = a·x^b, a straight line through the logarithms: masses go with powers of a span. Each point counts by its share, not by its
     * grams, and both values are above 0.
     */
    POWER {
        @Override
        double in(double value) {
            return Math.log(value);
        }

        @Override
        double out(double value) {
            return Math.exp(value);
        }
    };

    abstract double in(double value);

    abstract double out(double value);
}
