package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import planewright.app.journal.Slow;

class BlockingWatchTest {
    @Test
    void waitingOfOursOnTheEventThreadIsSeen() throws Exception {
        var seen = new CompletableFuture<String>();
        var watch = BlockingWatch.start(seen::complete);
        EventQueue.invokeLater(() -> planewright.app.ui.OursThatWaits.on(seen));
        assertThat(seen.get()).contains("OursThatWaits");
        watch.stop();
    }

    @Test
    void theToolkitsOwnReadingIsNotOurs() {
        var stack = new StackTraceElement[] {
            new StackTraceElement("java.io.RandomAccessFile", "readBytes", null, -2),
            new StackTraceElement("sun.font.TrueTypeFont", "readBlock", null, 1),
            new StackTraceElement("planewright.app.ui.common.Look", "sized", null, 1)
        };
        assertThat(BlockingWatch.blocking(stack)).isEmpty();
        stack[1] = new StackTraceElement("java.nio.file.Files", "readAllBytes", null, 1);
        assertThat(BlockingWatch.blocking(stack)).isPresent();
    }

    @Test
    void slowWorkOnTheEventThreadIsRefusedAtOnce() throws Exception {
        var refused = new CompletableFuture<Optional<Throwable>>();
        EventQueue.invokeLater(() -> {
            try {
                Slow.work("saving");
                refused.complete(Optional.empty());
            } catch (IllegalStateException told) {
                refused.complete(Optional.of(told));
            }
        });
        assertThat(refused.get().orElseThrow()).hasMessageContaining("saving").hasMessageContaining("event thread");
        Slow.work("saving");
    }
}
