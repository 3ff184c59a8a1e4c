package planewright.shared.air;

/**
 * The standard atmosphere up to 11 km. Source: U.S. Standard Atmosphere, 1976, tables 1 and 2 and equations 18, 23, 33a and
 * 42, the same as ISO 2533:1975 there. Real air differs: by 1 % of its density for every 3 °C.
 *
 * @param temperature K
 * @param pressure Pa
 * @param density kg/m³
 */
public record Atmosphere(double temperature, double pressure, double density) {
    /** Where the lowest layer ends, geopotential m. */
    public static final double TOP = 11_000;

    private static final double EARTH_RADIUS = 6_356_766;
    private static final double SEA_LEVEL_TEMPERATURE = 288.15;
    private static final double SEA_LEVEL_PRESSURE = 101_325;
    private static final double LAPSE = 0.0065;
    private static final double GRAVITY = 9.80665;
    private static final double GAS_CONSTANT = 8314.32 / 28.9644;

    /** At an altitude above mean sea level as a map gives it, m. */
    public static Atmosphere at(double altitude) {
        return atGeopotential(EARTH_RADIUS * altitude / (EARTH_RADIUS + altitude));
    }

    /**
     * At a geopotential altitude, m.
     *
     * @throws IllegalArgumentException outside −5 km to 11 km
     */
    public static Atmosphere atGeopotential(double altitude) {
        if (!(altitude >= -5000 && altitude <= TOP)) {
            throw new IllegalArgumentException(
                    "a geopotential altitude is " + altitude + " m; accepted: -5000 m to " + TOP + " m");
        }
        double temperature = SEA_LEVEL_TEMPERATURE - LAPSE * altitude;
        double pressure =
                SEA_LEVEL_PRESSURE * Math.pow(temperature / SEA_LEVEL_TEMPERATURE, GRAVITY / (GAS_CONSTANT * LAPSE));
        return new Atmosphere(temperature, pressure, pressure / (GAS_CONSTANT * temperature));
    }
}
