package planewright.app.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.api.calculator.Proposal;
import planewright.api.figure.Drawing;
import planewright.api.figure.Outline;
import planewright.api.figure.Point;
import planewright.api.journal.Entry.Kind;
import planewright.api.journal.Planform;
import planewright.api.quantity.Units;
import planewright.app.Bench;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.CalendarRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Lineage;
import planewright.app.journal.PictureRecord;
import planewright.app.journal.TemplateContent;
import planewright.app.journal.TemplateRecord;
import planewright.app.outline.OutlineRefused;
import planewright.app.store.JournalFolder;
import planewright.app.store.JsonFiles;
import planewright.shared.quantity.UnitChoice;

/** Outlines, calendars and pictures go from the journal into a calculator, and outlines, tasks and words from it into the journal. */
class ShelvedInputsTest {
    private static final Described EVERY = new EveryKind().described();
    private static final PictureRecord WING = new PictureRecord("ab".repeat(32), "jpg", "The left wing");

    @TempDir
    private Path temp;

    private final BuildRecord build = Bench.build("Heron");
    private JournalFolder folder;

    @BeforeEach
    void open() throws Exception {
        folder = Bench.newJournal(temp.resolve("journal"));
        apply(Edit.add("begin", build));
    }

    @AfterEach
    void close() throws Exception {
        folder.close();
    }

    @Test
    void templateComesByItsNameAndIsReadAsItWasDrawn() throws Exception {
        shelve("Fin", EveryKind.TRIANGLE);
        var filled = filled();
        assertThat(filled.inputs().path("fin").textValue()).isEqualTo("Fin");
        assertThat(filled.origins().get("fin").said()).isEqualTo("template of 14 Mar 2025");
        assertThat(filled.inputs().path("own").textValue()).isEqualTo("Fin");
        assertThat(((EveryKind.Results) run(filled.inputs()).results()).fin()).contains(EveryKind.TRIANGLE);
    }

    @Test
    void ofTwoTemplatesOfANameTheNewerCounts() throws Exception {
        shelve("fin", EveryKind.TRIANGLE);
        shelve("FIN", square(30));
        assertThat(((EveryKind.Results) run(inputs("fin", "Fin")).results()).fin())
                .contains(square(30));
    }

    @Test
    void calendarAndNewestPictureOfTheWordComeToo() throws Exception {
        var calendar = (CalendarRecord) Bench.full("calendar");
        apply(Edit.add("calendar", calendar));
        apply(Edit.add(
                "old",
                entry(new PictureRecord("cd".repeat(32), "png", "wing core")).withAt(Bench.EVENING.minusDays(2))));
        apply(Edit.add("new", entry(new PictureRecord("ef".repeat(32), "png", "hatch"), WING)));
        var filled = filled();
        assertThat(filled.origins().get("photo").said()).isEqualTo("picture of 14 Mar 2025");
        assertThat(filled.origins().get("sessions").said()).isEqualTo("the journal's calendar");
        var results = (EveryKind.Results) run(filled.inputs()).results();
        assertThat(results.photo()).contains(WING);
        assertThat(results.sessions()).contains(calendar);
        assertThat(InputTexts.text(
                        EVERY.inputs().field("sessions").orElseThrow(),
                        filled.inputs().get("sessions")))
                .isEqualTo("2 sessions a week, 2 other days");
    }

    @Test
    void pictureMayBeNamedByCaptionOrHash() throws Exception {
        apply(Edit.add("pictures", entry(WING, new PictureRecord("cd".repeat(32), "png", ""))));
        assertThat(photo("the LEFT wing ")).contains(WING);
        assertThat(photo("ABABAB")).contains(WING);
        assertThat(refusal(inputs("photo", "ababa")))
                .isEqualTo(
                        "Photo is 'ababa'; accepted: the caption of one picture of the journal, or 6 or more digits with"
                                + " which its hash begins");
        apply(Edit.add("another", entry(new PictureRecord("12".repeat(32), "jpg", "the left wing"))));
        assertThat(refusal(inputs("photo", "the left wing"))).contains("which 2 pictures are called");
    }

    @Test
    void templateThatIsNotThereOrCannotBeReadIsRefusedByName() throws Exception {
        assertThat(refusal(inputs("fin", "Rudder")))
                .contains("Fin is 'Rudder'", "an SVG file; there is no outline template");
        shelve("Fin", EveryKind.TRIANGLE);
        assertThat(refusal(inputs("fin", "Rudder"))).endsWith("an SVG file, or an outline template: 'Fin'");
        var hash = folder.journal().templates().get(0).outline().orElseThrow();
        Files.writeString(folder.outlines().file(hash), "<svg/>");
        assertThat(refusal(inputs("fin", "Fin"))).contains("'Fin', whose file cannot be read");
    }

    @Test
    void outlineOfAFileIsReadOnceAndForAll() throws Exception {
        var svg = temp.resolve("own.svg");
        Files.writeString(
                svg,
                "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' height='80mm' viewBox='0 0 60 80'>"
                        + "<path d='M 0 80 L 60 80 C 60 20 50 10 40 0 Z'/></svg>",
                StandardCharsets.UTF_8);
        var node = OutlineJson.ofFile(svg);
        assertThat(OutlineJson.read(JsonFiles.parse(JsonFiles.text(node)))).isEqualTo(OutlineJson.read(node));
        assertThat(OutlineJson.read(node).paths().get(0).pieces().get(1))
                .isEqualTo(new Outline.Curve(new Point(60, 60), new Point(50, 70), new Point(40, 80)));
        assertThatThrownBy(() -> OutlineJson.ofFile(temp.resolve("none.svg")))
                .isInstanceOf(OutlineRefused.class)
                .hasMessageContaining("none.svg is not there");
        assertThatThrownBy(() -> OutlineJson.ofFile(temp)).isInstanceOf(OutlineRefused.class);
    }

    @Test
    void keptAnswerGoesStaleWhenItsOutlineIsDrawnAnew() throws Exception {
        shelve("Fin", EveryKind.TRIANGLE);
        var entry =
                Keeping.entry(EVERY, build.id(), run(filled().inputs()), filled().origins(), List.of(), Bench.EVENING);
        apply(Edit.add("keep", entry));
        folder.close();
        folder = Bench.open(temp.resolve("journal"));
        var kept = folder.journal().log(build.id()).get(0).keptResult().orElseThrow();
        assertThat(Staleness.changes(kept, EVERY, folder.journal(), build.id(), UnitChoice.NONE))
                .isEmpty();
        shelve("Fin", square(40));
        assertThat(Staleness.changes(kept, EVERY, folder.journal(), build.id(), UnitChoice.NONE))
                .containsExactly("Fin has changed", "Own shape has changed");
    }

    @Test
    void whatIsAcceptedIsWrittenAndUndoneInOneStep() throws Exception {
        apply(Edit.add("photo", entry(WING)));
        var answered = run(filled().inputs());
        var accepted = ResultView.of(EVERY, answered).proposals();
        keep(answered, accepted);
        var entry = folder.journal().log(build.id()).stream()
                .filter(each -> each.kind() == Kind.KEPT_RESULT)
                .findFirst()
                .orElseThrow();
        assertThat(entry.tasks()).extracting(task -> task.name()).containsExactly("sand the fin");
        assertThat(entry.tasks().get(0).handsOn().orElseThrow().in(Units.MINUTE))
                .isEqualTo(45);
        assertThat(entry.text())
                .contains("- **outline template:** fin")
                .endsWith("Fit the *hinges*.", "Then the horn.");
        assertThat(entry.pictures()).containsExactly(WING);
        var template = folder.journal().templates().get(0);
        assertThat(template.name()).isEqualTo("fin");
        assertThat(template.notes()).containsExactly("Grain along the leading edge.");
        assertThat(template.cameFrom().orElseThrow().build()).isEqualTo(build.id());
        assertThat(template.derivedFrom()).isEmpty();
        assertThat(folder.outlines().read(template.outline().orElseThrow())).isEqualTo(EveryKind.TRIANGLE);
        folder.journal().undo();
        assertThat(folder.journal().templates()).isEmpty();
        assertThat(folder.journal().log(build.id())).hasSize(1);
    }

    @Test
    void sameOutlineIsNotKeptTwiceAndAnotherTellsWhatItWasDerivedFrom() throws Exception {
        var answered = run(JsonFiles.object());
        var fin = new Proposal.NewOutline("Fin", EveryKind.TRIANGLE, List.of());
        keep(answered, List.of(fin));
        keep(answered, List.of(fin));
        assertThat(folder.journal().templates()).hasSize(1);
        var first = folder.journal().templates().get(0);
        keep(answered, List.of(new Proposal.NewOutline("fin", square(25), List.of())));
        assertThat(folder.journal().templates())
                .filteredOn(template -> !template.equals(first))
                .singleElement()
                .satisfies(second -> assertThat(second.derivedFrom()).contains(first.id()));
    }

    @Test
    void outlineThatCannotBeKeptKeepsNothing() throws Exception {
        var dot = new Outline(
                1e-9,
                1e-9,
                List.of(new Outline.Path(new Point(0, 0), List.of(new Outline.Line(new Point(0, 0))), true)));
        var answered = run(JsonFiles.object());
        assertThatThrownBy(() -> keep(answered, List.of(new Proposal.NewOutline("dot", dot, List.of()))))
                .isInstanceOf(OutlineRefused.class);
        assertThat(folder.journal().log(build.id())).isEmpty();
        assertThat(folder.journal().templates()).isEmpty();
    }

    @Test
    void shapeBecomesTheBuildsInOneStepWithItsEntry() throws Exception {
        var before = folder.journal().build(build.id()).orElseThrow();
        var panel = new Planform.Panel(0.2, 0.15, 0.6, 0, 0, 0);
        var shape = new Planform(List.of(new Planform.Surface("wing", 0.02, 0, 0, true, List.of(panel))), List.of());
        keep(run(JsonFiles.object()), List.of(new Proposal.NewPlanform("wing 20 mm aft", shape)));
        assertThat(folder.journal().build(build.id()).orElseThrow().planform()).contains(shape);
        assertThat(folder.journal().log(build.id()).get(0).text()).contains("- **shape:** wing 20 mm aft");
        folder.journal().undo();
        assertThat(folder.journal().build(build.id())).contains(before);
        assertThat(folder.journal().log(build.id())).isEmpty();
    }

    @Test
    void drawingOfAnOutlineIsCutFrom() throws Exception {
        shelve("Fin", EveryKind.TRIANGLE);
        var drawings = ResultView.of(EVERY, run(filled().inputs())).drawings();
        assertThat(drawings).anySatisfy(drawing -> {
            assertThat(drawing.title()).isEqualTo("Fin");
            assertThat(drawing.layers()).extracting(Drawing.Layer::use).containsExactly(Drawing.Use.CUT);
        });
    }

    private void keep(Outcome.Answered answered, List<Proposal> accepted) throws Exception {
        var entry = Keeping.entry(EVERY, build.id(), answered, Map.of(), accepted, Bench.EVENING);
        apply(Keeping.edit("keep", entry, accepted, folder.journal(), folder.outlines()));
    }

    private void shelve(String name, Outline outline) throws Exception {
        var content = new TemplateContent.Outline(folder.outlines().add(outline, name));
        var made = planewright.app.journal.BuildDayRecord.of(build, Bench.EVENING.toLocalDate());
        apply(Edit.add(
                "template",
                TemplateRecord.of(name, Bench.EVENING.toLocalDate(), content).withLineage(Lineage.NONE.from(made))));
    }

    private EntryRecord entry(PictureRecord... pictures) {
        return EntryRecord.blank(build.id(), Kind.WORK, Bench.EVENING).withPictures(List.of(pictures));
    }

    private Optional<planewright.api.journal.Picture> photo(String called) {
        return ((EveryKind.Results) run(inputs("photo", called)).results()).photo();
    }

    private Filled filled() {
        return Prefill.of(EVERY, folder.journal(), build.id());
    }

    private static ObjectNode inputs(String name, String text) {
        return JsonFiles.object().put(name, text);
    }

    private Outcome.Answered run(ObjectNode inputs) {
        var outcome = outcome(inputs);
        assertThat(outcome).isInstanceOf(Outcome.Answered.class);
        return (Outcome.Answered) outcome;
    }

    private String refusal(ObjectNode inputs) {
        return ((Outcome.Refused) outcome(inputs)).message();
    }

    private Outcome outcome(ObjectNode inputs) {
        return Calculation.run(EVERY, inputs, Runs.unwatched(folder.journal(), Bench.EVENING));
    }

    private void apply(Edit edit) throws Exception {
        folder.journal().apply(edit);
    }

    private static Outline square(double edge) {
        return Outline.around(List.of(new Drawing.Path(
                List.of(new Point(0, 0), new Point(edge, 0), new Point(edge, edge), new Point(0, edge)), true)));
    }
}
