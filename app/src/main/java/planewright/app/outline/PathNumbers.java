package planewright.app.outline;

import java.util.ArrayList;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers and letters of path data, lists of points and the like: the grammar of SVG 1.1, 8.3.9. */
final class PathNumbers {
    private static final Pattern GAP = Pattern.compile("[ \\t\\r\\n\\f]*,?[ \\t\\r\\n\\f]*");
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
    private static final int SHOWN = 30;

    private final String text;
    private int at;

    PathNumbers(String text) {
        this.text = text;
        skip(Pattern.compile("[ \\t\\r\\n\\f]*"));
    }

    boolean isAtEnd() {
        return at == text.length();
    }

    /** Whether a letter comes next. */
    boolean isLetter() {
        return !isAtEnd() && Character.isLetter(text.charAt(at));
    }

    char letter() throws OutlineRefused {
        if (!isLetter()) {
            throw wrong("a command such as M, L, C or Z");
        }
        char letter = text.charAt(at++);
        skip(GAP);
        return letter;
    }

    double number() throws OutlineRefused {
        var found = matcher(NUMBER);
        if (!found.lookingAt()) {
            throw wrong("a number");
        }
        double number = Double.parseDouble(found.group());
        if (!Double.isFinite(number)) {
            throw wrong("a finite number");
        }
        at = found.end();
        skip(GAP);
        return number;
    }

    /** A flag of an arc, which needs no gap after it. */
    boolean flag() throws OutlineRefused {
        if (isAtEnd() || text.charAt(at) != '0' && text.charAt(at) != '1') {
            throw wrong("a flag, 0 or 1");
        }
        boolean flag = text.charAt(at++) == '1';
        skip(GAP);
        return flag;
    }

    /** All numbers that there are. */
    double[] all() throws OutlineRefused {
        var numbers = new ArrayList<Double>();
        while (!isAtEnd()) {
            numbers.add(number());
        }
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    OutlineRefused wrong(String accepted) {
        var rest = text.substring(at, Math.min(text.length(), at + SHOWN));
        var whole = text.length() > SHOWN ? text.substring(0, SHOWN) + "…" : text;
        return rest.isEmpty()
                ? new OutlineRefused(
                        "it ends at character {0} of '{1}'; accepted: {2}", at + 1, whole, OutlineWords.say(accepted))
                : new OutlineRefused(
                        "there is '{0}' at character {1} of '{2}'; accepted: {3}",
                        rest, at + 1, whole, OutlineWords.say(accepted));
    }

    private void skip(Pattern gap) {
        var found = matcher(gap);
        if (found.lookingAt()) {
            at = found.end();
        }
    }

    private Matcher matcher(Pattern pattern) {
        return pattern.matcher(text).region(at, text.length());
    }
}
