package planewright.benchmark;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import planewright.app.journal.PictureRecord;
import planewright.app.pictures.PictureShelf;
import planewright.app.pictures.ThumbnailSize;
import planewright.benchmark.kernel.Folders;

/**
 * How long small views of a folder of 12-megapixel photos take, both sizes of each, and what {@code vipsthumbnail} takes for the same
 * sizes of the same files. Whole processes by turns, from before they start to their end, each on all cores.
 */
public final class ThumbnailSpeed implements Section {
    private static final int PHOTOS_A_ROUND = 8;
    private static final List<ThumbnailSize> SIZES = List.of(ThumbnailSize.LARGE, ThumbnailSize.SMALL);

    /**
     * In a process of its own: what the program does for pictures that come in.
     *
     * @param words the photos' folder, and the cache's
     */
    public static void main(String[] words) throws IOException, InterruptedException, ExecutionException {
        var shelf = new PictureShelf(Path.of(words[0]), Path.of(words[1]), () -> {});
        var pool = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            var made = new ArrayList<Future<?>>();
            for (var file : files(Path.of(words[0]))) {
                var hash = file.getFileName().toString().replace(".jpg", "");
                made.add(pool.submit(() -> {
                    shelf.prepare(new PictureRecord(hash, "jpg", ""));
                    return hash;
                }));
            }
            for (var each : made) {
                each.get();
            }
            ChildJvm.tell("photos", made.size());
        } finally {
            pool.shutdown();
        }
    }

    @Override
    public void measure(Run run) throws IOException, InterruptedException {
        var temp = Files.createTempDirectory(run.user().toAbsolutePath().getParent(), "thumbnails");
        var photos = temp.resolve("photos");
        int number = PHOTOS_A_ROUND * run.rounds();
        draw(photos, number, run);
        var ours = new ArrayList<Double>();
        var theirs = new ArrayList<Double>();
        boolean yardstick = isThere();
        for (int round = 0; round < run.rounds(); round++) {
            if (yardstick) {
                theirs.add(vips(photos, temp.resolve("vips")) / number);
            }
            ours.add(program(run, photos, temp.resolve("cache")) / number);
        }
        if (yardstick) {
            run.report()
                    .goal(Goal.of("small views of a 12-megapixel photo, two sizes", "ms", Median.of(ours))
                            .comparedWith("vipsthumbnail, both sizes", Median.of(theirs), 1));
        } else {
            run.report().figure("thumbnails", "milliseconds a photo", Median.of(ours));
            run.report().leftOut("thumbnails", "vipsthumbnail, their yardstick, is not installed");
        }
    }

    private static void draw(Path photos, int number, Run run) throws IOException {
        var shelf = new PictureShelf(photos, photos.resolveSibling("unused"), () -> {});
        long bytes = 0;
        for (int i = 0; i < number; i++) {
            var drawn = Files.write(photos.resolveSibling("drawn.jpg"), DrawnPhoto.jpeg(i));
            bytes += Files.size(drawn);
            shelf.add(drawn, "");
        }
        run.report().figure("thumbnails", "photos", number);
        run.report().figure("thumbnails", "megabytes each", bytes / 1e6 / number);
    }

    private static boolean isThere() throws InterruptedException {
        try {
            return new ProcessBuilder("vipsthumbnail", "--version")
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException none) {
            return false;
        }
    }

    /** One process a size; it uses every core unless it is told otherwise. JPEG of the quality that the program keeps. */
    private static double vips(Path photos, Path out) throws IOException, InterruptedException {
        Files.createDirectories(out);
        var files = files(photos);
        var watch = new Stopwatch();
        for (var size : SIZES) {
            var command = new ArrayList<>(List.of("vipsthumbnail", "-s", Integer.toString(size.edge())));
            command.addAll(List.of("-o", out + File.separator + "%s-" + size.edge() + ".jpg[Q=85]"));
            files.forEach(file -> command.add(file.toString()));
            if (new ProcessBuilder(command).inheritIO().start().waitFor() != 0) {
                throw new IOException("vipsthumbnail has not done its work; its messages stand above");
            }
        }
        double took = watch.milliseconds();
        require(out, files.size());
        return took;
    }

    private static double program(Run run, Path photos, Path cache) throws IOException, InterruptedException {
        var watch = new Stopwatch();
        run.child().run(ThumbnailSpeed.class, photos.toString(), cache.toString());
        double took = watch.milliseconds();
        require(cache, files(photos).size());
        return took;
    }

    private static List<Path> files(Path photos) throws IOException {
        try (Stream<Path> files = Files.walk(photos)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    /** Every view was made; takes them away for the next round. */
    private static void require(Path folder, int photos) throws IOException {
        int made = files(folder).size();
        if (made != SIZES.size() * photos) {
            throw new IOException(made + " views of " + photos + " photos were made in " + folder);
        }
        Folders.delete(folder);
    }
}
