package planewright.app.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import planewright.app.Program;
import planewright.app.journal.BuildRecord;
import planewright.app.ui.across.AcrossPage;
import planewright.app.ui.bench.BenchRail;
import planewright.app.ui.bin.BinPage;
import planewright.app.ui.build.BuildPage;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.FirstWide;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Typing;
import planewright.app.ui.common.WindowMemory;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.compare.ComparePage;
import planewright.app.ui.exchange.ExchangePage;
import planewright.app.ui.help.Chapter;
import planewright.app.ui.help.HelpPage;
import planewright.app.ui.journals.JournalsPage;
import planewright.app.ui.journals.RecentJournals;
import planewright.app.ui.log.CaptureBar;
import planewright.app.ui.notices.NoticesPage;
import planewright.app.ui.search.SearchPage;
import planewright.app.ui.shelf.ShelfPage;
import planewright.app.ui.start.StartPage;
import planewright.app.ui.templates.TemplatesPage;

/** All of an open journal: search on top, the shelf at the left, the build in the middle, the capture line below. */
final class WindowContent extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int SHELF_WIDTH = 325;
    private static final int SHELF_LEAST = 212;
    private static final double SHELF_SHARE = 0.2;
    private static final int BUTTON_EDGE = 5;
    private static final int SEARCH_LEAST = 220;
    private static final String BENCH_KEY = "ctrl J";
    private static final String SEARCH = "search";
    private static final String NOTICES = "notices";
    private static final String BIN = "bin";
    private static final String EXCHANGE = "exchange";
    private static final String TEMPLATES = "templates";
    private static final String START = "start";
    private static final String JOURNALS = "journals";
    private static final String COMPARE = "compare";
    private static final String ACROSS = "across";
    private static final String HELP = "help";

    private final transient Workroom room;
    private final Middle middle = new Middle();
    private final JTextField search = new JTextField();
    private final JLabel status = new JLabel(" ");
    private final transient ViewMenu view;
    private final JToggleButton notices;
    private final JToggleButton benchButton;
    private final BenchRail bench;
    private final BenchBeside beside;
    private final ShelfPage shelf;
    private final BuildPage build;
    private final SearchPage found;
    private final BinPage bin;
    private final JournalsPage journals;
    private final CaptureBar capture;
    private transient Optional<ExchangePage> exchange = Optional.empty();
    private transient Optional<TemplatesPage> templates = Optional.empty();
    private transient Optional<StartPage> start = Optional.empty();
    private transient Optional<ComparePage> compare = Optional.empty();
    private transient Optional<AcrossPage> across = Optional.empty();
    private transient Optional<HelpPage> help = Optional.empty();

    /**
     * @param recent the journals that were open before
     * @param opener opens another journal in this one's place
     */
    WindowContent(Program program, WindowMemory memory, RecentJournals recent, JournalsPage.Opener opener) {
        super(new MigLayout("insets 0, gap 0, fill, wrap 1", "[grow,fill]", "[][grow,fill][][]"));
        room = new Workroom(program, memory, words -> {
            status.setText(words);
            status.setToolTipText(words);
        });
        view = new ViewMenu(room);
        notices = Buttons.toPage("show-notices", "", () -> middle.toggle(NOTICES));
        program.journal().builds().stream().findFirst().ifPresent(newest -> room.show(newest.id()));
        shelf = new ShelfPage(room, () -> startFrom(room.build().map(BuildRecord::id), Set.of()));
        build = new BuildPage(room, this::showCompare);
        found = new SearchPage(room);
        bin = new BinPage(room);
        journals = new JournalsPage(recent, opener);
        benchButton = Buttons.hint(
                Buttons.toPage("show-bench", Texts.BENCH.text(), this::toggleBench),
                Texts.BENCH_BUTTON_HINT.text(),
                BENCH_KEY);
        bench = new BenchRail(room, this::countBench);
        beside = new BenchBeside(room, middle, bench);
        middle.add(build, Middle.BUILD);
        middle.add(found, SEARCH);
        middle.add(new NoticesPage(room, this::count), NOTICES);
        middle.add(bin, BIN);
        middle.add(journals, JOURNALS);
        var bar = bar();
        middle.keepKeyboard(bar, shelf::focusList);
        middle.onLaid(beside::showPages);
        bench.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentShown(ComponentEvent event) {
                benchButton.setSelected(true);
            }

            @Override
            public void componentHidden(ComponentEvent event) {
                benchButton.setSelected(false);
            }
        });
        add(bar);
        add(split());
        capture = new CaptureBar(room, build.log());
        add(capture);
        add(strip());
        room.onBuildWanted(wanted -> middle.show(Middle.BUILD));
        room.onBegun(capture::focus);
        room.onEntryWanted(entry -> middle.show(Middle.BUILD));
        room.onCalculatorWanted(calculator -> middle.show(Middle.BUILD));
        keys();
    }

    /** What is being written and not yet saved, in words; empty for nothing. */
    String unsaved() {
        return Stream.concat(build.unsaved().stream(), templates.stream().flatMap(page -> page.unsaved().stream()))
                .collect(Collectors.joining(", "));
    }

    /** Keeps what is being written, for the next time, and ends long work at its next step; on the event thread. */
    void prepareToClose() {
        bench.stop();
        build.log().keepDrafts();
        exchange.ifPresent(ExchangePage::stop);
    }

    /** Ends what goes on in the background; not on the event thread. */
    void close() {
        room.close();
    }

    /** Takes in what other programs do to the journal's files from now on. */
    void watch() {
        room.watch();
    }

    /** Takes in what other programs have done to the journal's files. */
    void lookAround() {
        room.lookAround();
        view.followSystem();
    }

    /** Says something in the status strip. */
    void say(String words) {
        room.say(words);
    }

    /** Says why another journal was not opened. */
    void refuseJournal(String words) {
        middle.show(JOURNALS);
        journals.refuse(words);
    }

    private void toggleJournals() {
        journals.show(Optional.of(room.program().folder().folder()));
        middle.toggle(JOURNALS);
    }

    void focusShelf() {
        shelf.focusList();
    }

    private JPanel bar() {
        var bar = new JPanel(new FirstWide(6, SEARCH_LEAST));
        bar.setName("bar");
        bar.setBorder(BorderFactory.createEmptyBorder(10, 10, 0, 10));
        Words.named(search, Texts.SEARCH.text(), "search");
        search.putClientProperty("JTextField.placeholderText", Texts.SEARCH_HINT.text());
        search.putClientProperty("JTextField.showClearButton", true);
        Buttons.hint(search, Texts.SEARCH.text(), "ctrl F");
        Buttons.onEdit(search, this::find);
        search.addActionListener(event -> findNow());
        bar.add(search);
        bar.add(Buttons.asSign(
                Icons.UNDO,
                Buttons.hint(Buttons.plain("undo", Texts.UNDO.text(), room::undo), Texts.UNDO_HINT.text(), "ctrl Z")));
        bar.add(Buttons.asSign(
                Icons.REDO,
                Buttons.hint(Buttons.plain("redo", Texts.REDO.text(), room::redo), Texts.REDO_HINT.text(), "ctrl Y")));
        bar.add(Buttons.with(Icons.BENCH, benchButton));
        bar.add(Buttons.hint(
                toPage(TEMPLATES, Icons.TEMPLATES, Texts.TEMPLATES, this::toggleTemplates),
                Texts.TEMPLATES_HINT.text(),
                "ctrl T"));
        bar.add(Buttons.hint(
                toPage(ACROSS, Icons.ACROSS, Texts.ACROSS, this::toggleAcross),
                Texts.ACROSS_BUTTON_HINT.text(),
                "ctrl shift B"));
        bar.add(toPage(BIN, Icons.BIN, Texts.BIN, this::toggleBin));
        bar.add(toPage(EXCHANGE, Icons.EXCHANGE, Texts.EXCHANGE, this::toggleExchange));
        bar.add(Buttons.hint(
                toPage(JOURNALS, Icons.JOURNALS, Texts.JOURNALS, this::toggleJournals),
                Texts.JOURNALS_BUTTON_HINT.text(),
                "ctrl O"));
        bar.add(middle.leadsTo(NOTICES, Buttons.with(Icons.NOTICES, notices)));
        bar.add(view.button());
        bar.add(Buttons.asSign(
                Icons.HELP,
                Buttons.hint(toPage(HELP, Icons.HELP, Texts.HELP, this::toggleHelp), Texts.HELP_HINT.text(), "F1")));
        for (var each : bar.getComponents()) {
            if (each instanceof AbstractButton button) {
                button.setMargin(new Insets(2, BUTTON_EDGE, 2, BUTTON_EDGE));
                button.putClientProperty("JComponent.minimumWidth", 0);
            }
        }
        return bar;
    }

    private JToggleButton toPage(String page, Icons sign, Texts words, Runnable toggle) {
        return middle.leadsTo(page, Buttons.with(sign, Buttons.toPage("show-" + page, words.text(), toggle)));
    }

    private JSplitPane split() {
        var split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, shelf, beside);
        split.setDividerLocation(SHELF_WIDTH);
        split.setResizeWeight(SHELF_SHARE);
        shelf.setMinimumSize(new Dimension(SHELF_LEAST, 0));
        middle.setMinimumSize(new Dimension());
        split.setContinuousLayout(true);
        split.setBorder(BorderFactory.createEmptyBorder());
        return split;
    }

    private void toggleBench() {
        beside.toggle();
    }

    private void countBench(int curing) {
        benchButton.setText(curing == 0 ? Texts.BENCH.text() : Texts.BENCH_COUNT.text(curing));
    }

    private JPanel strip() {
        var strip = new JPanel(new MigLayout("insets 0 12 6 12, fillx", "[grow,fill]"));
        status.setName("status");
        Look.sized(status, 0.92, Font.PLAIN);
        strip.add(status, "wmin 0");
        return strip;
    }

    private void find() {
        if (search.getText().isBlank() && !(middle.isShown(SEARCH) && found.isFiltered())) {
            middle.lay(Middle.BUILD);
        } else {
            findNow();
        }
    }

    /** The page is made when it is first wanted, for the window's start waits for every page. */
    private void toggleExchange() {
        if (exchange.isEmpty()) {
            exchange = Optional.of(new ExchangePage(room));
            middle.add(exchange.get(), EXCHANGE);
        }
        middle.toggle(EXCHANGE);
    }

    private void toggleBin() {
        middle.toggle(BIN);
        bin.refresh();
    }

    private void toggleTemplates() {
        if (templates.isEmpty()) {
            templates = Optional.of(new TemplatesPage(room, id -> startFrom(Optional.empty(), Set.of(id))));
            middle.add(templates.get(), TEMPLATES);
        }
        middle.toggle(TEMPLATES);
    }

    private void toggleAcross() {
        if (across.isEmpty()) {
            across = Optional.of(new AcrossPage(room));
            middle.add(across.get(), ACROSS);
        }
        middle.toggle(ACROSS);
    }

    private void showCompare() {
        if (compare.isEmpty()) {
            compare = Optional.of(new ComparePage(room, () -> middle.show(Middle.BUILD)));
            middle.add(compare.get(), COMPARE);
        }
        middle.show(COMPARE);
        compare.get().offer(room.build());
    }

    private void toggleHelp() {
        if (help.isEmpty()) {
            help = Optional.of(new HelpPage(room));
            middle.add(help.get(), HELP);
        }
        if (!middle.isShown(HELP)) {
            chapter().ifPresent(help.get()::show);
        }
        middle.toggle(HELP);
    }

    /** About what has the keyboard, or else about the page that is shown. */
    private Optional<Chapter> chapter() {
        var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return Stream.<Component>iterate(owner, Objects::nonNull, Component::getParent)
                .flatMap(each -> Chapter.about(each.getName()).stream())
                .findFirst()
                .filter(about -> about != Chapter.SHELF)
                .or(() -> Stream.concat(Stream.of(build.shown()), Stream.of(middle.getComponents()))
                        .filter(Component::isShowing)
                        .flatMap(each -> Chapter.about(each.getName()).stream())
                        .findFirst());
    }

    private void startFrom(Optional<String> proven, Set<String> given) {
        if (start.isEmpty()) {
            start = Optional.of(new StartPage(room, () -> middle.show(Middle.BUILD)));
            middle.add(start.get(), START);
        }
        middle.show(START);
        start.get().offer(proven, given);
    }

    /** Without words: all entries, to be narrowed by filters. */
    private void findNow() {
        found.find(search.getText());
        middle.lay(SEARCH);
    }

    private void count(int number) {
        notices.setText(Texts.NOTICES.text(number));
    }

    private void keys() {
        Buttons.key(this, "F1", this::toggleHelp);
        Buttons.key(this, "ctrl F", search::requestFocusInWindow);
        Buttons.key(this, "ctrl L", capture::focus);
        Buttons.key(this, "ctrl N", () -> {
            middle.show(Middle.BUILD);
            build.showLog();
            build.log().newEntry();
        });
        Buttons.key(this, "ctrl B", () -> startFrom(room.build().map(BuildRecord::id), Set.of()));
        Buttons.key(this, "ctrl shift B", this::toggleAcross);
        Buttons.key(this, "ctrl O", this::toggleJournals);
        Buttons.key(this, "ctrl T", this::toggleTemplates);
        Buttons.key(this, "ctrl Z", () -> Typing.undoOr(room::undo, () -> room.say(Texts.NO_TYPING_TO_UNDO.text())));
        Buttons.key(this, "ctrl Y", () -> Typing.redoOr(room::redo, () -> room.say(Texts.NO_TYPING_TO_REDO.text())));
        Buttons.key(this, "ctrl P", build.log()::print);
        Buttons.key(this, BENCH_KEY, this::toggleBench);
        build.keys(this, () -> middle.lay(Middle.BUILD));
        view.keys(this);
        Buttons.key(this, "ESCAPE", middle::leave);
    }
}
