package planewright.app.ui.common;

import java.awt.EventQueue;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import planewright.app.exchange.Watch;

/** Long work, one piece at a time: how far it has come, a way to stop it, and why it failed. */
public final class WatchedWork extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final transient Runnable changed;
    private final JPanel progress = new JPanel(new MigLayout("insets 0, fillx", "[100!][grow,fill][]"));
    private final JLabel reached = Look.quiet(" ");
    private final JTextArea problem = Words.problem();
    private final AtomicReference<String> latest = new AtomicReference<>("");
    private final AtomicBoolean telling = new AtomicBoolean();
    /** Of what is under way: whether it is to stop. */
    private transient Optional<AtomicBoolean> underWay = Optional.empty();

    /** Work that tells how far it has come. */
    public interface Work<T> {
        T with(Watch watch) throws Exception;
    }

    /**
     * @param name of its parts, for tests
     * @param changed runs when work begins or ends
     */
    public WatchedWork(Workroom room, String name, Runnable changed) {
        super(new Stack(6));
        this.room = room;
        this.changed = changed;
        setOpaque(false);
        progress.setOpaque(false);
        var bar = new JProgressBar();
        bar.setIndeterminate(true);
        bar.getAccessibleContext().setAccessibleName(Texts.WORKING.text());
        JButton stop = Buttons.of(name + "-stop", Texts.STOP.text(), this::stop);
        progress.add(bar);
        progress.add(reached, "wmin 0");
        progress.add(stop);
        progress.setVisible(false);
        problem.setName(name + "-problem");
        add(progress);
        add(problem);
    }

    public boolean isBusy() {
        return underWay.isPresent();
    }

    /** Ends what is under way at its next step. */
    public void stop() {
        underWay.ifPresent(mine -> mine.set(true));
    }

    /** Shows a problem, or hides it where it is empty. */
    public void say(String words) {
        Words.show(problem, words);
    }

    /**
     * Looks at files.
     *
     * @return drops it while it is under way: it ends at its next step, and nothing more is heard of it
     */
    public <T> Runnable look(Work<T> work, Consumer<T> done) {
        var mine = begin();
        room.background()
                .run(
                        () -> work.with(watch(mine)),
                        result -> end(mine, () -> done.accept(result)),
                        failure -> failed(mine, failure));
        return () -> end(mine, () -> mine.set(true));
    }

    /** Writes, in its turn among the edits. */
    public <T> void write(Work<T> work, Consumer<T> done) {
        var mine = begin();
        room.inOrder(
                () -> work.with(watch(mine)),
                result -> end(mine, () -> done.accept(result)),
                failure -> failed(mine, failure));
    }

    private AtomicBoolean begin() {
        var mine = new AtomicBoolean();
        underWay = Optional.of(mine);
        reached.setText(" ");
        say("");
        progress.setVisible(true);
        changed.run();
        return mine;
    }

    private Watch watch(AtomicBoolean mine) {
        return what -> {
            if (mine.get()) {
                throw new CancellationException(Texts.STOPPED_AS_BEFORE.text());
            }
            latest.set(what);
            if (telling.compareAndSet(false, true)) {
                EventQueue.invokeLater(this::tell);
            }
        };
    }

    private void tell() {
        telling.set(false);
        var what = latest.get();
        reached.setText(what.substring(1 + Math.max(what.lastIndexOf('/'), what.lastIndexOf('\\'))));
    }

    private void end(AtomicBoolean mine, Runnable then) {
        if (underWay.filter(each -> each == mine).isEmpty()) {
            return;
        }
        underWay = Optional.empty();
        progress.setVisible(false);
        try {
            then.run();
        } finally {
            changed.run();
        }
    }

    private void failed(AtomicBoolean mine, Throwable failure) {
        end(mine, () -> say(Words.reason(failure)));
    }
}
