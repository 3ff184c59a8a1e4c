package planewright.benchmark;

import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.event.WindowEvent;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CountDownLatch;
import planewright.app.Main;

/** Starts the program and closes its window once it is filled, as a builder would: class archives are made at such an end. */
public final class OneSession {
    private OneSession() {}

    /**
     * Runs it.
     *
     * @param words {@code heap}: before the end, tells the heap in use with the window left alone, MiB
     */
    public static void main(String[] words) throws InterruptedException {
        untilFilled();
        if (words.length > 0 && words[0].equals("heap")) {
            ChildJvm.tell("heap in use", IdleHeap.whenStill());
        }
        EventQueue.invokeLater(OneSession::close);
    }

    /** Starts the program on the journal that the child's options name, and waits until its window shows it. */
    static void untilFilled() throws InterruptedException {
        var filled = new CountDownLatch(1);
        System.setOut(new PrintStream(System.out, true, StandardCharsets.UTF_8) {
            @Override
            public void println(String line) {
                super.println(line);
                if (line.equals("filled")) {
                    filled.countDown();
                }
            }
        });
        Main.main(new String[0]);
        filled.await();
    }

    static void close() {
        for (var frame : Frame.getFrames()) {
            frame.dispatchEvent(new WindowEvent(frame, WindowEvent.WINDOW_CLOSING));
        }
    }
}
