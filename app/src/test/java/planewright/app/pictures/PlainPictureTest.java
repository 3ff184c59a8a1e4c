package planewright.app.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.icc.IccDirectory;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pixels stay bit for bit, secrets go. What is left is read by two libraries that know nothing of how it was cut. */
class PlainPictureTest {
    private static final String SECRET = "47.5 N, 11.1 E, serial 4711";
    private static final String TAKEN = "2025:03:14 20:15:07";

    @TempDir
    private Path temp;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aJpegKeepsItsPixelsAndNothingElse(boolean progressive) throws Exception {
        var photo = Photos.stored(Photos.upright(90, 70), 6);
        var jpeg = Photos.withExif(encoded(photo, progressive), 6, TAKEN);
        for (int marker : new int[] {0xE1, 0xE2, 0xE3, 0xED, 0xFE}) {
            jpeg = withSegment(jpeg, marker, bytes("http://ns.adobe.com/xap/1.0/\0" + SECRET));
        }
        jpeg = withSegment(jpeg, 0xE2, icc());
        var behind = ByteBuffer.allocate(jpeg.length + 2 * SECRET.length())
                .put(jpeg)
                .put(bytes(SECRET + SECRET))
                .array();
        var plain = PlainPicture.of(behind);
        assertThat(text(plain)).doesNotContain("47.5", "4711", "adobe");
        assertPixels(plain, jpeg);
        var kept = Exif.of(plain);
        assertThat(kept).isEqualTo(Exif.of(Photos.withExif(encoded(photo, progressive), 6, TAKEN)));
        var metadata = ImageMetadataReader.readMetadata(new ByteArrayInputStream(plain));
        assertThat(metadata.getFirstDirectoryOfType(GpsDirectory.class)).isNull();
        assertThat(metadata.getFirstDirectoryOfType(IccDirectory.class)).isNotNull();
        assertThat(metadata.getDirectories()).allMatch(directory -> !directory.hasErrors());
        assertThat(PlainPicture.of(plain)).as("plain already").isEqualTo(plain);
    }

    @Test
    void aPlainPictureStaysAsItIsToTheByte() throws IOException {
        for (var type : new String[] {"jpg", "png"}) {
            var picture = Photos.encoded(Photos.upright(64, 48), type);
            assertThat(PlainPicture.of(picture)).isEqualTo(picture);
        }
    }

    @Test
    void aSmallCopyInTheHeaderGoes() throws IOException {
        var jpeg = encoded(Photos.upright(64, 48), false);
        // JFIF 1.02: length, "JFIF", version, units, densities, width and height of the small copy, its pixels
        var head = ByteBuffer.allocate(20 + 12);
        head.put(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0})
                .putShort((short) 28);
        head.put(bytes("JFIF\0")).put(new byte[] {1, 2, 1, 0, 72, 0, 72, 2, 2}).put(bytes("SECRETpixels"));
        var joined = new ByteArrayOutputStream();
        joined.writeBytes(head.array());
        joined.write(jpeg, 20, jpeg.length - 20);
        var plain = PlainPicture.of(joined.toByteArray());
        assertThat(text(plain)).doesNotContain("SECRET").contains("JFIF");
        assertPixels(plain, jpeg);
    }

    @Test
    void aPngKeepsItsPixelsAndNothingElse() throws Exception {
        var png = Photos.encoded(Photos.upright(64, 48), "png");
        var exif = Arrays.copyOfRange(Photos.withExif(encoded(Photos.upright(8, 8), false), 3, TAKEN), 12, 98);
        var told = withChunk(
                withChunk(withChunk(png, "eXIf", exif), "tEXt", bytes("Comment\0" + SECRET)),
                "iTXt",
                bytes("XML:com.adobe.xmp\0\0\0\0\0" + SECRET));
        var behind = ByteBuffer.allocate(told.length + SECRET.length())
                .put(told)
                .put(bytes(SECRET))
                .array();
        var plain = PlainPicture.of(behind);
        assertThat(text(plain)).doesNotContain("47.5", "tEXt", "iTXt", "adobe");
        assertPixels(plain, png);
        assertThat(Exif.of(plain).orientation()).isEqualTo(3);
        assertThat(Exif.of(plain).taken()).isEqualTo(Exif.of(told).taken()).isPresent();
        assertThat(PlainPicture.of(plain)).isEqualTo(plain);
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpg", "png"})
    void aPictureCutOffAnywhereIsRefusedByName(String type) throws IOException {
        var whole = Photos.encoded(Photos.upright(64, 48), type);
        for (int length = 8; length < whole.length - (type.equals("png") ? 12 : 0); length += 13) {
            var file = Files.write(temp.resolve("cut." + type), Arrays.copyOf(whole, length));
            assertThatExceptionOfType(PictureRefused.class)
                    .isThrownBy(() -> PlainPicture.of(file))
                    .withMessageContaining(file.toString());
        }
    }

    private static void assertPixels(byte[] one, byte[] other) throws IOException {
        var image = ImageIO.read(new ByteArrayInputStream(one));
        var wanted = ImageIO.read(new ByteArrayInputStream(other));
        assertThat(image.getWidth()).isEqualTo(wanted.getWidth());
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                assertThat(image.getRGB(x, y)).isEqualTo(wanted.getRGB(x, y));
            }
        }
    }

    private static byte[] encoded(BufferedImage image, boolean progressive) throws IOException {
        var out = new ByteArrayOutputStream();
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            var param = writer.getDefaultWriteParam();
            param.setProgressiveMode(progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    /** ICC.1:2022, B.4: the name, which part of how many, the profile. */
    private static byte[] icc() {
        var profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
        return ByteBuffer.allocate(14 + profile.length)
                .put(bytes("ICC_PROFILE\0"))
                .put(new byte[] {1, 1})
                .put(profile)
                .array();
    }

    private static byte[] withSegment(byte[] jpeg, int marker, byte[] content) {
        return ByteBuffer.allocate(jpeg.length + 4 + content.length)
                .put(jpeg, 0, 2)
                .put((byte) 0xFF)
                .put((byte) marker)
                .putShort((short) (2 + content.length))
                .put(content)
                .put(jpeg, 2, jpeg.length - 2)
                .array();
    }

    /** Behind the signature and IHDR, which are 33 bytes. */
    private static byte[] withChunk(byte[] png, String type, byte[] data) {
        var chunk = ByteBuffer.allocate(12 + data.length);
        chunk.putInt(data.length).put(bytes(type)).put(data);
        var check = new CRC32();
        check.update(chunk.array(), 4, 4 + data.length);
        chunk.putInt((int) check.getValue());
        return ByteBuffer.allocate(png.length + chunk.capacity())
                .put(png, 0, 33)
                .put(chunk.array())
                .put(png, 33, png.length - 33)
                .array();
    }

    private static String text(byte[] content) {
        return new String(content, StandardCharsets.ISO_8859_1);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
