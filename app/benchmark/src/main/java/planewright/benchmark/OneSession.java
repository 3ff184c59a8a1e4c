package planewright.benchmark;

import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.event.WindowEvent;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import planewright.app.Main;

/** Starts the program and closes its window once it is filled, as a builder would: class archives are made at such an end. */
public final class OneSession {
    private OneSession() {}

    public static void main(String[] words) {
        System.setOut(new PrintStream(System.out, true, StandardCharsets.UTF_8) {
            @Override
            public void println(String line) {
                super.println(line);
                if (line.equals("filled")) {
                    EventQueue.invokeLater(OneSession::close);
                }
            }
        });
        Main.main(words);
    }

    private static void close() {
        for (var frame : Frame.getFrames()) {
            frame.dispatchEvent(new WindowEvent(frame, WindowEvent.WINDOW_CLOSING));
        }
    }
}
