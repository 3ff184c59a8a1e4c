package planewright.app.disk;

import java.io.IOException;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.stream.StreamSupport;

/** Does on the real disk what is asked of a {@link Disk}, and tells of it. */
final class DiskProvider extends FileSystemProvider {
    private final Disk disk;
    private final Happening happening;

    DiskProvider(Disk disk, Happening happening) {
        this.disk = disk;
        this.happening = happening;
    }

    private static FileSystemProvider provider(Path path) {
        return Disk.real(path).getFileSystem().provider();
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        var file = Disk.real(path);
        if (options.contains(StandardOpenOption.TRUNCATE_EXISTING)
                || options.contains(StandardOpenOption.CREATE_NEW)
                || options.contains(StandardOpenOption.CREATE) && !Files.exists(file)) {
            happening.making(file);
        }
        var channel = FileChannel.open(file, options, attributes);
        boolean onlyRead = !options.contains(StandardOpenOption.WRITE) && !options.contains(StandardOpenOption.APPEND);
        return onlyRead && !Files.isDirectory(file) ? channel : new DiskChannel(file, channel, happening);
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        return newFileChannel(path, options, attributes);
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        happening.listing(Disk.real(folder));
        var stream = Files.newDirectoryStream(Disk.real(folder), path -> filter.accept(disk.wrapped(path)));
        return new DirectoryStream<>() {
            @Override
            public Iterator<Path> iterator() {
                return StreamSupport.stream(stream.spliterator(), false)
                        .map(path -> (Path) disk.wrapped(path))
                        .iterator();
            }

            @Override
            public void close() throws IOException {
                stream.close();
            }
        };
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        Files.createDirectory(Disk.real(folder), attributes);
        happening.madeFolder(Disk.real(folder));
    }

    @Override
    public void delete(Path path) throws IOException {
        Files.delete(Disk.real(path));
        happening.deleted(Disk.real(path));
    }

    @Override
    public void copy(Path source, Path target, CopyOption... options) throws IOException {
        happening.making(Disk.real(target));
        happening.writing(Disk.real(target), Math.toIntExact(Files.size(Disk.real(source))));
        Files.copy(Disk.real(source), Disk.real(target), options);
        happening.wrote(Disk.real(target));
    }

    @Override
    public void move(Path source, Path target, CopyOption... options) throws IOException {
        Files.move(Disk.real(source), Disk.real(target), options);
        happening.moved(Disk.real(source), Disk.real(target));
    }

    @Override
    public boolean isSameFile(Path one, Path other) throws IOException {
        return Files.isSameFile(Disk.real(one), Disk.real(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return Files.isHidden(Disk.real(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return Files.getFileStore(Disk.real(path));
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        provider(path).checkAccess(Disk.real(path), modes);
    }

    @Override
    public <V extends FileAttributeView> V getFileAttributeView(Path path, Class<V> type, LinkOption... options) {
        return Files.getFileAttributeView(Disk.real(path), type, options);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
            throws IOException {
        return Files.readAttributes(Disk.real(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options) throws IOException {
        return Files.readAttributes(Disk.real(path), attributes, options);
    }

    @Override
    public void setAttribute(Path path, String attribute, Object value, LinkOption... options) throws IOException {
        Files.setAttribute(Disk.real(path), attribute, value, options);
    }

    @Override
    public String getScheme() {
        return "bench-disk";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Path getPath(URI uri) {
        throw new UnsupportedOperationException();
    }
}
