package planewright.shared.quantity;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as they are written at the bench: {@code 212}, {@code 0.850}, {@code 3,5}, {@code 3 1/2}, {@code 1/8}, {@code 3½}. */
public final class NumberText {
    /** A number without its sign: whole and fraction, fraction, or decimal with point or comma. */
    static final String UNSIGNED =
            "(?:\\d+[ -]\\d+/\\d+|\\d+ ?[½¼¾⅛⅜⅝⅞]|[½¼¾⅛⅜⅝⅞]|\\d+/\\d+|\\d*[.,]?\\d+(?:[eE][+-]?\\d+)?)";

    private static final Pattern MIXED = Pattern.compile("(?:(\\d+)[ -])?(\\d+)/(\\d+)");
    private static final Pattern GLYPH = Pattern.compile("(\\d*) ?([½¼¾⅛⅜⅝⅞])");
    private static final Pattern DECIMAL = Pattern.compile("\\d*[.,]?\\d+(?:[eE][+-]?\\d+)?");
    private static final Map<String, Double> GLYPHS =
            Map.of("½", 0.5, "¼", 0.25, "¾", 0.75, "⅛", 0.125, "⅜", 0.375, "⅝", 0.625, "⅞", 0.875);

    private NumberText() {}

    /** Whether a character is a fraction by itself: {@code ½}. */
    public static boolean isGlyph(char character) {
        return character > 127 && GLYPHS.containsKey(String.valueOf(character));
    }

    /** The number that a text stands for, or empty where it is none, or not finite. */
    public static Optional<Double> parse(String text) {
        var stripped = text.strip().replace('−', '-');
        boolean negative = stripped.startsWith("-");
        var unsigned =
                negative || stripped.startsWith("+") ? stripped.substring(1).strip() : stripped;
        return unsigned(unsigned).filter(Double::isFinite).map(number -> negative ? -number : number);
    }

    private static Optional<Double> unsigned(String text) {
        if (isPlain(text)) {
            return Optional.of(Double.parseDouble(text));
        }
        var mixed = MIXED.matcher(text);
        if (mixed.matches()) {
            double whole = mixed.group(1) == null ? 0 : Double.parseDouble(mixed.group(1));
            double divisor = Double.parseDouble(mixed.group(3));
            return divisor == 0 ? Optional.empty() : Optional.of(whole + Double.parseDouble(mixed.group(2)) / divisor);
        }
        var glyph = GLYPH.matcher(text);
        if (glyph.matches()) {
            double whole = glyph.group(1).isEmpty() ? 0 : Double.parseDouble(glyph.group(1));
            return Optional.of(whole + GLYPHS.get(glyph.group(2)));
        }
        return DECIMAL.matcher(text).matches()
                ? Optional.of(Double.parseDouble(text.replace(',', '.')))
                : Optional.empty();
    }

    /** Nearly all numbers are digits with at most one point among them. */
    private static boolean isPlain(String text) {
        int points = 0;
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            if (each == '.') {
                points++;
            } else if (each < '0' || each > '9') {
                return false;
            }
        }
        return points <= 1 && !text.isEmpty() && text.charAt(text.length() - 1) != '.';
    }
}
