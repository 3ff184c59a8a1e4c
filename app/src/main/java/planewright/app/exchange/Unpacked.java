package planewright.app.exchange;

import java.util.List;

/**
 * A journal that came out of an archive.
 *
 * @param name the journal's
 * @param builds how many
 * @param entries how many
 * @param wrong files that came in as they are and cannot be used
 * @param leftOut what the archive holds besides the journal, and was not unpacked
 */
public record Unpacked(String name, int builds, int entries, List<LeftOut> wrong, List<LeftOut> leftOut) {
    public Unpacked {
        wrong = List.copyOf(wrong);
        leftOut = List.copyOf(leftOut);
    }
}
