package planewright.app.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import planewright.app.files.SafeFile;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Kept;
import planewright.app.journal.News;
import planewright.app.journal.OpenJournal;

/** Finds out what differs on disk from what the open journal knows, and tells the journal. */
final class Survey {
    private final Path journal;
    private final Path builds;
    private final OtherFiles others;
    private final Places places;
    private final boolean tidying;
    private final Map<Path, Head> heads = new LinkedHashMap<>();
    private final Map<Path, List<SetAside>> setAside = new ConcurrentHashMap<>();

    /**
     * @param journal the journal's folder
     * @param tidying whether to remove what saves that were cut short have left
     */
    Survey(Path journal, Places places, boolean tidying) {
        this.journal = journal;
        this.builds = journal.resolve(RecordFiles.BUILDS);
        this.others = new OtherFiles(journal);
        this.places = places;
        this.tidying = tidying;
    }

    /** A build whose file was read. */
    private record Head(BuildRecord build, long stamp) {}

    /** What is set aside, in the order of folders. */
    List<SetAside> setAside() {
        return new TreeMap<>(setAside).values().stream().flatMap(List::stream).toList();
    }

    /**
     * Reads all records but the entries, which are not looked at. Builds whose files are as they were are not read either.
     *
     * @param known what was known of builds, by the names of their folders
     */
    synchronized List<Kept> records(Map<String, Catalogue.Known> known) throws IOException {
        known.forEach((folder, build) -> {
            if (build.stamp() != Stamp.UNKNOWN) {
                heads.put(builds.resolve(folder), new Head(build.head(), build.stamp()));
            }
        });
        lookAtRecords();
        var records = new ArrayList<Kept>();
        heads.values().forEach(head -> records.add(head.build()));
        others.known().values().forEach(other -> records.add(other.record()));
        return records;
    }

    /**
     * Compares files with what the journal knows and tells it what differs.
     *
     * @param saves counts the saves made so far: what was seen before a save is looked at again
     * @param wanted the folders of builds whose entries are looked at
     */
    synchronized void look(
            OpenJournal open, LongSupplier saves, Predicate<Path> wanted, JournalFolder.Progress progress)
            throws IOException {
        var before = present();
        long savesBefore = saves.getAsLong();
        lookAtRecords();
        open.takeIn(() -> {
            if (saves.getAsLong() != savesBefore) {
                lookAgainAtRecords();
            }
            return news(open, before);
        });
        var done = new AtomicInteger();
        var folders = setAside.keySet().stream()
                .filter(folder -> builds.equals(folder.getParent()) && wanted.test(folder))
                .toList();
        folders.parallelStream().forEach(folder -> {
            lookAtLog(folder, open, saves);
            progress.at(done.incrementAndGet(), folders.size());
        });
    }

    private void lookAgainAtRecords() {
        try {
            lookAtRecords();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private void lookAtRecords() throws IOException {
        lookAtHeads();
        others.look();
        setAside.put(journal, List.copyOf(others.setAside()));
        for (var file : present().entrySet()) {
            places.note(file.getValue().record(), file.getKey());
        }
    }

    /** All records but the entries, by their files. */
    private Map<Path, News.Present> present() {
        var present = new HashMap<Path, News.Present>();
        heads.forEach((folder, head) ->
                present.put(folder.resolve(RecordFiles.HEAD), new News.Present(head.build(), head.stamp())));
        others.known().forEach((file, other) -> present.put(file, new News.Present(other.record(), other.stamp())));
        return present;
    }

    private void lookAtHeads() throws IOException {
        var links = new ArrayList<SetAside>();
        var folders = BuildFiles.folders(builds, links);
        var before = new HashMap<>(heads);
        var ids = new HashMap<String, Path>();
        heads.clear();
        var there = Set.copyOf(folders);
        setAside.keySet().removeIf(folder -> builds.equals(folder.getParent()) && !there.contains(folder));
        setAside.put(builds, links);
        folders.forEach(folder -> setAside.putIfAbsent(folder, List.of()));
        var read = new ConcurrentHashMap<Path, Head>();
        folders.parallelStream()
                .forEach(folder -> head(folder, Optional.ofNullable(before.get(folder)))
                        .ifPresent(head -> read.put(folder, head)));
        for (var folder : folders) {
            if (read.containsKey(folder)) {
                claim(folder, read.get(folder), ids);
            }
        }
    }

    private Optional<Head> head(Path folder, Optional<Head> before) {
        try {
            var found = BuildFiles.head(folder);
            if (found.isEmpty()
                    || before.filter(known -> known.stamp() == found.get().stamp())
                            .isPresent()) {
                return found.flatMap(same -> before);
            }
            var build = FileKind.BUILD.read(JsonFiles.read(found.get().plain()));
            BuildFiles.requireUlid(build.id());
            return Optional.of(new Head(build, found.get().stamp()));
        } catch (IOException unreadable) {
            setAside(folder, unreadable);
            return Optional.empty();
        }
    }

    private void claim(Path folder, Head head, Map<String, Path> ids) {
        var id = head.build().id();
        var first = ids.putIfAbsent(id, folder.resolve(RecordFiles.HEAD));
        if (first == null) {
            heads.put(folder, head);
        } else {
            setAside(folder, new Unreadable("its id {0} is also that of {1}", id, journal.relativize(first)));
        }
    }

    private void setAside(Path folder, IOException unreadable) {
        setAside.put(folder, List.of(BuildFiles.setAside(folder.resolve(RecordFiles.HEAD), unreadable)));
    }

    private News news(OpenJournal open, Map<Path, News.Present> before) {
        var now = present().values();
        var ids = now.stream().map(each -> each.record().id()).collect(Collectors.toSet());
        var gone = new ArrayList<News.Gone>();
        before.values().stream()
                .map(News.Present::record)
                .filter(record -> !ids.contains(record.id()) && open.holds(record))
                .forEach(record -> {
                    gone.add(new News.Gone(record.id(), record.id()));
                    open.lines(record.id()).forEach(line -> gone.add(new News.Gone(line.id(), record.id())));
                    places.forget(record);
                });
        return new News(now.stream().filter(each -> !isKnown(open, each)).toList(), gone);
    }

    private static boolean isKnown(OpenJournal open, News.Present each) {
        return open.record(each.record()).filter(each.record()::equals).isPresent();
    }

    private void lookAtLog(Path folder, OpenJournal open, LongSupplier saves) {
        long before = saves.getAsLong();
        var seen = seen(folder, open);
        open.takeIn(() -> {
            var now = saves.getAsLong() == before ? seen : seen(folder, open);
            setAside.put(folder, now.setAside());
            now.news()
                    .present()
                    .forEach(each ->
                            note(each.record(), now.files().get(each.record().id())));
            return now.news();
        });
    }

    private void note(Kept record, Path file) {
        try {
            places.note(record, file);
        } catch (IOException withoutBuild) {
            throw new UncheckedIOException(withoutBuild);
        }
    }

    private LogLook.Seen seen(Path folder, OpenJournal open) {
        try {
            var files = BuildFiles.in(folder);
            if (tidying) {
                for (var file : files.leftOvers()) {
                    SafeFile.sweepAway(file);
                }
            }
            var head = heads.get(folder);
            if (head != null) {
                return new LogLook(
                                head.build(), journal, open.lines(head.build().id()), places)
                        .look(files);
            }
            return new LogLook.Seen(new News(List.of(), List.of()), Map.of(), withoutBuild(files));
        } catch (IOException failure) {
            throw new UncheckedIOException(
                    StoreWords.say("folder {0} cannot be read: {1}", folder, failure.getMessage()), failure);
        }
    }

    /** Entries of a build that cannot be read are not shown either. */
    private List<SetAside> withoutBuild(BuildFiles files) {
        if (files.isNone()) {
            return List.of();
        }
        var aside = new ArrayList<SetAside>();
        setAside.get(files.folder()).stream()
                .filter(each -> each.file().equals(files.folder().resolve(RecordFiles.HEAD)))
                .findFirst()
                .ifPresentOrElse(
                        aside::add,
                        () -> aside.add(new SetAside(
                                files.folder().resolve(RecordFiles.HEAD), StoreWords.say("it is missing"))));
        files.entries()
                .forEach(entry -> aside.add(new SetAside(entry.file(), StoreWords.say("its build cannot be read"))));
        return aside;
    }

    /** The catalogue of what the journal knows. */
    synchronized Catalogue catalogue(OpenJournal open) throws IOException {
        var known = new HashMap<String, Catalogue.Known>();
        var odd = new HashMap<String, String>();
        for (var build : open.builds()) {
            var folder = places.of(build).getParent();
            var head = heads.getOrDefault(folder, new Head(build, Stamp.UNKNOWN));
            var lines = open.lines(build.id());
            known.put(folder.getFileName().toString(), new Catalogue.Known(head.build(), head.stamp(), lines));
            for (var line : lines) {
                places.oddly(line.id())
                        .ifPresent(file ->
                                odd.put(line.id(), builds.relativize(file).toString()));
            }
        }
        return new Catalogue(known, odd);
    }
}
