package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import planewright.app.journal.MaterialRecord;
import planewright.app.journal.MaterialsRecord;

/** What the owner of a journal knows of materials, as a file says it. */
final class MaterialsFile {
    private MaterialsFile() {}

    static MaterialsRecord read(Fields fields) throws Unreadable {
        return new MaterialsRecord(fields.rows("materials", MaterialsFile::material));
    }

    static ObjectNode write(MaterialsRecord record) {
        return new Writing()
                .rows("materials", record.materials(), MaterialsFile::material)
                .done();
    }

    private static MaterialRecord material(Fields row) throws Unreadable {
        return new MaterialRecord(
                row.text("id"),
                row.text("name"),
                row.text("material"),
                row.measured("workingTime", Time.class),
                row.measured("flashOff", Time.class),
                row.measured("handsOff", Time.class),
                row.measured("fullyCured", Time.class),
                row.measured("at", Temperature.class),
                row.textOr("note", ""));
    }

    private static Writing material(MaterialRecord material) {
        return new Writing()
                .text("id", material.id())
                .text("name", material.name())
                .text("material", material.material())
                .measured("workingTime", material.workingTime())
                .measured("flashOff", material.flashOff())
                .measured("handsOff", material.handsOff())
                .measured("fullyCured", material.fullyCured())
                .measured("at", material.at())
                .text("note", material.note());
    }
}
