package planewright.throws_;

import java.util.OptionalDouble;

/**
 * Where the pieces of a control linkage are, in metres and radians, seen along the hinge line: x runs aft from the servo's
 * shaft, y to the side on which the horn stands.
 *
 * @param arm from the servo's shaft to the hole in its arm
 * @param lean of the arm with the servo centred, from square to x, towards the surface positive
 * @param hornLength from the hinge line to the hole in the horn, square to the neutral surface
 * @param hornOffset of that hole aft of the hinge line, with the surface neutral
 * @param hingeDistance of the hinge line aft of the servo's shaft
 * @param hingeRise of the hinge line above the servo's shaft, to the horn's side
 * @param pushrod between the holes; empty for one that leaves the surface neutral with the servo centred
 */
record Geometry(
        double arm,
        double lean,
        double hornLength,
        double hornOffset,
        double hingeDistance,
        double hingeRise,
        OptionalDouble pushrod) {
    /** From the servo's shaft to the hinge line. */
    double ground() {
        return Math.hypot(hingeDistance, hingeRise);
    }

    /** From the hinge line to the hole in the horn. */
    double hornRadius() {
        return Math.hypot(hornLength, hornOffset);
    }

    /** From the arm's hole with the servo centred to the hinge line. */
    double armHoleToHinge() {
        return Math.hypot(hingeDistance - arm * Math.sin(lean), hingeRise - arm * Math.cos(lean));
    }

    /** The pushrod that leaves the surface neutral with the servo centred. */
    double neutralPushrod() {
        return Math.hypot(
                hingeDistance + hornOffset - arm * Math.sin(lean), hingeRise + hornLength - arm * Math.cos(lean));
    }

    /** The same with other holes of arm and horn, and the pushrod set anew. */
    Geometry withHoles(double armHole, double hornHole) {
        return new Geometry(armHole, lean, hornHole, hornOffset, hingeDistance, hingeRise, OptionalDouble.empty());
    }
}
