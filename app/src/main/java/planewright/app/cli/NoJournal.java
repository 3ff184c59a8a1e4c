package planewright.app.cli;

import java.util.List;
import planewright.api.journal.Build;
import planewright.api.journal.Entry;
import planewright.api.journal.JournalReader;

/** What a calculator reads that is run on given inputs alone. */
final class NoJournal {
    static final JournalReader READER = new JournalReader() {
        @Override
        public List<Build> builds() {
            return List.of();
        }

        @Override
        public List<Entry> log(String buildId) {
            return List.of();
        }
    };

    private NoJournal() {}
}
