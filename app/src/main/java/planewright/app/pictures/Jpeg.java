package planewright.app.pictures;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;

/** Pixels as a JPEG file that says nothing beside them. */
public final class Jpeg {
    private static final float QUALITY = 0.85f;

    private Jpeg() {}

    /** The file's content. */
    public static byte[] of(BufferedImage image) {
        var content = new ByteArrayOutputStream();
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        try (var stream = ImageIO.createImageOutputStream(content)) {
            writer.setOutput(stream);
            var param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException impossible) {
            throw new UncheckedIOException("a picture in memory that cannot be written into memory", impossible);
        } finally {
            writer.dispose();
        }
        return content.toByteArray();
    }
}
