package planewright.benchmark;

import java.io.IOException;
import java.util.ArrayList;
import planewright.app.Program;

/** Looks at all files when nothing has changed: the first after a journal was opened as known, and those that follow. */
public final class OutsideScan {
    private static final int LATER = 8;

    private OutsideScan() {}

    public static void main(String[] words) throws IOException {
        try (var program = Opened.program()) {
            ChildJvm.tell("first", look(program));
            var later = new ArrayList<Double>();
            for (int i = 0; i < LATER; i++) {
                later.add(look(program));
            }
            ChildJvm.tell("later", Median.of(later));
        }
    }

    private static double look(Program program) throws IOException {
        var watch = new Stopwatch();
        program.look();
        return watch.milliseconds();
    }
}
