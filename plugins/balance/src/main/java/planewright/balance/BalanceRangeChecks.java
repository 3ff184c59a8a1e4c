package planewright.balance;

import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.PERCENT;
import static planewright.api.quantity.Units.SQUARE_CENTIMETRE;
import static planewright.api.quantity.Units.SQUARE_METRE;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.journal.JournalReader;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Panel;
import planewright.api.journal.Planform.Surface;
import planewright.api.quantity.Measured;
import planewright.shared.lattice.BalanceBand;
import planewright.shared.lattice.Overlap;
import planewright.shared.planform.MarginBand;
import planewright.shared.planform.Outlines;
import planewright.shared.planform.SurfaceGeometry;

/** Which shapes no lattice can be laid over. */
final class BalanceRangeChecks {
    private static final int MOST_PIECES = 60;
    private static final double LEAST_AREA = 1e-4;
    /** What rounding leaves of the area of a fin, seen from above. */
    private static final double NO_AREA = 1e-9;

    private static final double LEAST_LENGTH = 1e-4;
    private static final double LEAST_SHARE = 1e-3;
    private static final double MOST_TWIST = Math.toRadians(30);
    /** The shortest part that turns, as a share of its surface. */
    private static final double LEAST_PART = 1e-3;

    /** A surface of which less than this share is seen from above is a fin. */
    private static final double UPRIGHT = 0.2;

    private static final double MOST_SWEEP = Math.toRadians(85);

    private final Words words;
    private final Refusals refusals;

    private BalanceRangeChecks(Words words) {
        this.words = words;
        this.refusals = new Refusals(words);
    }

    static void require(Words words, BalanceRange.Inputs inputs, MarginBand band) throws UnsuitableInput {
        var checks = new BalanceRangeChecks(words);
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
    static UnsuitableInput noAnswer(Words words) {
        return new UnsuitableInput(List.of(new InputProblem(
                "planform",
                words.say("Shape"),
                words.say("one whose surfaces lie on or through each other, or carry no lift"),
                words.say("surfaces apart from each other, at least one seen from above"),
                words.say("Look for a surface that is there twice"))));
    }

    private void band(MarginBand band) {
        if (!(band.from() < band.to())) {
            refusals.add(
                    "marginFrom",
                    words.say("Margin from"),
                    percent(band.from()),
                    words.say("less than the margin to, {0}", percent(band.to())),
                    words.say("Exchange them, or leave both empty"));
        }
    }

    private void size(Planform planform) {
        double area = planform.surfaces().stream()
                .mapToDouble(Outlines::projectedArea)
                .filter(each -> each > NO_AREA)
                .sum();
        if (!(area >= LEAST_AREA)) {
            refusals.add(
                    "planform",
                    words.say("Shape"),
                    words.say(
                            "without a wing: its area from above is {0}",
                            words.show(Measured.of(area, SQUARE_METRE).to(SQUARE_CENTIMETRE))),
                    words.say(
                            "{0} or more",
                            words.show(Measured.of(LEAST_AREA, SQUARE_METRE).to(SQUARE_CENTIMETRE))),
                    words.say("Give the wing's panels, or look at units"));
        }
        int count = planform.surfaces().stream()
                .mapToInt(surface -> surface.panels().size())
                .sum();
        if (count > MOST_PIECES) {
            refusals.add(
                    "planform",
                    words.say("Shape"),
                    words.say("one of {0} panels", count),
                    words.say("up to {0}", MOST_PIECES),
                    words.say("Use fewer, longer ones"));
        }
    }

    private void surface(Surface surface) {
        var edge = SurfaceGeometry.leadingEdge(surface);
        if (surface.mirrored() && edge.stream().anyMatch(place -> place.y() < -1e-9)) {
            refuse(
                    surface,
                    words.say("mirrored, yet reaches over the centre line"),
                    words.say("its right side only"),
                    words.say("Give the right side"));
        }
        double longest =
                surface.panels().stream().mapToDouble(Panel::span).max().orElse(0);
        double turned = 0;
        for (var panel : surface.panels()) {
            double chord = Math.max(panel.rootChord(), panel.tipChord());
            if (!(panel.span() >= Math.max(LEAST_LENGTH, LEAST_SHARE * longest)) || !(chord >= LEAST_LENGTH)) {
                refuse(
                        surface,
                        words.say("one with a panel of hardly any size"),
                        words.say(
                                "spans and chords of {0} or more, no span under a thousandth of the longest",
                                words.show(Measured.of(LEAST_LENGTH, METRE).to(MILLIMETRE))),
                        words.say("Leave that panel out"));
            }
            if (!(Math.abs(panel.sweep()) <= MOST_SWEEP)) {
                refuse(
                        surface,
                        words.say("swept by {0}", degrees(panel.sweep())),
                        words.say("up to 85° either way"),
                        words.say("Look at its angle"));
            }
            turned += panel.twist();
            if (!(Math.abs(turned) <= MOST_TWIST)) {
                refuse(
                        surface,
                        words.say("twisted by {0}", degrees(turned)),
                        words.say("up to 30° either way"),
                        words.say("Look at its angle"));
            }
        }
    }

    private void pieces(Planform planform) {
        var overlap = Overlap.first(planform);
        if (overlap.isPresent()) {
            refusals.add(
                    "planform",
                    words.say("Shape"),
                    words.say(
                            "one whose surfaces '{0}' and '{1}' lie on each other",
                            overlap.get().one(), overlap.get().other()),
                    words.say("surfaces apart from each other, at least one seen from above"),
                    words.say("Look for a surface that is there twice"));
        } else if (!BalanceBand.isFeasible(planform)) {
            refusals.add(
                    "planform",
                    words.say("Shape"),
                    words.say("one of too many pieces across the span"),
                    words.say("a few surfaces with a few panels each"),
                    words.say("Leave out what hardly carries, and let breaks of one surface meet those of another"));
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
                        words.say("there twice"),
                        words.say("one line for each surface"),
                        words.say("Put both lines into one"));
            }
            boolean lifts = line.setAt().isPresent()
                    || line.zeroLift().isPresent()
                    || line.moment().isPresent();
            if (surface >= 0 && lifts && upright(inputs.planform().surfaces().get(surface))) {
                refusals.add(
                        "sections",
                        words.say("section of '{0}'", line.surface()),
                        words.say("one that is set or cambered, on a fin"),
                        words.say("surfaces that are seen from above"),
                        words.say("Leave it out: a fin is flat and set straight here"));
            }
        }
    }

    private void control(Planform planform, BalanceRange.ControlLine line) {
        int surface = known(planform, "controls", line.surface());
        if (line.name().isBlank()) {
            refusals.add(
                    "controls",
                    words.say("name of a control surface"),
                    words.say("empty"),
                    words.say("a name"),
                    words.say("Say what it is"));
        }
        if (!(line.to().in(NUMBER) - line.from().in(NUMBER) >= LEAST_PART)) {
            refusals.add(
                    "controls",
                    "'" + line.name() + "'",
                    words.say("from {0} to {1}", words.show(line.from()), words.show(line.to())),
                    words.say("an end beyond its begin"),
                    words.say("Count both from the root"));
        }
        boolean yaws = line.does() == Planform.Role.RUDDER;
        if (surface >= 0
                && !yaws
                && upright(planform.surfaces().get(surface))
                && !planform.surfaces().get(surface).mirrored()) {
            refusals.add(
                    "controls",
                    "'" + line.name() + "'",
                    words.say("on a fin, yet no rudder"),
                    words.say("a rudder there"),
                    words.say("Look at its surface and at what it does"));
        }
    }

    /** Which surface bears a name; refuses one that none bears. */
    private int known(Planform planform, String input, String name) {
        int surface = Rigging.named(planform, name);
        if (surface < 0) {
            refusals.add(
                    input,
                    words.say("surface '{0}'", name),
                    words.say("not in the shape"),
                    planform.surfaces().stream().map(Surface::name).collect(Collectors.joining(", ")),
                    words.say("Write its name as in the shape"));
        } else if (planform.surfaces().stream()
                        .filter(each -> JournalReader.sameName(each.name(), name))
                        .count()
                > 1) {
            refusals.add(
                    input,
                    words.say("surface '{0}'", name),
                    words.say("a name that several surfaces of the shape bear"),
                    words.say("one for each surface"),
                    words.say("Give each of them a name of its own in the shape"));
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
        refusals.add("planform", words.say("Surface '{0}'", surface.name()), value, accepted, wayOut);
    }

    private String degrees(double angle) {
        return words.degrees(angle);
    }

    private String percent(double margin) {
        return words.show(Measured.of(100 * margin, PERCENT));
    }
}
