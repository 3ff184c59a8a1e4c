package planewright.app.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import javax.measure.Unit;
import planewright.api.journal.Planform;
import planewright.api.quantity.Units;
import tech.units.indriya.AbstractUnit;

/**
 * A planform in JSON: written in millimetres and degrees, read in any unit of length and angle that it names; shares are
 * percent.
 */
public final class PlanformJson {
    static final UnitCodes OURS = new UnitCodes("mm", 0.001, "deg", Math.PI / 180);

    private static final double PERCENT = 100;

    private PlanformJson() {}

    /**
     * @throws Unreadable if a field is missing or wrong; the message names it
     */
    public static Planform read(ObjectNode tree) throws Unreadable {
        var fields = new Fields(tree);
        var units = units(fields);
        double length = units.length();
        double angle = units.angle();
        return fields.checked(
                "planform",
                () -> new Planform(
                        fields.rows("surfaces", row -> surface(row, length, angle)),
                        fields.rows("bodies", row -> body(row, length))));
    }

    /** The object that {@link #read} understands. */
    public static ObjectNode write(Planform planform) {
        return write(planform, OURS);
    }

    static ObjectNode write(Planform planform, UnitCodes units) {
        return new Writing()
                .text("unit", units.lengthCode())
                .text("angleUnit", units.angleCode())
                .rows("surfaces", planform.surfaces(), surface -> surface(surface, units))
                .rows("bodies", planform.bodies(), body -> body(body, units))
                .done();
    }

    /** The units that a planform's tree names. */
    static UnitCodes units(Fields fields) throws Unreadable {
        var length = fields.textOr("unit", OURS.lengthCode());
        var angle = fields.textOr("angleUnit", OURS.angleCode());
        return new UnitCodes(
                length, factor(length, "unit", Units.METRE), angle, factor(angle, "angleUnit", Units.RADIAN));
    }

    /**
     * Units of a planform's numbers.
     *
     * @param lengthCode UCUM
     * @param length one of it, m
     * @param angleCode UCUM
     * @param angle one of it, rad
     */
    record UnitCodes(String lengthCode, double length, String angleCode, double angle) {}

    private static double factor(String code, String field, Unit<?> system) throws Unreadable {
        var unit = Units.ofCode(code)
                .filter(known -> Units.alike(known, system))
                .orElseThrow(() -> new Unreadable(
                        "field 'planform.{0}' is '{1}'; accepted: {2}",
                        field,
                        code,
                        String.join(
                                ", ",
                                Units.alike(system).stream()
                                        .map(Units.Coded::code)
                                        .toList())));
        return ((AbstractUnit<?>) unit).getSystemConverter().convert(1.0);
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
                panels,
                row.rows("controls", PlanformJson::control));
    }

    private static Planform.Control control(Fields row) throws Unreadable {
        double hinge = row.number("hinge");
        return new Planform.Control(
                row.text("name"),
                row.word("role", Planform.Role.values(), Planform.Role::word),
                row.number("from") / PERCENT,
                row.number("to") / PERCENT,
                hinge / PERCENT,
                row.numberOr("hingeTo", hinge) / PERCENT);
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

    private static Writing surface(Planform.Surface surface, UnitCodes units) {
        return new Writing()
                .text("name", surface.name())
                .number("x", in(units.length(), surface.x()))
                .number("y", in(units.length(), surface.y()))
                .number("z", in(units.length(), surface.z()))
                .flag("mirrored", surface.mirrored())
                .rows(
                        "panels",
                        surface.panels(),
                        panel -> new Writing()
                                .number("rootChord", in(units.length(), panel.rootChord()))
                                .number("tipChord", in(units.length(), panel.tipChord()))
                                .number("span", in(units.length(), panel.span()))
                                .number("sweep", in(units.angle(), panel.sweep()))
                                .number("dihedral", in(units.angle(), panel.dihedral()))
                                .number("twist", in(units.angle(), panel.twist())))
                .rows("controls", surface.controls(), PlanformJson::control);
    }

    private static Writing control(Planform.Control control) {
        var writing = new Writing()
                .text("name", control.name())
                .text("role", control.role().word())
                .number("from", in(1 / PERCENT, control.from()))
                .number("to", in(1 / PERCENT, control.to()))
                .number("hinge", in(1 / PERCENT, control.hinge()));
        return control.hingeTo() == control.hinge()
                ? writing
                : writing.number("hingeTo", in(1 / PERCENT, control.hingeTo()));
    }

    private static Writing body(Planform.Body body, UnitCodes units) {
        return new Writing()
                .text("name", body.name())
                .number("y", in(units.length(), body.y()))
                .rows(
                        "sections",
                        body.sections(),
                        section -> new Writing()
                                .number("x", in(units.length(), section.x()))
                                .number("width", in(units.length(), section.width()))
                                .number("top", in(units.length(), section.top()))
                                .number("bottom", in(units.length(), section.bottom())));
    }

    /** To nine decimals, so that a number is written as it was read. */
    private static double in(double unit, double value) {
        return Math.rint(value / unit * 1e9) / 1e9;
    }
}
