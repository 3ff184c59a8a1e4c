package planewright.samples.pictures;

import planewright.samples.studio.Tone;

/** The colours of an aircraft. */
@FunctionalInterface
interface Paint {
    Tone at(Spot spot);

    /**
     * A place on an aircraft.
     *
     * @param part name of the surface or body
     * @param chord share of the chord, 0 leading edge; for bodies the share of the length
     * @param span share of the span, 0 root; for bodies 0
     * @param upper whether it faces up
     */
    record Spot(String part, double chord, double span, double x, double y, double z, boolean upper) {
        boolean is(String name) {
            return part.equals(name);
        }
    }
}
