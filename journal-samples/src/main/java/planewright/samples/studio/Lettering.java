package planewright.samples.studio;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.HashMap;
import java.util.Map;

/** Draughtsman's capitals of single strokes, the same on every machine; y runs up. */
public final class Lettering {
    private static final Map<Character, String> STROKES = new HashMap<>();

    static {
        put("A", "002640|1232");
        put("B", "00063645443303|3342413000");
        put("C", "4536160501103041");
        put("D", "00062645412000");
        put("E", "40000646|0333");
        put("F", "000646|0333");
        put("G", "45361605011030414323");
        put("H", "0006|4046|0343");
        put("I", "2026");
        put("J", "0110304146");
        put("K", "0006|460240");
        put("L", "060040");
        put("M", "0006234640");
        put("N", "00064046");
        put("P", "0006364544330300");
        put("R", "00063645443303|2340");
        put("S", "453616050413334241301001");
        put("T", "0646|2620");
        put("U", "060110304146");
        put("V", "062046");
        put("W", "0610243046");
        put("X", "0046|0640");
        put("Y", "062346|2320");
        put("Z", "06460040");
        put("O", "100105163645413010");
        put("Q", "100105163645413010|2140");
        put("0", "100105163645413010");
        put("1", "052620");
        put("2", "05163645440040");
        put("3", "05163645443313|334241301001");
        put("4", "30360242");
        put("5", "460603334241301001");
        put("6", "4536160501103041423303");
        put("7", "064610");
        put("8", "13040516364544331302011030414233");
        put("9", "0110304145361605041343");
        put("-", "1333");
        put(".", "2021");
        put(",", "2111");
        put("/", "0046");
        put("+", "1333|2422");
        put("±", "2226|0444|0141");
        put("=", "1434|1232");
        put("°", "1516262515");
        put("Ø", "100105163645413010|0046");
        put("(", "36141230");
        put(")", "16343210");
        put(":", "2425|2122");
        put("×", "1135|1531");
        put("%", "0046|0516|3041");
    }

    private Lettering() {}

    private static void put(String letter, String strokes) {
        STROKES.put(letter.charAt(0), strokes);
    }

    /** Writes capitals of this height from x along the base line y, with a pen a ninth as thick. */
    public static void write(Graphics2D g, String text, double x, double y, double height) {
        g.setStroke(new BasicStroke((float) (height / 8), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        double step = height / 6;
        double at = x;
        for (char letter : text.toCharArray()) {
            g.draw(letter(STROKES.getOrDefault(letter, ""), at, y, step));
            at += advance(letter) * step;
        }
    }

    public static void centred(Graphics2D g, String text, double x, double y, double height) {
        write(g, text, x - width(text, height) / 2, y - height / 2, height);
    }

    public static double width(String text, double height) {
        return (text.chars().mapToDouble(letter -> advance((char) letter)).sum() - 1.4) * height / 6;
    }

    private static double advance(char letter) {
        return switch (letter) {
            case ' ' -> 3.6;
            case '.', ',', ':', 'I' -> 4.2;
            default -> 5.4;
        };
    }

    private static Path2D letter(String strokes, double x, double y, double step) {
        var path = new Path2D.Double();
        for (String stroke : strokes.split("\\|")) {
            for (int i = 0; i + 1 < stroke.length(); i += 2) {
                double px = x + (stroke.charAt(i) - '0') * step;
                double py = y + (stroke.charAt(i + 1) - '0') * step;
                if (i == 0) {
                    path.moveTo(px, py);
                } else {
                    path.lineTo(px, py);
                }
            }
        }
        return path;
    }
}
