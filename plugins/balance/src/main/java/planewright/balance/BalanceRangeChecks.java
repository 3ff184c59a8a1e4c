package planewright.balance;

import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.PERCENT;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;
import planewright.api.quantity.Measured;
import planewright.shared.lattice.BalanceBand;
import planewright.shared.planform.MarginBand;
import planewright.shared.planform.Outlines;
import planewright.shared.planform.SurfaceGeometry;
import planewright.shared.quantity.QuantityText;

/** Which shapes no lattice can be laid over. */
final class BalanceRangeChecks {
    private static final int MOST_PIECES = 60;
    private static final double LEAST_AREA = 1e-4;
    private static final double LEAST_LENGTH = 1e-4;
    private static final double LEAST_SHARE = 1e-3;
    private static final double MOST_TWIST = Math.toRadians(30);
    /** The shortest part that turns, as a share of its surface. */
    private static final double LEAST_PART = 1e-3;

    /** A surface of which less than this share is seen from above is a fin. */
    private static final double UPRIGHT = 0.2;

    private static final double MOST_SWEEP = Math.toRadians(85);

    private final Refusals refusals = new Refusals();

    private BalanceRangeChecks() {}

    static void require(BalanceRange.Inputs inputs, MarginBand band) throws UnsuitableInput {
        var checks = new BalanceRangeChecks();
        var planform = inputs.planform();
        checks.refusals.shape(Optional.of(planform));
        checks.band(band);
        checks.size(planform);
        planform.surfaces().forEach(checks::surface);
        checks.refusals.throwIfAny();
        checks.pieces(planform);
        checks.sections(inputs);
        inputs.controls().forEach(line -> checks.control(planform, line));
        checks.refusals.throwIfAny();
    }

    /** For a shape whose lattice has no answer. */
    static UnsuitableInput noAnswer() {
        return new UnsuitableInput(List.of(new InputProblem(
                "planform",
                "Shape",
                "one whose surfaces lie on or through each other, or carry no lift",
                "surfaces apart from each other, at least one seen from above",
                "Look for a surface that is there twice")));
    }

    private void band(MarginBand band) {
        if (!(band.from() < band.to())) {
            refusals.add(
                    "marginFrom",
                    "Margin from",
                    percent(band.from()),
                    "less than the margin to, " + percent(band.to()),
                    "Exchange them, or leave both empty");
        }
    }

    private void size(Planform planform) {
        double area = planform.surfaces().stream()
                .mapToDouble(Outlines::projectedArea)
                .sum();
        if (!(area >= LEAST_AREA)) {
            refusals.add(
                    "planform",
                    "Shape",
                    "without a wing: its area from above is " + String.format(Locale.ROOT, "%.3g cm²", 1e4 * area),
                    "1 cm² or more",
                    "Give the wing's panels, or look at units");
        }
        int count = planform.surfaces().stream()
                .mapToInt(surface -> surface.panels().size())
                .sum();
        if (count > MOST_PIECES) {
            refusals.add(
                    "planform",
                    "Shape",
                    "one of " + count + " panels",
                    "up to " + MOST_PIECES,
                    "Use fewer, longer ones");
        }
    }

    private void surface(Surface surface) {
        var edge = SurfaceGeometry.leadingEdge(surface);
        if (surface.mirrored() && edge.stream().anyMatch(place -> place.y() < -1e-9)) {
            refuse(surface, "mirrored, yet reaches over the centre line", "its right side only", "Give the right side");
        }
        double longest =
                surface.panels().stream().mapToDouble(Panel::span).max().orElse(0);
        double turned = 0;
        for (var panel : surface.panels()) {
            double chord = Math.max(panel.rootChord(), panel.tipChord());
            if (!(panel.span() >= Math.max(LEAST_LENGTH, LEAST_SHARE * longest)) || !(chord >= LEAST_LENGTH)) {
                refuse(
                        surface,
                        "one with a panel of hardly any size",
                        "spans and chords of 0.1 mm or more, no span under a thousandth of the longest",
                        "Leave that panel out");
            }
            if (!(Math.abs(panel.sweep()) <= MOST_SWEEP)) {
                refuse(surface, "swept by " + degrees(panel.sweep()), "up to 85° either way", "Look at its angle");
            }
            turned += panel.twist();
            if (!(Math.abs(turned) <= MOST_TWIST)) {
                refuse(surface, "twisted by " + degrees(turned), "up to 30° either way", "Look at its angle");
            }
        }
    }

    private void pieces(Planform planform) {
        if (!BalanceBand.isFeasible(planform)) {
            refusals.add(
                    "planform",
                    "Shape",
                    "one of too many pieces across the span",
                    "a few surfaces with a few panels each",
                    "Leave out what hardly carries, and let breaks of one surface meet those of another");
        }
    }

    private void sections(BalanceRange.Inputs inputs) {
        var taken = new HashSet<Integer>();
        for (var line : inputs.sections()) {
            int surface = known(inputs.planform(), "sections", line.surface());
            if (surface >= 0 && !taken.add(surface)) {
                refusals.add(
                        "sections",
                        "'" + line.surface() + "'",
                        "there twice",
                        "one line for each surface",
                        "Put both lines into one");
            }
            boolean lifts = line.setAt().isPresent()
                    || line.zeroLift().isPresent()
                    || line.moment().isPresent();
            if (surface >= 0 && lifts && upright(inputs.planform().surfaces().get(surface))) {
                refusals.add(
                        "sections",
                        "section of '" + line.surface() + "'",
                        "one that is set or cambered, on a fin",
                        "surfaces that are seen from above",
                        "Leave it out: a fin is flat and set straight here");
            }
        }
    }

    private void control(Planform planform, BalanceRange.ControlLine line) {
        int surface = known(planform, "controls", line.surface());
        if (line.name().isBlank()) {
            refusals.add("controls", "name of a control surface", "empty", "a name", "Say what it is");
        }
        if (!(line.to().in(NUMBER) - line.from().in(NUMBER) >= LEAST_PART)) {
            refusals.add(
                    "controls",
                    "'" + line.name() + "'",
                    "from " + QuantityText.show(line.from()) + " to " + QuantityText.show(line.to()),
                    "an end beyond its begin",
                    "Count both from the root");
        }
        boolean yaws = line.does() == Planform.Role.RUDDER;
        if (surface >= 0
                && !yaws
                && upright(planform.surfaces().get(surface))
                && !planform.surfaces().get(surface).mirrored()) {
            refusals.add(
                    "controls",
                    "'" + line.name() + "'",
                    "on a fin, yet no rudder",
                    "a rudder there",
                    "Look at its surface and at what it does");
        }
    }

    /** Which surface bears a name; refuses one that none bears. */
    private int known(Planform planform, String input, String name) {
        int surface = Rigging.named(planform, name);
        if (surface < 0) {
            refusals.add(
                    input,
                    "surface '" + name + "'",
                    "not in the shape",
                    planform.surfaces().stream().map(Surface::name).collect(Collectors.joining(", ")),
                    "Write its name as in the shape");
        }
        return surface;
    }

    private static boolean upright(Surface surface) {
        return Outlines.projectedArea(surface)
                < UPRIGHT
                        * SurfaceGeometry.of(surface, SurfaceGeometry.View.ALONG)
                                .area();
    }

    private void refuse(Surface surface, String value, String accepted, String wayOut) {
        refusals.add("planform", "Surface '" + surface.name() + "'", value, accepted, wayOut);
    }

    private static String degrees(double angle) {
        return String.format(Locale.ROOT, "%.1f°", Math.toDegrees(angle));
    }

    private static String percent(double margin) {
        return QuantityText.show(Measured.of(100 * margin, PERCENT));
    }
}
