package planewright.app.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;

/** A file of a {@link Disk} that is open. */
final class DiskChannel extends FileChannel {
    private final Path file;
    private final FileChannel real;
    private final Happening happening;

    DiskChannel(Path file, FileChannel real, Happening happening) {
        this.file = file;
        this.real = real;
        this.happening = happening;
    }

    @Override
    public int write(ByteBuffer source) throws IOException {
        happening.writing(file, source.remaining());
        int written = real.write(source);
        happening.wrote(file);
        return written;
    }

    @Override
    public int write(ByteBuffer source, long position) throws IOException {
        happening.writing(file, source.remaining());
        int written = real.write(source, position);
        happening.wrote(file);
        return written;
    }

    @Override
    public long write(ByteBuffer[] sources, int offset, int length) throws IOException {
        long written = 0;
        for (int i = offset; i < offset + length; i++) {
            written += write(sources[i]);
        }
        return written;
    }

    @Override
    public long transferFrom(ReadableByteChannel source, long position, long count) throws IOException {
        happening.writing(file, Math.toIntExact(count));
        long written = real.transferFrom(source, position, count);
        happening.wrote(file);
        return written;
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
        real.truncate(size);
        happening.wrote(file);
        return this;
    }

    @Override
    public void force(boolean metaData) throws IOException {
        real.force(metaData);
        happening.forced(file);
    }

    @Override
    public FileLock tryLock(long position, long size, boolean shared) throws IOException {
        happening.locking(file);
        return real.tryLock(position, size, shared);
    }

    @Override
    public FileLock lock(long position, long size, boolean shared) throws IOException {
        happening.locking(file);
        return real.lock(position, size, shared);
    }

    @Override
    public int read(ByteBuffer target) throws IOException {
        return real.read(target);
    }

    @Override
    public int read(ByteBuffer target, long position) throws IOException {
        return real.read(target, position);
    }

    @Override
    public long read(ByteBuffer[] targets, int offset, int length) throws IOException {
        return real.read(targets, offset, length);
    }

    @Override
    public long position() throws IOException {
        return real.position();
    }

    @Override
    public FileChannel position(long position) throws IOException {
        real.position(position);
        return this;
    }

    @Override
    public long size() throws IOException {
        return real.size();
    }

    @Override
    public long transferTo(long position, long count, WritableByteChannel target) throws IOException {
        return real.transferTo(position, count, target);
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long position, long size) throws IOException {
        return real.map(mode, position, size);
    }

    @Override
    protected void implCloseChannel() throws IOException {
        real.close();
    }
}
