package planewright.app.ui.common;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.News;
import planewright.app.journal.PictureRecord;
import planewright.app.pictures.PictureShelf;

/** Makes the small views of pictures that come into the journal before somebody scrolls to them, one after the other. */
final class ThumbnailsAhead {
    private static final System.Logger LOGGER = System.getLogger(ThumbnailsAhead.class.getName());

    private final PictureShelf shelf;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        var thread = new Thread(work, "planewright-thumbnails");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });

    ThumbnailsAhead(PictureShelf shelf) {
        this.shelf = shelf;
    }

    /** Asks for the pictures of entries that are new or have changed; what is made already costs a look. */
    void hear(News news) {
        for (var present : news.present()) {
            if (present.record() instanceof EntryRecord entry && !worker.isShutdown()) {
                entry.pictures().forEach(picture -> worker.execute(() -> make(picture)));
            }
        }
    }

    /** What is not made by now is made when it is looked at. */
    void stop() {
        worker.shutdownNow();
    }

    private void make(PictureRecord picture) {
        try {
            shelf.prepare(picture);
        } catch (Exception unusable) {
            LOGGER.log(System.Logger.Level.DEBUG, "no small views of " + picture.hash(), unusable);
        }
    }
}
