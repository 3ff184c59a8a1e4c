package planewright.balance;

import static planewright.balance.Words.grams;
import static planewright.balance.Words.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

    private final WeighingAnswer answer;
    private final List<Finding> findings = new ArrayList<>();

    WeighingFindings(WeighingAnswer answer) {
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
            findings.add(
                    Finding.lookAgain(
                            "Some readings carry no ± and count as exact; put in half the scale's last step or what repeats show."));
        }
        return List.copyOf(findings);
    }

    private void rounds() {
        if (answer.outcomes().size() < 2) {
            return;
        }
        var worst = mm(answer.x().worstResidual());
        findings.add(answer.agreement()
                .map(ratio -> ratio > DISAGREE
                        ? Finding.lookAgain(String.format(
                                Locale.ROOT,
                                "The rounds differ %.1f times as much as their ± allow: something moved, or a ± is too small.",
                                ratio))
                        : Finding.fine("The rounds agree; the worst lies " + worst + " off the value taken."))
                .orElseGet(() -> Finding.lookAgain("The worst round lies " + worst
                        + " off the value taken; without a ± on the readings nothing says whether that is much.")));
    }

    private void manySupports() {
        if (answer.rounds().values().stream().anyMatch(lines -> lines.size() > 3)) {
            findings.add(
                    Finding.fine("With more than three supports the share of each depends on how evenly they stand;"
                            + " mass and balance point come from all of them together and are right all the same."));
        }
    }

    private void knownMass() {
        answer.inputs().knownMass().ifPresent(known -> {
            var sum = answer.mass();
            double off = sum.value() - known.in(Units.KILOGRAM);
            double doubt = Math.hypot(sum.spread(), known.spreadIn(Units.KILOGRAM));
            if (Words.isNone(off)) {
                findings.add(Finding.fine("The supports carry the mass known otherwise."));
                return;
            }
            var text = "The supports carry " + grams(Math.abs(off)) + (off < 0 ? " less" : " more")
                    + " than the mass known otherwise";
            findings.add(
                    Math.abs(off) <= COVERAGE * doubt
                            ? Finding.fine(text + ", within what the ± allow.")
                            : Finding.lookAgain(text
                                    + ", more than the ± allow: is a scale off, a tare forgotten, a part missing?"));
        });
    }

    private void target() {
        answer.inputs().targetX().ifPresent(target -> {
            double off = answer.x().value() - target.in(Units.METRE);
            double doubt = Math.hypot(answer.x().spread(), target.spreadIn(Units.METRE));
            if (Words.isNone(off)) {
                findings.add(Finding.fine("It balances at the target."));
                return;
            }
            var text = "It balances " + mm(Math.abs(off)) + (off > 0 ? " behind" : " ahead of") + " the target";
            findings.add(
                    Math.abs(off) <= COVERAGE * doubt
                            ? Finding.fine(text + ", which the ± cannot tell from none.")
                            : Finding.lookAgain(text + "."));
        });
    }

    private void lightSupports() {
        for (var load : answer.loads()) {
            if (load.share().in(Units.PERCENT) < LEAST_SHARE) {
                findings.add(Finding.lookAgain("'" + load.name()
                        + "' carries next to nothing; it may lift off. Move it so that it carries some of the mass."));
            }
        }
    }
}
