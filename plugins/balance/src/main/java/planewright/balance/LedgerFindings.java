package planewright.balance;

import static planewright.balance.Words.grams;
import static planewright.balance.Words.mm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import planewright.api.calculator.Finding;
import planewright.api.quantity.Units;

/** What a builder should know of a balance. */
final class LedgerFindings {
    /** A balance point this far off the centre line, as a share of the half span, is felt: common practice, no source. */
    private static final double LEAN = 0.01;

    /** As many tolerances behind the target it is no longer safe to try in flight: common practice, no source. */
    private static final double FAR = 5;

    private final LedgerAnswer answer;
    private final MassProperties total;
    private final List<Finding> findings = new ArrayList<>();

    LedgerFindings(LedgerAnswer answer) {
        this.answer = answer;
        this.total = answer.total();
    }

    List<Finding> all() {
        answer.target()
                .ifPresentOrElse(
                        this::target,
                        () -> findings.add(Finding.lookAgain(
                                "No target is given, so nothing says whether this balance is right.")));
        outside();
        uncounted();
        doubt();
        sideways();
        return List.copyOf(findings);
    }

    private void target(double target) {
        double off = total.balance().x().value() - target;
        double tolerance = answer.inputs().tolerance().in(Units.METRE);
        var where = Words.isNone(off)
                ? "The balance point is at the target"
                : "The balance point is " + mm(Math.abs(off)) + (off > 0 ? " behind" : " ahead of") + " the target";
        if (Math.abs(off) <= tolerance) {
            findings.add(Finding.fine(where + ", within the tolerance of " + mm(tolerance) + "."));
        } else if (off > FAR * tolerance) {
            findings.add(Finding.stop(where + ", so it is far too tail-heavy. Do not fly it like this: it may not be"
                    + " controllable. " + remedy(target)));
        } else {
            findings.add(Finding.lookAgain(
                    where + ", so it is " + (off > 0 ? "tail" : "nose") + "-heavy. " + remedy(target)));
        }
    }

    /** The move that needs the shortest way and stays inside, among the parts that may move. */
    private String remedy(double target) {
        return answer.whatIf(target).stream()
                .filter(line -> answer.mayMove(line.part()))
                .filter(line -> !line.inside().equals("no"))
                .findFirst()
                .map(line -> {
                    double move = line.move().in(Units.METRE);
                    return "Moving '" + line.part() + "' " + mm(Math.abs(move)) + (move > 0 ? " aft" : " forward")
                            + " would bring it there.";
                })
                .orElseGet(() -> answer.inputs()
                        .mayMove()
                        .filter(name -> !name.isBlank())
                        .map(name -> "Moving '" + name.strip() + "' alone would take it out of the aircraft;"
                                + " ballast or other moves are needed.")
                        .orElse("No part alone can be moved far enough; ballast or several moves are needed."));
    }

    private void outside() {
        if (!answer.inside(total.balance().x().value()).orElse(true)) {
            findings.add(
                    Finding.stop(
                            "The balance point is " + mm(total.balance().x().value())
                                    + " aft of the datum, which is outside the aircraft: a station, a unit or the datum must be wrong."));
        }
    }

    private void uncounted() {
        var left = answer.inputs().parts().stream()
                .filter(line -> line.mass().isEmpty() || line.x().isEmpty())
                .map(line -> "'" + line.name() + "' (no " + (line.mass().isEmpty() ? "mass" : "station") + ")")
                .collect(Collectors.joining(", "));
        if (!left.isEmpty()) {
            findings.add(Finding.lookAgain("Not counted: " + left + "."));
        }
        long exact = answer.parts().stream()
                .filter(part -> part.line().mass().orElseThrow().plusMinus().isEmpty())
                .count();
        if (exact > 0) {
            findings.add(Finding.lookAgain(exact + " of " + answer.parts().size()
                    + " masses carry no ± and count as exact, so the ± of the balance point is too small."));
        }
    }

    private void doubt() {
        double spread = total.balance().x().spread();
        double tolerance = answer.inputs().tolerance().in(Units.METRE);
        if (spread > tolerance) {
            var worst = answer.parts().stream()
                    .max(Comparator.comparingDouble(part -> total.varianceShare(part.point())))
                    .orElseThrow();
            findings.add(Finding.lookAgain(String.format(
                    Locale.ROOT,
                    "The balance point is only known to ± %s. Weigh or measure '%s' again: it brings %.0f %% of the doubt.",
                    mm(spread),
                    worst.name(),
                    100 * total.varianceShare(worst.point()))));
        }
    }

    private void sideways() {
        double off = total.balance().y().value() - answer.targetY();
        double tolerance = answer.inputs().tolerance().in(Units.METRE);
        boolean asked = answer.inputs().targetY().isPresent();
        if (asked && Math.abs(off) <= tolerance) {
            findings.add(
                    Finding.fine("Sideways it is " + mm(Math.abs(off)) + " off the target, within the tolerance."));
            return;
        }
        double half = LedgerFigures.halfSpan(answer);
        boolean felt = Math.abs(off) > 2 * total.balance().y().spread() && Math.abs(off) > LEAN * half;
        if (asked || half > 0 && felt) {
            findings.add(Finding.lookAgain("It leans to the " + (off > 0 ? "right" : "left")
                    + level(off, half + Math.signum(off) * answer.targetY())));
        }
    }

    /** What would level it at an arm from the target, m; a target beyond the tip has none. */
    private String level(double off, double arm) {
        return arm > 0
                ? ": " + grams(total.mass().value() * Math.abs(off) / arm) + " at the other tip would level it."
                : ": it balances " + mm(Math.abs(off)) + " beside the target.";
    }
}
