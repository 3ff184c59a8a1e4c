package planewright.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import planewright.api.calculator.Finding;
import planewright.balance.LeanMoments.Moment;
import planewright.shared.quantity.QuantityText;

/** What a builder should make of a lean. */
final class LeanFindings {
    /** A balance point this far off the centre line, as a share of the half span, is felt: common practice, no source. */
    private static final double FELT = 0.01;

    private final LeanAnswer answer;
    private final List<Lean.CauseLine> causes;
    private final List<Finding> findings = new ArrayList<>();

    LeanFindings(LeanAnswer answer, List<Lean.CauseLine> causes) {
        this.answer = answer;
        this.causes = causes;
    }

    List<Finding> all() {
        lean();
        agreement();
        parts();
        suspects();
        flight();
        twist();
        return List.copyOf(findings);
    }

    private Lean.Inputs inputs() {
        return answer.inputs();
    }

    private void lean() {
        var lean = answer.lean();
        var from = answer.wasSeen() ? "By " + lean.name() : "By its parts alone, as nothing was seen on the bench,";
        if (Math.abs(lean.value()) <= LeanAnswer.COVER * lean.spread() || lean.value() == 0) {
            findings.add(Finding.fine(from + " it is level as far as can be told: what is left is within the ±."));
            return;
        }
        var heavy = side(lean);
        var text = from + " the " + heavy + " wing is heavy, like "
                + QuantityText.show(answer.levelMass()) + " at the tip. As much on the "
                + (answer.levelSide() > 0 ? "right" : "left") + " tip, "
                + mm(answer.tip()) + " out, levels it.";
        boolean felt = answer.moments()
                .mass()
                .map(mass -> Math.abs(lean.value()) / mass.value() > FELT * answer.tip())
                .orElse(false);
        findings.add(felt ? Finding.lookAgain(text + " That much is felt in flight.") : Finding.fine(text));
    }

    /** Whether what was seen in several ways says the same. */
    private void agreement() {
        for (var other : answer.moments().seen()) {
            double off = Math.abs(other.value() - answer.lean().value());
            double doubt = Math.hypot(other.spread(), answer.lean().spread());
            if (off > LeanAnswer.COVER * doubt
                    && off > 0.1 * Math.abs(answer.lean().value())) {
                findings.add(Finding.lookAgain("By " + other.name() + " it would be "
                        + QuantityText.show(LeanAnswer.moment(other)) + ", by "
                        + answer.lean().name() + " "
                        + QuantityText.show(LeanAnswer.moment(answer.lean())) + ": one of them was not read right."));
            }
        }
    }

    private void parts() {
        causes.stream()
                .filter(cause -> cause.verdict().endsWith("explains it"))
                .findFirst()
                .ifPresent(
                        cause -> findings.add(Finding.fine("'" + cause.cause() + "' " + cause.verdict() + ": it pulls "
                                + (cause.moment().value().getValue().doubleValue() > 0 ? "right" : "left") + " like "
                                + QuantityText.show(cause.atTip()) + " at the tip.")));
        if (!answer.wasSeen() || answer.moments().parts().isEmpty()) {
            return;
        }
        var left = new Moment(
                "what is left",
                answer.lean().value() - answer.byParts().value(),
                Math.hypot(answer.lean().spread(), answer.byParts().spread()));
        boolean within = Math.abs(left.value()) <= LeanAnswer.COVER * left.spread()
                || Math.abs(left.value()) < 0.1 * Math.abs(answer.lean().value());
        findings.add(
                within
                        ? Finding.fine("The weighed parts account for it: they add up to "
                                + QuantityText.show(LeanAnswer.moment(answer.byParts())) + "."
                                + (answer.byParts().spread()
                                                > Math.abs(answer.lean().value()) / 2
                                        ? " Their ± is so large that they would account for much else as well: their"
                                                + " stations y and masses deserve a finer measure."
                                        : ""))
                        : Finding.lookAgain(
                                "The weighed parts do not account for it: "
                                        + QuantityText.show(LeanAnswer.moment(
                                                new Moment(left.name(), Math.abs(left.value()), left.spread())))
                                        + " to the " + side(left)
                                        + " is left. Look at glue, paint, covering, and at where leads and servos really sit."));
    }

    private void suspects() {
        for (var line : inputs().suspects()) {
            if (line.volume().isEmpty() || line.densityFrom().isEmpty()) {
                findings.add(
                        Finding.fine(
                                "Of '" + line.name()
                                        + "' only the difference in mass is told; volume and densities would say whether it is plausible."));
            }
        }
    }

    /** Which kind of cause fits what it did in flight. */
    private void flight() {
        boolean right = inputs().flight() == Lean.InFlight.ROLLS_RIGHT;
        boolean leans = Math.abs(answer.lean().value())
                > LeanAnswer.COVER * answer.lean().spread();
        boolean same = leans && answer.lean().value() > 0 == right;
        switch (inputs().flight()) {
            case NOT_FLOWN -> {}
            case LEVEL ->
                findings.add(
                        leans && answer.wasSeen()
                                ? Finding.lookAgain(
                                        "It leans on the bench and flies level: twist or an unequal half holds it up"
                                                + " at that speed. It will drop the heavy wing when slow; level it on the bench first.")
                                : Finding.fine("It flies level, so nothing needs doing."));
            case ROLLS_LEFT, ROLLS_RIGHT ->
                findings.add(
                        same
                                ? Finding.fine(
                                        "It rolls to the side that is heavy on the bench: mass fits. Level it, then fly"
                                                + " again before anything is bent.")
                                : Finding.lookAgain("It rolls " + (right ? "right" : "left")
                                        + (answer.wasSeen() ? ", and the bench" : ", and the ledger")
                                        + " does not show that wing heavy: look at twist, spans, hinge lines and"
                                        + " trims, not at ballast."));
        }
        if (inputs().flight() == Lean.InFlight.ROLLS_LEFT || right) {
            when();
        }
    }

    private void when() {
        switch (inputs().when()) {
            case NOT_KNOWN ->
                findings.add(Finding.lookAgain("Fly it slow and fast, with and without power: mass and unequal"
                        + " halves roll it alike at all speeds, twist grows with the square of the speed, torque goes with the"
                        + " power."));
            case AT_ALL_SPEEDS -> findings.add(Finding.fine("Alike at all speeds: mass or unequal halves, not twist."));
            case MORE_WHEN_FAST -> findings.add(Finding.fine("More when fast: twist or a control surface, not mass."));
            case ONLY_UNDER_POWER ->
                findings.add(Finding.fine(
                        "Only under power: torque and slipstream of the propeller; side thrust or trim, not ballast."));
        }
    }

    private void twist() {
        answer.moments()
                .twist()
                .ifPresent(twist -> findings.add(Finding.fine(String.format(
                        Locale.ROOT,
                        "The difference of twist pulls %s like %.1f g at the tip at that speed, and would end in about %.0f° of roll a"
                                + " second; both are estimates to a fifth.",
                        twist.value() > 0 ? "right" : "left",
                        1000 * Math.abs(twist.value()) / answer.tip(),
                        Math.abs(Math.toDegrees(answer.moments().rollRate().orElseThrow()))))));
        if (answer.moments().twistDifference().isPresent()
                && answer.moments().twist().isEmpty()) {
            findings.add(Finding.lookAgain("What the twist does needs the shape of the wing and the speed flown."));
        }
    }

    private static String side(Moment moment) {
        return moment.value() > 0 ? "right" : "left";
    }

    private static String mm(double metres) {
        return String.format(Locale.ROOT, "%.0f mm", 1000 * metres);
    }
}
