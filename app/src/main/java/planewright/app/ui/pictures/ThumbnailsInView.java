package planewright.app.ui.pictures;

import java.awt.image.BufferedImage;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import planewright.app.journal.PictureRecord;
import planewright.app.pictures.ThumbnailSize;
import planewright.app.ui.common.Fitted;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/**
 * Small views of what is on the screen now. Whatever was wanted before and not yet begun is forgotten, so that scrolling past
 * thousands costs nothing; those seen last stay in memory. All methods on the event thread.
 */
final class ThumbnailsInView {
    private static final int AT_ONCE = 2;
    private static final long MOST_PIXELS = 12_000_000;

    /** A view to be drawn as it is, or the reason why there is none. */
    record View(Optional<BufferedImage> image, String reason) {
        private long pixels() {
            return image.map(each -> (long) each.getWidth() * each.getHeight()).orElse(1L);
        }
    }

    private final Workroom room;
    private final Consumer<PictureRecord> arrived;
    private final Map<String, View> views = new LinkedHashMap<>(64, 0.75f, true);
    private final Set<String> underWay = new HashSet<>();
    private Deque<PictureRecord> wanted = new ArrayDeque<>();
    private long pixels;
    private int width;
    private int height;

    /**
     * @param arrived hears of each picture that can be drawn from now on
     */
    ThumbnailsInView(Workroom room, Consumer<PictureRecord> arrived) {
        this.room = room;
        this.arrived = arrived;
    }

    /** How large views are, in pixels of the screen; none of another size is kept. */
    void size(int newWidth, int newHeight) {
        if (newWidth != width || newHeight != height) {
            width = newWidth;
            height = newHeight;
            views.clear();
            pixels = 0;
        }
    }

    /** Empty while it is not there yet. */
    Optional<View> view(PictureRecord picture) {
        return Optional.ofNullable(views.get(key(picture)));
    }

    /** These are to be seen now, and nothing else. */
    void want(List<PictureRecord> visible) {
        wanted = new ArrayDeque<>(visible);
        next();
    }

    boolean isIdle() {
        return underWay.isEmpty() && wanted.isEmpty();
    }

    private void next() {
        while (underWay.size() < AT_ONCE && !wanted.isEmpty()) {
            var picture = wanted.poll();
            var key = key(picture);
            if (!views.containsKey(key) && underWay.add(key)) {
                read(picture, key);
            }
        }
    }

    private void read(PictureRecord picture, String key) {
        int turns = Turns.of(room, picture);
        int toWidth = width;
        int toHeight = height;
        var size = ThumbnailSize.filling(Math.max(toWidth, toHeight));
        room.background()
                .run(
                        () -> Fitted.within(
                                room.program().pictures().thumbnail(picture, size), turns, toWidth, toHeight),
                        image -> take(picture, key, new View(Optional.of(image), "")),
                        failure -> take(picture, key, new View(Optional.empty(), Words.reason(failure))));
    }

    private void take(PictureRecord picture, String key, View view) {
        underWay.remove(key);
        if (key.equals(key(picture))) {
            views.put(key, view);
            pixels += view.pixels();
            var oldest = views.values().iterator();
            while (pixels > MOST_PIXELS && views.size() > 1) {
                pixels -= oldest.next().pixels();
                oldest.remove();
            }
            arrived.accept(picture);
        }
        next();
    }

    /** A view of another size or turn is another one. */
    private String key(PictureRecord picture) {
        return picture.hash() + " " + Turns.of(room, picture) + " " + width;
    }
}
