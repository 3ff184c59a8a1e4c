package planewright.app.exchange;

/** How pictures leave a journal. */
public enum PictureForm {
    /** To hand on: the same pixels, without the place and whatever else a camera has noted. */
    PLAIN,
    /** To keep: byte for byte, the place included. */
    AS_TAKEN
}
