package planewright.shared.lattice;

/**
 * A force and its moment about the datum, per ρU².
 *
 * @param force m²
 * @param moment right-handed about x aft, y right, z up, m³; nose up is positive about y
 */
public record Load(Vector force, Vector moment) {
    static final Load NONE = new Load(Vector.ZERO, Vector.ZERO);

    static Load at(Vector place, Vector force) {
        return new Load(force, place.cross(force));
    }

    public Load plus(Load other) {
        return new Load(force.plus(other.force), moment.plus(other.moment));
    }

    public Load times(double factor) {
        return new Load(force.times(factor), moment.times(factor));
    }

    /** The moment about another centre. */
    public Vector momentAbout(Vector centre) {
        return moment.minus(centre.cross(force));
    }

    /** What the other side of the aircraft carries. */
    Load mirrored() {
        return new Load(force.mirrored(), new Vector(-moment.x(), moment.y(), -moment.z()));
    }
}
