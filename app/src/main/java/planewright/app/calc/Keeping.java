package planewright.app.calc;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import planewright.api.calculator.Proposal;
import planewright.api.journal.Entry;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Ids;
import planewright.app.journal.JointRecord;
import planewright.app.journal.KeptResult;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.SetUpRecord;
import planewright.shared.quantity.Written;

/** Makes the entry that keeps a calculator's answer in a log. */
public final class Keeping {
    private static final int HEADLINES = 2;

    private Keeping() {}

    /**
     * The entry: its title tells the first values, its text the question and what was found, and what the builder accepted of
     * the proposals becomes measurements, set-up values and joints.
     */
    public static EntryRecord entry(
            Described described,
            String buildId,
            Outcome.Answered answered,
            Map<String, Origin> origins,
            List<Proposal> accepted,
            LocalDateTime now) {
        var view = ResultView.of(described, answered);
        return EntryRecord.blank(buildId, Entry.Kind.KEPT_RESULT, now)
                .withTitle(title(described, view))
                .withText(text(described, view))
                .withMeasurements(of(Proposal.NewMeasurement.class, accepted)
                        .map(proposal -> MeasurementRecord.of(
                                proposal.name(), Written.of(proposal.value()), "computed, " + described.id()))
                        .toList())
                .withSetUp(of(Proposal.NewSetUpValue.class, accepted)
                        .map(proposal -> new SetUpRecord(proposal.name(), Written.of(proposal.value())))
                        .toList())
                .withJoints(of(Proposal.NewJoint.class, accepted)
                        .map(Keeping::joint)
                        .toList())
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
                .map(value -> value.label().toLowerCase(java.util.Locale.ROOT) + " " + value.text())
                .collect(Collectors.joining(", "));
        return described.about().title() + (values.isEmpty() ? "" : ": " + values);
    }

    private static List<String> text(Described described, ResultView view) {
        var text = new ArrayList<String>();
        text.add(described.about().question());
        view.findings().forEach(finding -> text.add("- **" + finding.grade().word() + ":** " + finding.text()));
        return text;
    }
}
