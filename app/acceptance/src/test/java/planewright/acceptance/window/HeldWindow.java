package planewright.acceptance.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JFrame;
import planewright.app.Program;
import planewright.app.journal.EntryRecord;
import planewright.app.store.UserFolders;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.WindowMemory;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.log.LogPage;

/** A page on a journal, in a window of its own: what the page asks of the background waits while a test holds it. */
final class HeldWindow implements AutoCloseable {
    /** How much goes on at once beside the edits. */
    private static final int THREADS = 3;

    private final Program program;
    private final Workroom room;
    private final JFrame frame = new JFrame();
    private final List<String> said = new ArrayList<>();
    private CountDownLatch held = new CountDownLatch(0);

    /** On the event thread. */
    private HeldWindow(Program program, WindowMemory memory, Function<Workroom, JComponent> page) {
        this.program = program;
        Look.install(memory.style());
        room = new Workroom(program, memory, said::add);
        program.journal().builds().stream().findFirst().ifPresent(build -> room.show(build.id()));
        frame.setContentPane(page.apply(room));
        frame.setSize(1400, 900);
        frame.setVisible(true);
    }

    static HeldWindow on(Path journal, UserFolders user, Function<Workroom, JComponent> page) throws IOException {
        var program = Program.open(journal, user, List.of(), OpenWindow.CLOCK);
        var memory = WindowMemory.read(user);
        return Hands.onEventThread(() -> new HeldWindow(program, memory, page));
    }

    Program program() {
        return program;
    }

    Workroom room() {
        return room;
    }

    /** The log of the only build. */
    List<EntryRecord> log() {
        return program.journal().log(program.journal().builds().get(0).id());
    }

    /** What the status strip would have shown so far. */
    List<String> said() {
        return Hands.onEventThread(() -> List.copyOf(said));
    }

    /** From now on edits wait, as they do behind long work among them. */
    void holdEdits() {
        var latch = new CountDownLatch(1);
        held = latch;
        Hands.onEventThread(() -> {
            room.inOrder(() -> waited(latch), done -> {});
            return latch;
        });
    }

    /** From now on everything but edits waits. */
    void holdRest() {
        var latch = new CountDownLatch(1);
        held = latch;
        Hands.onEventThread(() -> {
            for (int i = 0; i < THREADS; i++) {
                room.background().run(() -> waited(latch), done -> {});
            }
            return latch;
        });
    }

    private static CountDownLatch waited(CountDownLatch latch) throws InterruptedException {
        latch.await();
        return latch;
    }

    /** Lets go on what was held, and waits until the page knows all that came of it. */
    void letGo() {
        held.countDown();
        Hands.waitUntil("nothing under way", room.background()::isIdle);
        var done = new CompletableFuture<Workroom>();
        Hands.onEventThread(() -> {
            room.inOrder(() -> room, done::complete);
            return done;
        });
        Hands.waitUntil("all edits made", done::isDone);
    }

    @Override
    public void close() throws IOException {
        held.countDown();
        Hands.onEventThread(() -> {
            Hands.all(LogPage.class).forEach(LogPage::keepDrafts);
            frame.dispose();
            return frame;
        });
        room.close();
        program.close();
    }
}
