package planewright.throws_;

import static planewright.api.quantity.Units.DEGREE;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.PERCENT;
import static planewright.api.quantity.Units.RADIAN;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import planewright.api.calculator.Finding;

/** What a builder should know of throws. */
final class TravelFindings {
    /** Ways of measuring that differ by more than a ruler shows: common practice, no source. In metres. */
    private static final double SEEN = 0.5e-3;

    /** Surfaces that go farther mostly brake: common practice, no source. In degrees. */
    private static final double FAR = 45;

    /** So much expo leaves little stick at the ends: common practice, no source. */
    private static final double MUCH = 0.6;

    private final Words words;
    private final TravelAnswer answer;
    private final List<Finding> findings = new ArrayList<>();

    TravelFindings(TravelAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
    }

    List<Finding> all() {
        unknown();
        ways();
        far();
        pairs();
        rates();
        return List.copyOf(findings);
    }

    private void unknown() {
        for (var travel : answer.travels()) {
            if (travel.chord().isEmpty()) {
                findings.add(Finding.lookAgain(words.say(
                        travel.line().angle().isPresent()
                                ? "'{0}' has no distance without its chord: measure from the hinge line to the"
                                        + " trailing edge, where the ruler stands."
                                : "'{0}' has no degrees without its chord: measure from the hinge line to the"
                                        + " trailing edge, where the ruler stands.",
                        travel.name())));
            }
        }
    }

    /** The throw on which the ways of measuring differ most. */
    private void ways() {
        var full = answer.inputs().highRate();
        double most = 0;
        var text = "";
        for (var travel : answer.travels()) {
            var square = travel.distance(full, Ruler.SQUARE).map(length -> length.in(METRE));
            var arc = travel.distance(full, Ruler.ARC).map(length -> length.in(METRE));
            if (arc.isPresent() && arc.get() - square.orElseThrow() > most) {
                most = arc.get() - square.orElseThrow();
                text = words.say(
                        "'{0}' is {1} square to neutral and {2} along the arc",
                        travel.name(), words.mm(square.orElseThrow()), words.mm(arc.get()));
            }
        }
        if (most > SEEN) {
            findings.add(Finding.lookAgain(words.say("{0}: say with a throw how it was measured.", text)));
        } else if (!text.isEmpty()) {
            findings.add(
                    Finding.fine(words.say("How the distance is measured makes less difference than a ruler shows.")));
        }
    }

    private void far() {
        for (var travel : answer.travels()) {
            travel.angle(answer.inputs().highRate())
                    .filter(angle -> angle.in(DEGREE) > FAR)
                    .ifPresent(angle -> findings.add(Finding.lookAgain(words.say(
                            "'{0}' goes {1}: so far a surface mostly brakes; is the chord right?",
                            travel.name(), words.degrees(angle.in(RADIAN))))));
        }
    }

    /** Up and down of one surface. */
    private void pairs() {
        for (var travel : answer.travels()) {
            var name = travel.name().toLowerCase(Locale.ROOT);
            if (name.endsWith(" up")) {
                other(name.substring(0, name.length() - 3) + " down").ifPresent(down -> differential(travel, down));
            }
        }
    }

    private Optional<Travel> other(String name) {
        return answer.travels().stream()
                .filter(travel -> travel.name().equalsIgnoreCase(name))
                .findFirst();
    }

    private void differential(Travel up, Travel down) {
        if (up.angle().isPresent()
                && down.angle().isPresent()
                && up.angle().get().in(DEGREE) > 0) {
            double share = 1 - down.angle().get().in(DEGREE) / up.angle().get().in(DEGREE);
            findings.add(
                    Finding.fine(words.say("'{0}' and down: a differential of {1}.", up.name(), words.percent(share))));
        }
    }

    private void rates() {
        if (answer.inputs().lowRate().in(PERCENT) >= answer.inputs().highRate().in(PERCENT)) {
            findings.add(Finding.lookAgain(words.say("Low rate is no lower than high rate.")));
        }
        double expo = answer.inputs().expo().in(NUMBER);
        if (expo > MUCH) {
            findings.add(Finding.lookAgain(words.say(
                    "With {0} of expo next to nothing happens about neutral and much at the ends: "
                            + "less throw is calmer.",
                    words.percent(expo))));
        } else if (expo < 0) {
            findings.add(Finding.lookAgain(
                    words.say("Negative expo makes it nervous about neutral; some transmitters call softer "
                            + "negative: look which way yours goes.")));
        }
    }
}
