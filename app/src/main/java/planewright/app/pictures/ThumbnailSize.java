package planewright.app.pictures;

/** The sizes in which small views are kept: no side is longer than the edge. */
public enum ThumbnailSize {
    /** For lists. */
    SMALL(192),
    /** For strips of pictures, sharp on dense screens too. */
    LARGE(512);

    private final int edge;

    ThumbnailSize(int edge) {
        this.edge = edge;
    }

    /** In pixels. */
    public int edge() {
        return edge;
    }

    /** The smallest size that fills so many pixels, the largest where none does. */
    public static ThumbnailSize filling(int pixels) {
        return pixels <= SMALL.edge ? SMALL : LARGE;
    }
}
