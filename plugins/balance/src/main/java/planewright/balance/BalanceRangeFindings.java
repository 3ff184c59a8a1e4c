package planewright.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import planewright.api.calculator.Finding;

/** What a builder should know of where the aircraft should balance. */
final class BalanceRangeFindings {
    /** A smaller margin than this is for experts with good radios: common practice, no source. */
    private static final double LEAST_MARGIN = 0.02;

    private static final double ROUGH = 0.01;

    private final BalanceRangeAnswer answer;
    private final List<Finding> findings = new ArrayList<>();

    BalanceRangeFindings(BalanceRangeAnswer answer) {
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
        var now = String.format(
                Locale.ROOT,
                "It balances at %s, a static margin of %.1f %% of the mean chord%s",
                mm(point),
                100 * margin,
                margin > 0 ? "" : ": behind the neutral point");
        double ahead = answer.from() - point;
        double behind = point - answer.to();
        if (margin < LEAST_MARGIN) {
            findings.add(Finding.stop(
                    now + ". Do not fly it like this: it would not hold its attitude. It must come forward by "
                            + mm(behind) + " or more."));
        } else if (behind > 0) {
            findings.add(Finding.lookAgain(now + ", " + mm(behind) + " behind " + range() + ": touchy in pitch."));
        } else if (ahead > 0) {
            findings.add(Finding.lookAgain(now + ", " + mm(ahead) + " ahead of " + range()
                    + ": nose-heavy, needs much up elevator and lands fast."));
        } else {
            findings.add(Finding.fine(now + ", within " + range() + "."));
        }
    }

    private void unknown() {
        findings.add(Finding.lookAgain("No balance point is known to hold against " + range()
                + ". Begin at its nose-heavy end, " + mm(answer.from()) + " aft of the datum."));
    }

    private String range() {
        return String.format(
                Locale.ROOT,
                "the range from %s to %s (%.0f to %.0f %%, %s)",
                mm(answer.from()),
                mm(answer.to()),
                100 * answer.band().margin().from(),
                100 * answer.band().margin().to(),
                answer.band().margin().origin());
    }

    private void bodies() {
        if (answer.inputs().planform().bodies().isEmpty()) {
            findings.add(
                    Finding.lookAgain(
                            "The shape has no fuselage or pod; one that reaches ahead of the wing brings the neutral point forward."));
        }
    }

    private void rough() {
        if (answer.band().surfaces().error() > ROUGH * answer.wing().meanChord()) {
            findings.add(Finding.lookAgain("The lattice did not settle: the neutral point may lie "
                    + mm(answer.band().surfaces().error()) + " off. Surfaces that nearly touch are the usual cause."));
        }
    }

    private static String mm(double metres) {
        return String.format(Locale.ROOT, "%.0f mm", 1000 * metres);
    }
}
