package planewright.app.ui.parts;

import java.awt.FontMetrics;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where parts lie that have no place yet: in rows along the lower edge.
 *
 * @param top its upper edge, px; the height of the drawing where it is empty
 * @param slips from left to right, row by row
 * @param more how many have no room
 */
record Tray(int top, List<Slip> slips, int more) {
    private static final int ROWS = 2;
    private static final int GAP = 6;
    private static final int EDGE = 8;

    /** The name of a part that can be taken from the tray. */
    record Slip(DrawnPart part, Rectangle box) {}

    /** The tray of a drawing of a size. */
    static Tray of(List<DrawnPart> parts, FontMetrics letters, int width, int height) {
        var waiting = parts.stream().filter(part -> !part.isPlaced()).toList();
        if (waiting.isEmpty()) {
            return new Tray(height, List.of(), 0);
        }
        int high = letters.getHeight() + GAP;
        var boxes = new ArrayList<Rectangle>();
        int x = GAP;
        int row = 0;
        for (var part : waiting) {
            int wide = Math.min(width - 2 * GAP, letters.stringWidth(part.part().name()) + 2 * EDGE);
            if (x > GAP && x + wide > width - GAP) {
                x = GAP;
                row++;
            }
            if (row == ROWS) {
                break;
            }
            boxes.add(new Rectangle(x, row * (high + GAP), wide, high));
            x += wide + GAP;
        }
        int rows = Math.min(ROWS, row + 1);
        int top = height - GAP - rows * (high + GAP) - letters.getHeight();
        var slips = new ArrayList<Slip>();
        for (int i = 0; i < boxes.size(); i++) {
            boxes.get(i).translate(0, top + letters.getHeight() + GAP);
            slips.add(new Slip(waiting.get(i), boxes.get(i)));
        }
        return new Tray(top, List.copyOf(slips), waiting.size() - slips.size());
    }

    Optional<DrawnPart> at(int x, int y) {
        return slips.stream()
                .filter(slip -> slip.box().contains(x, y))
                .findFirst()
                .map(Slip::part);
    }
}
