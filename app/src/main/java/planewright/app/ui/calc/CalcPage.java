package planewright.app.ui.calc;

import com.formdev.flatlaf.util.UIScale;
import java.awt.EventQueue;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import net.miginfocom.swing.MigLayout;
import planewright.app.calc.Apart;
import planewright.app.calc.Described;
import planewright.app.calc.Outcome;
import planewright.app.calc.Prefill;
import planewright.app.calc.Runs;
import planewright.app.calc.Variants;
import planewright.app.journal.BuildRecord;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Cards;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.KeyboardKept;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.WhenShown;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.plugins.PluginsPage;

/** A calculator: inputs at the left, its answer at the right, recomputed while one types where it is quick. */
public final class CalcPage extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int FORM_LEAST = 420;
    /** An answer that has less than the rest of the width cannot be read. */
    private static final double FORM_MOST = 0.53;

    /** So many are to be seen of the list without scrolling. */
    private static final int AT_ONCE = 12;

    private static final String CALCULATOR = "calculator";
    private static final String PLUGINS = "plugins";

    private final transient Workroom room;
    private final transient Background.Latest questions;
    private final transient Apart apart = new Apart();
    private final Cards cards = new Cards();
    private final JComboBox<Described> choice = new WideListBox<>();
    private final Column left = new Column(10, 10);
    private final Column right = new Column(10, 10);
    private final JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT);
    private final JButton run;
    private final JButton stop;
    private final JLabel progress = new JLabel(" ");

    private transient Optional<InputForm> form = Optional.empty();
    private transient Optional<Variants> variants = Optional.empty();
    private transient Optional<String> shownBuild = Optional.empty();
    private transient AtomicBoolean stopped = new AtomicBoolean();
    private boolean filling;
    private int formWidth = -1;
    private boolean pluginsMade;

    public CalcPage(Workroom room) {
        setLayout(cards);
        this.room = room;
        this.questions = room.background().latest();
        setName("calculators");
        run = Buttons.of("run", Texts.RUN.text(), this::compute);
        stop = Buttons.of("stop", Texts.STOP.text(), () -> stopped.set(true));
        var page = new JPanel(new MigLayout("insets 8 0 0 0, gap 6, fill", "[grow,fill]", "[][grow,fill]"));
        page.add(bar(), "wmin 0, wrap");
        split.setLeftComponent(left.scrolled());
        split.setRightComponent(right.scrolled());
        split.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                makeRoom();
            }
        });
        split.setContinuousLayout(true);
        split.setBorder(BorderFactory.createEmptyBorder());
        page.add(split, "wmin 0");
        add(page, CALCULATOR);
        left.add(Words.quiet(Texts.CALCULATORS_HINT.text()));
        choice.addActionListener(event -> {
            if (!filling) {
                prefill();
            }
        });
        find();
        room.program().onPlugins(() -> EventQueue.invokeLater(this::find));
        WhenShown.refresh(this, room, this::journalChanged);
        room.onCalculatorWanted(this::choose);
    }

    /** The form is as wide as its tables want, unless somebody has drawn it to another width. */
    private void makeRoom() {
        int most = (int) (split.getWidth() * FORM_MOST);
        if (most > 0
                && (split.getDividerLocation() == formWidth || split.getDividerLocation() > most || formWidth < 0)) {
            formWidth = Math.min(
                    most,
                    Math.max(
                            UIScale.scale(FORM_LEAST),
                            form.map(InputForm::wanted).orElse(0)));
            split.setDividerLocation(formWidth);
        }
    }

    private JPanel bar() {
        var bar = new JPanel(new MigLayout("insets 0 10 0 10", "[80:300:,fill][][][grow,right][]"));
        choice.setName("calculator");
        choice.getAccessibleContext().setAccessibleName(Texts.CALCULATORS.text());
        choice.setKeySelectionManager(new ByTitle());
        choice.setRenderer(new TitleAndQuestion());
        choice.setMaximumRowCount(AT_ONCE);
        bar.add(choice);
        bar.add(Buttons.of("from-journal", Texts.FROM_JOURNAL_AGAIN.text(), this::prefill));
        bar.add(run, "split 2, hidemode 3");
        bar.add(stop, "hidemode 3");
        progress.setName("progress");
        bar.add(progress);
        bar.add(Buttons.plain("show-plugins", Texts.PLUGINS.text(), this::showPlugins));
        stop.setVisible(false);
        run.setVisible(false);
        return bar;
    }

    /** The page is made when it is first wanted. */
    private void showPlugins() {
        if (!pluginsMade) {
            add(new PluginsPage(room, () -> cards.show(this, CALCULATOR)), PLUGINS);
            pluginsMade = true;
        }
        cards.show(this, PLUGINS);
    }

    private void find() {
        room.background().run(() -> Calculators.of(room.program()), this::offer);
    }

    private void offer(List<Described> calculators) {
        var chosen = Optional.ofNullable((Described) choice.getSelectedItem()).map(Described::id);
        filling = true;
        choice.removeAllItems();
        calculators.forEach(choice::addItem);
        chosen.ifPresent(this::select);
        filling = false;
        if (calculators.isEmpty()) {
            form = Optional.empty();
            right.removeAll();
            left.removeAll();
            left.add(Words.quiet(Texts.NO_CALCULATORS.text()));
            left.revalidate();
            left.repaint();
        }
        if (isShowing()) {
            prefill();
        }
    }

    private void choose(String id) {
        cards.show(this, CALCULATOR);
        select(id);
        prefill();
    }

    private void select(String id) {
        for (int i = 0; i < choice.getItemCount(); i++) {
            if (choice.getItemAt(i).id().equals(id)) {
                choice.setSelectedIndex(i);
            }
        }
    }

    /** What somebody has typed stays, in the units that are preferred; an untouched form follows the journal. */
    private void journalChanged() {
        boolean other = !room.build().map(BuildRecord::id).equals(shownBuild);
        if (other || form.map(InputForm::isUntouched).orElse(true)) {
            prefill();
        } else if (form.filter(shown -> !shown.units().equals(room.units().asNow()))
                .isPresent()) {
            take(form.get().again((Described) choice.getSelectedItem()));
        }
    }

    private void prefill() {
        var described = (Described) choice.getSelectedItem();
        var build = room.build();
        if (described == null || build.isEmpty()) {
            return;
        }
        variants = variants.filter(each ->
                        each.isOf(described) && build.map(BuildRecord::id).equals(shownBuild))
                .or(() -> Optional.of(new Variants(described)));
        shownBuild = build.map(BuildRecord::id);
        var filled = Prefill.of(described, room.journal(), build.get().id());
        take(new InputForm(room, described, filled, this::edited));
    }

    private void take(InputForm made) {
        var described = (Described) choice.getSelectedItem();
        form = Optional.of(made);
        KeyboardKept.in(left, choice, () -> {
            left.removeAll();
            left.add(Words.of(described.question()));
            left.add(made);
        });
        makeRoom();
        left.revalidate();
        left.repaint();
        run.setVisible(!described.about().quick());
        compute();
    }

    private void edited() {
        if (((Described) choice.getSelectedItem()).about().quick()) {
            compute();
        }
    }

    private void compute() {
        var described = (Described) choice.getSelectedItem();
        if (described == null || form.isEmpty() || room.build().isEmpty()) {
            return;
        }
        stopped.set(true);
        var mine = new AtomicBoolean();
        stopped = mine;
        var inputs = form.get().inputs();
        var units = form.get().units();
        var build = room.build().get();
        var asked = new Runs(
                room.journal().asOfNow(),
                room.now(),
                (doing, done) -> EventQueue.invokeLater(
                        () -> progress.setText(mine.get() ? " " : doing + " " + Math.round(done * 100) + " %")),
                mine::get);
        stop.setVisible(!described.about().quick());
        questions.ask(
                () -> apart.run(described, inputs, asked, units, mine::get),
                outcome -> show(described, build, outcome));
    }

    private void show(Described described, BuildRecord build, Outcome outcome) {
        stop.setVisible(false);
        progress.setText(" ");
        KeyboardKept.in(right, choice, () -> fill(described, build, outcome));
        right.revalidate();
        right.repaint();
    }

    private void fill(Described described, BuildRecord build, Outcome outcome) {
        right.removeAll();
        form.ifPresent(
                shown -> shown.mark(outcome instanceof Outcome.Refused refused ? refused.problems() : List.of()));
        if (outcome instanceof Outcome.Answered answered) {
            variants.filter(each -> each.isOf(described))
                    .ifPresent(each -> right.add(new VariantsPanel(room, each, answered)));
            right.add(new ResultPanel(
                    room, described, build, answered, form.orElseThrow().origins()));
        } else if (outcome instanceof Outcome.Refused refused) {
            right.add(new ProblemPanel(refused.problems()));
        } else if (outcome instanceof Outcome.Failed failed) {
            right.add(Words.coloured(failed.message(), "stop"));
        } else {
            right.add(Words.quiet(Texts.STOPPED.text()));
        }
    }
}
