package planewright.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import planewright.api.calculator.Finding;
import planewright.api.quantity.Units;

/** What a builder should know of a balance. */
final class LedgerFindings {
    /** A balance point this far off the centre line, as a share of the half span, is felt: common practice, no source. */
    private static final double LEAN = 0.01;

    /** As many tolerances behind the target it is no longer safe to try in flight: common practice, no source. */
    private static final double FAR = 5;

    private final Words words;
    private final LedgerAnswer answer;
    private final MassProperties total;
    private final List<Finding> findings = new ArrayList<>();

    LedgerFindings(LedgerAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
        this.total = answer.total();
    }

    List<Finding> all() {
        answer.target().ifPresentOrElse(this::target, () -> {
            if (!answer.hasRange()) {
                findings.add(Finding.lookAgain(
                        words.say("No target is given, so nothing says whether this balance is right.")));
            }
        });
        if (answer.hasRange()) {
            range(
                    answer.inputs().rangeFrom().orElseThrow().in(Units.METRE),
                    answer.inputs().rangeTo().orElseThrow().in(Units.METRE));
        }
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
                ? words.say("The balance point is at the target")
                : off > 0
                        ? words.say("The balance point is {0} behind the target", words.mm(Math.abs(off)))
                        : words.say("The balance point is {0} ahead of the target", words.mm(Math.abs(off)));
        if (Math.abs(off) <= tolerance) {
            findings.add(Finding.fine(words.say("{0}, within the tolerance of {1}.", where, words.mm(tolerance))));
        } else if (off > FAR * tolerance) {
            findings.add(Finding.stop(words.say(
                    "{0}, so it is far too tail-heavy. Do not fly it like this: it may not be " + "controllable. {1}",
                    where, remedy(target))));
        } else {
            findings.add(Finding.lookAgain(
                    off > 0
                            ? words.say("{0}, so it is tail-heavy. {1}", where, remedy(target))
                            : words.say("{0}, so it is nose-heavy. {1}", where, remedy(target))));
        }
    }

    private void range(double from, double to) {
        double x = total.balance().x().value();
        var range = words.say("the balance range of its shape, {0} to {1}", words.mm(from), words.mm(to));
        if (x > to) {
            findings.add(Finding.lookAgain(
                    words.say("It balances {0} behind {1}: touchy in pitch.", words.mm(x - to), range)));
        } else if (x < from) {
            findings.add(Finding.lookAgain(
                    words.say("It balances {0} ahead of {1}: nose-heavy.", words.mm(from - x), range)));
        } else {
            findings.add(Finding.fine(words.say("It balances within {0}.", range)));
        }
    }

    /** The move that needs the shortest way and stays inside, among the parts that may move. */
    private String remedy(double target) {
        return answer.whatIf(target).stream()
                .filter(line -> answer.mayMove(line.part()))
                .filter(line -> answer.inside(line.station().in(Units.METRE)).orElse(true))
                .findFirst()
                .map(line -> {
                    double move = line.move().in(Units.METRE);
                    return move > 0
                            ? words.say(
                                    "Moving '{0}' {1} aft would bring it there.", line.part(), words.mm(Math.abs(move)))
                            : words.say(
                                    "Moving '{0}' {1} forward would bring it there.",
                                    line.part(), words.mm(Math.abs(move)));
                })
                .orElseGet(() -> answer.inputs()
                        .mayMove()
                        .filter(name -> !name.isBlank())
                        .map(name -> words.say(
                                "Moving '{0}' alone would take it out of the aircraft; ballast or other moves are "
                                        + "needed.",
                                name.strip()))
                        .orElse(words.say(
                                "No part alone can be moved far enough; ballast or several moves are needed.")));
    }

    private void outside() {
        if (!answer.inside(total.balance().x().value()).orElse(true)) {
            findings.add(Finding.stop(words.say(
                    "The balance point is {0} aft of the datum, which is outside the aircraft: a "
                            + "station, a unit or the datum must be wrong.",
                    words.mm(total.balance().x().value()))));
        }
    }

    private void uncounted() {
        var left = answer.inputs().parts().stream()
                .filter(line -> line.mass().isEmpty() || line.x().isEmpty())
                .map(line -> line.mass().isEmpty()
                        ? words.say("'{0}' (no mass)", line.name())
                        : words.say("'{0}' (no station)", line.name()))
                .collect(Collectors.joining(", "));
        if (!left.isEmpty()) {
            findings.add(Finding.lookAgain(words.say("Not counted: {0}.", left)));
        }
        long exact = answer.parts().stream()
                .filter(part -> part.line().mass().orElseThrow().plusMinus().isEmpty())
                .count();
        if (exact > 0) {
            findings.add(Finding.lookAgain(words.say(
                    "{0} of {1} masses carry no ± and count as exact, so the ± of the balance point " + "is too small.",
                    exact, answer.parts().size())));
        }
    }

    private void doubt() {
        double spread = total.balance().x().spread();
        double tolerance = answer.inputs().tolerance().in(Units.METRE);
        if (spread > tolerance) {
            var worst = answer.parts().stream()
                    .max(Comparator.comparingDouble(part -> total.varianceShare(part.point())))
                    .orElseThrow();
            findings.add(Finding.lookAgain(words.say(
                    "The balance point is only known to ± {0}. Weigh or measure '{1}' again: it brings {2} of the doubt.",
                    words.mm(spread), worst.name(), words.percent(total.varianceShare(worst.point()), 0))));
        }
    }

    private void sideways() {
        double off = total.balance().y().value() - answer.targetY();
        double tolerance = answer.inputs().tolerance().in(Units.METRE);
        boolean asked = answer.inputs().targetY().isPresent();
        if (asked && Math.abs(off) <= tolerance) {
            findings.add(Finding.fine(
                    words.say("Sideways it is {0} off the target, within the tolerance.", words.mm(Math.abs(off)))));
            return;
        }
        double half = LedgerFigures.halfSpan(answer);
        boolean felt = Math.abs(off) > 2 * total.balance().y().spread() && Math.abs(off) > LEAN * half;
        if (asked || half > 0 && felt) {
            findings.add(Finding.lookAgain(
                    off > 0
                            ? words.say(
                                    "It leans to the right{0}", level(off, half + Math.signum(off) * answer.targetY()))
                            : words.say(
                                    "It leans to the left{0}",
                                    level(off, half + Math.signum(off) * answer.targetY()))));
        }
    }

    /** What would level it at an arm from the target, m; a target beyond the tip has none. */
    private String level(double off, double arm) {
        return arm > 0
                ? words.say(
                        ": {0} at the other tip would level it.",
                        words.grams(total.mass().value() * Math.abs(off) / arm))
                : words.say(": it balances {0} beside the target.", words.mm(Math.abs(off)));
    }
}
