package planewright.app.store;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;

/** Hears from the system in which builds' folders something is written. */
final class Watch implements AutoCloseable {
    private static final System.Logger LOGGER = System.getLogger(Watch.class.getName());

    /** Programs write in bursts; what comes within this time is looked at once. */
    private static final int BURST_MILLIS = 150;

    /** What comes without a pause is looked at so often all the same. */
    private static final long LONGEST_NANOS = TimeUnit.SECONDS.toNanos(2);

    private final Path journal;
    private final Path builds;
    private final Listener listener;
    private final WatchService service;
    private final Map<WatchKey, Path> watched = new ConcurrentHashMap<>();
    private boolean missed;

    /** Looks at what was written. */
    interface Listener {
        /** Something was written in these builds' folders, or beside them where there are none. */
        void written(Set<Path> builds) throws IOException;
    }

    private Watch(Path journal, Listener listener) throws IOException {
        this.journal = journal;
        this.builds = journal.resolve(RecordFiles.BUILDS);
        this.listener = listener;
        this.service = journal.getFileSystem().newWatchService();
    }

    /** Begins to watch a journal's folder. */
    static Watch begin(Path journal, Listener listener) throws IOException {
        var watch = new Watch(journal, listener);
        try {
            watch.add(journal);
            watch.addRecords();
        } catch (IOException failure) {
            watch.close();
            throw failure;
        }
        var thread = new Thread(watch::listen, "planewright-watch");
        thread.setDaemon(true);
        thread.start();
        return watch;
    }

    @Override
    public void close() throws IOException {
        service.close();
    }

    private void listen() {
        try {
            while (true) {
                tell(burst(service.take()));
            }
        } catch (ClosedWatchServiceException | InterruptedException closed) {
            // the journal was closed
        }
    }

    private Set<Path> burst(WatchKey first) throws InterruptedException {
        var written = new HashSet<Path>();
        long begun = System.nanoTime();
        for (var key = first;
                key != null;
                key = isLong(begun) ? null : service.poll(BURST_MILLIS, TimeUnit.MILLISECONDS)) {
            take(key, written);
        }
        if (missed) {
            missed = false;
            addMissed();
            written.addAll(allBuilds());
        }
        return written;
    }

    private static boolean isLong(long begun) {
        return System.nanoTime() - begun > LONGEST_NANOS;
    }

    private void take(WatchKey key, Set<Path> written) {
        var folder = watched.get(key);
        for (var event : key.pollEvents()) {
            if (event.kind() == StandardWatchEventKinds.OVERFLOW) {
                missed = true;
            } else if (event.kind() == StandardWatchEventKinds.ENTRY_CREATE) {
                addNew(folder.resolve((Path) event.context()));
            }
            if (event.context() instanceof Path name) {
                note(folder.resolve(name), written);
            }
        }
        if (!key.reset()) {
            watched.remove(key);
        }
    }

    /** The build's folder in which a file lies, if it lies in one. */
    private void note(Path file, Set<Path> written) {
        if (file.startsWith(builds) && !file.equals(builds)) {
            written.add(builds.resolve(builds.relativize(file).getName(0)));
        }
    }

    private Set<Path> allBuilds() {
        var all = new HashSet<Path>();
        watched.values().forEach(folder -> note(folder, all));
        return all;
    }

    private void tell(Set<Path> written) {
        try {
            listener.written(written);
        } catch (IOException | RuntimeException failure) {
            LOGGER.log(
                    System.Logger.Level.WARNING, "what was written in " + journal + " could not be taken in", failure);
        }
    }

    private void addRecords() throws IOException {
        for (var records : List.of(builds, journal.resolve(RecordFiles.TEMPLATES))) {
            if (Files.isDirectory(records)) {
                addAll(records);
            }
        }
    }

    private void addMissed() {
        try {
            addRecords();
        } catch (IOException unwatched) {
            warn(journal, unwatched);
        }
    }

    private void addNew(Path folder) {
        try {
            if (Files.isDirectory(folder)
                    && (folder.startsWith(builds) || folder.equals(journal.resolve(RecordFiles.TEMPLATES)))) {
                addAll(folder);
            }
        } catch (IOException unwatched) {
            warn(folder, unwatched);
        }
    }

    private static void warn(Path folder, IOException unwatched) {
        LOGGER.log(System.Logger.Level.WARNING, "folder " + folder + " cannot be watched", unwatched);
    }

    private void addAll(Path root) throws IOException {
        Files.walkFileTree(root, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) throws IOException {
                add(folder);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path unreadable, IOException failure) {
                warn(unreadable, failure);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    private void add(Path folder) throws IOException {
        watched.put(
                folder.register(
                        service,
                        StandardWatchEventKinds.ENTRY_CREATE,
                        StandardWatchEventKinds.ENTRY_DELETE,
                        StandardWatchEventKinds.ENTRY_MODIFY),
                folder);
    }
}
