package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import planewright.api.journal.Planform;
import planewright.api.quantity.Units;

/** A planform in JSON: written in millimetres and degrees, read in any unit of length and angle that it names. */
public final class PlanformJson {
    private PlanformJson() {}

    /**
     * @throws Unreadable if a field is missing or wrong; the message names it
     */
    public static Planform read(ObjectNode tree) throws Unreadable {
        var fields = new Fields(tree);
        double length = factor(fields.textOr("unit", "mm"), "unit", Units.METRE);
        double angle = factor(fields.textOr("angleUnit", "deg"), "angleUnit", Units.RADIAN);
        return fields.checked(
                "planform",
                () -> new Planform(
                        fields.rows("surfaces", row -> surface(row, length, angle)),
                        fields.rows("bodies", row -> body(row, length))));
    }

    /** The object that {@link #read} understands. */
    public static ObjectNode write(Planform planform) {
        return new Writing()
                .text("unit", "mm")
                .text("angleUnit", "deg")
                .rows("surfaces", planform.surfaces(), PlanformJson::surface)
                .rows("bodies", planform.bodies(), PlanformJson::body)
                .done();
    }

    private static double factor(String code, String field, javax.measure.Unit<?> system) throws Unreadable {
        var unit = Units.ofCode(code)
                .filter(known -> Units.alike(known, system))
                .orElseThrow(() -> new Unreadable("field 'planform." + field + "' is '" + code + "'; accepted: "
                        + String.join(
                                ", ",
                                Units.alike(system).stream()
                                        .map(Units.Coded::code)
                                        .toList())));
        return ((tech.units.indriya.AbstractUnit<?>) unit).getSystemConverter().convert(1.0);
    }

    private static Planform.Surface surface(Fields row, double length, double angle) throws Unreadable {
        List<Planform.Panel> panels = row.rows(
                "panels",
                panel -> new Planform.Panel(
                        panel.number("rootChord") * length,
                        panel.number("tipChord") * length,
                        panel.number("span") * length,
                        panel.numberOr("sweep", 0) * angle,
                        panel.numberOr("dihedral", 0) * angle,
                        panel.numberOr("twist", 0) * angle));
        return new Planform.Surface(
                row.text("name"),
                row.numberOr("x", 0) * length,
                row.numberOr("y", 0) * length,
                row.numberOr("z", 0) * length,
                row.flag("mirrored"),
                panels);
    }

    private static Planform.Body body(Fields row, double length) throws Unreadable {
        return new Planform.Body(
                row.text("name"),
                row.numberOr("y", 0) * length,
                row.rows(
                        "sections",
                        section -> new Planform.Section(
                                section.number("x") * length,
                                section.number("width") * length,
                                section.number("top") * length,
                                section.number("bottom") * length)));
    }

    private static Writing surface(Planform.Surface surface) {
        return new Writing()
                .text("name", surface.name())
                .number("x", millimetres(surface.x()))
                .number("y", millimetres(surface.y()))
                .number("z", millimetres(surface.z()))
                .flag("mirrored", surface.mirrored())
                .rows(
                        "panels",
                        surface.panels(),
                        panel -> new Writing()
                                .number("rootChord", millimetres(panel.rootChord()))
                                .number("tipChord", millimetres(panel.tipChord()))
                                .number("span", millimetres(panel.span()))
                                .number("sweep", degrees(panel.sweep()))
                                .number("dihedral", degrees(panel.dihedral()))
                                .number("twist", degrees(panel.twist())));
    }

    private static Writing body(Planform.Body body) {
        return new Writing()
                .text("name", body.name())
                .number("y", millimetres(body.y()))
                .rows(
                        "sections",
                        body.sections(),
                        section -> new Writing()
                                .number("x", millimetres(section.x()))
                                .number("width", millimetres(section.width()))
                                .number("top", millimetres(section.top()))
                                .number("bottom", millimetres(section.bottom())));
    }

    /** To the nanometre, so that a number read in millimetres is written as it was. */
    private static double millimetres(double metres) {
        return Math.rint(metres * 1e9) / 1e6;
    }

    private static double degrees(double radians) {
        return Math.rint(Math.toDegrees(radians) * 1e9) / 1e9;
    }
}
