package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.Kept;

/** Records as the JSON that their files hold. */
public final class RecordFiles {
    private RecordFiles() {}

    /** The object that the record's file holds, as far as this program knows it. */
    public static ObjectNode json(Kept record) {
        return record instanceof BuildRecord build ? BuildFile.write(build) : EntryFile.write((EntryRecord) record);
    }

    /** The same, its planform in the units that a tree of it already has. */
    static ObjectNode json(Kept record, ObjectNode tree) throws Unreadable {
        return record instanceof BuildRecord build ? BuildFile.write(build, BuildFile.units(tree)) : json(record);
    }

    /**
     * The record that a file's tree describes.
     *
     * @param like a record of the same kind
     */
    static Kept read(ObjectNode tree, Kept like) throws Unreadable {
        return like instanceof BuildRecord ? BuildFile.read(tree) : EntryFile.read(tree);
    }
}
