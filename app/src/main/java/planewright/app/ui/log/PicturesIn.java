package planewright.app.ui.log;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import planewright.app.exchange.Brought;
import planewright.app.exchange.LeftOut;
import planewright.app.exchange.PictureFolder;
import planewright.app.exchange.Watch;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.DayEntry;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Workroom;

/**
 * Takes pictures into the log, each into the entry of the day it was taken, or of today. A few files come in at once; folders, and many
 * files, are shown before.
 */
final class PicturesIn {
    private static final int FEW = 5;

    private final Workroom room;
    private final Runnable shown;
    private final Runnable changed;

    /** By the ids of builds. */
    private final Map<String, CardPreview> previews = new HashMap<>();

    /**
     * @param shown runs when something is to be looked at before it comes in
     * @param changed runs when the previews are others
     */
    PicturesIn(Workroom room, Runnable shown, Runnable changed) {
        this.room = room;
        this.shown = shown;
        this.changed = changed;
    }

    Optional<CardPreview> preview(String build) {
        return Optional.ofNullable(previews.get(build));
    }

    void take(BuildRecord build, List<Path> places) {
        room.background().run(() -> places.size() > FEW || places.stream().anyMatch(Files::isDirectory), many -> {
            if (many) {
                lookAt(build, places);
            } else if (!places.isEmpty()) {
                bring(build, places);
            }
        });
    }

    /** Takes a picture that comes from no file into the entry of today. */
    void paste(BuildRecord build, BufferedImage image) {
        var now = room.now();
        room.background()
                .run(
                        () -> room.program().pictures().add(image, ""),
                        picture -> room.edit(
                                () -> DayEntry.writing(
                                        room.journal(),
                                        build.id(),
                                        now,
                                        Texts.ADD_PICTURE_EDIT.text(),
                                        entry -> entry.withPictures(
                                                Stream.concat(entry.pictures().stream(), Stream.of(picture))
                                                        .toList())),
                                () -> {}));
    }

    private void lookAt(BuildRecord build, List<Path> places) {
        previews.put(build.id(), new CardPreview(room, build, places, () -> {
            previews.remove(build.id());
            changed.run();
        }));
        changed.run();
        shown.run();
    }

    private void bring(BuildRecord build, List<Path> files) {
        room.inOrder(() -> brought(build, files), done -> {
            var not = Stream.of(done.leftOut(), done.known())
                    .flatMap(List::stream)
                    .map(PicturesIn::words)
                    .collect(Collectors.joining("; "));
            if (not.isEmpty()) {
                room.say(Texts.SAVED.text(Texts.ADD_PICTURE_EDIT.text()));
            } else {
                room.failed(new IOException(not));
            }
        });
    }

    private Brought brought(BuildRecord build, List<Path> files) throws IOException {
        var now = room.now();
        var seen = PictureFolder.see(room.program().folder(), build, files, Optional.of(now), now, Watch.NONE);
        return seen.of(seen.pictures()).write(Watch.NONE);
    }

    private static String words(LeftOut left) {
        return left.what() + ": " + left.reason();
    }
}
