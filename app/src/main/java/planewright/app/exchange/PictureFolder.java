package planewright.app.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import planewright.app.exchange.SeenPictures.Seen;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.DayEntry;
import planewright.app.journal.Edit;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.PictureRecord;
import planewright.app.journal.Slow;
import planewright.app.pictures.PictureRefused;
import planewright.app.pictures.PictureShelf;
import planewright.app.store.JournalFolder;

/** Brings pictures, such as a card's folder of them, into a build's log, each into the entry of the day on which the camera took it. */
public final class PictureFolder {
    private static final String WHAT = "bring in pictures";

    private final OpenJournal journal;
    private final PictureShelf shelf;
    private final BuildRecord build;
    private final Optional<LocalDateTime> otherwise;
    private final LocalDateTime now;
    private final List<LeftOut> known = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();
    private final Map<String, LocalDate> logged = new HashMap<>();
    private final Map<String, String> seen = new HashMap<>();

    private PictureFolder(
            OpenJournal journal,
            PictureShelf shelf,
            BuildRecord build,
            Optional<LocalDateTime> otherwise,
            LocalDateTime now) {
        this.journal = journal;
        this.shelf = shelf;
        this.build = build;
        this.otherwise = otherwise;
        this.now = now;
    }

    /**
     * Looks at every picture below a folder that the log does not show yet. One that it shows, and that the journal has lost, is
     * put back.
     *
     * @param otherwise the day of pictures that do not say when they were taken; without one they are left out
     * @param now pictures from after it are left out: the camera's clock was wrong
     * @throws ExchangeRefused if there is no such folder, or the journal is open for reading only
     */
    public static Intake look(
            JournalFolder journal,
            BuildRecord build,
            Path folder,
            Optional<LocalDate> otherwise,
            LocalDateTime now,
            Watch watch)
            throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new ExchangeRefused(
                    ExchangeWords.say("folder {0} is not there; accepted: a folder of JPEG or PNG pictures", folder));
        }
        var seen = see(journal, build, List.of(folder), otherwise.map(day -> day.atTime(DateText.NOON)), now, watch);
        return seen.of(seen.pictures());
    }

    /**
     * Looks at pictures that the log does not show yet. One that it shows, and that the journal has lost, is put back.
     *
     * @param places files, and folders with all that is below them
     * @param otherwise the time of pictures that do not say when they were taken; without one they are left out
     * @param now pictures from after it are left out: the camera's clock was wrong
     * @throws ExchangeRefused if the journal is open for reading only
     */
    public static SeenPictures see(
            JournalFolder journal,
            BuildRecord build,
            List<Path> places,
            Optional<LocalDateTime> otherwise,
            LocalDateTime now,
            Watch watch)
            throws IOException {
        Slow.work("looking at pictures");
        if (journal.readOnly().isPresent()) {
            throw new ExchangeRefused(ExchangeWords.say(
                    "journal {0} is open for reading only: {1}",
                    journal.folder(), journal.readOnly().get()));
        }
        return new PictureFolder(journal.journal(), journal.pictures(), build, otherwise, now).see(places, watch);
    }

    /** Brings in what {@link #look} has seen. */
    public static Brought bring(
            JournalFolder journal,
            BuildRecord build,
            Path folder,
            Optional<LocalDate> otherwise,
            LocalDateTime now,
            Watch watch)
            throws IOException {
        return look(journal, build, folder, otherwise, now, watch).write(watch);
    }

    private SeenPictures see(List<Path> wanted, Watch watch) throws IOException {
        journal.log(build.id())
                .forEach(entry -> entry.pictures()
                        .forEach(picture ->
                                logged.putIfAbsent(picture.hash(), entry.at().toLocalDate())));
        var pictures = new ArrayList<Seen>();
        for (var place : wanted) {
            for (var file : FilesAt.list(place, any -> true, leftOut)) {
                watch.reached(file.toString());
                look(FilesAt.name(place, file), file).ifPresent(pictures::add);
            }
        }
        pictures.sort(Comparator.comparing(Seen::at).thenComparing(Seen::file));
        return new SeenPictures(pictures, known, leftOut, this::intake);
    }

    private Intake intake(List<Seen> chosen) {
        var names =
                chosen.stream().collect(Collectors.toMap(each -> each.picture().hash(), Seen::name));
        var rows = chosen.isEmpty()
                ? List.<Intake.Row>of()
                : Intake.rows(
                        edit(chosen),
                        entry -> entry.pictures().stream()
                                .map(picture -> names.get(picture.hash()))
                                .filter(Objects::nonNull)
                                .toList());
        return new Intake(rows, known, leftOut, writing -> write(chosen, writing));
    }

    private Optional<Seen> look(String name, Path file) {
        try {
            var picture = shelf.check(file);
            if (logged.containsKey(picture.hash())) {
                lookAtLogged(name, file, picture);
                return Optional.empty();
            }
            var same = seen.putIfAbsent(picture.hash(), name);
            if (same != null) {
                known.add(new LeftOut(name, ExchangeWords.say("is the same picture as {0}", same)));
                return Optional.empty();
            }
            var at = shelf.taken(file).or(() -> otherwise);
            if (at.isPresent() && !at.get().isAfter(now.plusDays(1))) {
                return Optional.of(new Seen(file, name, at.get(), picture));
            }
            seen.remove(picture.hash());
            leftOut.add(new LeftOut(
                    name,
                    at.map(time -> ExchangeWords.say(
                                    "was taken on {0}, which is still to come: set the camera's clock, and the "
                                            + "picture's date",
                                    time.toLocalDate()))
                            .orElse(ExchangeWords.say("does not say when it was taken; name the day to put it into"))));
        } catch (PictureRefused refused) {
            leftOut.add(new LeftOut(name, refused.getMessage().replace("picture " + file + " ", "")));
        } catch (IOException unreadable) {
            leftOut.add(new LeftOut(
                    name,
                    ExchangeWords.say(
                            "cannot be read ({0})", unreadable.getClass().getSimpleName())));
        }
        return Optional.empty();
    }

    /** What the log shows is on the shelf afterwards, whatever has become of its file there. */
    private void lookAtLogged(String name, Path file, PictureRecord picture) {
        var day = ExchangeWords.day(logged.get(picture.hash()));
        try {
            boolean there = shelf.holds(picture);
            if (!there) {
                shelf.add(file, "");
            }
            known.add(new LeftOut(
                    name,
                    there
                            ? ExchangeWords.say("is in the log already, on {0}", day)
                            : ExchangeWords.say(
                                    "is in the log already, on {0}; the journal's own copy was missing or damaged and "
                                            + "has been put back",
                                    day)));
        } catch (IOException failure) {
            leftOut.add(new LeftOut(
                    name,
                    ExchangeWords.say(
                            "is in the log already, on {0}; the journal's own copy is missing or damaged and cannot "
                                    + "be put back: {1}",
                            day, failure.getLocalizedMessage())));
        }
    }

    /** All of them or none, as far as the log can be taken back; the shelf keeps what it shows then. */
    private void write(List<Seen> found, Watch watch) throws IOException {
        var added = new ArrayList<PictureRecord>();
        try {
            for (var each : found) {
                watch.reached(each.file().toString());
                boolean there = Files.exists(shelf.file(each.picture()));
                var picture = shelf.add(each.file(), "");
                if (!there) {
                    added.add(picture);
                }
                if (!picture.equals(each.picture())) {
                    throw new ExchangeRefused(ExchangeWords.say(
                            "picture {0} has changed since it was looked at; look again", each.file()));
                }
            }
            journal.apply(edit(found));
        } catch (IOException | RuntimeException failure) {
            takeBack(added, failure);
            throw failure;
        }
    }

    /** Takes off the shelf what no entry shows. */
    private void takeBack(List<PictureRecord> added, Exception failure) {
        try {
            var shown = journal.builds().stream()
                    .flatMap(each -> journal.log(each.id()).stream())
                    .flatMap(entry -> entry.pictures().stream())
                    .map(PictureRecord::hash)
                    .collect(Collectors.toSet());
            for (var picture : added) {
                if (!shown.contains(picture.hash())) {
                    remove(picture, failure);
                }
            }
        } catch (RuntimeException unread) {
            failure.addSuppressed(unread);
        }
    }

    private void remove(PictureRecord picture, Exception failure) {
        try {
            shelf.remove(picture);
        } catch (IOException second) {
            failure.addSuppressed(second);
        }
    }

    private Edit edit(List<Seen> found) {
        var days = found.stream()
                .collect(Collectors.groupingBy(each -> each.at().toLocalDate(), TreeMap::new, Collectors.toList()));
        return new Edit(
                WHAT,
                days.values().stream()
                        .flatMap(day -> editOfDay(day).changes().stream())
                        .toList());
    }

    private Edit editOfDay(List<Seen> day) {
        var pictures = day.stream().map(Seen::picture).toList();
        return DayEntry.writing(
                journal,
                build.id(),
                day.get(0).at().truncatedTo(ChronoUnit.MINUTES),
                WHAT,
                entry -> entry.withPictures(Stream.concat(entry.pictures().stream(), pictures.stream())
                        .toList()));
    }
}
