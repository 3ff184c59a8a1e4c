package planewright.throws_;

/**
 * What expo makes of the stick: (1 − e) x + e x³, for x from −1 to 1. Common practice, no source; other mixes of a straight
 * and a curved share are in use. It keeps rising up to the stick's end for e from −0.5 to 1.
 *
 * @param share e: positive is softer about neutral, 0 is even
 */
record Expo(double share) {
    double at(double stick) {
        return (1 - share) * stick + share * stick * stick * stick;
    }

    /** Its slope at neutral. */
    double centre() {
        return 1 - share;
    }
}
