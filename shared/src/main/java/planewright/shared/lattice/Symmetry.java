package planewright.shared.lattice;

/** How the left side of the flow goes with the right one. */
public enum Symmetry {
    /** Both sides alike. */
    SYMMETRIC(1),
    /** The left side is the opposite of the right one. */
    ANTISYMMETRIC(-1),
    /** Neither: both sides are in the lattice. */
    NONE(0);

    private final int image;

    Symmetry(int image) {
        this.image = image;
    }

    /** What the circulation at the left is, as a multiple of that at the right; 0 where the lattice itself holds the left. */
    int image() {
        return image;
    }
}
