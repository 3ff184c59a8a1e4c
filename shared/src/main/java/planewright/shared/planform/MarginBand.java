package planewright.shared.planform;

import java.util.Locale;
import planewright.api.journal.Planform;

/**
 * The static margin wanted, in mean chords. Usual bands by layout are common practice, no source: without a tail the wing
 * has little to trim a greater one with; ahead of a canard it must be greater for the canard to stall first.
 *
 * @param from the least
 * @param to the greatest
 * @param origin where it comes from, in a builder's words
 */
public record MarginBand(double from, double to, String origin) {
    /** A surface of less than this share of the largest one is no tail. */
    private static final double TAIL = 0.02;

    /**
     * The usual band.
     *
     * @param layout in the builder's words; where it is blank, the number of surfaces tells
     */
    public static MarginBand usual(String layout, Planform planform) {
        var words = layout.toLowerCase(Locale.ROOT);
        if (words.contains("canard") || words.contains("tandem")) {
            return new MarginBand(0.10, 0.20, "usual for a canard");
        }
        if (words.contains("delta")) {
            return new MarginBand(0.05, 0.12, "usual for a delta");
        }
        if (words.contains("tailless") || words.contains("flying wing") || words.contains("plank")) {
            return new MarginBand(0.05, 0.10, "usual without a tail");
        }
        double largest = planform.surfaces().stream()
                .mapToDouble(Outlines::projectedArea)
                .max()
                .orElse(0);
        long surfaces = planform.surfaces().stream()
                .filter(surface -> Outlines.projectedArea(surface) > TAIL * largest)
                .count();
        return layout.isBlank() && surfaces == 1
                ? new MarginBand(0.05, 0.10, "usual for a wing alone")
                : new MarginBand(0.08, 0.20, "usual with a tail");
    }
}
