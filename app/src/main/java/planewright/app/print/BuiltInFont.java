package planewright.app.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Gives the PDF library, for the shapes of letters, the font in its own jar. Left alone it reads every font of the machine,
 * which takes seconds, and writes what it found into the user's home folder; our sheets only need widths, which it brings.
 */
final class BuiltInFont implements FontMapper {
    private final TrueTypeFont font;

    private BuiltInFont(TrueTypeFont font) {
        this.font = font;
    }

    /** From now on, in the whole program. */
    static void use() {
        var resource = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
        try (var in = FontMapper.class.getResourceAsStream(resource)) {
            FontMappers.set(new BuiltInFont(new TTFParser().parse(new RandomAccessReadBuffer(in))));
        } catch (IOException impossible) {
            throw new UncheckedIOException("the PDF library lacks its font " + resource, impossible);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, true);
    }

    @Override
    public CIDFontMapping getCIDFont(String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
        return new CIDFontMapping(null, font, true);
    }
}
