package planewright.app.ui.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import planewright.api.journal.BenchSession;
import planewright.api.journal.Life;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.BuildDayRecord;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.CalendarRecord;
import planewright.app.journal.CalendarRecord.OtherDayRecord;
import planewright.app.journal.CalendarRecord.WeeklyRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.JointRecord;
import planewright.app.journal.Lineage;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.StepRecord;
import planewright.app.journal.TemplateContent;
import planewright.app.journal.TemplateRecord;

class BenchLookTest {
    /** A Friday. */
    private static final LocalDateTime NOW = LocalDateTime.of(2025, 3, 14, 20, 15);

    private final BuildRecord heron = Bench.build("Grey heron").withLife(Life.ON_THE_BENCH);
    private final EntryRecord longAgo = entry(
            NOW.minusMonths(5),
            joint("spar joint", Optional.of(NOW.minusMonths(5).plusHours(40))));
    private final EntryRecord unended = entry(NOW.minusMonths(3), joint("canopy joint", Optional.empty()));
    private final EntryRecord fresh = entry(NOW.minusHours(1), joint("fin joint", Optional.of(NOW.plusHours(12))));
    private final OpenJournal journal = Bench.inMemory(List.of(heron), List.of(longAgo, unended, fresh));

    @Test
    void aJointOfAnyAgeStaysReachableWithOrWithoutAnEnd() {
        var found = new BenchLook(journal).at(NOW, Optional.of(heron.id()));
        assertThat(found.joints()).extracting(joint -> joint.joint().name()).containsExactly("fin joint");
        assertThat(found.earlier())
                .extracting(joint -> joint.joint().name())
                .containsExactly("canopy joint", "spar joint");
        assertThat(found.earlier()).extracting(BenchJoint::entry).containsExactly(unended.id(), longAgo.id());
    }

    @Test
    void stepsOfAProcedureFollowEachOtherAsTheyAreNotedAndEachWaitIsHeld() throws Exception {
        var look = new BenchLook(journal);
        assertThat(steps(look)).isEmpty();
        journal.apply(Edit.add("procedure", procedure()));
        assertThat(steps(look)).containsExactly("Brush both sides");

        apply(look, step -> step.done(journal, NOW));
        var next = look.at(NOW, Optional.empty()).steps().get(0);
        assertThat(next.step().text()).isEqualTo("Close it");
        assertThat(next.notBefore()).contains(NOW.plusMinutes(10));
        assertThat(look.at(NOW, Optional.empty()).joints())
                .extracting(joint -> joint.joint().name() + " " + joint.joint().material())
                .contains("Fin glued 1/3 contact adhesive");
        assertThat(journal.log(heron.id()).stream().flatMap(entry -> entry.tasks().stream()))
                .extracting(task -> task.name())
                .containsExactly("Brush both sides");

        journal.undo();
        assertThat(steps(look)).containsExactly("Brush both sides");
        apply(look, step -> step.allDone(journal, NOW));
        assertThat(steps(look)).isEmpty();
        journal.undo();
        journal.apply(Edit.change("flies", heron, heron.withLife(Life.FLYING)));
        assertThat(steps(look)).as("only a build on the bench").isEmpty();
    }

    @Test
    void whatIsHeldWhenTheNextSessionBeginsAndEndsIsKnown() throws Exception {
        assertThat(new BenchLook(journal).at(NOW, Optional.empty()).session()).isEmpty();
        journal.apply(Edit.add("calendar", calendar()));
        var session = new BenchLook(journal).at(NOW, Optional.empty()).session().orElseThrow();
        assertThat(session.from()).isEqualTo(NOW.toLocalDate().plusDays(1).atTime(7, 0));
        var joint = new BenchJoint(heron, fresh.id(), fresh.joints().get(0));
        assertThat(joint.isHeldAt(session.from(), NOW)).isTrue();
        assertThat(joint.isHeldAt(session.to(), NOW)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "2025-03-14T19:00, 2025-03-15T07:00",
        "2025-03-15T08:59, 2025-03-15T07:00",
        "2025-03-15T09:00, 2025-03-15T22:00",
        "2025-03-15T23:59, 2025-03-15T22:00",
        "2025-03-16T00:00, 2025-03-29T07:00"
    })
    void theSessionThatGoesOnCountsUntilItEndsAndADayMayBeOtherThanItsWeekday(LocalDateTime now, LocalDateTime from) {
        assertThat(NextSession.of(calendar(), now))
                .get()
                .extracting(NextSession::from)
                .isEqualTo(from);
    }

    private interface Noting {
        Edit edit(NextStep step);
    }

    private void apply(BenchLook look, Noting noting) throws Exception {
        journal.apply(noting.edit(look.at(NOW, Optional.empty()).steps().get(0)));
    }

    private static List<String> steps(BenchLook look) {
        return look.at(NOW, Optional.empty()).steps().stream()
                .map(step -> step.step().text())
                .toList();
    }

    private TemplateRecord procedure() {
        var steps = List.of(
                step("1", "Brush both sides", Optional.of(Measured.of(10, Units.MINUTE)), "contact adhesive"),
                step("2", "Close it", Optional.of(Measured.of(12, Units.HOUR)), "contact adhesive"),
                step("3", "Sand the edge", Optional.empty(), "abrasive paper"));
        var went = new BuildDayRecord(heron.id(), heron.name(), LocalDate.of(2025, 3, 1));
        return TemplateRecord.of("Fin glued", LocalDate.of(2025, 1, 1), new TemplateContent.Procedure(steps))
                .withLineage(new Lineage(Optional.empty(), Optional.empty(), List.of(went), List.of()));
    }

    private static StepRecord step(
            String id, String text, Optional<Measured<javax.measure.quantity.Time>> waiting, String material) {
        return new StepRecord(id, text, Optional.empty(), waiting, List.of(material), List.of());
    }

    /** Saturdays 7 to 9 and 22 to midnight, but not on the 22nd. */
    private static CalendarRecord calendar() {
        return CalendarRecord.EMPTY
                .withWeek(List.of(
                        new WeeklyRecord(DayOfWeek.SATURDAY, new BenchSession(LocalTime.of(22, 0), LocalTime.MIDNIGHT)),
                        new WeeklyRecord(DayOfWeek.SATURDAY, new BenchSession(LocalTime.of(7, 0), LocalTime.of(9, 0)))))
                .withOtherDays(List.of(new OtherDayRecord(LocalDate.of(2025, 3, 22), List.of(), "away")));
    }

    private EntryRecord entry(LocalDateTime at, JointRecord joint) {
        return Bench.entry(heron, "Glued").withAt(at).withJoints(List.of(joint));
    }

    private static JointRecord joint(String name, Optional<LocalDateTime> cured) {
        var start = cured.map(end -> end.minusHours(13)).orElse(NOW.minusMonths(3));
        return new JointRecord(name.substring(0, 3), name, "laminating epoxy", start, Optional.empty(), cured);
    }
}
