package planewright.app.disk;

import java.io.IOException;
import java.nio.file.Path;

/** Hears what a program asks of a {@link Disk} and may refuse it by throwing. Paths are those of the real disk. */
public interface Happening {
    /** Bytes are about to be written at the end of a file. */
    default void writing(Path file, int bytes) throws IOException {}

    /** Bytes were written. */
    default void wrote(Path file) throws IOException {}

    /** A file is about to be made or emptied. */
    default void making(Path file) throws IOException {}

    /** The names in a folder are about to be read. */
    default void listing(Path folder) throws IOException {}

    /** A folder was made. */
    default void madeFolder(Path folder) throws IOException {}

    /** A file, or the names in a folder, were forced. */
    default void forced(Path place) throws IOException {}

    /** A file was renamed. */
    default void moved(Path from, Path to) throws IOException {}

    /** A file or an empty folder was deleted. */
    default void deleted(Path place) throws IOException {}

    /** A file is about to be locked. */
    default void locking(Path file) throws IOException {}
}
