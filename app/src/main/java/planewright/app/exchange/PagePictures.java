package planewright.app.exchange;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import planewright.app.files.SafeFile;
import planewright.app.journal.PictureRecord;
import planewright.app.pictures.Jpeg;
import planewright.app.pictures.PictureShelf;

/**
 * Pictures for pages: upright, in two sizes, and written anew as JPEG from their pixels alone, so that nothing of what a camera
 * has added goes out, the place least of all.
 */
final class PagePictures {
    private static final int SMALL = 640;
    private static final int LARGE = 1600;

    private final PictureShelf shelf;
    private final Path folder;
    private final List<LeftOut> leftOut;
    private final Watch watch;
    private final Map<String, Optional<Shown>> known = new HashMap<>();
    private int tellPlace;

    PagePictures(PictureShelf shelf, Path folder, List<LeftOut> leftOut, Watch watch) {
        this.shelf = shelf;
        this.folder = folder;
        this.leftOut = leftOut;
        this.watch = watch;
    }

    /** A picture in two sizes, by their places below the pages' folder; width and height of the small one in pixels. */
    record Shown(String small, String large, int width, int height) {}

    /** Writes a picture where that has not been done; empty where it is missing or damaged. */
    Optional<Shown> shown(PictureRecord picture) throws IOException {
        if (!known.containsKey(picture.hash())) {
            known.put(picture.hash(), written(picture));
        }
        return known.get(picture.hash());
    }

    /** How many of them said where they were taken; the pages do not. */
    int tellPlace() {
        return tellPlace;
    }

    private Optional<Shown> written(PictureRecord picture) throws IOException {
        var file = shelf.file(picture);
        watch.reached(file.getFileName().toString());
        BufferedImage large;
        BufferedImage small;
        try {
            var views = PictureShelf.views(file, LARGE, SMALL);
            large = views[0];
            small = views[1];
        } catch (IOException unusable) {
            leftOut.add(new LeftOut(
                    file.getFileName().toString(),
                    Files.exists(file)
                            ? ExchangeWords.say("it cannot be decoded")
                            : ExchangeWords.say("it is missing")));
            return Optional.empty();
        }
        tellPlace += PictureShelf.tellsPlace(file) ? 1 : 0;
        var shown = new Shown(
                "pictures/" + picture.hash() + "-small.jpg",
                "pictures/" + picture.hash() + ".jpg",
                small.getWidth(),
                small.getHeight());
        SafeFile.write(folder.resolve(shown.small()), Jpeg.of(small));
        SafeFile.write(folder.resolve(shown.large()), Jpeg.of(large));
        return Optional.of(shown);
    }
}
