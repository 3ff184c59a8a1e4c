package planewright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Bench;
import planewright.app.disk.Disk;
import planewright.app.disk.Happening;

/** What is set aside is told the same before, during and after a look. */
class SurveyTest {
    @TempDir
    private Path temp;

    @Test
    void whatIsSetAsideStaysSoWhileItIsLookedAtAgain() throws IOException {
        Bench.newJournal(temp.resolve("journal")).close();
        var templates = Files.createDirectories(temp.resolve("journal/templates"));
        Files.writeString(templates.resolve("broken.json"), "no JSON");
        Files.createDirectories(temp.resolve("journal/builds"));
        Files.createSymbolicLink(temp.resolve("journal/builds/link"), templates);
        var looking = new Looking();
        try (var open = Bench.open(Disk.at(temp.resolve("journal"), looking))) {
            var before = open.setAside();
            assertThat(before).hasSize(2);
            looking.of = open;
            open.look((done, all) -> {});
            looking.of = null;
            assertThat(looking.told).isNotEmpty().containsOnly(before);
            assertThat(open.setAside()).isEqualTo(before);
        }
    }

    /** Asks what is set aside whenever a folder is looked at. */
    private static final class Looking implements Happening {
        private final List<List<SetAside>> told = new ArrayList<>();
        private JournalFolder of;

        @Override
        public void listing(Path folder) {
            if (of != null) {
                told.add(of.setAside());
            }
        }
    }
}
