package planewright.api.journal;

/** A picture of an entry; the journal keeps the file under its hash. */
public interface Picture {
    /** SHA-256 of the file, 64 lower-case hexadecimal digits. */
    String hash();

    /** How the file's name ends: {@code jpg}, {@code png}. */
    String type();

    /** What is to be seen; may be empty. */
    String caption();
}
