package planewright.cure;

/** What the dampness of the air does, as a multiple of the rate at 50 % relative humidity. */
final class Humidity {
    private static final double REFERENCE = 0.5;

    /** Wetter air than this hurries nothing along: common practice, no source. */
    private static final double ENOUGH = 0.75;

    private Humidity() {}

    /** What needs moisture takes up as much as there is; very dry air stops it. Common practice, no source. */
    static double takingItUp(double relative) {
        return Math.min(relative, ENOUGH) / REFERENCE;
    }

    /** What dries gives off with how far the air is from full: Dalton's law of evaporation (cited from memory). */
    static double givingItOff(double relative) {
        return (1 - relative) / (1 - REFERENCE);
    }
}
