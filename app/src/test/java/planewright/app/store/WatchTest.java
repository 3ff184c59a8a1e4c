package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.disk.Disk;
import planewright.app.disk.Happening;

/** What is written in folders is told, however much it is. */
class WatchTest {
    @TempDir
    private Path journal;

    private final LinkedBlockingQueue<Set<String>> told = new LinkedBlockingQueue<>();
    private Path heron;

    @BeforeEach
    void makeABuild() throws IOException {
        heron = Files.createDirectories(journal.resolve("builds/heron"));
    }

    @Test
    void whatIsWrittenWithoutAPauseIsToldMeanwhile() throws Exception {
        var stopped = new AtomicBoolean();
        var writer = Executors.newSingleThreadExecutor();
        try (var watch = Watch.begin(journal, this::tell)) {
            assertThat(watch).isNotNull();
            var writing = writer.submit(() -> {
                while (!stopped.get()) {
                    Files.writeString(heron.resolve("build.json"), "{}");
                }
                return stopped;
            });
            assertThat(told.poll(20, TimeUnit.SECONDS)).containsExactly("heron");
            stopped.set(true);
            writing.get();
        } finally {
            stopped.set(true);
            writer.shutdown();
        }
    }

    /** The system keeps so many events for a folder, 512 in Java's own services, and then only says that there were more. */
    @Test
    void foldersOfWhichTheSystemDidNotTellAreWatchedToo() throws Exception {
        var made = IntStream.range(0, 700).mapToObj(i -> "build" + i).collect(Collectors.toSet());
        var busy = new CountDownLatch(1);
        try (var watch = Watch.begin(journal, written -> {
            tell(written);
            await(busy);
        })) {
            assertThat(watch).isNotNull();
            Files.writeString(heron.resolve("build.json"), "{}");
            assertThat(told.poll(20, TimeUnit.SECONDS)).containsExactly("heron");
            for (var name : made) {
                Files.createDirectory(journal.resolve("builds").resolve(name));
            }
            busy.countDown();
            assertTold(made);
            told.clear();
            Files.writeString(journal.resolve("builds/build350/build.json"), "{}");
            assertTold(Set.of("build350"));
        }
    }

    @Test
    void aFolderThatCannotBeReadLeavesTheOthersWatched() throws Exception {
        Files.createDirectories(journal.resolve("builds/closed"));
        var disk = Disk.at(journal, new Happening() {
            @Override
            public void listing(Path folder) throws IOException {
                if (folder.endsWith("closed")) {
                    throw new AccessDeniedException(folder.toString());
                }
            }
        });
        try (var watch = Watch.begin(disk, this::tell)) {
            assertThat(watch).isNotNull();
            Files.writeString(heron.resolve("build.json"), "{}");
            assertTold(Set.of("heron"));
        }
    }

    private void tell(Set<Path> written) {
        told.add(written.stream().map(build -> build.getFileName().toString()).collect(Collectors.toSet()));
    }

    private void assertTold(Set<String> wanted) throws InterruptedException {
        var missing = new HashSet<>(wanted);
        while (!missing.isEmpty()) {
            var some = told.poll(20, TimeUnit.SECONDS);
            assertThat(some).as("of %s builds nothing was told", missing.size()).isNotNull();
            missing.removeAll(some);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }
}
