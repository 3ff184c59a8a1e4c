package planewright.app.pictures;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Pictures for tests, with what cameras write beside them. */
final class Photos {
    /** Colours of the quarters of an upright picture: top left, top right, bottom left, bottom right. */
    static final Color[] QUARTERS = {Color.RED, Color.GREEN, Color.BLUE, Color.YELLOW};

    private Photos() {}

    /** A picture whose four quarters have four colours. */
    static BufferedImage upright(int width, int height) {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, QUARTERS[(2 * y / height) * 2 + 2 * x / width].getRGB());
            }
        }
        return image;
    }

    static byte[] encoded(BufferedImage image, String type) throws IOException {
        var out = new ByteArrayOutputStream();
        ImageIO.write(image, type, out);
        return out.toByteArray();
    }

    /**
     * How a camera stores an upright picture. CIPA DC-008-2019, tag 274: which side of the scene row 0 and column 0 are.
     */
    static BufferedImage stored(BufferedImage upright, int orientation) {
        var sides = new String[] {
                    "",
                    "top left",
                    "top right",
                    "bottom right",
                    "bottom left",
                    "left top",
                    "right top",
                    "right bottom",
                    "left bottom"
                }
                [orientation].split(" ");
        boolean across = sides[0].equals("left") || sides[0].equals("right");
        int w = upright.getWidth();
        int h = upright.getHeight();
        var stored = new BufferedImage(across ? h : w, across ? w : h, BufferedImage.TYPE_INT_RGB);
        for (int row = 0; row < stored.getHeight(); row++) {
            for (int column = 0; column < stored.getWidth(); column++) {
                int fromX = Arrays.stream(new Integer[] {
                            away(sides[0], "left", "right", row, w), away(sides[1], "left", "right", column, w)
                        })
                        .filter(each -> each != null)
                        .findFirst()
                        .orElseThrow();
                int fromY = Arrays.stream(new Integer[] {
                            away(sides[0], "top", "bottom", row, h), away(sides[1], "top", "bottom", column, h)
                        })
                        .filter(each -> each != null)
                        .findFirst()
                        .orElseThrow();
                stored.setRGB(column, row, upright.getRGB(fromX, fromY));
            }
        }
        return stored;
    }

    /** A JPEG with an Exif block of orientation and time taken; CIPA DC-008-2019, 4.5.4 and 4.6, TIFF revision 6.0, section 2. */
    static byte[] withExif(byte[] jpeg, int orientation, String taken) {
        var stamp = (taken + "\0").getBytes(StandardCharsets.US_ASCII);
        var tiff = ByteBuffer.allocate(8 + 30 + 18 + stamp.length);
        tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        tiff.putShort((short) 2);
        tiff.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        tiff.putShort((short) 0x8769).putShort((short) 4).putInt(1).putInt(38);
        tiff.putInt(0);
        tiff.putShort((short) 1);
        tiff.putShort((short) 0x9003).putShort((short) 2).putInt(stamp.length).putInt(56);
        tiff.putInt(0);
        tiff.put(stamp);
        var block = ByteBuffer.allocate(10 + tiff.capacity());
        block.put((byte) 0xFF).put((byte) 0xE1).putShort((short) (8 + tiff.capacity()));
        block.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff.array());
        return ByteBuffer.allocate(jpeg.length + block.capacity())
                .put(jpeg, 0, 2)
                .put(block.array())
                .put(jpeg, 2, jpeg.length - 2)
                .array();
    }

    /** The beginning of a PNG that claims to be so large; PNG (W3C, third edition), 11.2.1. */
    static byte[] pngClaiming(int width, int height) throws IOException {
        var png = encoded(upright(4, 4), "png");
        var head = ByteBuffer.wrap(png);
        head.putInt(16, width).putInt(20, height);
        var check = new CRC32();
        check.update(png, 12, 17);
        head.putInt(29, (int) check.getValue());
        return png;
    }

    /** Place along an axis of the scene for a row or column counted from one of its two sides; null for the other axis. */
    private static Integer away(String side, String low, String high, int count, int length) {
        return side.equals(low)
                ? Integer.valueOf(count)
                : side.equals(high) ? Integer.valueOf(length - 1 - count) : null;
    }
}
