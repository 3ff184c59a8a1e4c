package planewright.app.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryLine;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.News;
import planewright.app.store.BuildFiles.Found;

/** Looks at the entry files of one build: what differs from what is known of them is read. */
final class LogLook {
    private final BuildRecord build;
    private final Path journal;
    private final Places places;
    private final Map<String, EntryLine> known = new HashMap<>();
    private final Map<Path, String> oddly = new HashMap<>();
    private final Map<String, Path> seen = new HashMap<>();
    private final Set<String> same = new HashSet<>();
    private final List<News.Present> read = new ArrayList<>();
    private final List<SetAside> setAside = new ArrayList<>();

    /**
     * @param journal the journal's folder, from which files are named in messages
     */
    LogLook(BuildRecord build, Path journal, List<EntryLine> lines, Places places) {
        this.build = build;
        this.journal = journal;
        this.places = places;
        for (var line : lines) {
            known.put(line.id(), line);
            places.oddly(line.id()).ifPresent(file -> oddly.put(file, line.id()));
        }
    }

    /**
     * What was found.
     *
     * @param news what differs from what was known
     * @param files of the entries that were read
     * @param setAside files that cannot be read
     */
    record Seen(News news, Map<String, Path> files, List<SetAside> setAside) {}

    Seen look(BuildFiles files) {
        setAside.addAll(files.unreadable());
        for (var file : files.entries()) {
            try {
                look(file);
            } catch (IOException unreadable) {
                setAside.add(BuildFiles.setAside(file.file(), unreadable));
            }
        }
        var gone = known.keySet().stream()
                .filter(id -> !seen.containsKey(id))
                .map(id -> new News.Gone(id, build.id()))
                .toList();
        seen.keySet().removeAll(same);
        setAside.sort(Comparator.comparing(SetAside::file));
        return new Seen(new News(read, gone), seen, setAside);
    }

    private void look(Found found) throws IOException {
        var file = found.plain();
        var id = oddly.getOrDefault(file, BuildFiles.nameOf(file.getFileName().toString()));
        var line = known.get(id);
        if (line != null
                && line.stamp() == found.stamp()
                && places.isPlace(id, file)
                && seen.putIfAbsent(id, file) == null) {
            same.add(id);
            return;
        }
        var entry = read(file);
        var first = seen.putIfAbsent(entry.id(), file);
        if (first != null) {
            throw new Unreadable("its id {0} is also that of {1}", entry.id(), journal.relativize(first));
        }
        read.add(new News.Present(entry, found.stamp()));
    }

    private EntryRecord read(Path file) throws IOException {
        var entry = FileKind.ENTRY.read(JsonFiles.read(file));
        if (!entry.build().equals(build.id())) {
            throw new Unreadable(
                    "field 'build' is '{0}'; accepted: '{1}', the build in whose folder it lies",
                    entry.build(), build.id());
        }
        BuildFiles.requireUlid(entry.id());
        return entry;
    }
}
