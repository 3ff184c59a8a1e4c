package planewright.app.store;

import java.nio.file.Path;

/**
 * A file of the journal that was left as it is and not shown.
 *
 * @param file which
 * @param reason why, in a builder's words
 */
public record SetAside(Path file, String reason) {}
