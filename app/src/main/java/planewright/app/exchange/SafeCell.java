package planewright.app.exchange;

import java.util.regex.Pattern;

/**
 * Words in a cell that a spreadsheet shows and never computes: it takes what begins with one of {@code = + - @} for a
 * formula, and an apostrophe before it keeps it words. Source: OWASP, CSV Injection.
 */
final class SafeCell {
    private static final Pattern FORMULA = Pattern.compile("(?s)'*[=+\\-@\\t\\r].*");

    private SafeCell() {}

    static String written(String words) {
        return FORMULA.matcher(words).matches() ? "'" + words : words;
    }

    /** The words that {@link #written(String)} was given. */
    static String read(String cell) {
        return cell.startsWith("'") && FORMULA.matcher(cell).matches() ? cell.substring(1) : cell;
    }
}
