package planewright.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import planewright.app.journal.Kept;
import planewright.app.store.BuildFiles.Found;

/** Reads what lies beside the builds: templates, the calendar, the materials. */
final class OtherFiles {
    private final Path folder;
    private final List<SetAside> setAside = new ArrayList<>();
    private Map<Path, Known> known = new LinkedHashMap<>();

    /**
     * @param folder the journal's
     */
    OtherFiles(Path folder) {
        this.folder = folder;
    }

    /** A record that was read. */
    record Known(Kept record, long stamp) {}

    /** Those that could be read at the last look, by their files. */
    Map<Path, Known> known() {
        return Map.copyOf(known);
    }

    List<SetAside> setAside() {
        return setAside;
    }

    /** Reads what has changed since the last look. */
    void look() throws IOException {
        var before = known;
        known = new LinkedHashMap<>();
        setAside.clear();
        for (var file : templates()) {
            look(file, FileKind.TEMPLATE, before);
        }
        look(folder.resolve(RecordFiles.CALENDAR), FileKind.CALENDAR, before);
        look(folder.resolve(RecordFiles.MATERIALS), FileKind.MATERIALS, before);
    }

    private List<Path> templates() throws IOException {
        var place = folder.resolve(RecordFiles.TEMPLATES);
        return Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS) ? BuildFiles.json(place) : List.of();
    }

    private void look(Path file, FileKind<?> kind, Map<Path, Known> before) throws IOException {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        var found = new Found(file, Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS));
        var same = Optional.ofNullable(before.get(file)).filter(each -> each.stamp() == found.stamp());
        try {
            var now = same.isPresent() ? same.get() : new Known(read(found, kind), found.stamp());
            requireOne(now.record());
            known.put(file, now);
        } catch (IOException unreadable) {
            setAside.add(BuildFiles.setAside(file, unreadable));
        }
    }

    private static Kept read(Found found, FileKind<?> kind) throws IOException {
        var record = kind.read(JsonFiles.read(found.plain()));
        if (kind == FileKind.TEMPLATE) {
            BuildFiles.requireUlid(record.id());
        }
        return record;
    }

    private void requireOne(Kept record) throws Unreadable {
        for (var other : known.entrySet()) {
            if (other.getValue().record().id().equals(record.id())) {
                throw new Unreadable("its id {0} is also that of {1}", record.id(), folder.relativize(other.getKey()));
            }
        }
    }
}
