package planewright.app.ui.journals;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import planewright.app.ui.common.WindowMemory;

/** The journals that the window was open on, the last one first. */
public final class RecentJournals {
    /** More than fit on a page are no help; chosen. */
    private static final int MOST = 8;

    private static final String FOLDER = "journal.";
    private static final String NAME = "journal-name.";

    private final WindowMemory memory;

    public RecentJournals(WindowMemory memory) {
        this.memory = memory;
    }

    /** Their folders; whether they are still there nobody has looked. */
    public List<Path> all() {
        return IntStream.range(0, MOST)
                .mapToObj(i -> memory.get(FOLDER + i))
                .flatMap(Optional::stream)
                .flatMap(folder -> path(folder).stream())
                .toList();
    }

    /** What the builder calls one; where nobody has told yet, its folder's name. */
    public String name(Path journal) {
        return Optional.ofNullable(names().get(journal))
                .filter(name -> !name.isBlank())
                .orElseGet(() -> String.valueOf(journal.getFileName()));
    }

    /** Puts one on top. */
    public void opened(Path journal, String name) {
        var folder = journal.toAbsolutePath().normalize();
        var names = names();
        names.put(folder, name);
        put(
                Stream.concat(Stream.of(folder), all().stream().filter(each -> !each.equals(folder)))
                        .toList(),
                names);
    }

    /** Takes one from the list; its files stay. */
    public void forget(Path journal) {
        put(all().stream().filter(each -> !each.equals(journal)).toList(), names());
    }

    private Map<Path, String> names() {
        var names = new HashMap<Path, String>();
        for (int i = 0; i < MOST; i++) {
            int place = i;
            memory.get(FOLDER + i)
                    .flatMap(RecentJournals::path)
                    .ifPresent(
                            folder -> names.put(folder, memory.get(NAME + place).orElse("")));
        }
        return names;
    }

    private void put(List<Path> all, Map<Path, String> names) {
        for (int i = 0; i < MOST; i++) {
            memory.put(FOLDER + i, i < all.size() ? all.get(i).toString() : "");
            memory.put(NAME + i, i < all.size() ? names.getOrDefault(all.get(i), "") : "");
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
