package planewright.app.ui.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class BackgroundTest {
    private final CompletableFuture<Throwable> failed = new CompletableFuture<>();
    private final Background background = new Background(1, failed::complete);

    @AfterEach
    void stop() {
        background.stop();
    }

    /** As where a class is missing or memory has run out. */
    @Test
    void anErrorOfTheVirtualMachineIsToldAndTheNextWorkIsDone() throws Exception {
        var error = new NoClassDefFoundError("org/example/Gone");
        var done = new CompletableFuture<String>();
        background.run(
                () -> {
                    throw error;
                },
                never -> {});
        background.run(() -> "next", done::complete);
        assertThat(failed.get(20, TimeUnit.SECONDS)).isSameAs(error);
        assertThat(done.get(20, TimeUnit.SECONDS)).isEqualTo("next");
    }

    @Test
    void whatIsAskedOnceItIsStoppedIsDropped() {
        background.stop();
        background.run(() -> "late", never -> {});
        assertThat(background.isIdle()).isTrue();
    }

    @Test
    void onlyTheAnswerToTheNewestQuestionIsShown() throws Exception {
        var shown = new ArrayList<String>();
        var begun = new CompletableFuture<Boolean>();
        var held = new CompletableFuture<String>();
        var last = new CompletableFuture<String>();
        var questions = background.latest();
        questions.ask(
                () -> {
                    begun.complete(true);
                    return held.get();
                },
                shown::add);
        begun.get(20, TimeUnit.SECONDS);
        questions.ask(() -> "second", shown::add);
        questions.ask(() -> "third", last::complete);
        held.complete("first");
        assertThat(last.get(20, TimeUnit.SECONDS)).isEqualTo("third");
        assertThat(shown).isEqualTo(List.of());
    }
}
