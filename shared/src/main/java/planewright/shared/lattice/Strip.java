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
 * @param fromChord chord at one side, m
 * @param toChord chord at its other side, m
 * @param alongFrom where along its surface one side lies, as a share of the way along its panels from root to tip
 * @param alongTo the same of its other side; nearer to the root on the left copy of a mirrored surface
 */
public record Strip(
        int surface,
        Vector from,
        Vector to,
        Vector middle,
        double chord,
        double incidence,
        int first,
        boolean inPlane,
        double fromChord,
        double toChord,
        double alongFrom,
        double alongTo) {
    /** Whether it is the left copy of a mirrored surface, in a lattice that holds both sides. */
    public boolean leftCopy() {
        return alongTo < alongFrom;
    }

    /** 1, or −1 where it was built from the tip inwards, so that lift makes its circulation negative. */
    public int facing() {
        return to.y() - from.y() < -1e-9 * width() ? -1 : 1;
    }

    /** Its width across the stream, m. */
    public double width() {
        return Math.hypot(to.y() - from.y(), to.z() - from.z());
    }
}
