package planewright.shared.lattice;

/**
 * A chordwise strip of a surface.
 *
 * @param surface which surface of the planform, from 0
 * @param from leading edge at one side
 * @param to leading edge at its other side
 * @param middle leading edge at its control points
 * @param chord there, m
 * @param incidence there, leading edge up positive, rad
 * @param first its first horseshoe in the lattice
 * @param inPlane whether it lies in the plane y = 0
 */
public record Strip(
        int surface,
        Vector from,
        Vector to,
        Vector middle,
        double chord,
        double incidence,
        int first,
        boolean inPlane) {
    /** Its width across the stream, m. */
    public double width() {
        return Math.hypot(to.y() - from.y(), to.z() - from.z());
    }
}
