package planewright.app.store;

import java.nio.file.Path;
import java.util.List;

/**
 * Two programs have written into the same fields of a record. What was saved last stands; the other version lies in the bin.
 *
 * @param file of the record
 * @param fields in which they differed
 */
public record Clash(Path file, List<String> fields) {
    public Clash {
        fields = List.copyOf(fields);
    }
}
