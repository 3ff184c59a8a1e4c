package planewright.balance;

import java.util.ArrayList;
import java.util.List;
import planewright.api.calculator.Finding;
import planewright.balance.LeanMoments.Moment;

/** What a builder should make of a lean. */
final class LeanFindings {
    /** A balance point this far off the centre line, as a share of the half span, is felt: common practice, no source. */
    private static final double FELT = 0.01;

    private final Words words;
    private final LeanAnswer answer;
    private final List<Lean.CauseLine> causes;
    private final List<Finding> findings = new ArrayList<>();

    LeanFindings(LeanAnswer answer, List<Lean.CauseLine> causes) {
        this.words = answer.words();
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
        var from = answer.wasSeen()
                ? words.say("By {0}", lean.name())
                : words.say("By its parts alone, as nothing was seen on the bench,");
        if (!answer.leans()) {
            findings.add(Finding.fine(
                    words.say("{0} it is level as far as can be told: what is left is within the ±.", from)));
            return;
        }
        var heavy = side(lean);
        var text = words.say(
                "{0} the {1} wing is heavy, like {2} at the tip. As much on the other tip, {3} out, levels it.",
                from, heavy, words.show(answer.levelMass()), mm(answer.tip()));
        boolean felt = answer.moments()
                .mass()
                .map(mass -> Math.abs(lean.value()) / mass.value() > FELT * answer.tip())
                .orElse(false);
        findings.add(
                felt ? Finding.lookAgain(words.say("{0} That much is felt in flight.", text)) : Finding.fine(text));
    }

    /** Whether what was seen in several ways says the same. */
    private void agreement() {
        for (var other : answer.moments().seen()) {
            double off = Math.abs(other.value() - answer.lean().value());
            double doubt = Math.hypot(other.spread(), answer.lean().spread());
            if (off > LeanAnswer.COVER * doubt
                    && off > 0.1 * Math.abs(answer.lean().value())) {
                findings.add(Finding.lookAgain(words.say(
                        "By {0} it would be {1}, by {2} {3}: one of them was not read right.",
                        other.name(),
                        words.show(LeanAnswer.moment(other)),
                        answer.lean().name(),
                        words.show(LeanAnswer.moment(answer.lean())))));
            }
        }
    }

    private void parts() {
        var explaining = answer.moments().parts().stream()
                .filter(answer::explains)
                .map(Moment::name)
                .toList();
        causes.stream()
                .filter(cause -> explaining.contains(cause.cause()))
                .findFirst()
                .ifPresent(cause -> findings.add(Finding.fine(
                        cause.moment().value().getValue().doubleValue() > 0
                                ? words.say(
                                        "'{0}' {1}: it pulls right like {2} at the tip.",
                                        cause.cause(), cause.verdict(), words.show(cause.atTip()))
                                : words.say(
                                        "'{0}' {1}: it pulls left like {2} at the tip.",
                                        cause.cause(), cause.verdict(), words.show(cause.atTip())))));
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
                        ? Finding.fine(
                                answer.byParts().spread()
                                                > Math.abs(answer.lean().value()) / 2
                                        ? words.say(
                                                "The weighed parts account for it: they add up to {0}. Their ± is so large that "
                                                        + "they would account for much else as well: their stations y and masses deserve a "
                                                        + "finer measure.",
                                                words.show(LeanAnswer.moment(answer.byParts())))
                                        : words.say(
                                                "The weighed parts account for it: they add up to {0}.",
                                                words.show(LeanAnswer.moment(answer.byParts()))))
                        : Finding.lookAgain(words.say(
                                "The weighed parts do not account for it: {0} to the {1} is left. Look at glue, "
                                        + "paint, covering, and at where leads and servos really sit.",
                                words.show(LeanAnswer.moment(
                                        new Moment(left.name(), Math.abs(left.value()), left.spread()))),
                                side(left))));
    }

    private void suspects() {
        for (var line : inputs().suspects()) {
            if (line.volume().isEmpty() || line.densityFrom().isEmpty()) {
                findings.add(Finding.fine(words.say(
                        "Of '{0}' only the difference in mass is told; volume and densities would say "
                                + "whether it is plausible.",
                        line.name())));
            }
        }
    }

    /** Which kind of cause fits what it did in flight. */
    private void flight() {
        boolean right = inputs().flight() == Lean.InFlight.ROLLS_RIGHT;
        boolean leans = answer.leans();
        boolean same = leans && answer.lean().value() > 0 == right;
        switch (inputs().flight()) {
            case NOT_FLOWN -> {}
            case LEVEL ->
                findings.add(
                        leans && answer.wasSeen()
                                ? Finding.lookAgain(
                                        words.say(
                                                "It leans on the bench and flies level: twist or an unequal half holds it up at "
                                                        + "that speed. It will drop the heavy wing when slow; level it on the bench first."))
                                : Finding.fine(words.say("It flies level, so nothing needs doing.")));
            case ROLLS_LEFT, ROLLS_RIGHT -> findings.add(same ? heavySide() : Finding.lookAgain(notHeavy(right)));
        }
        if (inputs().flight() == Lean.InFlight.ROLLS_LEFT || right) {
            when();
        }
    }

    private Finding heavySide() {
        boolean mass = inputs().when() == Lean.When.NOT_KNOWN || inputs().when() == Lean.When.AT_ALL_SPEEDS;
        return mass
                ? Finding.fine(
                        words.say("It rolls to the side that is heavy on the bench: mass fits. Level it, then fly "
                                + "again before anything is bent."))
                : Finding.lookAgain(words.say(
                        "It rolls to the side that is heavy on the bench, yet not alike at all speeds: mass is not all "
                                + "of it. Level it first, then fly again and look at what is left."));
    }

    private String notHeavy(boolean right) {
        var look = words.say("look at twist, spans, hinge lines and trims, not at ballast.");
        var side = words.say(right ? "right" : "left");
        return answer.wasSeen()
                ? words.say("It rolls to the {0}, and the bench does not show that wing heavy: {1}", side, look)
                : words.say("It rolls to the {0}, and the ledger does not show that wing heavy: {1}", side, look);
    }

    private void when() {
        switch (inputs().when()) {
            case NOT_KNOWN ->
                findings.add(Finding.lookAgain(
                        words.say("Fly it slow and fast, with and without power: mass and unequal halves roll it "
                                + "alike at all speeds, twist grows with the square of the speed, torque goes with "
                                + "the power.")));
            case AT_ALL_SPEEDS ->
                findings.add(Finding.fine(words.say("Alike at all speeds: mass or unequal halves, not twist.")));
            case MORE_WHEN_FAST ->
                findings.add(Finding.fine(words.say("More when fast: twist or a control surface, not mass.")));
            case ONLY_UNDER_POWER ->
                findings.add(Finding.fine(
                        words.say("Only under power: torque and slipstream of the propeller; side thrust or trim, "
                                + "not ballast.")));
        }
    }

    private void twist() {
        answer.moments()
                .twist()
                .ifPresent(twist -> findings.add(Finding.fine(words.say(
                        "The difference of twist pulls to the {0} like {1} at the tip at that speed, and would end in about {2} of"
                                + " roll a second; both are estimates to a tenth.",
                        side(twist),
                        words.grams(Math.abs(twist.value()) / answer.tip()),
                        words.degrees(Math.abs(answer.moments().rollRate().orElseThrow()), 0)))));
        if (answer.moments().twistDifference().isPresent()
                && answer.moments().twist().isEmpty()) {
            findings.add(Finding.lookAgain(
                    words.say("What the twist does needs the shape of the wing and the speed flown.")));
        }
    }

    private String side(Moment moment) {
        return moment.value() > 0 ? words.say("right") : words.say("left");
    }

    private String mm(double metres) {
        return words.mm(metres, 0);
    }
}
