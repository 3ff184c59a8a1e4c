package planewright.app.ui.journals;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import planewright.app.ui.common.WindowMemory;

/** The journals that the window was open on, the last one first. */
public final class RecentJournals {
    /** More than fit on a page are no help; chosen. */
    private static final int MOST = 8;

    private static final String NAME = "journal.";

    private final WindowMemory memory;

    public RecentJournals(WindowMemory memory) {
        this.memory = memory;
    }

    /** Their folders; whether they are still there nobody has looked. */
    public List<Path> all() {
        return IntStream.range(0, MOST)
                .mapToObj(i -> memory.get(NAME + i))
                .flatMap(Optional::stream)
                .flatMap(folder -> path(folder).stream())
                .toList();
    }

    /** Puts one on top. */
    public void opened(Path journal) {
        var all = new ArrayList<>(all());
        all.remove(journal.toAbsolutePath().normalize());
        all.add(0, journal.toAbsolutePath().normalize());
        put(all);
    }

    /** Takes one from the list; its files stay. */
    public void forget(Path journal) {
        var all = new ArrayList<>(all());
        all.remove(journal);
        put(all);
    }

    private void put(List<Path> all) {
        for (int i = 0; i < MOST; i++) {
            memory.put(NAME + i, i < all.size() ? all.get(i).toString() : "");
        }
    }

    private static Optional<Path> path(String folder) {
        try {
            return folder.isBlank() ? Optional.empty() : Optional.of(Path.of(folder));
        } catch (InvalidPathException ofAnotherSystem) {
            return Optional.empty();
        }
    }
}
