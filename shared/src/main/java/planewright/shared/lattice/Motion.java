package planewright.shared.lattice;

/**
 * What the aircraft does in the stream; each gives the velocity of the air past it, for one unit. A rate is in radians for
 * every metre flown. Nose right, right wing down and nose up are positive, as in the usual notation of stability.
 */
public enum Motion {
    /** Straight ahead at no incidence: twist alone makes lift. */
    AHEAD(Symmetry.SYMMETRIC),
    /** Incidence, nose up. */
    INCIDENCE(Symmetry.SYMMETRIC),
    /** Pitch rate, nose up. */
    PITCH(Symmetry.SYMMETRIC),
    /** Sideslip, wind from the right. */
    SIDESLIP(Symmetry.ANTISYMMETRIC),
    /** Roll rate, right wing down. */
    ROLL(Symmetry.ANTISYMMETRIC),
    /** Yaw rate, nose right. */
    YAW(Symmetry.ANTISYMMETRIC);

    private final Symmetry symmetry;

    Motion(Symmetry symmetry) {
        this.symmetry = symmetry;
    }

    /** How it acts on an aircraft whose sides are alike. */
    public Symmetry symmetry() {
        return symmetry;
    }

    /** Velocity of the air at a place given from the centre about which the aircraft turns. */
    Vector air(Vector place) {
        return switch (this) {
            case AHEAD -> new Vector(1, 0, 0);
            case INCIDENCE -> new Vector(0, 0, 1);
            case SIDESLIP -> new Vector(0, -1, 0);
            case PITCH -> new Vector(-place.z(), 0, place.x());
            case ROLL -> new Vector(0, -place.z(), place.y());
            case YAW -> new Vector(-place.y(), place.x(), 0);
        };
    }
}
