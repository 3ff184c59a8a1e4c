package planewright.app.exchange;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The files at a place that a builder has named: the place itself, or all below it but what is hidden. */
final class FilesAt extends SimpleFileVisitor<Path> {
    private final Path place;
    private final Predicate<Path> wanted;
    private final List<LeftOut> leftOut;
    private final List<Path> files = new ArrayList<>();

    private FilesAt(Path place, Predicate<Path> wanted, List<LeftOut> leftOut) {
        this.place = place;
        this.wanted = wanted;
        this.leftOut = leftOut;
    }

    /**
     * Sorted by their paths.
     *
     * @param wanted which of the files below the place are meant
     * @param leftOut hears of links, and of what cannot be read
     */
    static List<Path> list(Path place, Predicate<Path> wanted, List<LeftOut> leftOut) throws IOException {
        var walk = new FilesAt(place, wanted, leftOut);
        Files.walkFileTree(place, walk);
        return walk.files.stream().sorted().toList();
    }

    /** As the builder finds a file: below the place that was named, or by itself. */
    static String name(Path place, Path file) {
        return (place.equals(file) ? file.getFileName() : place.relativize(file)).toString();
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
        return folder.equals(place) || !isHidden(folder) ? FileVisitResult.CONTINUE : FileVisitResult.SKIP_SUBTREE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
        if (file.equals(place) || !isHidden(file) && wanted.test(file)) {
            if (attributes.isRegularFile()) {
                files.add(file);
            } else {
                leftOut.add(new LeftOut(name(place, file), ExchangeWords.say("is a link or a device")));
            }
        }
        return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException failure) {
        leftOut.add(new LeftOut(
                name(place, file),
                ExchangeWords.say("cannot be read ({0})", failure.getClass().getSimpleName())));
        return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(Path folder, IOException failure) {
        return failure == null ? FileVisitResult.CONTINUE : visitFileFailed(folder, failure);
    }

    private static boolean isHidden(Path file) {
        return file.getFileName().toString().startsWith(".");
    }
}
