package planewright.balance;

import java.util.ArrayList;
import java.util.List;
import planewright.api.calculator.Finding;
import planewright.api.quantity.Units;

/** What a builder should know of a weighing. */
final class WeighingFindings {
    /** Rounds that differ by more than twice what their ± promise: common practice, no source. */
    private static final double DISAGREE = 2;

    /** A difference of more than two standard uncertainties: JCGM 100:2008, 6.2 and 6.3.3, coverage factor 2. */
    private static final double COVERAGE = 2;

    /** A support that carries less than this hardly holds the aircraft down: common practice, no source. */
    private static final double LEAST_SHARE = 2;

    private final Words words;
    private final WeighingAnswer answer;
    private final List<Finding> findings = new ArrayList<>();

    WeighingFindings(WeighingAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
    }

    List<Finding> all() {
        rounds();
        knownMass();
        target();
        lightSupports();
        manySupports();
        if (answer.inputs().supports().stream()
                .anyMatch(line -> line.reading().plusMinus().isEmpty())) {
            findings.add(Finding.lookAgain(
                    words.say("Some readings carry no ± and count as exact; put in half the scale's last step "
                            + "or what repeats show.")));
        }
        return List.copyOf(findings);
    }

    private void rounds() {
        if (answer.outcomes().size() < 2) {
            return;
        }
        var worst = words.mm(answer.x().worstResidual());
        findings.add(answer.agreement()
                .map(ratio -> ratio > DISAGREE
                        ? Finding.lookAgain(words.say(
                                "The rounds differ {0} times as much as their ± allow: something moved, or a ± is too small.",
                                words.number(ratio, 1)))
                        : Finding.fine(words.say("The rounds agree; the worst lies {0} off the value taken.", worst)))
                .orElseGet(() -> Finding.lookAgain(words.say(
                        "The worst round lies {0} off the value taken; without a ± on the readings "
                                + "nothing says whether that is much.",
                        worst))));
    }

    private void manySupports() {
        if (answer.rounds().values().stream().anyMatch(lines -> lines.size() > 3)) {
            findings.add(
                    Finding.fine(words.say("With more than three supports the share of each depends on how evenly they "
                            + "stand; mass and balance point come from all of them together and are right all "
                            + "the same.")));
        }
    }

    private void knownMass() {
        answer.inputs().knownMass().ifPresent(known -> {
            var sum = answer.mass();
            double off = sum.value() - known.in(Units.KILOGRAM);
            double doubt = Math.hypot(sum.spread(), known.spreadIn(Units.KILOGRAM));
            if (Words.isNone(off)) {
                findings.add(Finding.fine(words.say("The supports carry the mass known otherwise.")));
                return;
            }
            var text = off < 0
                    ? words.say("The supports carry {0} less than the mass known otherwise", words.grams(Math.abs(off)))
                    : words.say(
                            "The supports carry {0} more than the mass known otherwise", words.grams(Math.abs(off)));
            findings.add(
                    Math.abs(off) <= COVERAGE * doubt
                            ? Finding.fine(words.say("{0}, within what the ± allow.", text))
                            : Finding.lookAgain(words.say(
                                    "{0}, more than the ± allow: is a scale off, a tare forgotten, a part missing?",
                                    text)));
        });
    }

    private void target() {
        answer.inputs().targetX().ifPresent(target -> {
            double off = answer.x().value() - target.in(Units.METRE);
            double doubt = Math.hypot(answer.x().spread(), target.spreadIn(Units.METRE));
            if (Words.isNone(off)) {
                findings.add(Finding.fine(words.say("It balances at the target.")));
                return;
            }
            var text = off > 0
                    ? words.say("It balances {0} behind the target", words.mm(Math.abs(off)))
                    : words.say("It balances {0} ahead of the target", words.mm(Math.abs(off)));
            findings.add(
                    Math.abs(off) <= COVERAGE * doubt
                            ? Finding.fine(words.say("{0}, which the ± cannot tell from none.", text))
                            : Finding.lookAgain(words.say("{0}.", text)));
        });
    }

    private void lightSupports() {
        for (var load : answer.loads()) {
            if (load.share().in(Units.PERCENT) < LEAST_SHARE) {
                findings.add(Finding.lookAgain(words.say(
                        "'{0}' carries next to nothing; it may lift off. Move it so that it carries some "
                                + "of the mass.",
                        load.name())));
            }
        }
    }
}
