package planewright.app.pictures;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.PixelInterleavedSampleModel;
import java.util.Arrays;

/**
 * Makes a picture smaller by the mean of what each of its new pixels covers, so that every pixel of the source counts by its
 * area. Colours stay in the space of the source: what is left to convert is small.
 */
final class Shrinking {
    private static final int BANDS = 3;

    private final byte[] from;
    private final int[] bands;
    private final int step;
    private final int lineStep;
    private final int sourceWidth;
    private final int width;
    private final double scale;
    private final float[] row;

    private Shrinking(BufferedImage source, int width) {
        this.from = ((DataBufferByte) source.getRaster().getDataBuffer()).getData();
        var layout = (PixelInterleavedSampleModel) source.getSampleModel();
        this.bands = layout.getBandOffsets();
        this.step = layout.getPixelStride();
        this.lineStep = layout.getScanlineStride();
        this.sourceWidth = source.getWidth();
        this.width = width;
        this.scale = (double) source.getWidth() / width;
        this.row = new float[BANDS * width];
    }

    /** No side longer than the edge; what is small enough stays as it is. */
    static BufferedImage to(BufferedImage source, int longestEdge) {
        int longest = Math.max(source.getWidth(), source.getHeight());
        if (longest <= longestEdge) {
            return source;
        }
        double factor = (double) longestEdge / longest;
        int width = Math.max(1, (int) Math.round(source.getWidth() * factor));
        int height = Math.max(1, (int) Math.round(source.getHeight() * factor));
        var plain = isPlain(source) ? source : flattened(source);
        return new Shrinking(plain, width).shrunk(plain, height);
    }

    private static boolean isPlain(BufferedImage source) {
        return source.getSampleModel() instanceof PixelInterleavedSampleModel layout
                && layout.getNumBands() == BANDS
                && layout.getDataType() == DataBuffer.TYPE_BYTE
                && source.getRaster().getParent() == null;
    }

    /** Three bytes a pixel; what can be seen through stands on white. */
    private static BufferedImage flattened(BufferedImage source) {
        var flat = new BufferedImage(source.getWidth(), source.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
        var g = flat.createGraphics();
        g.drawImage(source, 0, 0, Color.WHITE, null);
        g.dispose();
        return flat;
    }

    private BufferedImage shrunk(BufferedImage source, int height) {
        var raster = source.getColorModel().createCompatibleWritableRaster(width, height);
        double tall = (double) source.getHeight() / height;
        var sum = new float[BANDS * width];
        for (int y = 0; y < height; y++) {
            double top = y * tall;
            double bottom = Math.min(source.getHeight(), top + tall);
            Arrays.fill(sum, 0);
            for (int line = (int) top; line < bottom; line++) {
                shrinkLine(line);
                add(sum, (float) ((Math.min(bottom, line + 1.0) - Math.max(top, line)) / (bottom - top)));
            }
            raster.setPixels(0, y, width, 1, rounded(sum));
        }
        return new BufferedImage(source.getColorModel(), raster, source.isAlphaPremultiplied(), null);
    }

    /** The means of one line of the source, across: pixels that are covered wholly, and parts of the two at the ends. */
    private void shrinkLine(int line) {
        int start = line * lineStep;
        for (int x = 0; x < width; x++) {
            double left = x * scale;
            double right = Math.min(sourceWidth, left + scale);
            int last = Math.min(sourceWidth - 1, (int) right);
            sum(start + (int) left * step, start + last * step, x);
            mix(start + (int) left * step, (int) left - left, x);
            mix(start + last * step, right - last, x);
            for (int band = 0; band < BANDS; band++) {
                row[BANDS * x + band] /= (float) (right - left);
            }
        }
    }

    /** Most of the work of a thumbnail besides decoding; the compiler does better with variables than with fields. */
    private void sum(int first, int end, int x) {
        var bytes = from;
        int stride = step;
        int toSecond = bands[1] - bands[0];
        int toThird = bands[2] - bands[0];
        int one = 0;
        int two = 0;
        int three = 0;
        for (int at = first + bands[0]; at < end + bands[0]; at += stride) {
            one += bytes[at] & 0xFF;
            two += bytes[at + toSecond] & 0xFF;
            three += bytes[at + toThird] & 0xFF;
        }
        row[BANDS * x] = one;
        row[BANDS * x + 1] = two;
        row[BANDS * x + 2] = three;
    }

    private void mix(int at, double share, int x) {
        for (int band = 0; band < BANDS; band++) {
            row[BANDS * x + band] += (float) share * (from[at + bands[band]] & 0xFF);
        }
    }

    private static int[] rounded(float[] means) {
        var rounded = new int[means.length];
        for (int i = 0; i < means.length; i++) {
            rounded[i] = Math.round(means[i]);
        }
        return rounded;
    }

    private void add(float[] sum, float weight) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += weight * row[i];
        }
    }
}
