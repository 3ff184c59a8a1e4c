package planewright.app.ui.bench;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import planewright.api.journal.JournalReader;
import planewright.api.journal.Life;
import planewright.api.journal.Template;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.calc.Joints;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.DayEntry;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Ids;
import planewright.app.journal.JointRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.StepRecord;
import planewright.app.journal.TaskRecord;
import planewright.app.journal.TemplateRecord;
import planewright.app.ui.common.Texts;

/**
 * The first step of a procedure that nobody has noted as done for a build on the bench. A step counts as done once the build's log
 * bears a task of its words, not earlier than the day the procedure went to the build.
 *
 * @param number of the step, from 1
 * @param notBefore until when the step before it has to be left alone, where that is written
 */
record NextStep(BuildRecord build, TemplateRecord procedure, int number, Optional<LocalDateTime> notBefore) {
    /** The day from which on entries tell of a procedure's steps; empty where it is not at work on the build. */
    static Optional<LocalDateTime> since(BuildRecord build, TemplateRecord template) {
        return template.wentTo().stream()
                .filter(day -> build.life() == Life.ON_THE_BENCH
                        && template.kind() == Template.Kind.PROCEDURE
                        && day.build().equals(build.id()))
                .map(day -> day.date().atStartOfDay())
                .findFirst();
    }

    /** Of a procedure for a build; empty once all is done. */
    static Optional<NextStep> of(BuildRecord build, TemplateRecord procedure, List<EntryRecord> log) {
        var steps = procedure.steps();
        for (int i = 0; i < steps.size(); i++) {
            if (!isDone(steps.get(i), log)) {
                return Optional.of(new NextStep(build, procedure, i + 1, heldBy(procedure, i, log)));
            }
        }
        return Optional.empty();
    }

    StepRecord step() {
        return procedure.steps().get(number - 1);
    }

    int steps() {
        return procedure.steps().size();
    }

    /** Notes the step as done; what has to be left alone after it is held from now on, like a joint. */
    Edit done(OpenJournal journal, LocalDateTime now) {
        return DayEntry.writing(journal, build.id(), now, Texts.STEP_DONE_EDIT.text(), entry -> {
            var held = step().waiting().map(wait -> held(wait, now)).stream();
            return entry.withTasks(with(entry.tasks(), Stream.of(task(step())))).withJoints(with(entry.joints(), held));
        });
    }

    /** Notes this and all later steps as done; nothing is held, for nobody knows since when. */
    Edit allDone(OpenJournal journal, LocalDateTime now) {
        return DayEntry.writing(
                journal,
                build.id(),
                now,
                Texts.STEP_DONE_EDIT.text(),
                entry -> entry.withTasks(with(
                        entry.tasks(),
                        procedure.steps().stream().skip(number - 1).map(NextStep::task))));
    }

    private JointRecord held(Measured<Time> wait, LocalDateTime now) {
        var until = now.plus(Duration.ofSeconds(Math.round(wait.in(Units.SECOND))));
        return new JointRecord(
                Ids.small(),
                heldName(procedure, number),
                String.join(", ", step().materials()),
                now,
                Optional.of(until),
                Optional.of(until));
    }

    private static TaskRecord task(StepRecord step) {
        return new TaskRecord(Ids.small(), step.text(), step.handsOn());
    }

    private static boolean isDone(StepRecord step, List<EntryRecord> log) {
        return log.stream()
                .flatMap(entry -> entry.tasks().stream())
                .anyMatch(task -> JournalReader.sameName(task.name(), step.text()));
    }

    private static Optional<LocalDateTime> heldBy(TemplateRecord procedure, int stepsBefore, List<EntryRecord> log) {
        var name = heldName(procedure, stepsBefore);
        return Joints.of(log).newestFirst().stream()
                .filter(dated -> JournalReader.sameName(dated.what().name(), name))
                .findFirst()
                .flatMap(dated -> dated.what().handsOffUntil());
    }

    private static String heldName(TemplateRecord procedure, int number) {
        return procedure.name() + " " + number + "/" + procedure.steps().size();
    }

    private static <T> List<T> with(List<T> list, Stream<? extends T> more) {
        var all = new ArrayList<>(list);
        more.forEach(all::add);
        return List.copyOf(all);
    }
}
