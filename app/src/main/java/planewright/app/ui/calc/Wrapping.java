package planewright.app.ui.calc;

import java.awt.FontMetrics;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Where the text of a cell may break: between words; of a quantity before its ±, of a range before its end, of a moment before its hour. */
enum Wrapping {
    WORDS(" "),
    QUANTITY(" (?=±|\\p{L}+ [-−]?\\d|\\d\\d:)");

    private final String gap;

    Wrapping(String gap) {
        this.gap = gap;
    }

    /** The widest piece that stays in one. */
    int least(String text, FontMetrics metrics) {
        return Arrays.stream(text.split(gap))
                .mapToInt(metrics::stringWidth)
                .max()
                .orElse(0);
    }

    /** The text in lines of at most a width, wider only where a piece is. */
    List<String> lines(String text, FontMetrics metrics, int width) {
        if (metrics.stringWidth(text) <= width) {
            return List.of(text);
        }
        var lines = new ArrayList<String>();
        for (var piece : text.split(gap)) {
            int last = lines.size() - 1;
            if (last >= 0 && metrics.stringWidth(lines.get(last) + " " + piece) <= width) {
                lines.set(last, lines.get(last) + " " + piece);
            } else {
                lines.add(piece);
            }
        }
        return lines;
    }
}
