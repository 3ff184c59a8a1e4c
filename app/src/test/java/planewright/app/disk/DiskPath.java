package planewright.app.disk;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;

/** A path of the real disk that belongs to a {@link Disk}. */
record DiskPath(Disk disk, Path real) implements Path {
    @Override
    public FileSystem getFileSystem() {
        return disk;
    }

    @Override
    public boolean isAbsolute() {
        return real.isAbsolute();
    }

    @Override
    public Path getRoot() {
        return disk.wrapped(real.getRoot());
    }

    @Override
    public Path getFileName() {
        return disk.wrapped(real.getFileName());
    }

    @Override
    public Path getParent() {
        return disk.wrapped(real.getParent());
    }

    @Override
    public int getNameCount() {
        return real.getNameCount();
    }

    @Override
    public Path getName(int index) {
        return disk.wrapped(real.getName(index));
    }

    @Override
    public Path subpath(int from, int to) {
        return disk.wrapped(real.subpath(from, to));
    }

    @Override
    public boolean startsWith(Path other) {
        return real.startsWith(Disk.real(other));
    }

    @Override
    public boolean endsWith(Path other) {
        return real.endsWith(Disk.real(other));
    }

    @Override
    public Path normalize() {
        return disk.wrapped(real.normalize());
    }

    @Override
    public Path resolve(Path other) {
        return disk.wrapped(real.resolve(Disk.real(other)));
    }

    @Override
    public Path relativize(Path other) {
        return disk.wrapped(real.relativize(Disk.real(other)));
    }

    @Override
    public URI toUri() {
        return real.toUri();
    }

    @Override
    public Path toAbsolutePath() {
        return disk.wrapped(real.toAbsolutePath());
    }

    @Override
    public Path toRealPath(LinkOption... options) throws IOException {
        return disk.wrapped(real.toRealPath(options));
    }

    @Override
    public WatchKey register(WatchService watcher, WatchEvent.Kind<?>[] events, WatchEvent.Modifier... modifiers)
            throws IOException {
        return real.register(watcher, events, modifiers);
    }

    @Override
    public int compareTo(Path other) {
        return real.compareTo(Disk.real(other));
    }

    @Override
    public String toString() {
        return real.toString();
    }
}
