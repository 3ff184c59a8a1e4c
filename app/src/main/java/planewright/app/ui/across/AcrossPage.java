package planewright.app.ui.across;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.Unit;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import planewright.app.across.Across;
import planewright.app.across.BuildValue;
import planewright.app.across.Named;
import planewright.app.across.Pairs;
import planewright.app.across.View;
import planewright.app.exchange.AcrossTable;
import planewright.app.print.AcrossSheet;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.ContextMenu;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.SteadyTable;
import planewright.app.ui.common.Tables;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.UnitBox;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.shared.fit.Law;

/** What all builds have of one thing in a table, and against another as dots with the line that tells what the next build has. */
public final class AcrossPage extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int NARROW = 640;
    private static final double TABLE_SHARE = 0.45;

    private final transient Workroom room;
    private final transient Background.Latest questions;
    private final JComboBox<Picked> value = new JComboBox<>();
    private final JComboBox<Picked> against = new JComboBox<>();
    private final UnitBox unit;
    private final UnitBox againstUnit;
    private final JCheckBox every = new JCheckBox(Texts.ACROSS_EVERY.text());
    private final JComboBox<Law> law = new JComboBox<>(Law.values());
    private final AskedValue at = new AskedValue(this::draw);
    private final JPanel line = new JPanel(new MigLayout("insets 0, gap 6, hidemode 3", "[][][][80:140:,fill]"));
    private final JPanel choices = new JPanel(new MigLayout("insets 0, gap 6, hidemode 3", "[][120:300:,grow,fill][]"));
    private final JTextArea said = Words.of("");
    private final JTextArea nothing = Words.quiet(Texts.ACROSS_READING.text());
    private final AcrossModel model;
    private final JTable table;
    private final FittedView chart = new FittedView(this::showDot);
    private final JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT);
    private final JButton entry =
            Buttons.with(Icons.ENTRY, Buttons.plain("across-entry", Texts.SHOW_ENTRY.text(), this::showEntry));
    private final JButton copy =
            Buttons.with(Icons.COPY, Buttons.plain("copy-across", Texts.COPY_CSV.text(), this::copy));
    private final JButton print =
            Buttons.with(Icons.PRINT, Buttons.of("print-across", Texts.PRINT.text(), this::print));
    /** Ids of builds that do not count, for each pair of things that was looked at. */
    private final transient Map<String, Set<String>> leftOut = new HashMap<>();

    private transient List<Named> names = List.of();
    private transient List<Picked> offered = List.of();
    private transient Optional<Pairs> pairs = Optional.empty();
    private transient Optional<View> view = Optional.empty();
    private boolean filling;

    public AcrossPage(Workroom room) {
        super(new MigLayout("insets 10, gap 8, fill, hidemode 3", "[grow,fill]", "[][][][][grow,fill]"));
        this.room = room;
        questions = room.background().latest();
        unit = new UnitBox(room, "across-unit");
        againstUnit = new UnitBox(room, "across-against-unit");
        model = new AcrossModel(room.units(), this::tick);
        table = new SteadyTable(model);
        setName("across");
        add(heading(), "cell 0 0, wmin 0");
        add(choices, "cell 0 1, wmin 0");
        add(at.problem(), "cell 0 2, wmin 0");
        add(said, "cell 0 3, wmin 0");
        add(split, "cell 0 4, hmin 120, wmin 0");
        add(nothing, "cell 0 3, wmin 0");
        prepareChoices();
        said.setName("across-said");
        nothing.setName("across-nothing");
        for (var hidden : List.of(said, split, line, againstUnit, chart)) {
            hidden.setVisible(false);
        }
        prepareTable();
        prepareSplit();
        WhenShown.refresh(this, room, this::refresh);
    }

    private JPanel heading() {
        var heading = new JPanel(new MigLayout("insets 0, gap 6", "[]8:push[][][]"));
        heading.add(Look.heading(Texts.ACROSS.text(), 1.3), "wmin 0");
        heading.add(entry);
        heading.add(copy);
        heading.add(print);
        return heading;
    }

    private void prepareChoices() {
        for (var box : List.of(value, against)) {
            box.setRenderer(
                    Words.choice(each -> each == null ? Texts.ACROSS_NOTHING_ELSE.text() : ((Picked) each).text()));
            box.setPrototypeDisplayValue(new Picked(
                    new Named("a measurement of a part", planewright.api.quantity.Units.GRAM, 1), Optional.empty()));
            box.addActionListener(event -> chosen());
        }
        Words.labelled(choices, Texts.ACROSS_VALUE.text(), value, "across-value");
        choices.add(unit, "wrap");
        every.setName("across-every");
        every.addActionListener(event -> chosen());
        choices.add(every, "skip 1, span 2, wrap");
        Words.labelled(choices, Texts.ACROSS_AGAINST.text(), against, "across-against");
        choices.add(againstUnit, "wrap");
        Words.labelled(line, Texts.ACROSS_LAW.text(), law, "across-law");
        law.setRenderer(Words.choice(each -> (each == Law.POWER ? Texts.ACROSS_POWER : Texts.ACROSS_STRAIGHT).text()));
        law.setToolTipText(Texts.ACROSS_LAW_HINT.text());
        law.addActionListener(event -> draw());
        Words.labelled(line, Texts.ACROSS_AT.text(), at.field(), "across-at");
        choices.add(line, "span 3, wmin 0, growx");
    }

    private void prepareTable() {
        table.setName("across-table");
        table.getAccessibleContext().setAccessibleName(Texts.ACROSS.text());
        table.getTableHeader().setReorderingAllowed(false);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_LAST_COLUMN);
        table.getSelectionModel().addListSelectionListener(event -> mark());
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2
                        && !table.isCellEditable(table.getSelectedRow(), table.getSelectedColumn())) {
                    showEntry();
                }
            }
        });
        ContextMenu.on(table, entry, copy, print);
    }

    private void prepareSplit() {
        split.setLeftComponent(new JScrollPane(table));
        split.setRightComponent(chart);
        split.setResizeWeight(TABLE_SHARE);
        split.setContinuousLayout(true);
        split.setBorder(null);
        split.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                int wanted = split.getWidth() < NARROW ? JSplitPane.VERTICAL_SPLIT : JSplitPane.HORIZONTAL_SPLIT;
                if (split.getOrientation() != wanted) {
                    split.setOrientation(wanted);
                    split.setDividerLocation(TABLE_SHARE);
                }
            }
        });
    }

    private void refresh() {
        var wanted = chosen(value);
        var other = chosen(against);
        boolean all = every.isSelected();
        questions.ask(() -> read(wanted, other, all), this::take);
    }

    /** What is read in one go: the names, and of those that are chosen the values. */
    private record Read(List<Named> names, List<Picked> offered, Optional<Pairs> pairs) {}

    /** Before anything is chosen: what most builds have. */
    private Read read(Optional<Named> wanted, Optional<Named> other, boolean all) throws IOException {
        AcrossSheet.prepare();
        var across = new Across(room.journal(), room.program().index().join());
        var found = across.names();
        var shown = wanted.flatMap(each -> still(each, found))
                .or(() -> found.stream().findFirst());
        return new Read(
                found,
                offered(found),
                shown.isPresent()
                        ? Optional.of(across.pairs(shown.get(), other.flatMap(each -> still(each, found)), all))
                        : Optional.empty());
    }

    /** What only one build has is offered while there is nothing that several have: nobody finds anything among thousands. */
    private List<Picked> offered(List<Named> found) {
        var shared = found.stream().filter(each -> each.builds() > 1).toList();
        return (shared.isEmpty() ? found : shared).stream().map(this::picked).toList();
    }

    private Picked picked(Named named) {
        return new Picked(named, room.units().preferred(named.kind()));
    }

    private static Optional<Named> still(Named named, List<Named> found) {
        return found.stream()
                .filter(each -> each.is(named.name(), named.kind()))
                .findFirst();
    }

    private static Optional<Named> chosen(JComboBox<Picked> box) {
        return Optional.ofNullable((Picked) box.getSelectedItem()).map(Picked::named);
    }

    private void take(Read read) {
        names = read.names();
        if (!read.offered().equals(offered)) {
            offered = read.offered();
            fill();
        }
        choices.setVisible(!offered.isEmpty());
        pairs = read.pairs();
        pairs.ifPresent(shown -> {
            unit.offer(shown.unit());
            againstUnit.offer(shown.againstUnit());
            leftOut.computeIfAbsent(key(shown), key -> new HashSet<>(shown.carried()));
        });
        draw();
    }

    private void fill() {
        filling = true;
        for (var box : List.of(value, against)) {
            var before = chosen(box);
            var model = new DefaultComboBoxModel<>(offered.toArray(Picked[]::new));
            if (box == against) {
                model.insertElementAt(null, 0);
                model.setSelectedItem(null);
            }
            before.flatMap(each -> still(each, names)).ifPresent(each -> model.setSelectedItem(picked(each)));
            box.setModel(model);
        }
        filling = false;
    }

    private void chosen() {
        if (!filling) {
            refresh();
        }
    }

    private static String key(Pairs pairs) {
        return pairs.value().text() + "\n" + pairs.against().map(Named::text).orElse("");
    }

    private void tick(Pairs.Pair pair, boolean counts) {
        var out = leftOut.get(key(pairs.orElseThrow()));
        if (counts) {
            out.remove(pair.value().build().id());
        } else {
            out.add(pair.value().build().id());
        }
        draw();
    }

    /** Shows what was read in the units, by the law and without the builds of the builder's choice. */
    private void draw() {
        if (filling) {
            return;
        }
        view = pairs.map(this::view);
        boolean some = view.filter(shown -> !shown.pairs().pairs().isEmpty()).isPresent();
        boolean two = some && view.orElseThrow().pairs().against().isPresent();
        view.ifPresent(this::showTable);
        Words.show(nothing, some ? two ? "" : Texts.ACROSS_HINT.text() : Texts.ACROSS_EMPTY.text());
        Words.show(said, two ? String.join(" ", AcrossSheet.said(view.orElseThrow())) : "");
        split.setVisible(some);
        line.setVisible(two);
        at.problem().setVisible(two && !at.problem().getText().isEmpty());
        againstUnit.setVisible(two);
        if (chart.isVisible() != two) {
            chart.setVisible(two);
            split.setDividerLocation(TABLE_SHARE);
        }
        if (two) {
            chart.show(fitted(view.orElseThrow()), said.getText());
            at.suggest(view.orElseThrow().middleAcross().map(Amounts::of).orElse(""));
        }
        List.of(entry, copy, print).forEach(button -> button.setEnabled(some));
        mark();
        revalidate();
    }

    private void showTable(View shown) {
        var build = selected().map(pair -> pair.value().build().id());
        model.show(shown);
        Tables.fit(table);
        build.flatMap(model::rowOf)
                .or(() -> model.getRowCount() > 0 ? Optional.of(0) : Optional.empty())
                .ifPresent(row -> table.setRowSelectionInterval(row, row));
    }

    private View view(Pairs shown) {
        var across = shownUnit(shown.againstUnit());
        return View.of(
                shown,
                (Law) law.getSelectedItem(),
                leftOut.get(key(shown)),
                shownUnit(shown.unit()),
                across,
                at.in(across));
    }

    private Unit<?> shownUnit(Unit<?> common) {
        return room.units().preferred(common).orElse(common);
    }

    private static planewright.app.figure.Fitted fitted(View shown) {
        var title = Texts.ACROSS_TITLE.text(
                Terms.of(shown.pairs().value().name()),
                Terms.of(shown.pairs().against().orElseThrow().name()));
        return shown.fitted(title, Terms::of);
    }

    private Optional<Pairs.Pair> selected() {
        int row = table.getSelectedRow();
        return row < 0 || row >= model.getRowCount() ? Optional.empty() : Optional.of(model.pair(row));
    }

    /** Marks the dot of the build that is chosen in the table. */
    private void mark() {
        var build = selected().map(pair -> pair.value().build().id());
        chart.choose(view.flatMap(shown -> build.flatMap(id -> {
            var dots = shown.relation().dots();
            for (int i = 0; i < dots.size(); i++) {
                if (dots.get(i).pair().value().build().id().equals(id)) {
                    return Optional.of(i);
                }
            }
            return Optional.empty();
        })));
    }

    private void showDot(int dot) {
        view.ifPresent(shown -> show(shown.relation().dots().get(dot).pair().value()));
    }

    private void showEntry() {
        selected().ifPresent(pair -> show(pair.value()));
    }

    private void show(BuildValue wanted) {
        wanted.entry()
                .ifPresentOrElse(
                        stands -> room.showEntry(stands.build(), stands.id()),
                        () -> room.show(wanted.build().id()));
    }

    private void copy() {
        view.ifPresent(shown -> {
            Toolkit.getDefaultToolkit()
                    .getSystemClipboard()
                    .setContents(new StringSelection(AcrossTable.text(shown)), null);
            room.say(Texts.COPIED.text(shown.pairs().pairs().size()));
        });
    }

    private void print() {
        view.ifPresent(shown -> {
            var picture = shown.pairs().against().map(other -> fitted(shown));
            Files.print(
                    this,
                    room,
                    Texts.ACROSS.text() + " " + shown.pairs().value().name(),
                    () -> AcrossSheet.of(room.journal().name(), shown, picture));
        });
    }
}
