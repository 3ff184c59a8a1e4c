package planewright.balance;

import static planewright.api.quantity.Units.METRE_PER_SECOND;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

    private final BalanceRangeAnswer answer;
    private final LevelFlight level;
    private final List<Surface> surfaces;
    private final List<Finding> findings = new ArrayList<>();

    TrimFindings(BalanceRangeAnswer answer) {
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
        var at = String.format(Locale.ROOT, "At %.1f m/s it needs a lift coefficient of %.2f", speed, lift);
        var stall = level.stallSpeed().map(slowest -> slowest.in(METRE_PER_SECOND));
        if (stall.isPresent() && speed < stall.get()) {
            findings.add(Finding.stop(at + String.format(Locale.ROOT, ", but it stalls below %.1f m/s.", stall.get())));
            return;
        }
        if (stall.isEmpty() || level.state().isEmpty()) {
            findings.add(
                    Finding.lookAgain(at + ", at angles of wing or control surface beyond what is told here. Look at"
                            + " speed, settings and where it balances."));
            return;
        }
        double slowest = stall.get();
        var margin = String.format(Locale.ROOT, ", %.0f %% above its stall speed", 100 * (speed / slowest - 1));
        findings.add(
                speed < SAFE * slowest
                        ? Finding.lookAgain(at + margin + ": little room for a gust or a turn.")
                        : Finding.fine(at + margin + "."));
        level.trimAngle().ifPresentOrElse(this::trim, this::untrimmed);
    }

    private void trim(double angle) {
        var name = answer.rigging().trimming().orElseThrow().name();
        var text = String.format(
                Locale.ROOT,
                "It flies level with %.1f° %s of '%s'",
                Math.abs(Math.toDegrees(angle)),
                angle > 0 ? "down" : "up",
                name);
        findings.add(
                Math.abs(angle) > MOST_TRIM
                        ? Finding.lookAgain(
                                text + ": that leaves little to steer with. Look at where it balances, and at"
                                        + " how wing and tail are set.")
                        : Finding.fine(text + "."));
    }

    private void untrimmed() {
        double left = level.momentLeft();
        if (Math.abs(left) < NO_MOMENT) {
            findings.add(Finding.fine("It is in trim with its controls neutral."));
            return;
        }
        var turns = left > 0 ? "up" : "down";
        findings.add(Finding.lookAgain(
                answer.rigging().trimming().isPresent()
                        ? "'" + answer.rigging().trimming().orElseThrow().name()
                                + "' hardly pitches it: the nose is turned " + turns + " and nothing holds it."
                        : "With its controls neutral the nose is turned " + turns
                                + ". Give an elevator or elevon to see the angle that trims it."));
    }

    private void stall() {
        var stall = answer.stall();
        var first = surfaces.get(stall.surface());
        var text = String.format(
                Locale.ROOT,
                "Slowed down, '%s' stalls first, %s (lift coefficient of the whole %.2f%s)",
                first.name(),
                where(stall.along()),
                stall.lift(),
                answer.rigging().section(stall.surface()).given() ? "" : ", its section taken to bear 1.0 ± 0.15");
        var wings = SurfaceGeometry.wings(answer.inputs().planform());
        var canard = canard(wings);
        if (!wings.contains(first)) {
            findings.add(
                    canard.contains(first)
                            ? Finding.fine(text + ": ahead of the wing, so the nose drops by itself.")
                            : Finding.lookAgain(text + ": behind the wing, so the nose may rise into a deeper stall."));
        } else if (!canard.isEmpty()) {
            ahead(text, canard.get(0));
        } else if (stall.tipReserve() < 0) {
            findings.add(Finding.lookAgain(
                    text + ": the tip, so it may drop a wing. Washout moves it inwards; keep speed" + " in turns."));
        } else if (stall.tipReserve() < LEAST_RESERVE) {
            findings.add(Finding.lookAgain(text
                    + String.format(
                            Locale.ROOT,
                            ", but the tip bears only %.0f %% more. Keep speed in turns.",
                            100 * stall.tipReserve())));
        } else {
            findings.add(Finding.fine(text
                    + String.format(
                            Locale.ROOT, ", inside the tip, which bears %.0f %% more.", 100 * stall.tipReserve())));
        }
    }

    /** That the wing stalls before a surface ahead of it; told with a doubt where nobody said how that is set. */
    private void ahead(String text, Surface canard) {
        var before = text + ", before '" + canard.name() + "' does: the nose would rise into a deeper stall.";
        boolean known = answer.trimmed().linear().canBeTrimmed()
                || answer.rigging().section(surfaces.indexOf(canard)).given();
        findings.add(
                known
                        ? Finding.stop(
                                before + " The surface ahead must stall first: set it at more incidence, give it a"
                                        + " section that bears less, or balance further forward.")
                        : Finding.lookAgain(before + " That is with all surfaces set as drawn: give how '"
                                + canard.name() + "' is set, or its elevator, to see it in trim."));
    }

    private static String where(double along) {
        return along < ROOT
                ? "at its root"
                : String.format(Locale.ROOT, "at %.0f %% of the way to its tip", 100 * along);
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
