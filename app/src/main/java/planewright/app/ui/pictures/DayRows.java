package planewright.app.ui.pictures;

import java.awt.Rectangle;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Where cells lie: each day under its heading, in as many columns as the width has room for. Days that are short enough stand
 * beside each other; a day that is longer than a line begins a line and ends it.
 */
final class DayRows {
    /** Sizes in pixels. */
    record Sizes(int cellWidth, int cellHeight, int headingHeight) {}

    /**
     * The pictures of a day.
     *
     * @param first the place of its first one
     * @param count how many
     * @param x of its heading
     * @param top of its heading
     * @param width that its heading has
     */
    record Day(LocalDate date, int first, int count, int x, int top, int width) {}

    /** Days beside each other, or one long day: cells without gaps below one line of headings. */
    private record Band(int first, int end, int top, List<Day> days) {}

    private final Sizes sizes;
    private final int columns;
    private final List<Band> bands = new ArrayList<>();
    private final int height;

    /**
     * @param dates of the cells, those of a day beside each other
     */
    DayRows(List<LocalDate> dates, int width, Sizes sizes) {
        this.sizes = sizes;
        columns = Math.max(1, width / sizes.cellWidth());
        int top = 0;
        for (int first = 0; first < dates.size(); ) {
            var band = band(dates, first, top);
            bands.add(band);
            top += sizes.headingHeight() + lines(band) * sizes.cellHeight();
            first = band.end();
        }
        height = top;
    }

    private Band band(List<LocalDate> dates, int from, int top) {
        var days = new ArrayList<Day>();
        int first = from;
        while (first < dates.size()) {
            int end = endOfDay(dates, first);
            if (end - from > columns && !days.isEmpty()) {
                break;
            }
            days.add(new Day(
                    dates.get(first),
                    first,
                    end - first,
                    (first - from) * sizes.cellWidth(),
                    top,
                    Math.min(columns, end - first) * sizes.cellWidth()));
            first = end;
        }
        return new Band(from, first, top, List.copyOf(days));
    }

    private static int endOfDay(List<LocalDate> dates, int first) {
        int end = first;
        while (end < dates.size() && dates.get(end).equals(dates.get(first))) {
            end++;
        }
        return end;
    }

    private int lines(Band band) {
        return (band.end() - band.first() + columns - 1) / columns;
    }

    int height() {
        return height;
    }

    private int count() {
        return bands.isEmpty() ? 0 : bands.get(bands.size() - 1).end();
    }

    Rectangle cell(int place) {
        var band = bandOf(place);
        int in = place - band.first();
        return new Rectangle(
                in % columns * sizes.cellWidth(),
                cellsTop(band) + in / columns * sizes.cellHeight(),
                sizes.cellWidth(),
                sizes.cellHeight());
    }

    private int cellsTop(Band band) {
        return band.top() + sizes.headingHeight();
    }

    /** The cell at a point, −1 for none. */
    int at(int x, int y) {
        if (bands.isEmpty() || x < 0 || y < 0 || y >= height || x >= columns * sizes.cellWidth()) {
            return -1;
        }
        var band = bandAt(y);
        int place = band.first() + lineAt(band, y) * columns + x / sizes.cellWidth();
        return y < cellsTop(band) || place >= band.end() ? -1 : place;
    }

    /** The cells that a strip between two heights cuts: the first, and the one behind the last. */
    int[] between(int top, int bottom) {
        if (bands.isEmpty()) {
            return new int[] {0, 0};
        }
        var upper = bandAt(top);
        var lower = bandAt(bottom);
        int first = upper.first() + lineAt(upper, top) * columns;
        int end = lower.first() + (lineAt(lower, bottom) + 1) * columns;
        return new int[] {Math.max(upper.first(), Math.min(first, upper.end())), Math.min(end, lower.end())};
    }

    /** The days whose headings or cells such a strip cuts. */
    List<Day> daysBetween(int top, int bottom) {
        return bands.isEmpty()
                ? List.of()
                : bands.subList(placeOf(top), placeOf(bottom) + 1).stream()
                        .flatMap(band -> band.days().stream())
                        .toList();
    }

    /** The cell in the line above; the place itself where there is none. */
    int above(int place) {
        var cell = cell(place);
        var band = bandOf(place);
        if (cell.y > cellsTop(band)) {
            return place - columns;
        }
        return band.top() == 0 ? place : inLine(bandAt(band.top() - 1), band.top() - 1, cell.x);
    }

    /** The cell in the line below; the place itself where there is none. */
    int below(int place) {
        var cell = cell(place);
        var band = bandOf(place);
        int under = cell.y + cell.height;
        if (under >= height) {
            return place;
        }
        var next = bandAt(under);
        return inLine(next, next == band ? under : cellsTop(next), cell.x);
    }

    /** The cell of a line below or above a point; of a shorter line the last one. */
    private int inLine(Band band, int y, int x) {
        return Math.min(band.first() + lineAt(band, y) * columns + x / sizes.cellWidth(), band.end() - 1);
    }

    /** Below 0 in the headings. */
    private int lineAt(Band band, int y) {
        return Math.floorDiv(y - cellsTop(band), sizes.cellHeight());
    }

    private Band bandOf(int place) {
        if (place < 0 || place >= count()) {
            throw new IndexOutOfBoundsException("cell " + place + " of " + count());
        }
        int low = 0;
        int high = bands.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (bands.get(middle).first() <= place) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return bands.get(low);
    }

    private Band bandAt(int y) {
        return bands.get(placeOf(y));
    }

    private int placeOf(int y) {
        int low = 0;
        int high = bands.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (bands.get(middle).top() <= y) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }
}
