package planewright.app.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class EndingsTest {
    private final Endings endings = new Endings();
    private final List<String> happened = Collections.synchronizedList(new ArrayList<>());

    @Test
    void theSecondWaitsForTheFirstAndWhatIsOpenedNextForBoth() throws Exception {
        var held = new CompletableFuture<String>();
        var told = new CompletableFuture<String>();
        EventQueue.invokeAndWait(() -> {
            endings.add(() -> happened.add(held.join()), () -> {});
            endings.add(() -> happened.add("second"), () -> told.complete("second"));
            held.completeAsync(() -> "first", CompletableFuture.delayedExecutor(200, TimeUnit.MILLISECONDS));
        });
        soFar();
        assertThat(happened).containsExactly("first", "second");
        assertThat(told.get(20, TimeUnit.SECONDS)).isEqualTo("second");
    }

    @Test
    void oneThatCannotBeClosedHoldsUpNoOther() throws Exception {
        var told = new CompletableFuture<String>();
        EventQueue.invokeAndWait(() -> {
            endings.add(
                    () -> {
                        throw new IOException("the stick was pulled");
                    },
                    () -> told.complete("could not be closed"));
            endings.add(() -> happened.add("second"), () -> {});
        });
        soFar();
        assertThat(told.get(20, TimeUnit.SECONDS)).isEqualTo("could not be closed");
        assertThat(happened).containsExactly("second");
    }

    private void soFar() throws Exception {
        var wait = new CompletableFuture<Runnable>();
        EventQueue.invokeAndWait(() -> wait.complete(endings.soFar()));
        wait.get().run();
    }
}
