package planewright.app.disk;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.List;
import java.util.Set;
import java.util.stream.StreamSupport;

/** The real disk, with somebody in between who hears of each write and may refuse it. */
public final class Disk extends FileSystem {
    private final FileSystem real;
    private final DiskProvider provider;

    private Disk(FileSystem real, Happening happening) {
        this.real = real;
        this.provider = new DiskProvider(this, happening);
    }

    /** A folder of the real disk as one of a disk on which that happens. */
    public static Path at(Path folder, Happening happening) {
        return new Disk(folder.getFileSystem(), happening).wrapped(folder);
    }

    DiskPath wrapped(Path path) {
        return path == null || path instanceof DiskPath ? (DiskPath) path : new DiskPath(this, path);
    }

    /** The path on the real disk. */
    static Path real(Path path) {
        return path instanceof DiskPath disk ? disk.real() : path;
    }

    @Override
    public FileSystemProvider provider() {
        return provider;
    }

    @Override
    public void close() {
        throw new UnsupportedOperationException();
    }

    @Override
    public boolean isOpen() {
        return true;
    }

    @Override
    public boolean isReadOnly() {
        return false;
    }

    @Override
    public String getSeparator() {
        return real.getSeparator();
    }

    @Override
    public Iterable<Path> getRootDirectories() {
        return StreamSupport.stream(real.getRootDirectories().spliterator(), false)
                .map(root -> (Path) wrapped(root))
                .toList();
    }

    @Override
    public Iterable<FileStore> getFileStores() {
        return List.of();
    }

    @Override
    public Set<String> supportedFileAttributeViews() {
        return real.supportedFileAttributeViews();
    }

    @Override
    public Path getPath(String first, String... more) {
        return wrapped(real.getPath(first, more));
    }

    @Override
    public PathMatcher getPathMatcher(String pattern) {
        var matcher = real.getPathMatcher(pattern);
        return path -> matcher.matches(real(path));
    }

    @Override
    public UserPrincipalLookupService getUserPrincipalLookupService() {
        return real.getUserPrincipalLookupService();
    }

    @Override
    public WatchService newWatchService() throws IOException {
        return real.newWatchService();
    }
}
