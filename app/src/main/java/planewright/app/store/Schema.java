package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;

/** The version of the file format. */
final class Schema {
    /** What this program writes. Of a newer file it shows what it knows, and changes nothing. */
    static final int CURRENT = 1;

    private Schema() {}

    /**
     * Refuses a file that tells no version.
     *
     * @throws Unreadable where the field is missing or no whole number above 0
     */
    static void require(Fields fields) throws Unreadable {
        int schema = fields.whole("schema");
        if (schema < 1) {
            throw new Unreadable("field 'schema' is " + schema + "; accepted: 1 or more");
        }
    }

    /**
     * Refuses to change a file of a newer format.
     *
     * @throws JournalRefused if it is one
     */
    static void requireOurs(Path file, ObjectNode tree) throws IOException {
        int schema = new Fields(tree).whole("schema");
        if (schema > CURRENT) {
            throw new JournalRefused("file " + file + " was written by a newer version of the program: its schema is "
                    + schema + "; this one changes files up to " + CURRENT);
        }
    }
}
