package planewright.api.contract;

import java.time.LocalDateTime;
import java.util.List;
import planewright.api.calculator.Language;
import planewright.api.calculator.Run;
import planewright.api.journal.Build;
import planewright.api.journal.Entry;
import planewright.api.journal.JournalReader;

/** A run at a fixed instant on an empty journal. */
public class StillRun implements Run {
    private static final LocalDateTime EVENING = LocalDateTime.of(2025, 3, 14, 20, 15);

    private final Language language;

    StillRun() {
        this(Language.ENGLISH);
    }

    StillRun(Language language) {
        this.language = language;
    }

    /** One that is never stopped, for a plugin's own tests. */
    public static Run onAnEmptyJournal() {
        return new StillRun();
    }

    @Override
    public void progress(double done, String doing) {
        Checks.require(done >= 0 && done <= 1, "progress is " + done + "; accepted: from 0 to 1");
        Checks.require(!doing.isBlank(), "progress says nothing; accepted: a few words");
    }

    @Override
    public JournalReader journal() {
        return new JournalReader() {
            @Override
            public List<Build> builds() {
                return List.of();
            }

            @Override
            public List<Entry> log(String buildId) {
                return List.of();
            }
        };
    }

    @Override
    public Language language() {
        return language;
    }

    @Override
    public LocalDateTime now() {
        return EVENING;
    }

    /** A run that the builder stops as soon as it asks. */
    static final class Stopped extends StillRun {
        private boolean asked;

        @Override
        public void progress(double done, String doing) {
            asked = true;
            throw new Cancelled();
        }

        boolean asked() {
            return asked;
        }
    }
}
