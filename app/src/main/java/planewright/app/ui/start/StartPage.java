package planewright.app.ui.start;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import planewright.api.quantity.Units;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.CarryOver;
import planewright.app.journal.Flown;
import planewright.app.journal.TemplateRecord;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.CheckedCell;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.OpenCells;
import planewright.app.ui.common.Proof;
import planewright.app.ui.common.SteadyTable;
import planewright.app.ui.common.Tables;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.common.Wrapping;
import planewright.shared.planform.Outlines;
import planewright.shared.quantity.NumberText;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;

/** A build that is begun from a proven one and from templates: what it takes over is listed before anything is written. */
public final class StartPage extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int REST_MILLIS = 200;

    private final transient Workroom room;
    private final transient Runnable leave;
    private final transient Background.Latest questions;
    private final JTextField name = new JTextField();
    private final JComboBox<Optional<BuildRecord>> from = new JComboBox<>();
    private final JTextField size = new JTextField("1", 8);
    private final JPanel offered = new JPanel(new Wrapping(14, 4));
    private final JScrollPane choices = choices();
    private final JTextArea proof = Words.quiet("");
    private final JTextArea hint = Words.quiet(Texts.CARRY_NOTHING.text());
    private final JTextArea problem = Words.problem();
    private final CarriedModel model;
    private final SteadyTable table;
    private final transient OpenCells cells;
    private final Timer rest = new Timer(REST_MILLIS, event -> takeStock());
    private final transient Map<String, JCheckBox> boxes = new LinkedHashMap<>();
    private boolean filling;
    /** Whether a build was to be begun, so that a name is missed. */
    private boolean asked;
    /** Whether a build is to be begun as soon as what was chosen is listed. */
    private boolean beginning;

    private transient Optional<Stock> listed = Optional.empty();
    /** What is listed once no cell is open. */
    private transient Optional<Stock> waiting = Optional.empty();

    /** All that a list depends on. */
    private record Choice(Optional<BuildRecord> build, List<TemplateRecord> templates, double times) {}

    /**
     * What the builder chooses from.
     *
     * @param proof how far the build that is begun from is proven; empty where none is
     */
    private record Stock(Choice choice, CarryOver carried, String proof) {}

    /**
     * @param leave leads back to where the builder came from
     */
    public StartPage(Workroom room, Runnable leave) {
        super(new MigLayout("insets 10, gap 8, fill, hidemode 3", "[grow,fill]", "[][][][][][][grow,fill][][]"));
        this.room = room;
        model = new CarriedModel(room.units());
        table = new SteadyTable(model);
        cells = new OpenCells(room);
        this.leave = leave;
        this.questions = room.background().latest();
        setName("start");
        rest.setRepeats(false);
        add(Look.heading(Texts.START_FROM.text(), 1.3), "cell 0 0");
        add(head(), "cell 0 1, wmin 0");
        add(Words.quiet(Texts.START_SIZE_HINT.text()), "cell 0 2, wmin 0");
        proof.setName("start-proof");
        proof.setVisible(false);
        add(proof, "cell 0 3, wmin 0");
        offered.getAccessibleContext().setAccessibleName(Texts.TEMPLATES.text());
        add(choices, "cell 0 4, wmin 0, hmin 48, shrinkprioy 200");
        add(hint, "cell 0 5, wmin 0");
        add(new JScrollPane(table), "cell 0 6, h 120:120, wmin 0");
        problem.setName("start-problem");
        add(problem, "cell 0 7, wmin 0");
        var done = new JPanel(new MigLayout("insets 0"));
        done.add(Buttons.of("begin-from", Texts.START_BEGIN.text(), this::begin));
        done.add(Buttons.of("leave-start", Texts.BACK.text(), leave));
        add(done, "cell 0 8");
        prepareTable();
        WhenShown.refresh(this, room, this::refresh);
        WhenShown.onHide(this, () -> beginning = false);
    }

    /** In a low window templates scroll, so that the list of what is carried over keeps its room. */
    private JScrollPane choices() {
        var column = new Column(0, 0);
        column.add(offered);
        var scrolled = column.scrolled();
        scrolled.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                revalidate();
            }
        });
        return scrolled;
    }

    private JPanel head() {
        var head = new JPanel(
                new MigLayout("insets 0, gap 6, fillx", "[][grow,fill,sg f]14[][grow,fill,sg f]14[][120:160:,fill]"));
        Words.labelled(head, Texts.NAME.text(), name, "start-name");
        from.setRenderer(Words.choice(each ->
                ((Optional<?>) each).map(known -> words((BuildRecord) known)).orElseGet(Texts.START_NO_BUILD::text)));
        Words.labelled(head, Texts.START_OF.text(), from, "start-from");
        Words.labelled(head, Texts.START_SIZE.text(), size, "start-size");
        from.addActionListener(event -> chosenAnew());
        Buttons.onEdit(size, rest::restart);
        Buttons.onEdit(name, this::judge);
        name.addActionListener(event -> begin());
        return head;
    }

    private void prepareTable() {
        cells.add(table);
        table.onClosed(this::relist);
        table.setName("carried");
        table.getAccessibleContext().setAccessibleName(Texts.CARRIED.text());
        table.putClientProperty("terminateEditOnFocusLost", false);
        table.setDefaultEditor(
                String.class, new CheckedCell(Texts.CARRIED.text(), "carried-cell", model::problem, room::say));
        table.getTableHeader().setReorderingAllowed(false);
        table.setAutoResizeMode(SteadyTable.AUTO_RESIZE_LAST_COLUMN);
    }

    /**
     * Offers to begin from these.
     *
     * @param build an id
     * @param templates ids
     */
    public void offer(Optional<String> build, Set<String> templates) {
        cells.end();
        fill();
        filling = true;
        asked = false;
        beginning = false;
        size.setText("1");
        from.setSelectedItem(build.flatMap(room.journal()::build));
        boxes.forEach((id, box) -> box.setSelected(templates.contains(id)));
        filling = false;
        takeStock();
        name.requestFocusInWindow();
    }

    private void refresh() {
        fill();
        takeStock();
    }

    /** Builds and templates as they are now; what was chosen stays chosen. */
    private void fill() {
        filling = true;
        var chosen = chosen().map(BuildRecord::id);
        from.removeAllItems();
        from.addItem(Optional.empty());
        room.journal().builds().stream().map(Optional::of).forEach(from::addItem);
        from.setSelectedItem(chosen.flatMap(room.journal()::build));
        var ticked = ticked();
        boxes.clear();
        offered.removeAll();
        for (var template : room.journal().templates()) {
            var box = new JCheckBox(words(template), ticked.contains(template.id()));
            box.setToolTipText(Proof.of(template));
            box.setName("start-with-" + template.name());
            box.addActionListener(event -> takeStock());
            boxes.put(template.id(), box);
            offered.add(box);
        }
        choices.setVisible(!boxes.isEmpty());
        offered.revalidate();
        revalidate();
        filling = false;
    }

    private static String words(BuildRecord build) {
        return build.name() + " (" + Terms.of(build.life().word()) + ")";
    }

    private static String words(TemplateRecord template) {
        var proven = template.flewOn().isEmpty() ? Texts.START_UNPROVEN : Texts.START_PROVEN;
        return template.name() + " (" + Terms.of(template.kind().word()) + ", " + proven.text() + ")";
    }

    /** Reads the build's log. */
    private String proof(BuildRecord build) {
        var flown = Flown.of(room.journal().log(build.id()));
        return flown.last()
                .map(day -> Texts.START_FLOWN.text(build.name(), flown.days(), Times.date(day)))
                .orElseGet(() -> Texts.START_NOT_FLOWN.text(build.name()));
    }

    private Optional<BuildRecord> chosen() {
        @SuppressWarnings("unchecked") // the box holds nothing else
        var chosen = (Optional<BuildRecord>) from.getSelectedItem();
        return chosen == null ? Optional.empty() : chosen;
    }

    private Set<String> ticked() {
        return boxes.entrySet().stream()
                .filter(each -> each.getValue().isSelected())
                .map(Map.Entry::getKey)
                .collect(java.util.stream.Collectors.toSet());
    }

    private void chosenAnew() {
        if (!filling) {
            takeStock();
        }
    }

    private void takeStock() {
        rest.stop();
        judge();
        if (sizeProblem().isEmpty()) {
            var choice = choice();
            questions.ask(
                    () -> new Stock(
                            choice,
                            CarryOver.of(room.journal(), choice.build(), choice.templates(), choice.times()),
                            choice.build().map(this::proof).orElse("")),
                    this::show);
        } else {
            beginning = false;
        }
    }

    private Choice choice() {
        var ticked = ticked();
        var templates = room.journal().templates().stream()
                .filter(each -> ticked.contains(each.id()))
                .toList();
        return new Choice(chosen(), templates, times());
    }

    /** Tells all that is wrong; a name is missed once a build was to be begun without one. */
    private List<String> judge() {
        var nameWrong = asked ? nameProblem() : "";
        var sizeWrong = sizeProblem();
        Words.mark(name, nameWrong);
        Words.mark(size, sizeWrong);
        var all = Stream.of(nameWrong, sizeWrong)
                .filter(words -> !words.isEmpty())
                .toList();
        Words.show(problem, String.join("\n", all));
        return all;
    }

    private String nameProblem() {
        var called = name.getText().strip();
        if (called.isEmpty()) {
            return Texts.NAME_NEEDED.text();
        }
        return room.journal().builds().stream().anyMatch(each -> each.name().equalsIgnoreCase(called))
                ? Texts.NAME_TAKEN.text(called)
                : "";
    }

    private String sizeProblem() {
        try {
            times();
            return "";
        } catch (IllegalArgumentException wrong) {
            return wrong.getLocalizedMessage();
        }
    }

    private void show(Stock stock) {
        Words.show(proof, stock.proof());
        waiting = Optional.of(stock);
        relist();
        if (beginning) {
            begin();
        }
    }

    private void relist() {
        if (waiting.isPresent() && !table.isEditing()) {
            listed = waiting;
            waiting = Optional.empty();
            var carried = listed.orElseThrow().carried();
            model.show(carried);
            Tables.fit(table);
            Words.show(hint, (carried.items().isEmpty() ? Texts.CARRY_NOTHING : Texts.CARRY_HINT).text());
        }
    }

    /** A factor, or the span that is wanted. */
    private double times() {
        var typed = size.getText().strip();
        var factor = NumberText.parse(typed);
        if (factor.isPresent()) {
            return checked(factor.get());
        }
        double span = span(typed);
        double before =
                chosen().flatMap(BuildRecord::planform).map(Outlines::span).orElse(0.0);
        if (!(before > 0)) {
            throw new IllegalArgumentException(Texts.START_SPAN_UNKNOWN.text());
        }
        return checked(span / before);
    }

    private static double span(String typed) {
        try {
            return QuantityText.parseLike(typed, Units.METRE)
                    .measured()
                    .asType(javax.measure.quantity.Length.class)
                    .in(Units.METRE);
        } catch (QuantityProblem noLength) {
            throw new IllegalArgumentException(Texts.START_SIZE_UNKNOWN.text(typed), noLength);
        }
    }

    private static double checked(double times) {
        if (!(times >= CarryOver.LEAST_SIZE && times <= CarryOver.MOST_SIZE)) {
            throw new IllegalArgumentException(
                    Texts.START_SIZE_WRONG.text(times, CarryOver.LEAST_SIZE, CarryOver.MOST_SIZE));
        }
        return times;
    }

    /** What is begun is what is listed; where that is not yet what was chosen, it is listed first. */
    private void begin() {
        beginning = false;
        if (!cells.stop()) {
            return;
        }
        asked = true;
        if (!judge().isEmpty()) {
            (nameProblem().isEmpty() ? size : name).requestFocusInWindow();
        } else if (listed.map(Stock::choice).equals(Optional.of(choice()))) {
            begin(name.getText().strip(), model.carried().orElseThrow());
        } else {
            beginning = true;
            takeStock();
        }
    }

    private void begin(String called, CarryOver carried) {
        if (!carried.problems().isEmpty()) {
            Words.show(problem, carried.problems());
            return;
        }
        var build = BuildRecord.begin(called, room.now().toLocalDate());
        var told = new CarryOver.Told(
                Texts.NEW_BUILD_EDIT.text(called),
                carried.from()
                        .map(proven -> Texts.BEGUN_FROM.text(proven.name()))
                        .orElseGet(Texts.BEGUN_FROM_TEMPLATES::text),
                lines(carried));
        room.edit(carried.begin(build, room.now(), told), () -> {
            asked = false;
            name.setText("");
            model.forget();
            leave.run();
            room.showBegun(build.id());
        });
    }

    private static List<String> lines(CarryOver carried) {
        var how = carried.size() == 1 ? Stream.<String>empty() : Stream.of(Texts.CARRIED_AT_SIZE.text(carried.size()));
        return Stream.concat(how, carried.told(Terms::of).stream()).toList();
    }
}
