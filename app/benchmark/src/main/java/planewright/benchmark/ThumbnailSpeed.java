package planewright.benchmark;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import planewright.app.journal.PictureRecord;
import planewright.app.pictures.PictureShelf;
import planewright.app.pictures.ThumbnailSize;

/**
 * How long small views of a folder of 12-megapixel photos take, both sizes of each, as a ratio to {@code vipsthumbnail} on the same
 * files with the same sizes. Whole processes by turns, from before their start to their end, so that whatever else the machine does
 * slows both.
 */
public final class ThumbnailSpeed {
    private static final int PHOTOS = 40;
    private static final int ROUNDS = 5;
    private static final double GOAL = 1.0;

    private final Path temp;
    private final Path photos;

    private ThumbnailSpeed(Path temp) {
        this.temp = temp;
        this.photos = temp.resolve("photos");
    }

    /**
     * Measures and prints JSON.
     *
     * @param words how many photos, and how many rounds; 40 and 5 where nothing is said. The measured process itself is started with
     *     {@code make}, the photos' folder and the cache's
     */
    public static void main(String[] words) throws IOException, InterruptedException, ExecutionException {
        if (words.length == 3 && words[0].equals("make")) {
            make(Path.of(words[1]), Path.of(words[2]));
            return;
        }
        var temp = Files.createTempDirectory("planewright-thumbnails");
        try {
            new ThumbnailSpeed(temp)
                    .run(
                            words.length > 0 ? Integer.parseInt(words[0]) : PHOTOS,
                            words.length > 1 ? Integer.parseInt(words[1]) : ROUNDS);
        } finally {
            delete(temp);
        }
    }

    /** What the program does for a folder of pictures, with as many threads as there are cores. */
    private static void make(Path photos, Path cache) throws IOException, InterruptedException, ExecutionException {
        var shelf = new PictureShelf(photos, cache, () -> {});
        var pool = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try (Stream<Path> files = Files.walk(photos)) {
            var made = new ArrayList<Future<?>>();
            for (var file : files.filter(Files::isRegularFile).toList()) {
                var hash = file.getFileName().toString().replace(".jpg", "");
                made.add(pool.submit(() -> {
                    shelf.prepare(new PictureRecord(hash, "jpg", ""));
                    return hash;
                }));
            }
            for (var each : made) {
                each.get();
            }
        } finally {
            pool.shutdown();
        }
    }

    private void run(int number, int rounds) throws IOException, InterruptedException, ExecutionException {
        long bytes = draw(number);
        var ours = new ArrayList<Double>();
        var theirs = new ArrayList<Double>();
        for (int round = 0; round <= rounds; round++) {
            double vips = vips();
            double program = program();
            if (round > 0) {
                theirs.add(vips);
                ours.add(program);
            }
        }
        var ratios = IntStream.range(0, rounds)
                .mapToObj(i -> ours.get(i) / theirs.get(i))
                .toList();
        System.out.printf(
                Locale.ROOT,
                """
                {"measured": "small views of %d photos of 12 megapixels, %.1f MB each, edges %d and %d", "java": %d, "cores": %d, \
                "rounds": %d, "milliseconds a photo": {"vipsthumbnail": %.1f, "planewright": %.1f}, \
                "ratio": %.2f, "least": %.2f, "most": %.2f, "goal": %.1f}
                """,
                number,
                bytes / 1e6 / number,
                ThumbnailSize.LARGE.edge(),
                ThumbnailSize.SMALL.edge(),
                Runtime.version().feature(),
                Runtime.getRuntime().availableProcessors(),
                rounds,
                Candidate.median(theirs) / number,
                Candidate.median(ours) / number,
                Candidate.median(ratios),
                ratios.stream().min(Comparator.naturalOrder()).orElseThrow(),
                ratios.stream().max(Comparator.naturalOrder()).orElseThrow(),
                GOAL);
    }

    /** Puts photos on a shelf; their size in bytes, all together. */
    private long draw(int number) throws IOException, InterruptedException, ExecutionException {
        var shelf = new PictureShelf(photos, temp.resolve("unused"), () -> {});
        long bytes = 0;
        for (int i = 0; i < number; i++) {
            var file = temp.resolve("drawn.jpg");
            Files.write(file, DrawnPhoto.jpeg(i));
            bytes += Files.size(file);
            shelf.add(file, "");
        }
        return bytes;
    }

    /** One process a size, which is how its manual makes two. It uses every core unless told otherwise. */
    private double vips() throws IOException, InterruptedException {
        var out = Files.createDirectories(temp.resolve("vips"));
        var files = files();
        long began = System.nanoTime();
        for (var size : List.of(ThumbnailSize.LARGE, ThumbnailSize.SMALL)) {
            var command = new ArrayList<>(List.of("vipsthumbnail", "-s", Integer.toString(size.edge())));
            command.addAll(List.of("-o", out + File.separator + "%s-" + size.edge() + ".jpg[Q=85]"));
            command.addAll(files);
            run(command);
        }
        double took = (System.nanoTime() - began) / 1e6;
        require(out, 2 * files.size());
        return took;
    }

    private double program() throws IOException, InterruptedException {
        var cache = temp.resolve("cache");
        long began = System.nanoTime();
        run(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                ThumbnailSpeed.class.getName(),
                "make",
                photos.toString(),
                cache.toString()));
        double took = (System.nanoTime() - began) / 1e6;
        require(cache, 2 * files().size());
        return took;
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.walk(photos)) {
            return files.filter(Files::isRegularFile).map(Path::toString).toList();
        }
    }

    private static void run(List<String> command) throws IOException, InterruptedException {
        var process = new ProcessBuilder(command).inheritIO().start();
        if (!process.waitFor(10, TimeUnit.MINUTES) || process.exitValue() != 0) {
            process.destroyForcibly();
            throw new IOException(command.get(0) + " has not done its work");
        }
    }

    /** Everything was made; takes it away again for the next round. */
    private static void require(Path folder, int number) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            long made = files.count();
            if (made != number) {
                throw new IOException(made + " views were made; wanted: " + number);
            }
        }
        delete(folder);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }
}
