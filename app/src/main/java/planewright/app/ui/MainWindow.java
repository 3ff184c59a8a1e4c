package planewright.app.ui;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.GraphicsEnvironment;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.SwingWorker;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import planewright.app.Program;
import planewright.app.Settings;
import planewright.app.index.Filter;
import planewright.app.journal.Said;
import planewright.app.pictures.PictureScale;
import planewright.app.store.JournalFolder;
import planewright.app.ui.common.AppIcon;
import planewright.app.ui.common.FigureView;
import planewright.app.ui.common.FocusInView;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Typing;
import planewright.app.ui.common.WindowMemory;
import planewright.app.ui.common.Words;
import planewright.app.ui.journals.JournalsPage;
import planewright.app.ui.journals.RecentJournals;

/**
 * The window. It shows itself from the look alone; the journal is opened in the background after the first paint, or where
 * there is none, and the plugins and the search index after that.
 */
public final class MainWindow {
    private static final int WIDTH = 1560;
    private static final int HEIGHT = 860;
    private static final int LEAST_WIDTH = 760;
    private static final int LEAST_HEIGHT = 520;
    /** A window that is not painted by now is hidden by others, or on another desk; its journal does not wait for that, ms. */
    private static final int UNSEEN_MILLIS = 1000;
    /** After so long the window has been filled and painted, s. */
    private static final int QUIET_SECONDS = 2;

    private final Settings settings;
    private final WindowMemory memory;
    private final Clock clock;
    private final JFrame frame = new JFrame(Texts.PRODUCT.text());
    private final boolean announce = Boolean.getBoolean("planewright.announceFirstPaint");
    private final FirstPaint opening = new FirstPaint();
    private final Endings endings = new Endings();
    private final RecentJournals recent;
    private boolean begun;
    private Optional<Program> program = Optional.empty();
    private Optional<WindowContent> content = Optional.empty();

    private MainWindow(Settings settings, WindowMemory memory, Clock clock) {
        this.settings = settings;
        this.memory = memory;
        this.clock = clock;
        this.recent = new RecentJournals(memory);
    }

    /**
     * Opens the window; from any thread but the event thread.
     *
     * @param journal the journal that is asked for; else the last one that was open, else that of the settings
     */
    public static void start(Settings settings, Optional<Path> journal, Clock clock) {
        var memory = WindowMemory.read(settings.user());
        var wanted = journal.or(() -> new RecentJournals(memory)
                        .all().stream().filter(JournalFolder::isJournal).findFirst())
                .or(settings::journal);
        EventQueue.invokeLater(() -> {
            Look.install(memory.style());
            CompletableFuture.runAsync(Icons::prepare);
            Typing.watch();
            FocusInView.watch();
            new MainWindow(settings, memory, clock).open(wanted);
        });
    }

    private void open(Optional<Path> journal) {
        opening.onPaint(() -> {
            announce("painted");
            begin(journal);
        });
        var unseen = new Timer(UNSEEN_MILLIS, event -> begin(journal));
        unseen.setRepeats(false);
        unseen.start();
        frame.setName("planewright");
        CompletableFuture.supplyAsync(AppIcon::images)
                .thenAcceptAsync(images -> AppIcon.putOn(frame, images), EventQueue::invokeLater);
        var screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        frame.setSize(Math.min(WIDTH, screen.width), Math.min(HEIGHT, screen.height));
        frame.setMinimumSize(new Dimension(Math.min(LEAST_WIDTH, screen.width), Math.min(LEAST_HEIGHT, screen.height)));
        frame.setLocationByPlatform(true);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new java.awt.event.WindowAdapter() {
            @Override
            public void windowClosing(java.awt.event.WindowEvent event) {
                close();
            }
        });
        frame.addWindowFocusListener(new java.awt.event.WindowAdapter() {
            @Override
            public void windowGainedFocus(java.awt.event.WindowEvent event) {
                content.ifPresent(WindowContent::lookAround);
            }
        });
        frame.setContentPane(opening);
        frame.setVisible(true);
    }

    /** Opens the journal, or offers some; once. */
    private void begin(Optional<Path> journal) {
        if (!begun) {
            begun = true;
            journal.ifPresentOrElse(this::openJournal, () -> choose(""));
        }
    }

    /** Where no journal is open: offers those that were, and a new one. */
    private void choose(String problem) {
        var page = new JournalsPage(recent, new Opening());
        page.show(Optional.empty());
        page.refuse(problem);
        frame.setContentPane(page);
        frame.validate();
    }

    /** Once those that were left are closed: it may be one of them. */
    private void openJournal(Path journal) {
        var left = endings.soFar();
        new SwingWorker<Program, String>() {
            @Override
            protected Program doInBackground() throws IOException {
                left.run();
                Said.prepare(PictureScale.class, Filter.class);
                return Program.openAsKnown(
                        journal,
                        settings.user(),
                        settings.pluginPlaces(),
                        clock,
                        (done, all) -> publish(Texts.READING.text(done, all)));
            }

            @Override
            protected void process(java.util.List<String> words) {
                var last = words.get(words.size() - 1);
                content.ifPresentOrElse(shown -> shown.say(last), () -> opening.say(last));
            }

            @Override
            protected void done() {
                try {
                    var opened = get();
                    changeTo(opened);
                    recent.opened(journal, opened.journal().name());
                    remember();
                } catch (ExecutionException failure) {
                    var words = Words.reason(failure.getCause());
                    content.ifPresentOrElse(shown -> shown.refuseJournal(words), () -> choose(words));
                } catch (InterruptedException stopped) {
                    Thread.currentThread().interrupt();
                }
            }
        }.execute();
    }

    /** What was open before is closed once the new journal is open, so that nothing is lost where it cannot be. */
    private void changeTo(Program opened) {
        content.ifPresent(WindowContent::prepareToClose);
        var left = journal(content, program);
        fill(opened);
        endings.add(left, () -> {});
    }

    private static Closeable journal(Optional<WindowContent> shown, Optional<Program> opened) {
        return () -> {
            shown.ifPresent(WindowContent::close);
            if (opened.isPresent()) {
                opened.get().close();
            }
        };
    }

    private void remember() {
        new SwingWorker<Void, Void>() {
            @Override
            protected Void doInBackground() throws IOException {
                memory.write();
                return null;
            }
        }.execute();
    }

    /** Opens and begins journals for the page on which they are chosen. */
    private final class Opening implements JournalsPage.Opener {
        @Override
        public void open(Path journal) {
            if (mayLeave()) {
                openJournal(journal);
            }
        }

        @Override
        public void begin(Path folder, String name) {
            new SwingWorker<Void, Void>() {
                @Override
                protected Void doInBackground() throws IOException {
                    JournalFolder.create(folder, name);
                    return null;
                }

                @Override
                protected void done() {
                    try {
                        get();
                        Opening.this.open(folder);
                    } catch (ExecutionException failure) {
                        var words = Words.reason(failure.getCause());
                        content.ifPresentOrElse(shown -> shown.refuseJournal(words), () -> choose(words));
                    } catch (InterruptedException stopped) {
                        Thread.currentThread().interrupt();
                    }
                }
            }.execute();
        }

        @Override
        public void remember() {
            MainWindow.this.remember();
        }
    }

    private void fill(Program opened) {
        program = Optional.of(opened);
        var made = new WindowContent(opened, memory, recent, new Opening());
        content = Optional.of(made);
        frame.setTitle(opened.journal().name() + " · " + Texts.PRODUCT.text());
        frame.setContentPane(made);
        frame.validate();
        made.focusShelf();
        made.watch();
        made.lookAround();
        EventQueue.invokeLater(() -> announce("filled"));
        CompletableFuture.runAsync(
                FigureView::prepare, CompletableFuture.delayedExecutor(QUIET_SECONDS, TimeUnit.SECONDS));
    }

    private void announce(String what) {
        if (announce) {
            System.out.println(what);
        }
    }

    /** Asks about what is not saved. */
    private boolean mayLeave() {
        var unsaved = content.map(WindowContent::unsaved).orElse("");
        if (unsaved.isEmpty()) {
            return true;
        }
        Object[] choices = {Texts.BACK.text(), Texts.CLOSE_ANYWAY.text()};
        return JOptionPane.showOptionDialog(
                        frame,
                        Texts.UNSAVED.text(unsaved),
                        Texts.PRODUCT.text(),
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.WARNING_MESSAGE,
                        null,
                        choices,
                        choices[0])
                == 1;
    }

    /** Closes the journal and ends, unless the builder goes back to what is not saved. */
    private void close() {
        if (!mayLeave()) {
            return;
        }
        content.ifPresent(WindowContent::prepareToClose);
        frame.setVisible(false);
        endings.add(journal(content, program), frame::dispose);
    }

    /** What is to be seen until the journal is open. */
    private static final class FirstPaint extends JPanel {
        private static final long serialVersionUID = 1L;

        private final JLabel words = Look.sized(Look.quiet(Texts.OPENING.text()), 1.2, Font.PLAIN);
        private transient Runnable painted = () -> {};
        private boolean done;

        FirstPaint() {
            super(new MigLayout("fill", "[center]", "[center]"));
            add(words);
        }

        void onPaint(Runnable listener) {
            painted = listener;
        }

        void say(String told) {
            words.setText(told);
        }

        @Override
        public void paint(Graphics g) {
            super.paint(g);
            if (!done) {
                done = true;
                EventQueue.invokeLater(painted);
            }
        }
    }
}
