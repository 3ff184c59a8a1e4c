package planewright.app.ui.pictures;

import java.awt.geom.AffineTransform;
import planewright.app.journal.PictureRecord;
import planewright.app.ui.common.Workroom;

/** By how many quarters of a turn a picture is shown to the right. The window remembers it; pictures stay as they were taken. */
final class Turns {
    private static final String NAME = "turn ";

    private Turns() {}

    static int of(Workroom room, PictureRecord picture) {
        return room.memory()
                .get(NAME + picture.hash())
                .filter(turns -> turns.matches("[0-3]"))
                .map(Integer::valueOf)
                .orElse(0);
    }

    /** Shows a picture turned by so many quarters more. */
    static void turn(Workroom room, PictureRecord picture, int by) {
        room.memory().put(NAME + picture.hash(), Integer.toString(Math.floorMod(of(room, picture) + by, 4)));
        room.remembered();
    }

    /** Takes points of a picture to where they lie on the turned one, whose upper left corner is 0, 0 again. */
    static AffineTransform turned(int turns, double width, double height) {
        return switch (Math.floorMod(turns, 4)) {
            case 1 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 2 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 3 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }
}
