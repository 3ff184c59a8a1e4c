package planewright.balance;

import java.util.ArrayList;
import java.util.List;
import planewright.api.calculator.Finding;

/** What a builder should know of where the aircraft should balance. */
final class BalanceRangeFindings {
    /** A smaller margin than this is for experts with good radios: common practice, no source. */
    private static final double LEAST_MARGIN = 0.02;

    private static final double ROUGH = 0.01;

    private final Words words;
    private final BalanceRangeAnswer answer;
    private final List<Finding> findings = new ArrayList<>();

    BalanceRangeFindings(BalanceRangeAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
    }

    List<Finding> all() {
        answer.margin().ifPresentOrElse(this::margin, this::unknown);
        findings.addAll(new TrimFindings(answer).all());
        bodies();
        rough();
        return List.copyOf(findings);
    }

    private void margin(double margin) {
        double point = answer.balancePoint().orElseThrow();
        var now = words.say(
                margin > 0
                        ? "It balances at {0}, a static margin of {1} of the mean chord"
                        : "It balances at {0}, a static margin of {1} of the mean chord: behind the neutral point",
                mm(point),
                words.percent(margin, 1));
        double ahead = answer.from() - point;
        double behind = point - answer.to();
        if (margin < LEAST_MARGIN) {
            findings.add(Finding.stop(words.say(
                    "{0}. Do not fly it like this: it would not hold its attitude. It must come "
                            + "forward by {1} or more.",
                    now, mm(behind))));
        } else if (behind > 0) {
            findings.add(
                    Finding.lookAgain(words.say("{0}, {1} behind {2}: touchy in pitch.", now, mm(behind), range())));
        } else if (ahead > 0) {
            findings.add(Finding.lookAgain(words.say(
                    "{0}, {1} ahead of {2}: nose-heavy, needs much up elevator and lands fast.",
                    now, mm(ahead), range())));
        } else {
            findings.add(Finding.fine(words.say("{0}, within {1}.", now, range())));
        }
    }

    private void unknown() {
        findings.add(Finding.lookAgain(words.say(
                "No balance point is known to hold against {0}. Begin at its nose-heavy end, {1} "
                        + "aft of the datum.",
                range(), mm(answer.from()))));
    }

    private String range() {
        return words.say(
                "the range from {0} to {1} ({2} to {3}, {4})",
                mm(answer.from()),
                mm(answer.to()),
                words.number(100 * answer.band().margin().from(), 0),
                words.percent(answer.band().margin().to(), 0),
                words.say(answer.band().margin().origin()));
    }

    private void bodies() {
        if (answer.inputs().planform().bodies().isEmpty()) {
            findings.add(Finding.lookAgain(
                    words.say("The shape has no fuselage or pod; one that reaches ahead of the wing brings the "
                            + "neutral point forward.")));
        }
    }

    private void rough() {
        if (answer.band().surfaces().error() > ROUGH * answer.wing().meanChord()) {
            findings.add(Finding.lookAgain(words.say(
                    "The lattice did not settle: the neutral point may lie {0} off. Surfaces that "
                            + "nearly touch are the usual cause.",
                    mm(answer.band().surfaces().error()))));
        }
    }

    private String mm(double metres) {
        return words.mm(metres, 0);
    }
}
