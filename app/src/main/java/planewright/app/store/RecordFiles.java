package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.CalendarRecord;
import planewright.app.journal.Kept;
import planewright.app.journal.MaterialsRecord;
import planewright.app.journal.TemplateRecord;

/** Records as the JSON that their files hold, and where those files lie. */
public final class RecordFiles {
    static final String BUILDS = "builds";

    /** The file of a build in its folder. */
    static final String HEAD = "build.json";

    static final String TEMPLATES = "templates";
    static final String CALENDAR = CalendarRecord.ID + ".json";
    static final String MATERIALS = MaterialsRecord.ID + ".json";

    private RecordFiles() {}

    /** The object that the record's file holds, as far as this program knows it. */
    public static ObjectNode json(Kept record) {
        return FileKind.of(record).write(record);
    }

    /** The calendar that an object describes as the journal's file does; without a number it is of the newest schema. */
    public static CalendarRecord calendar(ObjectNode tree) throws Unreadable {
        return tree.has("schema") ? FileKind.CALENDAR.read(tree.deepCopy()) : CalendarFile.read(new Fields(tree));
    }

    /** The same, its planform in the units that a tree of it already has. */
    static ObjectNode json(Kept record, ObjectNode tree) throws Unreadable {
        return record instanceof BuildRecord build ? BuildFile.inUnitsOf(tree, build) : json(record);
    }

    /**
     * The record that a file's tree describes.
     *
     * @param like a record of the same kind
     */
    static Kept read(ObjectNode tree, Kept like) throws Unreadable {
        return FileKind.of(like).read(tree);
    }

    /** The record of a tree that lies where its kind cannot be told from the place. */
    static Kept read(ObjectNode tree, String id) throws Unreadable {
        if (id.equals(CalendarRecord.ID)) {
            return FileKind.CALENDAR.read(tree);
        }
        if (id.equals(MaterialsRecord.ID)) {
            return FileKind.MATERIALS.read(tree);
        }
        if (tree.has("build")) {
            return FileKind.ENTRY.read(tree);
        }
        return tree.has("life") ? FileKind.BUILD.read(tree) : FileKind.TEMPLATE.read(tree);
    }

    /**
     * Where a record that has no file yet shall have it; entries lie in the folders of their builds.
     *
     * @param folder the journal's
     */
    static Path place(Path folder, Kept record) {
        if (record instanceof BuildRecord build) {
            return folder.resolve(BUILDS).resolve(Names.folderOf(build)).resolve(HEAD);
        }
        return record instanceof TemplateRecord template
                ? folder.resolve(TEMPLATES).resolve(Names.fileOf(template))
                : folder.resolve(record.id() + ".json");
    }
}
