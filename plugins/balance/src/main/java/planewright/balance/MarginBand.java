package planewright.balance;

import static planewright.api.quantity.Units.NUMBER;

import java.util.Locale;
import planewright.shared.planform.Outlines;

/**
 * The static margin wanted, in mean chords. Usual bands by layout are common practice, no source: without a tail the wing
 * has little to trim a greater one with; ahead of a canard it must be greater for the canard to stall first.
 *
 * @param from the least
 * @param to the greatest
 * @param origin where it comes from, in a builder's words
 */
record MarginBand(double from, double to, String origin) {
    static MarginBand of(BalanceRange.Inputs inputs) {
        var usual = usual(inputs);
        var from = inputs.marginFrom().map(margin -> margin.in(NUMBER));
        var to = inputs.marginTo().map(margin -> margin.in(NUMBER));
        if (from.isEmpty() && to.isEmpty()) {
            return usual;
        }
        return new MarginBand(from.orElse(usual.from), to.orElse(usual.to), "as wanted");
    }

    private static MarginBand usual(BalanceRange.Inputs inputs) {
        var layout = inputs.layout().toLowerCase(Locale.ROOT);
        if (layout.contains("canard") || layout.contains("tandem")) {
            return new MarginBand(0.10, 0.20, "usual for a canard");
        }
        if (layout.contains("delta")) {
            return new MarginBand(0.05, 0.12, "usual for a delta");
        }
        if (layout.contains("tailless") || layout.contains("flying wing") || layout.contains("plank")) {
            return new MarginBand(0.05, 0.10, "usual without a tail");
        }
        boolean single = inputs.planform().surfaces().stream()
                        .filter(surface -> Outlines.projectedArea(surface) > 0.02 * largest(inputs))
                        .count()
                == 1;
        return layout.isBlank() && single
                ? new MarginBand(0.05, 0.10, "usual for a wing alone")
                : new MarginBand(0.08, 0.20, "usual with a tail");
    }

    private static double largest(BalanceRange.Inputs inputs) {
        return inputs.planform().surfaces().stream()
                .mapToDouble(Outlines::projectedArea)
                .max()
                .orElse(0);
    }
}
