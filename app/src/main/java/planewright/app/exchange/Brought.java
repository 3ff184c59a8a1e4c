package planewright.app.exchange;

import java.util.List;

/**
 * What came in.
 *
 * @param things how many pictures, measurements or notes
 * @param entries in how many entries they stand now
 * @param known what the journal has already
 * @param leftOut what was refused
 */
public record Brought(int things, int entries, List<LeftOut> known, List<LeftOut> leftOut) {
    public Brought {
        known = List.copyOf(known);
        leftOut = List.copyOf(leftOut);
    }
}
