package planewright.app.outline;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import planewright.api.figure.Outline;
import planewright.app.files.SafeFile;
import planewright.app.journal.Slow;
import planewright.app.pictures.PictureShelf;

/**
 * The outlines of one journal, each an SVG file under the SHA-256 of its content. A file is taken in before the record that
 * names it is saved. Methods read or write files: not on the event thread.
 */
public final class OutlineShelf {
    private final Path outlines;
    private final PictureShelf.Permission permission;

    /**
     * @param outlines where they lie
     * @param permission refuses where nothing may be taken in
     */
    public OutlineShelf(Path outlines, PictureShelf.Permission permission) {
        this.outlines = outlines;
        this.permission = permission;
    }

    /**
     * Takes an SVG file in as it is; when it returns, the outline is on disk.
     *
     * @return its hash
     * @throws OutlineRefused if it cannot be read back as an outline
     */
    public String add(Path svg) throws IOException {
        Slow.work("taking an outline in");
        try {
            return keep(content(svg));
        } catch (NoSuchFileException missing) {
            throw new OutlineRefused("outline {0} is not there; accepted: an SVG file", svg);
        } catch (OutlineRefused reason) {
            throw new OutlineRefused("outline {0} is not taken in: {1}", svg, reason.getMessage());
        }
    }

    /**
     * Takes an outline in that comes from no file.
     *
     * @param title what it shows
     * @return its hash
     */
    public String add(Outline outline, String title) throws IOException {
        Slow.work("taking an outline in");
        return keep(SvgWriter.write(outline, title).getBytes(StandardCharsets.UTF_8));
    }

    /**
     * The lines and curves of an SVG file anywhere.
     *
     * @throws OutlineRefused if it is missing or cannot be read as an outline
     */
    public static Outline of(Path svg) throws IOException {
        Slow.work("reading an outline");
        try {
            return SvgReader.read(content(svg));
        } catch (NoSuchFileException missing) {
            throw new OutlineRefused("outline {0} is not there; accepted: an SVG file", svg);
        } catch (OutlineRefused reason) {
            throw new OutlineRefused("outline {0} cannot be read: {1}", svg, reason.getMessage());
        }
    }

    /** Where an outline lies. */
    public Path file(String hash) {
        return outlines.resolve(hash.substring(0, 2)).resolve(hash + ".svg");
    }

    /**
     * The lines and curves of an outline.
     *
     * @throws OutlineRefused if it is missing, is not what its name says, or cannot be read
     */
    public Outline read(String hash) throws IOException {
        Slow.work("reading an outline");
        try {
            var content = content(file(hash));
            if (!PictureShelf.hash(content).equals(hash)) {
                throw new OutlineRefused("its content is not what its name says; take it from a copy of the journal");
            }
            return SvgReader.read(content);
        } catch (NoSuchFileException missing) {
            throw new OutlineRefused("it is missing");
        }
    }

    private String keep(byte[] content) throws IOException {
        SvgReader.read(content);
        permission.require();
        var hash = PictureShelf.hash(content);
        var file = file(hash);
        if (Files.notExists(file) || !PictureShelf.hash(file).equals(hash)) {
            SafeFile.write(file, content);
        }
        return hash;
    }

    private static byte[] content(Path svg) throws IOException {
        long size = Files.size(svg);
        if (size > SvgReader.MOST_BYTES) {
            throw new OutlineRefused("it has {0} bytes; accepted: up to {1}", size, SvgReader.MOST_BYTES);
        }
        if (!Files.isRegularFile(svg)) {
            throw new OutlineRefused("it is no file; accepted: an SVG file");
        }
        return Files.readAllBytes(svg);
    }
}
