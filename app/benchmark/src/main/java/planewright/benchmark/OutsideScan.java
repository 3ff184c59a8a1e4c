package planewright.benchmark;

import java.io.IOException;

/** The first look at all files after a journal was opened as known, when nothing has changed. */
public final class OutsideScan {
    private OutsideScan() {}

    public static void main(String[] words) throws IOException {
        try (var program = Opened.program()) {
            var watch = new Stopwatch();
            program.look();
            ChildJvm.tell("scan", watch.milliseconds());
        }
    }
}
