package planewright.cure;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import planewright.api.calculator.Finding;
import planewright.api.quantity.Units;
import planewright.shared.material.MaterialFact;

/** What a builder should know of a cure. */
final class CureFindings {
    /** A range wider than this says that makers differ: chosen, no source. */
    private static final double WIDE = 4;

    private static final double COLDER_OR_WARMER = 0.05;

    private final Words words;
    private final CureAnswer answer;
    private final List<Finding> findings = new ArrayList<>();

    CureFindings(CureAnswer answer) {
        this.words = answer.words();
        this.answer = answer;
    }

    List<Finding> all() {
        now();
        sessions();
        experience();
        temperatures();
        readings();
        humidity();
        faces();
        thickness();
        certainty();
        return List.copyOf(findings);
    }

    private void now() {
        var now = answer.now();
        if (!now.isBefore(answer.fullyCured())) {
            findings.add(Finding.fine(words.say("By now it is fully cured.")));
        } else if (!now.isBefore(answer.handsOffUntil())) {
            findings.add(Finding.lookAgain(words.say(
                    "It may be touched, but not loaded for another {0}.",
                    left(Duration.between(now, answer.fullyCured())))));
        } else if (!now.isBefore(answer.inputs().start())) {
            findings.add(Finding.lookAgain(
                    words.say("Leave it alone for another {0}.", left(Duration.between(now, answer.handsOffUntil())))));
        }
    }

    private void sessions() {
        if (answer.inputs().sessions().isEmpty()) {
            return;
        }
        var touching = answer.session(answer.handsOffUntil());
        var loading = answer.session(answer.fullyCured()).filter(later -> !touching.equals(Optional.of(later)));
        if (touching.isEmpty()) {
            findings.add(Finding.lookAgain(
                    words.say("The bench calendar has no session in the two months after it may be touched.")));
        } else if (loading.isEmpty()) {
            findings.add(Finding.fine(words.say("It may be touched at the bench on {0}.", told(touching.get()))));
        } else {
            findings.add(Finding.fine(words.say(
                    "It may be touched at the bench on {0}, and loaded on {1}.",
                    told(touching.get()), told(loading.get()))));
        }
    }

    private String told(NextSession session) {
        return words.say(
                "{0} from {1} to {2}",
                words.day(session.from().toLocalDate()),
                session.from().toLocalTime(),
                session.to().toLocalTime());
    }

    private void experience() {
        if (!answer.experience().said().isEmpty()) {
            findings.add(Finding.fine(words.say(
                    "Your own experience goes before the table: {0}.",
                    String.join(", ", answer.experience().said()))));
        }
    }

    private void temperatures() {
        var usable = answer.curing().fact("usable temperature");
        if (usable.isEmpty()) {
            return;
        }
        var extremes = answer.bench().air().extremes(answer.cured().slow());
        usable.get().low().ifPresent(least -> {
            if (extremes[0] - Curing.ZERO_CELSIUS < least - COLDER_OR_WARMER) {
                findings.add(Finding.stop(words.say(
                        "It gets down to {0} while this cures; {1} is for {2} and more. Below that it may "
                                + "never hold: warm the place, or wait.",
                        words.celsius(extremes[0]), answer.material(), words.celsius(least + Curing.ZERO_CELSIUS))));
            }
        });
        usable.get().high().ifPresent(most -> {
            if (extremes[1] - Curing.ZERO_CELSIUS > most + COLDER_OR_WARMER) {
                findings.add(Finding.lookAgain(words.say(
                        "It gets up to {0}; {1} is for up to {2}, and leaves little time to work.",
                        words.celsius(extremes[1]), answer.material(), words.celsius(most + Curing.ZERO_CELSIUS))));
            }
        });
    }

    private void readings() {
        var readings = answer.inputs().readings();
        if (readings.isEmpty() || answer.inputs().daily()) {
            return;
        }
        var first = readings.stream().map(CureTime.ReadingLine::at).min(java.time.LocalDateTime::compareTo);
        var last = readings.stream().map(CureTime.ReadingLine::at).max(java.time.LocalDateTime::compareTo);
        if (first.orElseThrow().isAfter(answer.inputs().start())
                || last.orElseThrow().isBefore(answer.handsOffUntil())) {
            findings.add(Finding.lookAgain(
                    words.say("The readings do not reach from the start to 'hands off until'; outside them the "
                            + "first and the last were taken to go on.")));
        }
    }

    private void humidity() {
        double percent = answer.inputs().humidity().in(Units.PERCENT);
        var curing = answer.curing();
        curing.fact("usable humidity").ifPresent(usable -> {
            if (percent < usable.low().orElse(0)) {
                findings.add(Finding.lookAgain(words.say(
                        "The air is dry for {0}, which cures by moisture: mist one face lightly, or "
                                + "expect it to take longer.",
                        answer.material())));
            }
        });
        if (curing.way() == Curing.Way.WATER && percent > 75) {
            findings.add(Finding.lookAgain(words.say(
                    "In damp air water-borne {0} dries slowly; move the air, or dry it.", answer.material())));
        }
    }

    private void faces() {
        var inputs = answer.inputs();
        var curing = answer.curing();
        if (inputs.betweenFoams() && curing.way() == Curing.Way.WATER) {
            findings.add(Finding.stop(words.say(
                    "Between two closed-cell foams the water of {0} cannot leave: it stays wet for "
                            + "weeks. Take a glue that reacts.",
                    answer.material())));
        } else if (inputs.betweenFoams() && curing.way() == Curing.Way.MOISTURE) {
            findings.add(Finding.lookAgain(
                    words.say("Little moisture of the air reaches a joint between closed-cell foams: mist one "
                            + "face with water before closing.")));
        } else if (inputs.betweenFoams() && curing.way() == Curing.Way.SOLVENT && !inputs.closedWet()) {
            findings.add(Finding.lookAgain(
                    words.say("Let both faces dry to the touch before closing; solvent shut in between foams "
                            + "leaves only through the edge and may eat the foam.")));
        }
        if (inputs.closedWet()) {
            findings.add(
                    curing.fact(Curing.CLOSED_WET).isPresent()
                            ? Finding.lookAgain(words.say(
                                    "Closed wet, the solvent has to leave through foam or edge: clamp it, and let the "
                                            + "faces dry to the touch another time."))
                            : Finding.lookAgain(
                                    words.say("'Closed while wet' is for contact adhesive and was not used.")));
        }
    }

    private void thickness() {
        var curing = answer.curing();
        double millimetres = answer.bench().millimetres();
        curing.usual("largest single layer").ifPresent(most -> {
            if (millimetres > most) {
                findings.add(Finding.lookAgain(words.say(
                        "A layer of {0} is thicker than the {1} that dries without cracking: build it up, "
                                + "each layer dry before the next.",
                        words.length(millimetres), words.length(most))));
            }
        });
        curing.usual("warm mass thickness").ifPresent(most -> {
            if (millimetres > most) {
                findings.add(Finding.stop(words.say(
                        "Resin {0} thick heats itself while it cures, can smoke and melts foam: pour it "
                                + "in layers under {1}.",
                        words.length(millimetres), words.length(most))));
            }
        });
        if (curing.way() == Curing.Way.MOISTURE && curing.touchFactor(millimetres) > WIDE) {
            findings.add(Finding.lookAgain(words.say(
                    "A gap of {0} is wide for {1}: it sets slowly and holds less. Fit the faces "
                            + "closer, or fill the gap.",
                    words.length(millimetres), answer.material())));
        }
    }

    private void certainty() {
        if (answer.cured().slow() > WIDE * answer.cured().quick()) {
            findings.add(Finding.lookAgain(
                    words.say("The range is wide because makers differ: the data sheet of yours tells which end.")));
        }
        for (var property : List.of(Curing.HANDS_OFF, Curing.FULLY_CURED)) {
            answer.curing()
                    .fact(property)
                    .filter(fact -> !isRead(fact))
                    .ifPresent(fact -> findings.add(Finding.lookAgain(words.say(
                            "The usual figure for {0} has no printed source: try it on a scrap first.",
                            words.say(property)))));
        }
    }

    private static boolean isRead(MaterialFact fact) {
        var known = fact.known().split("/");
        return known[known.length / 2].equals("read");
    }

    private String left(Duration duration) {
        long minutes = duration.toMinutes();
        if (minutes < 120) {
            return minutes + " min";
        }
        return minutes < 48 * 60
                ? minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min")
                : words.language().number(minutes / 1440.0, 1) + " d";
    }
}
