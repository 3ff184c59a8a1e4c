package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import planewright.api.journal.Entry;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.FlightRecord;
import planewright.app.journal.JointRecord;
import planewright.app.journal.KeptResult;
import planewright.app.journal.MeasurementRecord;
import planewright.app.journal.PictureRecord;
import planewright.app.journal.RepairRecord;
import planewright.app.journal.SetUpRecord;
import planewright.app.journal.TaskRecord;

/** An entry as a file says it. */
final class EntryFile {
    private EntryFile() {}

    static EntryRecord read(Fields fields) throws Unreadable {
        return new EntryRecord(
                fields.text("id"),
                fields.text("build"),
                fields.time("at"),
                fields.word("kind", Entry.Kind.values(), Entry.Kind::word),
                fields.textOr("title", ""),
                fields.texts("text"),
                fields.texts("tags"),
                fields.rows("measurements", EntryFile::measurement),
                fields.rows("joints", EntryFile::joint),
                fields.rows(
                        "pictures",
                        row -> new PictureRecord(row.text("hash"), row.text("type"), row.textOr("caption", ""))),
                fields.rows("setUp", EntryFile::setUp),
                fields.rows("flights", EntryFile::flight),
                fields.rows("repairs", EntryFile::repair),
                fields.rows("tasks", EntryFile::task),
                fields.nested("keptResult", EntryFile::keptResult));
    }

    static ObjectNode write(EntryRecord entry) {
        var writing = new Writing()
                .text("id", entry.id())
                .text("build", entry.build())
                .time("at", entry.at())
                .text("kind", entry.kind().word())
                .text("title", entry.title())
                .texts("text", entry.text())
                .texts("tags", entry.tags())
                .rows("measurements", entry.measurements(), EntryFile::measurement)
                .rows("joints", entry.joints(), EntryFile::joint)
                .rows(
                        "pictures",
                        entry.pictures(),
                        picture -> new Writing()
                                .text("hash", picture.hash())
                                .text("type", picture.type())
                                .text("caption", picture.caption()))
                .rows("setUp", entry.setUp(), EntryFile::setUp)
                .rows("flights", entry.flights(), EntryFile::flight)
                .rows("repairs", entry.repairs(), EntryFile::repair)
                .rows("tasks", entry.tasks(), EntryFile::task);
        entry.keptResult()
                .ifPresent(kept -> writing.nested(
                        "keptResult",
                        new Writing()
                                .text("calculator", kept.calculator())
                                .text("version", kept.version())
                                .tree("inputs", kept.inputs())
                                .tree("origins", kept.origins())
                                .tree("results", kept.results())));
        return writing.done();
    }

    private static MeasurementRecord measurement(Fields row) throws Unreadable {
        return new MeasurementRecord(row.text("id"), row.text("name"), row.written(), row.textOr("method", ""));
    }

    private static Writing measurement(MeasurementRecord measurement) {
        return new Writing()
                .text("id", measurement.id())
                .text("name", measurement.name())
                .written(measurement.quantity())
                .text("method", measurement.method());
    }

    private static JointRecord joint(Fields row) throws Unreadable {
        return new JointRecord(
                row.text("id"),
                row.text("name"),
                row.textOr("material", ""),
                row.time("start"),
                row.optionalTime("handsOffUntil"),
                row.optionalTime("fullyCured"));
    }

    private static Writing joint(JointRecord joint) {
        return new Writing()
                .text("id", joint.id())
                .text("name", joint.name())
                .text("material", joint.material())
                .time("start", joint.start())
                .time("handsOffUntil", joint.handsOffUntil())
                .time("fullyCured", joint.fullyCured());
    }

    static SetUpRecord setUp(Fields row) throws Unreadable {
        return new SetUpRecord(row.text("name"), row.written());
    }

    static Writing setUp(SetUpRecord value) {
        return new Writing().text("name", value.name()).written(value.quantity());
    }

    private static FlightRecord flight(Fields row) throws Unreadable {
        return new FlightRecord(
                row.text("id"),
                row.measured("duration", Time.class),
                row.textOr("conditions", ""),
                row.textOr("behaviour", ""));
    }

    private static Writing flight(FlightRecord flight) {
        return new Writing()
                .text("id", flight.id())
                .measured("duration", flight.duration())
                .text("conditions", flight.conditions())
                .text("behaviour", flight.behaviour());
    }

    private static RepairRecord repair(Fields row) throws Unreadable {
        return new RepairRecord(
                row.text("id"),
                row.text("broke"),
                row.textOr("cause", ""),
                row.textOr("mended", ""),
                row.measured("massAdded", Mass.class));
    }

    private static Writing repair(RepairRecord repair) {
        return new Writing()
                .text("id", repair.id())
                .text("broke", repair.broke())
                .text("cause", repair.cause())
                .text("mended", repair.mended())
                .measured("massAdded", repair.massAdded());
    }

    private static TaskRecord task(Fields row) throws Unreadable {
        return new TaskRecord(row.text("id"), row.text("name"), row.measured("handsOn", Time.class));
    }

    private static Writing task(TaskRecord task) {
        return new Writing().text("id", task.id()).text("name", task.name()).measured("handsOn", task.handsOn());
    }

    private static KeptResult keptResult(Fields kept) throws Unreadable {
        return new KeptResult(
                kept.text("calculator"),
                kept.text("version"),
                kept.tree("inputs").orElseGet(JsonFiles::object),
                kept.tree("origins").orElseGet(JsonFiles::object),
                kept.tree("results").orElseGet(JsonFiles::object));
    }
}
