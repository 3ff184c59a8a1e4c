package planewright.balance;

import java.util.ArrayList;
import java.util.List;
import planewright.api.calculator.Finding;
import planewright.api.journal.Planform.Surface;
import planewright.shared.planform.Outlines;
import planewright.shared.planform.SurfaceGeometry;
import planewright.shared.planform.SurfaceGeometry.View;

/** What a builder should know of trim at a speed, and of where a stall begins. */
final class TrimFindings {
    /** Greater trim angles than this are beyond straight lines, and leave a hinge little to steer with: common practice. */
    private static final double MOST_TRIM = Math.toRadians(10);

    /** The slowest flight that leaves room for gusts and turns, in stall speeds: common practice of landing approaches. */
    private static final double SAFE = 1.2;

    /** A tip with less reserve than this may as well stall first. */
    private static final double LEAST_RESERVE = 0.03;

    /** How far the root reaches, as a share of the way to the tip. */
    private static final double ROOT = 0.05;

    /** A smaller moment than this, as a coefficient, is felt by nobody. */
    private static final double NO_MOMENT = 0.002;

    /** A surface of less than this share of the wing is no canard. */
    private static final double SMALL = 0.02;

    private final Words words;
    private final BalanceRangeAnswer answer;
    private final LevelFlight level;
    private final List<Surface> surfaces;
    private final List<Finding> findings = new ArrayList<>();

    TrimFindings(BalanceRangeAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
        this.level = answer.level();
        this.surfaces = answer.inputs().planform().surfaces();
    }

    List<Finding> all() {
        level.lift().ifPresent(this::speed);
        stall();
        return findings;
    }

    private void speed(double lift) {
        double speed = level.speed().orElseThrow();
        var at = words.say("At {0} it needs a lift coefficient of {1}", words.speed(speed), words.number(lift, 2));
        var stall = level.stallSpeed();
        if (stall.isPresent() && speed < stall.get()) {
            findings.add(Finding.stop(words.say("{0}, but it stalls below {1}.", at, words.speed(stall.get()))));
            return;
        }
        if (stall.isEmpty() || level.state().isEmpty()) {
            findings.add(Finding.lookAgain(words.say(
                    "{0}, at angles of wing or control surface beyond what is told here. Look at "
                            + "speed, settings and where it balances.",
                    at)));
            return;
        }
        double slowest = stall.get();
        var margin = words.say("{0}, {1} above its stall speed", at, words.percent(speed / slowest - 1, 0));
        findings.add(
                speed < SAFE * slowest
                        ? Finding.lookAgain(words.say("{0}: little room for a gust or a turn.", margin))
                        : Finding.fine(words.say("{0}.", margin)));
        level.trimAngle().ifPresentOrElse(this::trim, this::untrimmed);
    }

    private void trim(double angle) {
        var name = answer.rigging().trimming().orElseThrow().name();
        var text = words.say(
                angle > 0 ? "It flies level with {0} down of '{1}'" : "It flies level with {0} up of '{1}'",
                words.degrees(Math.abs(angle)),
                name);
        findings.add(
                Math.abs(angle) > MOST_TRIM
                        ? Finding.lookAgain(words.say(
                                "{0}: that leaves little to steer with. Look at where it balances, and at how "
                                        + "wing and tail are set.",
                                text))
                        : Finding.fine(words.say("{0}.", text)));
    }

    private void untrimmed() {
        double left = level.momentLeft();
        if (Math.abs(left) < NO_MOMENT) {
            findings.add(Finding.fine(words.say("It is in trim with its controls neutral.")));
            return;
        }
        var turns = left > 0 ? words.say("up") : words.say("down");
        findings.add(Finding.lookAgain(
                answer.rigging().trimming().isPresent()
                        ? words.say(
                                "'{0}' hardly pitches it: the nose is turned {1} and nothing holds it.",
                                answer.rigging().trimming().orElseThrow().name(), turns)
                        : words.say(
                                "With its controls neutral the nose is turned {0}. Give an elevator or elevon to "
                                        + "see the angle that trims it.",
                                turns)));
    }

    private void stall() {
        var stall = answer.stall();
        var first = surfaces.get(stall.surface());
        var text = words.say(
                answer.rigging().section(stall.surface()).given()
                        ? "Slowed down, '{0}' stalls first, {1} (lift coefficient of the whole {2})"
                        : "Slowed down, '{0}' stalls first, {1} (lift coefficient of the whole {2}, its section taken to bear"
                                + " 1.0 ± 0.15)",
                first.name(),
                where(stall.along()),
                words.number(stall.lift(), 2));
        var wings = SurfaceGeometry.wings(answer.inputs().planform());
        var canard = canard(wings);
        if (!wings.contains(first)) {
            findings.add(
                    canard.contains(first)
                            ? Finding.fine(words.say("{0}: ahead of the wing, so the nose drops by itself.", text))
                            : Finding.lookAgain(words.say(
                                    "{0}: behind the wing, so the nose may rise into a deeper stall.", text)));
        } else if (!canard.isEmpty()) {
            ahead(text, canard.get(0));
        } else if (stall.tipReserve() < 0) {
            findings.add(Finding.lookAgain(words.say(
                    "{0}: the tip, so it may drop a wing. Washout moves it inwards; keep speed in turns.", text)));
        } else if (stall.tipReserve() < LEAST_RESERVE) {
            findings.add(Finding.lookAgain(words.say(
                    "{0}, but the tip bears only {1} more. Keep speed in turns.",
                    text, words.percent(stall.tipReserve(), 0))));
        } else {
            findings.add(Finding.fine(words.say(
                    "{0}, inside the tip, which bears {1} more.", text, words.percent(stall.tipReserve(), 0))));
        }
    }

    /** That the wing stalls before a surface ahead of it; told with a doubt where nobody said how that is set. */
    private void ahead(String text, Surface canard) {
        var before = words.say("{0}, before '{1}' does: the nose would rise into a deeper stall.", text, canard.name());
        boolean known = answer.trimmed().linear().canBeTrimmed()
                || answer.rigging().section(surfaces.indexOf(canard)).given();
        findings.add(
                known
                        ? Finding.stop(words.say(
                                "{0} The surface ahead must stall first: set it at more incidence, give it a "
                                        + "section that bears less, or balance further forward.",
                                before))
                        : Finding.lookAgain(words.say(
                                "{0} That is with all surfaces set as drawn: give how '{1}' is set, or its "
                                        + "elevator, to see it in trim.",
                                before, canard.name())));
    }

    private String where(double along) {
        return along < ROOT
                ? words.say("at its root")
                : words.say("at {0} of the way to its tip", words.percent(along, 0));
    }

    /** Smaller surfaces whose lift acts ahead of the wing. */
    private List<Surface> canard(List<Surface> wings) {
        double front = wings.stream()
                .mapToDouble(wing ->
                        SurfaceGeometry.of(wing, View.ABOVE).leadingEdge().x())
                .min()
                .orElseThrow();
        double largest =
                wings.stream().mapToDouble(Outlines::projectedArea).max().orElseThrow();
        return surfaces.stream()
                .filter(surface -> !wings.contains(surface) && Outlines.projectedArea(surface) > SMALL * largest)
                .filter(surface -> SurfaceGeometry.of(surface, View.ABOVE).quarterChord() < front)
                .toList();
    }
}
