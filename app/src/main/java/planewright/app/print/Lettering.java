package planewright.app.print;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/**
 * Text in one of the fonts that every PDF reader brings. They know the letters of Windows-1252; a few others of the trade
 * are spelled out, the rest become a question mark.
 */
final class Lettering {
    static {
        BuiltInFont.use();
    }

    static final Lettering PLAIN = new Lettering(Standard14Fonts.FontName.HELVETICA);
    static final Lettering BOLD = new Lettering(Standard14Fonts.FontName.HELVETICA_BOLD);

    private static final Map<Integer, String> SPELLED = Map.of(
            (int) 'Ω', "ohm",
            (int) '′', "'",
            (int) '″', "\"",
            (int) '−', "-",
            (int) '→', "->",
            (int) '≤', "<=",
            (int) '≥', ">=",
            (int) 'Δ', "delta ");
    private static final Map<Integer, String> FRACTIONS =
            Map.of((int) '⅛', "1/8", (int) '⅜', "3/8", (int) '⅝', "5/8", (int) '⅞', "7/8");

    private final PDFont font;

    private Lettering(Standard14Fonts.FontName name) {
        font = new PDType1Font(name);
    }

    PDFont font() {
        return font;
    }

    double width(String text, double size) {
        try {
            return font.getStringWidth(printable(text)) / 1000 * size;
        } catch (IOException impossible) {
            throw new IllegalStateException("a standard font without widths", impossible);
        }
    }

    /** The text in letters of the font. */
    String printable(String text) {
        var printable = new StringBuilder();
        text.codePoints().forEach(letter -> {
            if (known(letter)) {
                printable.appendCodePoint(letter);
            } else if (FRACTIONS.containsKey(letter)) {
                boolean mixed = !printable.isEmpty() && Character.isDigit(printable.charAt(printable.length() - 1));
                printable.append(mixed ? " " : "").append(FRACTIONS.get(letter));
            } else {
                printable.append(SPELLED.getOrDefault(letter, Character.isWhitespace(letter) ? " " : "?"));
            }
        });
        return printable.toString();
    }

    /** The text in lines no wider than the width; a word that is wider is broken. */
    List<String> lines(String text, double size, double width) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (var word : text.strip().split("\\s+")) {
            for (var piece : pieces(word, size, width)) {
                if (!line.isEmpty() && width(line + " " + piece, size) > width) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(line.isEmpty() ? "" : " ").append(piece);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private List<String> pieces(String word, double size, double width) {
        var pieces = new ArrayList<String>();
        var rest = word;
        while (rest.length() > 1 && width(rest, size) > width) {
            int end = rest.length() - 1;
            while (end > 1 && width(rest.substring(0, end), size) > width) {
                end--;
            }
            pieces.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        pieces.add(rest);
        return pieces;
    }

    private boolean known(int letter) {
        try {
            return letter >= ' ' && font.encode(Character.toString(letter)).length > 0;
        } catch (IOException | IllegalArgumentException unknown) {
            return false;
        }
    }
}
