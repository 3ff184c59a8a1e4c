package planewright.samples.pictures;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** Draws the pictures of the sample journal into its folder of photos, and a list of them beside the journal. */
public final class Main {
    private Main() {}

    /**
     * @param arguments the journal's folder, the folder that gets {@code photos} and beside it the list (it may be the
     *     same), then names of pictures; without names all are drawn
     */
    public static void main(String[] arguments) throws IOException {
        System.setProperty("java.awt.headless", "true");
        var hangar = Hangar.of(Path.of(arguments[0]));
        var target = Path.of(arguments[1]).toAbsolutePath();
        var only = List.of(arguments).subList(2, arguments.length);
        var lines = new ArrayList<String>();
        for (var picture : Album.all(hangar)) {
            if (only.isEmpty() || only.contains(picture.name())) {
                lines.add(keep(picture, target));
            }
        }
        Files.writeString(target.resolveSibling("pictures-list.tsv"), String.join("\n", lines) + "\n");
    }

    private static String keep(Picture picture, Path journal) throws IOException {
        byte[] bytes = Developed.bytes(picture);
        String hash = hash(bytes);
        var file = journal.resolve("photos").resolve(hash.substring(0, 2)).resolve(hash + "." + picture.type());
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
        return String.join("\t", hash, picture.type(), picture.build(), picture.shows());
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new UncheckedIOException(new IOException(e));
        }
    }
}
