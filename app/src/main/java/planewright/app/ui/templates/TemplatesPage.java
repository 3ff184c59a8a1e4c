package planewright.app.ui.templates;

import java.awt.Component;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.api.figure.Drawing;
import planewright.api.journal.Template;
import planewright.app.journal.BuildDayRecord;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.journal.Ids;
import planewright.app.journal.Lineage;
import planewright.app.journal.SetUpRecord;
import planewright.app.journal.StepRecord;
import planewright.app.journal.TemplateContent;
import planewright.app.journal.TemplateDraft;
import planewright.app.journal.TemplateRecord;
import planewright.app.print.Sheet;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.FirstWide;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.KeyboardKept;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.shared.material.Cautions;

/** All templates as cards: outlines, procedures and set-ups, with where they came from and what has flown with them. */
public final class TemplatesPage extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final System.Logger LOGGER = System.getLogger(TemplatesPage.class.getName());
    /** Straight pieces of a shown outline stray no further from it than half a hair; chosen. */
    private static final double TOLERANCE_MM = 0.05;

    private final transient Workroom room;
    private final transient Consumer<String> start;
    private final transient Background.Latest readings;
    private final JTextField filter = new JTextField();
    private final JComboBox<Optional<Template.Kind>> kind = new JComboBox<>();
    private final Column column = new Column(10, 10);
    private final JButton ofBuild = Buttons.of("new-set-up", Texts.TEMPLATE_FROM_BUILD.text(), this::newSetUp);
    private final transient Map<String, Drawing> drawings = new HashMap<>();
    /** Forms that are written in, by the ids of their templates; new ones first. */
    private final transient Map<String, TemplateForm> forms = new java.util.LinkedHashMap<>();

    /**
     * @param start begins a build with a template, by its id
     */
    public TemplatesPage(Workroom room, Consumer<String> start) {
        super(new MigLayout("insets 10 6 0 10, gap 6, fill, wrap 1", "[grow,fill]", "[][grow,fill]"));
        this.room = room;
        this.start = start;
        this.readings = room.background().latest();
        setName("templates");
        add(bar(), "wmin 0");
        add(column.scrolled());
        Buttons.onEdit(filter, this::refresh);
        kind.addActionListener(event -> refresh());
        WhenShown.refresh(this, room, this::refresh);
    }

    private JPanel bar() {
        var bar = new JPanel(FirstWide.filter());
        Words.named(filter, Texts.TEMPLATES_FILTER.text(), "templates-filter");
        filter.putClientProperty("JTextField.showClearButton", true);
        kind.addItem(Optional.empty());
        Stream.of(Template.Kind.values()).map(Optional::of).forEach(kind::addItem);
        kind.setRenderer(Words.choice(each -> ((Optional<?>) each)
                .map(known -> Terms.of(((Template.Kind) known).word()))
                .orElseGet(Texts.TEMPLATES_ALL_KINDS::text)));
        kind.setName("templates-kind");
        kind.getAccessibleContext().setAccessibleName(Texts.TEMPLATES_ALL_KINDS.text());
        bar.setBorder(BorderFactory.createEmptyBorder(0, 10, 0, 10));
        bar.add(filter);
        bar.add(kind);
        bar.add(Buttons.of(
                "new-outline",
                Texts.NEW_OUTLINE.text(),
                () -> Files.chooseFile(this, "svg").ifPresent(this::newOutline)));
        bar.add(Buttons.with(Icons.ADD, Buttons.of("new-procedure", Texts.NEW_PROCEDURE.text(), this::newProcedure)));
        bar.add(ofBuild);
        return bar;
    }

    /** Names of templates that are being written and not yet saved. */
    public List<String> unsaved() {
        return forms.isEmpty() ? List.of() : List.of(Texts.TEMPLATES.text());
    }

    private void refresh() {
        var build = room.build().filter(this::hasSetUp);
        ofBuild.setEnabled(build.isPresent());
        ofBuild.setToolTipText(build.map(each -> Texts.TEMPLATE_FROM_BUILD_HINT.text(each.name()))
                .orElseGet(Texts.TEMPLATE_NO_SET_UP::text));
        var all = room.journal().templates();
        readings.ask(() -> read(all), read -> {
            drawings.putAll(read);
            fill(all);
        });
    }

    private boolean hasSetUp(BuildRecord build) {
        return room.journal().isAtHand(build.id())
                && !SetUpRecord.newest(room.journal().log(build.id())).isEmpty();
    }

    /** Outlines that were not read before; one that cannot be read is shown without. */
    private Map<String, Drawing> read(List<TemplateRecord> templates) {
        Cautions.prepare(Locale.getDefault());
        var read = new HashMap<String, Drawing>();
        for (var template : templates) {
            template.outline().filter(hash -> !drawings.containsKey(hash)).ifPresent(hash -> {
                try {
                    read.put(
                            hash, room.program().folder().outlines().read(hash).drawing(template.name(), TOLERANCE_MM));
                } catch (IOException unreadable) {
                    LOGGER.log(
                            System.Logger.Level.WARNING, "outline of template '" + template.name() + "'", unreadable);
                }
            });
        }
        return read;
    }

    private void fill(List<TemplateRecord> all) {
        var shown = all.stream().filter(this::passes).sorted(provenFirst()).toList();
        var cards = new ArrayList<Component>();
        forms.entrySet().stream()
                .filter(each -> all.stream().noneMatch(known -> known.id().equals(each.getKey())))
                .forEach(each -> cards.add(each.getValue()));
        if (shown.isEmpty()) {
            cards.add(Words.quiet((all.isEmpty() ? Texts.NO_TEMPLATES : Texts.NO_TEMPLATE_BEARS).text()));
        }
        shown.forEach(
                template -> cards.add(forms.containsKey(template.id()) ? forms.get(template.id()) : card(template)));
        KeyboardKept.in(column, column, () -> column.fill(cards));
    }

    /** What has flown, and flown most, stands first. */
    private static Comparator<TemplateRecord> provenFirst() {
        return Comparator.<TemplateRecord>comparingInt(
                        template -> -template.flewOn().size())
                .thenComparing(TemplateRecord::name);
    }

    private boolean passes(TemplateRecord template) {
        @SuppressWarnings("unchecked") // the box holds nothing else
        var wanted = (Optional<Template.Kind>) kind.getSelectedItem();
        var said = Stream.of(
                        Stream.of(template.name(), Terms.of(template.kind().word())),
                        template.tags().stream(),
                        template.notes().stream(),
                        template.steps().stream().map(StepRecord::text),
                        template.values().stream().map(SetUpRecord::name),
                        template.cameFrom().map(BuildDayRecord::name).stream(),
                        template.flewOn().stream().map(BuildDayRecord::name))
                .flatMap(each -> each)
                .collect(Collectors.joining(" "))
                .toLowerCase(Locale.ROOT);
        return (wanted == null || wanted.isEmpty() || wanted.get() == template.kind())
                && Stream.of(filter.getText().strip().toLowerCase(Locale.ROOT).split("\\s+"))
                        .allMatch(said::contains);
    }

    private TemplateCard card(TemplateRecord template) {
        var drawing = template.outline().map(drawings::get);
        var actions = new JPanel(new MigLayout("insets 0, gap 2, wrap 1", "[fill]"));
        actions.setOpaque(false);
        actions.add(Buttons.of("start-with", Texts.START_WITH.text(), () -> start.accept(template.id())));
        actions.add(Buttons.with(Icons.EDIT, Buttons.plain("edit-template", Texts.EDIT.text(), () -> edit(template))));
        room.build()
                .filter(build ->
                        template.flewOn().stream().noneMatch(day -> day.build().equals(build.id())))
                .ifPresent(build -> actions.add(Buttons.plain(
                        "flew-template", Texts.TEMPLATE_FLEW.text(build.name()), () -> flew(template, build))));
        drawing.ifPresent(shape -> actions.add(Buttons.plain(
                "print-template",
                Texts.PRINT_TRUE_SIZE.text(),
                () -> Files.print(
                        this,
                        room,
                        template.name(),
                        () -> new Sheet(template.name(), List.of(new Sheet.TrueSize(shape)))))));
        actions.add(Buttons.plain(
                "remove-template",
                Texts.REMOVE.text(),
                () -> room.edit(Edit.remove(Texts.TEMPLATE_REMOVED.text(template.name()), template), () -> {})));
        return new TemplateCard(template, drawing, this::nameOf, room.units(), actions);
    }

    private Optional<String> nameOf(String id) {
        return room.journal().templates().stream()
                .filter(each -> each.id().equals(id))
                .map(TemplateRecord::name)
                .findFirst();
    }

    private void flew(TemplateRecord template, BuildRecord build) {
        var flown = template.withLineage(
                template.lineage().flownOn(BuildDayRecord.of(build, room.now().toLocalDate())));
        room.edit(Edit.change(Texts.TEMPLATE_EDIT.text(template.name()), template, flown), () -> {});
    }

    private void edit(TemplateRecord template) {
        open(Optional.of(template), template, TemplateDraft.of(template));
    }

    private void newProcedure() {
        var step = new StepRecord(
                Ids.small(), Texts.STEP_TEXT.text(), Optional.empty(), Optional.empty(), List.of(), List.of());
        begin(
                "",
                new TemplateContent.Procedure(List.of(step)),
                new TemplateDraft.Stepwise(List.of()),
                Optional.empty());
    }

    private void newSetUp() {
        room.build().ifPresent(build -> {
            var values = SetUpRecord.newest(room.journal().log(build.id()));
            begin(
                    Texts.TEMPLATE_SET_UP_OF.text(build.name()),
                    new TemplateContent.SetUp(values),
                    TemplateDraft.valued(values),
                    Optional.of(build));
        });
    }

    private void newOutline(Path svg) {
        room.inOrder(() -> room.program().folder().outlines().add(svg), hash -> {
            var name = svg.getFileName().toString().replaceFirst("[.][^.]*$", "");
            begin(name, new TemplateContent.Outline(hash), new TemplateDraft.Outlined(hash), room.build());
        });
    }

    private void begin(String name, TemplateContent content, TemplateDraft.Content typed, Optional<BuildRecord> build) {
        var today = room.now().toLocalDate();
        var stays = TemplateRecord.of(Texts.TEMPLATES.text(), today, content)
                .withLineage(build.map(each -> Lineage.NONE.from(BuildDayRecord.of(each, today)))
                        .orElse(Lineage.NONE));
        open(Optional.empty(), stays, new TemplateDraft(name, "", "", typed));
    }

    private void open(Optional<TemplateRecord> before, TemplateRecord stays, TemplateDraft draft) {
        var form = new TemplateForm(room, before, stays, draft, () -> {
            forms.remove(stays.id());
            refresh();
        });
        forms.put(stays.id(), form);
        fill(room.journal().templates());
        javax.swing.SwingUtilities.invokeLater(form::focus);
    }
}
