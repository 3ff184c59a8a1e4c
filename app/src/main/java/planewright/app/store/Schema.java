package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Stream;

/** Versions of the files. Each kind of file counts its own schemas; a journal as a whole has a format. */
final class Schema {
    /**
     * The newest format of a journal that this program writes in. A journal's {@code minReader} is the format that its files
     * need; a program that knows only older ones reads the journal and does not write in it.
     */
    static final int FORMAT = 3;

    /** Where a file tells its schema. */
    static final String FIELD = "schema";

    private static final int HEAD = 1;

    private Schema() {}

    /** The schema of the file {@value JournalFolder#HEAD}. */
    static int ofHead() {
        return HEAD;
    }

    /** The names of all schemas that are published, of older files too. */
    static List<String> files() {
        return Stream.concat(
                        Stream.of("journal-" + HEAD + ".json"),
                        FileKind.ALL.stream().flatMap(kind -> kind.schemaFiles().stream()))
                .toList();
    }

    /**
     * The schema that a file tells.
     *
     * @throws Unreadable where the field is missing or no whole number above 0
     */
    static int of(ObjectNode tree) throws Unreadable {
        int schema = new Fields(tree).whole(FIELD);
        if (schema < 1) {
            throw new Unreadable("field '{0}' is {1}; accepted: 1 or more", FIELD, schema);
        }
        return schema;
    }

    /** What a field is called from now on whose name meant nothing in a schema and does in the next; no other field has it. */
    static String oldName(ObjectNode tree, String name, int schema) {
        return free(tree, name + " of schema " + schema);
    }

    private static String free(ObjectNode tree, String name) {
        return tree.has(name) ? free(tree, name + ", again") : name;
    }
}
