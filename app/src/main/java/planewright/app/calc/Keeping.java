package planewright.app.calc;

import java.io.IOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import planewright.api.calculator.Proposal;
import planewright.api.journal.Entry;
import planewright.api.journal.JournalReader;
import planewright.api.journal.Template;
import planewright.app.journal.BuildDayRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Ids;
import planewright.app.journal.JointRecord;
import planewright.app.journal.KeptResult;
import planewright.app.journal.Lineage;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.SetUpRecord;
import planewright.app.journal.TaskRecord;
import planewright.app.journal.TemplateContent;
import planewright.app.journal.TemplateRecord;
import planewright.app.outline.OutlineShelf;
import planewright.shared.quantity.UnitChoice;
import planewright.shared.quantity.Written;

/** Makes the entry that keeps a calculator's answer in a log. */
public final class Keeping {
    private static final int HEADLINES = 2;

    private Keeping() {}

    /**
     * What writes the entry, and the templates and the shape that the builder accepted; all of it is undone in one step. Outlines are taken
     * in as files first, so it waits for the disk.
     *
     * @param what the edit in a few words
     * @param journal as it is open
     */
    public static Edit edit(
            String what, EntryRecord entry, List<Proposal> accepted, OpenJournal journal, OutlineShelf outlines)
            throws IOException {
        var changes = new ArrayList<Edit.Change>();
        for (var proposal : of(Proposal.NewOutline.class, accepted).toList()) {
            var template = template(proposal, entry, journal, outlines.add(proposal.outline(), proposal.name()));
            template.ifPresent(made -> changes.add(new Edit.Change(Optional.empty(), Optional.of(made))));
        }
        shape(accepted)
                .ifPresent(shape -> journal.build(entry.build())
                        .ifPresent(build -> changes.add(new Edit.Change(
                                Optional.of(build), Optional.of(build.withPlanform(shape.planform()))))));
        changes.add(new Edit.Change(Optional.empty(), Optional.of(entry)));
        return new Edit(what, changes);
    }

    /** The shape that the build is to have; of several the last. */
    private static Optional<Proposal.NewPlanform> shape(List<Proposal> accepted) {
        return of(Proposal.NewPlanform.class, accepted).reduce((one, other) -> other);
    }

    /** Derived from the template that has had the name; empty where that is the same outline. */
    private static Optional<TemplateRecord> template(
            Proposal.NewOutline proposal, EntryRecord entry, JournalReader journal, String hash) {
        var before = Shelved.outline(journal, proposal.name());
        if (before.flatMap(Template::outline).filter(hash::equals).isPresent()) {
            return Optional.empty();
        }
        var day = entry.at().toLocalDate();
        var lineage = new Lineage(
                journal.build(entry.build()).map(build -> new BuildDayRecord(build.id(), build.name(), day)),
                before.map(Template::id),
                List.of(),
                List.of());
        return Optional.of(TemplateRecord.of(proposal.name(), day, new TemplateContent.Outline(hash))
                .withNotes(proposal.notes())
                .withLineage(lineage));
    }

    /**
     * The entry: its title tells the first values in the calculator's own units, as the journal has them, its text the question, what was found and the words that the builder
     * accepted; other proposals become measurements, set-up values, joints and tasks. It shows the pictures of the answer.
     */
    public static EntryRecord entry(
            Described described,
            String buildId,
            Outcome.Answered answered,
            Map<String, Origin> origins,
            List<Proposal> accepted,
            LocalDateTime now) {
        var view = ResultView.of(described, answered, UnitChoice.NONE);
        return EntryRecord.blank(buildId, Entry.Kind.KEPT_RESULT, now)
                .withTitle(title(described, view))
                .withText(text(described, view, accepted))
                .withMeasurements(of(Proposal.NewMeasurement.class, accepted)
                        .map(proposal -> MeasurementRecord.of(
                                proposal.name(),
                                Written.of(proposal.value()),
                                described.language().say("computed, {0}", described.id())))
                        .toList())
                .withSetUp(of(Proposal.NewSetUpValue.class, accepted)
                        .map(proposal -> new SetUpRecord(proposal.name(), Written.of(proposal.value())))
                        .toList())
                .withJoints(of(Proposal.NewJoint.class, accepted)
                        .map(Keeping::joint)
                        .toList())
                .withTasks(of(Proposal.NewTask.class, accepted)
                        .map(proposal -> new TaskRecord(Ids.small(), proposal.name(), proposal.handsOn()))
                        .toList())
                .withPictures(view.pictures())
                .withKeptResult(new KeptResult(
                        described.id(),
                        described.about().version(),
                        answered.inputs(),
                        Origin.json(origins),
                        answered.json()));
    }

    private static <P extends Proposal> Stream<P> of(Class<P> kind, List<Proposal> accepted) {
        return accepted.stream().filter(kind::isInstance).map(kind::cast);
    }

    private static JointRecord joint(Proposal.NewJoint proposal) {
        return new JointRecord(
                Ids.small(),
                proposal.name(),
                proposal.material(),
                proposal.start(),
                Optional.of(proposal.handsOffUntil()),
                Optional.of(proposal.fullyCured()));
    }

    private static String title(Described described, ResultView view) {
        var values = view.values().stream()
                .limit(HEADLINES)
                .map(value -> inSentence(described, value.label()) + " " + value.text())
                .collect(Collectors.joining(", "));
        return described.title() + (values.isEmpty() ? "" : ": " + values);
    }

    private static String inSentence(Described described, String label) {
        return described.language().locale().getLanguage().equals("en") ? label.toLowerCase(Locale.ROOT) : label;
    }

    private static List<String> text(Described described, ResultView view, List<Proposal> accepted) {
        var text = new ArrayList<String>();
        text.add(described.question());
        view.findings()
                .forEach(finding -> text.add(
                        "- **" + described.language().say(finding.grade().word()) + ":** " + finding.text()));
        of(Proposal.NewOutline.class, accepted)
                .forEach(outline ->
                        text.add("- **" + described.language().say("outline template") + ":** " + outline.name()));
        shape(accepted)
                .ifPresent(shape -> text.add("- **" + described.language().say("shape") + ":** " + shape.name()));
        of(Proposal.NewText.class, accepted).forEach(words -> text.addAll(words.text()));
        return text;
    }
}
