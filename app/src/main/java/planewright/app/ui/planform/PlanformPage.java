package planewright.app.ui.planform;

import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import planewright.api.journal.Planform;
import planewright.api.quantity.Units;
import planewright.app.journal.BuildRecord;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Cards;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.ContextMenu;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.UnitsMenu;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.shared.lattice.BalanceBand;

/** The shape of a build: a drawing with handles, its figures, and the same numbers in tables. */
public final class PlanformPage extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final String SHAPE = "shape";
    private static final String BEGIN = "begin";
    private static final int NARROW = 780;
    private static final int LOW = 380;
    private static final int HIGH = 820;
    private static final double DRAWING_SHARE = 0.5;
    private static final List<Double> METRIC_STEPS = List.of(0.0, 0.0005, 0.001, 0.005, 0.01);
    private static final List<Double> INCH_STEPS = DoubleStream.of(0, 1 / 32.0, 1 / 16.0, 1 / 8.0, 1 / 4.0)
            .map(inch -> inch * 0.0254)
            .boxed()
            .toList();

    private final transient Workroom room;
    private final transient PlanformDraft draft;
    private final transient Lengths lengths;
    private final transient ShapeTables tables;
    private final transient LiveBalance live;
    private final PlanformView view;
    private final PlanformFigures figures;
    private final JTextArea why = Words.problem();
    private final JTextArea holding = Words.quiet(Texts.PLANFORM_HINT.text());
    private final JComboBox<Double> snap = new JComboBox<>();
    private final JComboBox<Sight> sight = new JComboBox<>(Sight.values());
    private final Cards cards = new Cards();
    private final JSplitPane split = new JSplitPane();
    private final transient ShapeTable surfaces;
    private final transient ShapeTable sections;
    private final transient ShapeTable controls;
    private transient Optional<BalanceBand> band = Optional.empty();
    private transient Optional<String> shown = Optional.empty();
    private transient Optional<Planform> asked = Optional.empty();
    private boolean settled;
    private transient Unit<?> stepsIn;
    private boolean laidOut;

    public PlanformPage(Workroom room) {
        this.room = room;
        draft = new PlanformDraft(room);
        lengths = new Lengths(room.units());
        tables = new ShapeTables(draft, lengths);
        live = new LiveBalance(room.background(), this::answered, room::failed);
        view = new PlanformView(draft, new HandleWords(lengths));
        figures = new PlanformFigures(lengths, UnitsMenu.button(room, "planform-units"));
        surfaces = new ShapeTable(
                room,
                draft,
                Texts.PLANFORM_SURFACES.text(),
                "planform-surfaces",
                Texts.PLANFORM_EDIT.text(),
                tables::surfaces,
                tables.ofSurfaces());
        sections = new ShapeTable(
                room,
                draft,
                Texts.PLANFORM_SECTIONS.text(),
                "planform-sections",
                Texts.PLANFORM_EDIT.text(),
                tables::sections,
                tables.ofSections());
        controls = new ShapeTable(
                room,
                draft,
                Texts.PLANFORM_CONTROLS.text(),
                "planform-controls",
                Texts.PLANFORM_EDIT.text(),
                tables::controls,
                tables.ofControls());
        List.of(surfaces, sections, controls).forEach(each -> draft.cells().add(each.table()));
        List.of(sections, controls).forEach(each -> draft.cellsOfChosen().add(each.table()));
        setLayout(cards);
        setName("planform-page");
        add(page(), SHAPE);
        add(new BeginShape(draft, lengths), BEGIN);
        surfaces.table().getSelectionModel().addListSelectionListener(event -> {
            int row = surfaces.table().getSelectedRow();
            if (row >= 0 && row < tables.surfaces()) {
                draft.choose(row);
            }
        });
        view.onHold(this::tellHolding);
        draft.onChange(this::refresh);
        WhenShown.refresh(this, room, draft::refresh);
    }

    private JScrollPane page() {
        var page = new Tall(new MigLayout("insets 10, gap 8, fill, hidemode 3", "[grow,fill]", "[][][grow,fill]"));
        page.add(figures, "cell 0 0, wmin 0");
        page.add(why, "cell 0 1, wmin 0");
        why.setName("planform-why");
        split.setLeftComponent(drawing());
        split.setRightComponent(beside());
        split.setBorder(BorderFactory.createEmptyBorder());
        split.setContinuousLayout(true);
        split.setResizeWeight(DRAWING_SHARE);
        page.add(split, "cell 0 2, wmin 0, hmin 0");
        page.setLeast(LOW);
        page.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                layOut(page);
            }
        });
        return page.scrolled();
    }

    /** Tables beside the drawing where there is room, else below it. */
    private void layOut(Tall page) {
        boolean narrow = page.getWidth() < NARROW;
        int wanted = narrow ? JSplitPane.VERTICAL_SPLIT : JSplitPane.HORIZONTAL_SPLIT;
        page.setLeast(narrow ? HIGH : LOW);
        if (!laidOut || split.getOrientation() != wanted) {
            laidOut = true;
            split.setOrientation(wanted);
            split.setDividerLocation((int) (DRAWING_SHARE * (narrow ? HIGH : page.getWidth())));
        }
    }

    private JPanel drawing() {
        var panel = new JPanel(new MigLayout("insets 0, gap 6, fill", "[grow,fill]", "[][80:180:,grow,fill][34!]"));
        panel.setMinimumSize(new Dimension(160, 180));
        var bar = new JPanel(new MigLayout("insets 0, gap 8"));
        bar.add(Buttons.with(Icons.FIT, Buttons.of("planform-fit", Texts.PLANFORM_FIT.text(), view::fit)));
        Words.named(sight, Texts.PLANFORM_SIGHT.text(), "planform-sight");
        sight.setRenderer(
                Words.choice(from -> (from == Sight.SIDE ? Texts.PLANFORM_SIDE : Texts.PLANFORM_ABOVE).text()));
        sight.addActionListener(event -> view.look((Sight) sight.getSelectedItem()));
        bar.add(sight);
        Words.named(snap, Texts.PLANFORM_SNAP.text(), "planform-snap");
        snap.setRenderer(Words.choice(step -> (Double) step == 0
                ? Texts.PLANFORM_SNAP_NONE.text()
                : Texts.PLANFORM_SNAP_TO.text(lengths.step((Double) step))));
        snap.addActionListener(event -> {
            if (snap.getSelectedItem() != null) {
                view.snapTo((Double) snap.getSelectedItem());
            }
        });
        steps();
        bar.add(snap);
        panel.add(bar, "wmin 0, wrap");
        panel.add(view, "wmin 0, hmin 0, wrap");
        holding.setName("planform-holding");
        panel.add(holding, "wmin 0");
        return panel;
    }

    /** Of the unit in which lengths are shown. */
    private void steps() {
        if (lengths.unit().equals(stepsIn)) {
            return;
        }
        stepsIn = lengths.unit();
        var steps = lengths.unit().equals(Units.INCH) ? INCH_STEPS : METRIC_STEPS;
        snap.removeAllItems();
        steps.forEach(snap::addItem);
        snap.setSelectedIndex(2);
    }

    private javax.swing.JComponent beside() {
        var column = new Column(8, 0);
        column.setBorder(BorderFactory.createEmptyBorder(0, 8, 0, 4));
        column.add(heading(Texts.PLANFORM_SURFACES, surfaces, "surface", tables::addSurface, tables::removeSurface));
        column.add(surfaces.scrolled());
        column.add(heading(
                Texts.PLANFORM_SECTIONS,
                sections,
                "section",
                () -> tables.addSection(sections.table().getSelectedRow()),
                () -> tables.removeSection(sections.table().getSelectedRow())));
        column.add(sections.scrolled());
        column.add(heading(
                Texts.PLANFORM_CONTROLS,
                controls,
                "control",
                tables::addControl,
                () -> tables.removeControl(controls.table().getSelectedRow())));
        column.add(controls.scrolled());
        column.add(Words.quiet(Texts.PLANFORM_TABLE_HINT.text()));
        var scroll = column.scrolled();
        scroll.setMinimumSize(new Dimension(160, 120));
        return scroll;
    }

    private JPanel heading(Texts title, ShapeTable table, String name, Runnable add, Runnable remove) {
        var bar = new JPanel(new MigLayout("insets 0, gap 4", "[grow][][]"));
        bar.setOpaque(false);
        bar.add(Look.heading(title.text(), 1), "wmin 0");
        var more = Buttons.plain("add-" + name, Texts.PLANFORM_ADD.text(), () -> {
            if (draft.cells().stop()) {
                add.run();
            }
        });
        var fewer = Buttons.plain("remove-" + name, Texts.REMOVE.text(), () -> {
            if (draft.cells().stop()) {
                remove.run();
            }
        });
        bar.add(more);
        bar.add(fewer);
        ContextMenu.on(table.table(), more, fewer);
        return bar;
    }

    private void refresh() {
        var shape = draft.shape();
        var id = draft.build().map(BuildRecord::id);
        if (!id.equals(shown)) {
            shown = id;
            band = Optional.empty();
            asked = Optional.empty();
            Words.show(why, "");
            view.fit();
        }
        cards.show(this, shape.isPresent() ? SHAPE : BEGIN);
        shape.ifPresent(this::show);
    }

    private void show(Planform shape) {
        view.refresh();
        sight.setSelectedItem(view.sight());
        surfaces.refresh();
        if (surfaces.table().getSelectedRow() != draft.chosen()) {
            surfaces.table().setRowSelectionInterval(draft.chosen(), draft.chosen());
        }
        sections.refresh();
        controls.refresh();
        tellHolding();
        steps();
        if (!asked.equals(Optional.of(shape))) {
            settled = false;
        }
        asked = Optional.of(shape);
        live.ask(shape, draft.build().map(BuildRecord::layout).orElse(""), draft.isTrying());
        showFigures(shape);
    }

    private void tellHolding() {
        holding.setText(view.holding().isEmpty() ? Texts.PLANFORM_HINT.text() : view.holding());
    }

    private void answered(LiveBalance.Answer answer) {
        band = answer.band();
        Words.show(why, answer.why());
        draft.shape().ifPresent(shape -> {
            settled = !draft.isTrying() && asked.equals(Optional.of(shape));
            showFigures(shape);
        });
    }

    private void showFigures(Planform shape) {
        figures.show(shape, band, settled);
        view.show(band, balancePoint());
    }

    /** Of the set-up that it flies with, m. */
    private Optional<Double> balancePoint() {
        return draft.build()
                .flatMap(build -> room.journal().setUpValue(build.id(), "balance point"))
                .map(dated -> dated.what().value())
                .filter(value -> Units.alike(value.value().getUnit(), Units.METRE))
                .map(value -> value.asType(Length.class).in(Units.METRE));
    }
}
