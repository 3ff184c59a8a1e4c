package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.CalendarRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;
import planewright.app.journal.MaterialsRecord;
import planewright.app.journal.TemplateRecord;

/**
 * How the records of one kind are filed.
 *
 * @param word names its schemas: {@code entry} has {@code entry-1.json}, {@code entry-2.json}
 * @param type of its records
 * @param format the format of journals in which its newest schema appeared, see {@link Schema#FORMAT}
 * @param migrations the first takes a tree from schema 1 to 2, and so on; each changes the tree in place
 * @param reader reads a tree of its newest schema
 * @param writer writes a tree of its newest schema
 */
record FileKind<R extends Kept>(
        String word,
        Class<R> type,
        int format,
        List<UnaryOperator<ObjectNode>> migrations,
        Reader<R> reader,
        Function<R, ObjectNode> writer) {
    static final FileKind<BuildRecord> BUILD = new FileKind<>(
            "build", BuildRecord.class, 3, List.of(BuildMigrations::toTwo), BuildFile::read, BuildFile::write);
    static final FileKind<EntryRecord> ENTRY = new FileKind<>(
            "entry", EntryRecord.class, 2, List.of(EntryMigrations::toTwo), EntryFile::read, EntryFile::write);
    static final FileKind<TemplateRecord> TEMPLATE =
            new FileKind<>("template", TemplateRecord.class, 2, List.of(), TemplateFile::read, TemplateFile::write);
    static final FileKind<CalendarRecord> CALENDAR =
            new FileKind<>("calendar", CalendarRecord.class, 2, List.of(), CalendarFile::read, CalendarFile::write);
    static final FileKind<MaterialsRecord> MATERIALS =
            new FileKind<>("materials", MaterialsRecord.class, 2, List.of(), MaterialsFile::read, MaterialsFile::write);

    static final List<FileKind<?>> ALL = List.of(BUILD, ENTRY, TEMPLATE, CALENDAR, MATERIALS);

    /** Reads a record. */
    interface Reader<R> {
        R read(Fields fields) throws Unreadable;
    }

    static FileKind<?> of(Kept record) {
        return ALL.stream()
                .filter(kind -> kind.type.isInstance(record))
                .findFirst()
                .orElseThrow();
    }

    /** The schema that this program writes. Of a newer file it shows what it knows, and changes nothing. */
    int schema() {
        return migrations.size() + 1;
    }

    /** The names of its schemas, the oldest first. */
    List<String> schemaFiles() {
        return IntStream.rangeClosed(1, schema())
                .mapToObj(version -> word + "-" + version + ".json")
                .toList();
    }

    /** The record in a tree of this or an older schema; of a newer one what is known. The tree stays as it is. */
    R read(ObjectNode tree) throws Unreadable {
        var current = migrated(tree);
        var fields = new Fields(current);
        return fields.checked("", () -> reader.read(fields));
    }

    /** What the record's file holds, as far as this program knows it. */
    ObjectNode write(Kept record) {
        var body = writer.apply(type.cast(record));
        var tree = JsonFiles.object().put(Schema.FIELD, schema());
        return tree.setAll(body);
    }

    /** A tree in the newest schema: the same one where it is that already, or of a newer one. */
    ObjectNode migrated(ObjectNode tree) throws Unreadable {
        int schema = Schema.of(tree);
        if (schema >= schema()) {
            return tree;
        }
        var current = tree.deepCopy();
        for (var migration : migrations.subList(schema - 1, migrations.size())) {
            current = migration.apply(current);
        }
        current.put(Schema.FIELD, schema());
        return current;
    }

    /**
     * Refuses to change a file of a newer schema.
     *
     * @throws JournalRefused if it is one
     */
    void requireOurs(Path file, ObjectNode tree) throws IOException {
        int found = Schema.of(tree);
        if (found > schema()) {
            throw new JournalRefused(
                    "file {0} was written by a newer version of the program: its schema is {1}; this one changes files up to {2}",
                    file, found, schema());
        }
    }
}
