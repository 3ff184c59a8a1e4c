package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;
import planewright.api.journal.BenchSession;
import planewright.api.journal.Life;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Program;
import planewright.app.SetClock;
import planewright.app.journal.BuildDayRecord;
import planewright.app.journal.CalendarRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.Ids;
import planewright.app.journal.Lineage;
import planewright.app.journal.StepRecord;
import planewright.app.journal.TemplateContent;
import planewright.app.journal.TemplateRecord;

/** Joints of all builds in the rail at the right, from closing to ready, by a clock that the test sets. */
class BenchRailTest extends InNewJournal {
    @Test
    void aJointIsFollowedFromTheLineTypedToTheNoticeAndUndoTakesItOff() throws Exception {
        var clock = new SetClock(OpenWindow.CLOCK.instant());
        try (var window = OpenWindow.on(journal, user, clock)) {
            assertThat(window.frame().isShowing()).isTrue();
            if (!Hands.isThere("bench")) {
                Hands.click("show-bench");
            }
            see("Nothing cures now");
            begin("Teal");
            write("fin joint contact adhesive 12 h");
            see("hands off until");
            see("(12 h to go)");
            begin("Wigeon");
            write("spar joint laminating epoxy 40 h");
            see("(40 h to go)");
            Hands.waitUntil(
                    "two",
                    () -> Hands.all(javax.swing.AbstractButton.class).stream()
                            .anyMatch(button ->
                                    button.getText() != null && button.getText().equals("Bench (2)")));

            Hands.focus("bench-show-fin joint");
            clock.advance(Duration.ofHours(11));
            see("(1 h to go)");
            Hands.hasKeyboard("bench-show-fin joint");
            clock.advance(Duration.ofHours(1));
            see("ready since");
            see("Ready: fin joint (Teal)");
            Hands.waitUntil(
                    "one",
                    () -> Hands.all(javax.swing.AbstractButton.class).stream()
                            .anyMatch(button ->
                                    button.getText() != null && button.getText().equals("Bench (1)")));

            Hands.click("undo");
            Hands.waitUntil(
                    "the spar gone",
                    () -> Hands.all(java.awt.Component.class).stream()
                            .noneMatch(each -> "bench-spar joint".equals(each.getName())));
            assertThat(Hands.isThere("bench-fin joint")).isTrue();
        }
    }

    @Test
    void whatIsReadyByTheNextSessionAndTheNextStepAreToldAndAStepIsNotedAsDone() throws Exception {
        try (var window = open()) {
            begin("Teal");
            assertThat(window.frame().isShowing()).isTrue();
        }
        try (var program = Program.open(journal, user, List.of(), OpenWindow.CLOCK)) {
            var teal = program.journal().builds().get(0);
            program.journal().apply(Edit.change("bench", teal, teal.withLife(Life.ON_THE_BENCH)));
            var went = new BuildDayRecord(teal.id(), teal.name(), LocalDate.of(2026, 11, 1));
            var steps = List.of(
                    step("Brush both sides", Optional.of(Measured.of(12, Units.HOUR)), "contact adhesive"),
                    step("Sand the edge", Optional.empty(), "abrasive paper"));
            program.journal()
                    .apply(Edit.add(
                            "procedure",
                            TemplateRecord.of("Fin glued", went.date(), new TemplateContent.Procedure(steps))
                                    .withLineage(new Lineage(
                                            Optional.empty(), Optional.empty(), List.of(went), List.of()))));
            var evening = new BenchSession(LocalTime.of(20, 0), LocalTime.of(22, 0));
            program.journal()
                    .apply(Edit.add(
                            "calendar",
                            CalendarRecord.EMPTY.withWeek(
                                    List.of(new CalendarRecord.WeeklyRecord(DayOfWeek.SUNDAY, evening)))));
        }
        try (var window = open()) {
            if (!Hands.isThere("bench")) {
                Hands.click("show-bench");
            }
            see("Brush both sides");
            write("spar joint laminating epoxy 40 h");
            see("Hands off even then: spar joint (Teal)");
            Hands.click("step-done");
            see("Sand the edge");
            see("May be touched from its beginning: Fin glued 1/2 (Teal)");
            see("Not before");
            Hands.click("undo");
            see("Brush both sides");
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    @Test
    void anEarlierJointTellsInTheLogHowLongItWasHeld() throws Exception {
        var clock = new SetClock(OpenWindow.CLOCK.instant());
        try (var window = OpenWindow.on(journal, user, clock)) {
            begin("Teal");
            write("fin joint contact adhesive 2 h");
            see("(2 h to go)");
            clock.advance(Duration.ofHours(3));
            write("left wing panel 212 g");
            see("(after 2 h)");
            assertThat(window.frame().isShowing()).isTrue();
        }
    }

    @Test
    void whereTheWindowIsNarrowTheBenchStandsInFrontOfThePagesUntilOneIsWanted() throws Exception {
        try (var window = open()) {
            begin("Teal");
            write("fin joint contact adhesive 12 h");
            Hands.onEventThread(() -> {
                window.frame().setSize(900, 600);
                window.frame().validate();
                return window;
            });
            Hands.waitUntil("no bench", () -> named("bench").isEmpty());
            Hands.click("show-bench");
            Hands.find(Component.class, "bench-show-fin joint");
            Hands.waitUntil("no pages", () -> named("pages").isEmpty());
            Hands.click("bench-show-fin joint");
            Hands.find(Component.class, "pages");
            Hands.waitUntil("no bench", () -> named("bench").isEmpty());
        }
    }

    private static List<Component> named(String name) {
        return Hands.all(Component.class).stream()
                .filter(each -> name.equals(each.getName()))
                .toList();
    }

    private static StepRecord step(String text, Optional<Measured<Time>> waiting, String material) {
        return new StepRecord(
                Ids.small(), text, Optional.of(Measured.of(5, Units.MINUTE)), waiting, List.of(material), List.of());
    }
}
