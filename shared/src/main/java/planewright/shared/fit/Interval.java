package planewright.shared.fit;

/**
 * Where a value lies, more or less.
 *
 * @param low at most {@code middle}
 * @param middle what is expected
 * @param high at least {@code middle}
 */
public record Interval(double low, double middle, double high) {}
