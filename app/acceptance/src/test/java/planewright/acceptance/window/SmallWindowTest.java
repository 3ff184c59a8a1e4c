package planewright.acceptance.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** In a window of 900 × 600 every page, form and answer can be read, in the language with short words and in that with long ones. */
class SmallWindowTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(Speech.class)
    void nothingIsCutOff(Speech speech) throws Exception {
        var journal = Copies.copy(OpenWindow.root().resolve("journal-samples/workshop"), folder.resolve("journal"));
        var told = speech.run(
                PagesTold.class,
                folder,
                journal.toString(),
                folder.resolve("user").toString(),
                PagesTold.CUT_OFF);
        assertThat(told).isEmpty();
    }
}
