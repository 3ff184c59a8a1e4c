package planewright.samples.studio;

/** The look of a body at a point of its surface, in the body's own place. */
@FunctionalInterface
public interface Skin {
    /**
     * @param nz how much the surface faces up in the body's own place, −1 to 1
     */
    Tone at(double x, double y, double z, double nz);
}
