package planewright.app.ui;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingWorker;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import planewright.app.Program;
import planewright.app.Settings;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.WindowMemory;
import planewright.app.ui.common.Words;

/**
 * The window. It shows itself from the look alone; the journal is opened in the background after the first paint, and the
 * plugins and the search index after that.
 */
public final class MainWindow {
    private static final int WIDTH = 1560;
    private static final int HEIGHT = 860;
    private static final int LEAST_WIDTH = 760;
    private static final int LEAST_HEIGHT = 520;

    private final Settings settings;
    private final WindowMemory memory;
    private final Clock clock;
    private final JFrame frame = new JFrame(Texts.PRODUCT.text());
    private final boolean announce = Boolean.getBoolean("planewright.announceFirstPaint");
    private final FirstPaint opening = new FirstPaint();
    private Optional<Program> program = Optional.empty();
    private Optional<WindowContent> content = Optional.empty();

    private MainWindow(Settings settings, WindowMemory memory, Clock clock) {
        this.settings = settings;
        this.memory = memory;
        this.clock = clock;
    }

    /** Opens the window on a journal; from any thread but the event thread. */
    public static void start(Settings settings, Optional<Path> journal, Clock clock) {
        var memory = WindowMemory.read(settings.user());
        EventQueue.invokeLater(() -> {
            Look.install(memory.isDark());
            new MainWindow(settings, memory, clock).open(journal);
        });
    }

    private void open(Optional<Path> journal) {
        opening.onPaint(() -> {
            announce("painted");
            openJournal(journal);
        });
        frame.setName("planewright");
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
        frame.setContentPane(opening);
        frame.setVisible(true);
    }

    private void openJournal(Optional<Path> journal) {
        if (journal.isEmpty()) {
            frame.setContentPane(message(Texts.NO_JOURNAL.text()));
            frame.validate();
            return;
        }
        new SwingWorker<Program, String>() {
            @Override
            protected Program doInBackground() throws IOException {
                return Program.openAsKnown(
                        journal.get(),
                        settings.user(),
                        settings.pluginPlaces(),
                        clock,
                        (done, all) -> publish(Texts.READING.text(done, all)));
            }

            @Override
            protected void process(java.util.List<String> words) {
                opening.say(words.get(words.size() - 1));
            }

            @Override
            protected void done() {
                try {
                    fill(get());
                } catch (java.util.concurrent.ExecutionException failure) {
                    frame.setContentPane(message(failure.getCause().getMessage()));
                    frame.validate();
                } catch (InterruptedException stopped) {
                    Thread.currentThread().interrupt();
                }
            }
        }.execute();
    }

    private void fill(Program opened) {
        program = Optional.of(opened);
        var made = new WindowContent(opened, memory);
        content = Optional.of(made);
        frame.setTitle(opened.journal().name() + " · " + Texts.PRODUCT.text());
        frame.setContentPane(made);
        frame.validate();
        made.focusShelf();
        made.watch();
        made.lookAround();
        frame.addWindowFocusListener(new java.awt.event.WindowAdapter() {
            @Override
            public void windowGainedFocus(java.awt.event.WindowEvent event) {
                made.lookAround();
            }
        });
        EventQueue.invokeLater(() -> announce("filled"));
    }

    private void announce(String what) {
        if (announce) {
            System.out.println(what);
        }
    }

    /** Asks about what is not saved; then closes the journal and ends. */
    private void close() {
        var unsaved = content.map(WindowContent::unsaved).orElse("");
        if (!unsaved.isEmpty()) {
            Object[] choices = {Texts.BACK.text(), Texts.CLOSE_ANYWAY.text()};
            int chosen = JOptionPane.showOptionDialog(
                    frame,
                    Texts.UNSAVED.text(unsaved),
                    Texts.PRODUCT.text(),
                    JOptionPane.DEFAULT_OPTION,
                    JOptionPane.WARNING_MESSAGE,
                    null,
                    choices,
                    choices[0]);
            if (chosen != 1) {
                return;
            }
        }
        content.ifPresent(WindowContent::prepareToClose);
        frame.setVisible(false);
        new SwingWorker<Void, Void>() {
            @Override
            protected Void doInBackground() throws IOException {
                content.ifPresent(WindowContent::close);
                if (program.isPresent()) {
                    program.get().close();
                }
                return null;
            }

            @Override
            protected void done() {
                frame.dispose();
            }
        }.execute();
    }

    private static JComponent message(String words) {
        var panel = new JPanel(new MigLayout("fill", "[center]", "[center]"));
        JTextArea text = Words.of(words);
        text.setName("message");
        panel.add(text, "w 560");
        return panel;
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
