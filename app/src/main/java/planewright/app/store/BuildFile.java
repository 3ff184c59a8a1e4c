package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.journal.Life;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.PartRecord;

/** A build as a file says it. */
final class BuildFile {
    private BuildFile() {}

    static BuildRecord read(Fields fields) throws Unreadable {
        var planform = fields.tree("planform");
        return new BuildRecord(
                fields.text("id"),
                fields.text("name"),
                fields.word("life", Life.values(), Life::word),
                fields.textOr("layout", ""),
                fields.textOr("datum", ""),
                fields.date("begun"),
                fields.texts("notes"),
                fields.rows("parts", BuildFile::part),
                planform.isPresent() ? Optional.of(PlanformJson.read(planform.get())) : Optional.empty(),
                fields.nested("begunFrom", TemplateFile::buildDay));
    }

    /** What a build's file holds, its planform in the units that a tree of it has. */
    static ObjectNode inUnitsOf(ObjectNode tree, BuildRecord build) throws Unreadable {
        var written = FileKind.BUILD.write(build);
        var planform = new Fields(tree).tree("planform");
        if (planform.isPresent() && build.planform().isPresent()) {
            var units = PlanformJson.units(new Fields(planform.get()));
            written.set("planform", PlanformJson.write(build.planform().get(), units));
        }
        return written;
    }

    static ObjectNode write(BuildRecord build) {
        var writing = new Writing()
                .text("id", build.id())
                .text("name", build.name())
                .text("life", build.life().word())
                .text("layout", build.layout())
                .text("datum", build.datum())
                .text("begun", build.begun().toString())
                .texts("notes", build.notes())
                .rows("parts", build.parts(), BuildFile::part);
        build.begunFrom().ifPresent(proven -> writing.nested("begunFrom", TemplateFile.buildDay(proven)));
        build.planform().ifPresent(planform -> writing.tree("planform", PlanformJson.write(planform)));
        return writing.done();
    }

    private static PartRecord part(Fields row) throws Unreadable {
        return new PartRecord(
                row.text("id"),
                row.text("name"),
                row.textOr("group", ""),
                row.measured("mass", Mass.class),
                row.measured("x", Length.class),
                row.measured("y", Length.class),
                row.measured("z", Length.class),
                row.measured("length", Length.class),
                row.measured("width", Length.class),
                row.measured("height", Length.class),
                row.flag("carried"));
    }

    private static Writing part(PartRecord part) {
        return new Writing()
                .text("id", part.id())
                .text("name", part.name())
                .text("group", part.group())
                .measured("mass", part.mass())
                .flag("carried", part.carried())
                .measured("x", part.x())
                .measured("y", part.y())
                .measured("z", part.z())
                .measured("length", part.length())
                .measured("width", part.width())
                .measured("height", part.height());
    }
}
