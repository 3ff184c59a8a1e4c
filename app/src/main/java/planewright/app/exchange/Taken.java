package planewright.app.exchange;

import java.util.List;

/**
 * What went out.
 *
 * @param things how many files, measurements or pages
 * @param tellPlace how many of its pictures say where they were taken
 * @param leftOut what did not go out
 */
public record Taken(int things, int tellPlace, List<LeftOut> leftOut) {
    public Taken {
        leftOut = List.copyOf(leftOut);
    }
}
