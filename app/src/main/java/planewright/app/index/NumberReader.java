package planewright.app.index;

import java.io.IOException;
import java.io.Reader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.CharFilter;
import planewright.shared.quantity.NumberText;

/**
 * Gives every way of writing a number one spelling, so that {@code 3 1/2}, {@code 3½}, {@code 3,5} and {@code 3.50} are the
 * same word, and parts a number from the unit that is written close to it: {@code 212g}.
 */
final class NumberReader extends CharFilter {
    /** A comma before three digits groups thousands, so it is left alone. */
    private static final Pattern NUMBER =
            Pattern.compile("(?<![\\p{L}\\d.,/])(\\d{1,6}[ -]\\d{1,4}/\\d{1,4}|\\d{1,6} ?[½¼¾⅛⅜⅝⅞]|[½¼¾⅛⅜⅝⅞]"
                    + "|\\d{1,4}/\\d{1,4}|\\d{1,9}(?:\\.\\d{1,9}|,\\d{1,2})|\\d{1,9})(?![\\d/]|[.,]\\d)"
                    + "((?:mAh|Ah|mm|cm|m|in|ft|mg|kg|g|oz|lb|ml|Hz|V|A|W|mΩ|Ω)(?![\\p{L}\\d]))?");

    /** Most texts are a few hundred characters long, and each has a reader of its own. */
    private static final int PIECE = 2048;

    private final List<Step> steps = new ArrayList<>();
    private String text;
    private int at;

    NumberReader(Reader input) {
        super(input);
    }

    NumberReader(String text) {
        super(Reader.nullReader());
        this.text = spelled(text);
    }

    /** After so many characters given, the text read is that many characters ahead. */
    private record Step(int given, int ahead) {}

    @Override
    public int read(char[] into, int offset, int length) throws IOException {
        if (text == null) {
            text = spelled(whole(input));
        }
        if (at == text.length()) {
            return -1;
        }
        int count = Math.min(length, text.length() - at);
        text.getChars(at, at + count, into, offset);
        at += count;
        return count;
    }

    @Override
    protected int correct(int given) {
        int ahead = 0;
        for (var step : steps) {
            if (step.given() > given) {
                break;
            }
            ahead = step.ahead();
        }
        return given + ahead;
    }

    private String spelled(String text) {
        Matcher numbers = null;
        StringBuilder one = null;
        int copied = 0;
        for (int place = 0; place < text.length(); place++) {
            if (!canBegin(text.charAt(place))) {
                continue;
            }
            if (numbers == null) {
                numbers = NUMBER.matcher(text).useTransparentBounds(true);
                one = new StringBuilder(text.length());
            }
            if (!numbers.region(place, text.length()).lookingAt()) {
                continue;
            }
            one.append(text.substring(copied, place)).append(spelling(numbers.group(1)));
            steps.add(new Step(one.length(), numbers.end(1) - one.length()));
            copied = numbers.end(1);
            place = copied - 1;
            if (numbers.group(2) != null) {
                one.append(' ');
                steps.add(new Step(one.length(), copied - one.length()));
            }
        }
        return copied == 0 ? text : one.append(text.substring(copied)).toString();
    }

    private static String whole(Reader reader) throws IOException {
        var letters = new char[PIECE];
        int length = 0;
        for (int count; (count = reader.read(letters, length, letters.length - length)) >= 0; length += count) {
            if (length + count == letters.length) {
                letters = Arrays.copyOf(letters, 2 * letters.length);
            }
        }
        return new String(letters, 0, length);
    }

    private static boolean canBegin(char first) {
        return first >= '0' && first <= '9' || NumberText.isGlyph(first);
    }

    private static String spelling(String written) {
        if (written.chars().allMatch(each -> each < 128 && Character.isDigit(each))) {
            return written;
        }
        return NumberText.parse(written)
                .map(value -> new BigDecimal(value)
                        .round(new MathContext(6))
                        .stripTrailingZeros()
                        .toPlainString())
                .orElse(written);
    }
}
