package planewright.app.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Beginnings of files, made by hand as their specifications say, under names that lie. */
class ForeignFormatTest {
    @TempDir
    private Path temp;

    /** ISO/IEC 14496-12, 4.3: length, "ftyp", the main brand, its version, compatible brands. HEIF brands: ISO/IEC 23008-12, annex B. */
    @ParameterizedTest
    @CsvSource({
        "heic, mif1 heic, HEIC",
        "mif1, mif1 heic, HEIC",
        "msf1, msf1 hevc, HEIC",
        "heix, mif1, HEIC",
        "avif, mif1 avif miaf, AVIF",
        "mif1, mif1 avif, AVIF",
        "'crx ', 'crx  isom', raw",
        "isom, isom mp42, film",
        "'qt  ', 'qt  ', film"
    })
    void aBoxOfMediaIsToldByItsBrands(String main, String compatible, String told) throws IOException {
        var brands = compatible.replace(" ", "").isEmpty() ? new String[0] : compatible.split(" (?! )");
        var box = ByteBuffer.allocate(16 + 4 * brands.length);
        box.putInt(box.capacity()).put(bytes("ftyp" + main)).putInt(0);
        for (var brand : brands) {
            box.put(bytes((brand + "    ").substring(0, 4)));
        }
        assertRefused("launch.jpg", box.array(), told, "JPEG");
    }

    /** TIFF 6.0, section 2: byte order, 42, where the directory is; its entries of 12 bytes begin with the tag. */
    @ParameterizedTest
    @CsvSource({
        "42, 256 257, TIFF",
        "42, 256 271, TIFF",
        "42, 254 271 330, raw",
        "42, 271 34665, raw",
        "42, 256 50706, raw",
        "42, 33422, raw",
        "42, 37398, raw",
        "43, 256, TIFF",
        "20306, 256, raw",
        "85, 256, raw"
    })
    void aTiffIsACamerasRawFileByItsTags(int version, String tags, String told) throws IOException {
        for (var order : new ByteOrder[] {ByteOrder.LITTLE_ENDIAN, ByteOrder.BIG_ENDIAN}) {
            var each = tags.split(" ");
            var tiff = ByteBuffer.allocate(14 + 12 * each.length).order(order);
            tiff.put(bytes(order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM"))
                    .putShort((short) version)
                    .putInt(8)
                    .putShort((short) each.length);
            for (var tag : each) {
                tiff.putShort((short) Integer.parseInt(tag))
                        .putShort((short) 3)
                        .putInt(1)
                        .putInt(0);
            }
            assertRefused("picture.jpeg", tiff.array(), told, "export it as JPEG");
        }
    }

    @Test
    void otherPicturesAreToldByTheirSignatures() throws IOException {
        assertRefused("a.jpg", bytes("RIFF\30\0\0\0WEBPVP8 "), "WebP", "JPEG or PNG");
        assertRefused("b.png", Photos.encoded(Photos.upright(8, 8), "gif"), "GIF", "PNG");
        assertRefused("c.png", Photos.encoded(Photos.upright(8, 8), "bmp"), "BMP", "PNG");
        assertRefused("d.jpg", bytes("\0\0\0\fjP  \r\n\u0087\n"), "JPEG 2000");
        assertRefused("e.jpg", bytes("\u00ff\n\1\2\3"), "JPEG XL");
        assertRefused("f.jpg", bytes("%PDF-1.7\n"), "PDF", "page");
        assertRefused("g.png", bytes("<?xml version=\"1.0\"?>\n<svg xmlns=\"x\"/>"), "SVG");
        assertRefused("h.jpg", bytes("OURMAKERCCD-RAW 0201"), "raw");
    }

    @Test
    void whatIsCutOffOrUnknownIsNoTrap() throws IOException {
        assertRefused("a.jpg", bytes("II"), "another kind", "export it as JPEG");
        assertRefused("b.jpg", bytes("II*\0"), "TIFF");
        assertRefused("c.jpg", bytes("MM\0*\u00ff\u00ff\u00ff\u00f0"), "TIFF");
        assertRefused("d.jpg", bytes("\0\0\0\u0018ftyp"), "film");
        assertRefused("e.jpg", bytes("MMonday, dear diary"), "another kind");
        assertRefused("f.jpg", bytes("x"), "another kind");
    }

    private void assertRefused(String name, byte[] content, String... told) throws IOException {
        var file = Files.write(temp.resolve(name), content);
        var shelf = new PictureShelf(temp.resolve("photos"), temp.resolve("thumbnails"), () -> {});
        assertThatExceptionOfType(PictureRefused.class)
                .isThrownBy(() -> shelf.add(file, ""))
                .satisfies(refused -> assertThat(refused.getMessage())
                        .contains(file.toString(), "accepted: JPEG or PNG")
                        .contains(told));
        assertThat(temp.resolve("photos")).doesNotExist();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
