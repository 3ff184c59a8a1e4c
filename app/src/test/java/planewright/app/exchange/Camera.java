package planewright.app.exchange;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Photos as a camera stores them. */
public final class Camera {
    private Camera() {}

    /** A JPEG without a word about when and where. */
    public static byte[] plain(int colour) throws IOException {
        var image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
        var graphics = image.createGraphics();
        graphics.setColor(new Color(colour));
        graphics.fillRect(0, 0, 64, 48);
        graphics.dispose();
        var out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpg", out);
        return out.toByteArray();
    }

    /** A JPEG taken at a time such as {@code 2025:03:14 20:15:00}. */
    public static byte[] taken(int colour, String time) throws IOException {
        return withExif(plain(colour), time);
    }

    /** The same with a comment in it; ITU-T T.81, B.2.4.5. */
    static byte[] commented(byte[] jpeg, String words) {
        return ByteBuffer.allocate(jpeg.length + 4 + words.length())
                .put(jpeg, 0, 2)
                .put((byte) 0xFF)
                .put((byte) 0xFE)
                .putShort((short) (2 + words.length()))
                .put(words.getBytes(StandardCharsets.US_ASCII))
                .put(jpeg, 2, jpeg.length - 2)
                .array();
    }

    public static Path write(Path file, byte[] content) throws IOException {
        Files.createDirectories(file.getParent());
        return Files.write(file, content);
    }

    /**
     * Exif with time taken, and a place: 47° 30' 0" N, 11° 6' 0" E. CIPA DC-008-2019, 4.5.4, 4.6.3 (pointers 8769 and 8825),
     * 4.6.5 (9003) and 4.6.6 (GPS tags 0 to 4); TIFF revision 6.0, section 2.
     */
    private static byte[] withExif(byte[] jpeg, String time) {
        int exif = 8 + 2 + 2 * 12 + 4;
        int gps = exif + 2 + 12 + 4;
        int data = gps + 2 + 5 * 12 + 4;
        var tiff = ByteBuffer.allocate(data + 20 + 6 * 8);
        tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        tiff.putShort((short) 2);
        field(tiff, 0x8769, 4, 1).putInt(exif);
        field(tiff, 0x8825, 4, 1).putInt(gps);
        tiff.putInt(0).putShort((short) 1);
        field(tiff, 0x9003, 2, 20).putInt(data);
        tiff.putInt(0).putShort((short) 5);
        field(tiff, 0, 1, 4).put(new byte[] {2, 3, 0, 0});
        field(tiff, 1, 2, 2).put(new byte[] {'N', 0, 0, 0});
        field(tiff, 2, 5, 3).putInt(data + 20);
        field(tiff, 3, 2, 2).put(new byte[] {'E', 0, 0, 0});
        field(tiff, 4, 5, 3).putInt(data + 44);
        tiff.putInt(0).put((time + "\0").getBytes(StandardCharsets.US_ASCII));
        for (int part : new int[] {47, 30, 0, 11, 6, 0}) {
            tiff.putInt(part).putInt(1);
        }
        var block = ByteBuffer.allocate(10 + tiff.capacity());
        block.put((byte) 0xFF).put((byte) 0xE1).putShort((short) (8 + tiff.capacity()));
        block.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff.array());
        return ByteBuffer.allocate(jpeg.length + block.capacity())
                .put(jpeg, 0, 2)
                .put(block.array())
                .put(jpeg, 2, jpeg.length - 2)
                .array();
    }

    private static ByteBuffer field(ByteBuffer tiff, int tag, int type, int count) {
        return tiff.putShort((short) tag).putShort((short) type).putInt(count);
    }
}
