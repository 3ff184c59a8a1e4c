package planewright.shared.planform;

/**
 * A place on the aircraft.
 *
 * @param x aft of the datum, m
 * @param y to the right wing, m
 * @param z up, m
 */
public record Place(double x, double y, double z) {}
