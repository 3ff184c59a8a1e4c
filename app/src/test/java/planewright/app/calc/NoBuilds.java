package planewright.app.calc;

import java.util.List;
import planewright.api.journal.Build;
import planewright.api.journal.Entry;
import planewright.api.journal.JournalReader;

/** A journal without builds. */
final class NoBuilds implements JournalReader {
    static final JournalReader READER = new NoBuilds();

    private NoBuilds() {}

    @Override
    public List<Build> builds() {
        return List.of();
    }

    @Override
    public List<Entry> log(String buildId) {
        return List.of();
    }
}
