package planewright.samples.pictures;

import java.awt.image.BufferedImage;
import java.util.function.Supplier;

/**
 * A picture of the sample journal.
 *
 * @param type file ending, {@code jpg} or {@code png}
 * @param build name of the build it belongs to
 * @param shows one line of what is seen
 */
record Picture(String name, String type, String build, String shows, Supplier<BufferedImage> drawing) {
    static Picture photo(String name, String build, String shows, Supplier<BufferedImage> drawing) {
        return new Picture(name, "jpg", build, shows, drawing);
    }

    static Picture sketch(String name, String build, String shows, Supplier<BufferedImage> drawing) {
        return new Picture(name, "png", build, shows, drawing);
    }
}
