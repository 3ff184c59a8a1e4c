package planewright.app.ui.pictures;

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
}
