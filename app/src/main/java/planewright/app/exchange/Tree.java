package planewright.app.exchange;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;

/** Folders with all that is in them. */
final class Tree {
    private Tree() {}

    /** The way from a folder to a file in it, its parts divided by slashes on every system. */
    static String name(Path folder, Path file) {
        var name = new StringBuilder();
        for (var part : folder.relativize(file)) {
            name.append(name.isEmpty() ? "" : "/").append(part);
        }
        return name.toString();
    }

    /** Deletes a folder that may be there. Links in it go, and not what they lead to. */
    static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path left, IOException failure) throws IOException {
                Files.delete(left);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
