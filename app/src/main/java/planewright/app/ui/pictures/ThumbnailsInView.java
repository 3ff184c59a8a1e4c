package planewright.app.ui.pictures;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
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
import planewright.app.ui.common.Workroom;

/**
 * Small views of what is on the screen now. Whatever was wanted before and not yet begun is forgotten, so that scrolling past
 * thousands costs nothing; those seen last stay in memory. All methods on the event thread.
 */
final class ThumbnailsInView {
    private static final int AT_ONCE = 2;
    private static final long MOST_PIXELS = 20_000_000;

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
                        () -> fitted(room.program().pictures().thumbnail(picture, size), turns, toWidth, toHeight),
                        image -> take(picture, key, new View(Optional.of(image), "")),
                        failure -> take(picture, key, new View(Optional.empty(), reason(failure))));
    }

    private static String reason(Throwable failure) {
        return failure.getMessage() == null ? failure.toString() : failure.getMessage();
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

    /** Turned, and in the size and kind that the screen draws without further work. */
    private static BufferedImage fitted(BufferedImage view, int turns, int width, int height) {
        boolean across = turns % 2 == 1;
        double w = across ? view.getHeight() : view.getWidth();
        double h = across ? view.getWidth() : view.getHeight();
        double scale = Math.min(width / w, height / h);
        var image = new BufferedImage(
                Math.max(1, (int) (w * scale)), Math.max(1, (int) (h * scale)), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        var place = AffineTransform.getScaleInstance(image.getWidth() / w, image.getHeight() / h);
        place.concatenate(Turns.turned(turns, view.getWidth(), view.getHeight()));
        g.drawImage(view, place, null);
        g.dispose();
        return image;
    }
}
