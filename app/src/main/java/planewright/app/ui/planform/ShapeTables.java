package planewright.app.ui.planform;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import planewright.api.journal.Planform;
import planewright.api.journal.Planform.Control;
import planewright.api.journal.Planform.Role;
import planewright.api.journal.Planform.Surface;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.shared.planform.Shaping;
import planewright.shared.planform.Shaping.Station;
import planewright.shared.planform.SurfaceKind;
import planewright.shared.quantity.QuantityProblem;

/** What the tables beside the drawing hold, and how rows of theirs come and go. */
final class ShapeTables {
    private static final double STEEPEST = Math.toRadians(180);
    private static final double MOST_TWIST = Math.toRadians(30);

    private final PlanformDraft draft;
    private final Lengths lengths;

    ShapeTables(PlanformDraft draft, Lengths lengths) {
        this.draft = draft;
        this.lengths = lengths;
    }

    int surfaces() {
        return draft.shape().map(shape -> shape.surfaces().size()).orElse(0);
    }

    int sections() {
        return draft.shape().map(shape -> chosen().panels().size() + 1).orElse(0);
    }

    int controls() {
        return draft.shape().map(shape -> chosen().controls().size()).orElse(0);
    }

    List<ShapeColumn> ofSurfaces() {
        return List.of(
                ShapeColumn.of(
                        Texts.PLANFORM_NAME.text(),
                        row -> surface(row).name(),
                        (row, typed) -> put(row, Shaping.named(surface(row), free((String) typed, row)))),
                ShapeColumn.shown(Texts.PLANFORM_KIND.text(), row -> kind(row).text()),
                new ShapeColumn(
                        Texts.PLANFORM_MIRRORED.text(),
                        Boolean.class,
                        row -> surface(row).mirrored(),
                        (row, typed) -> put(row, Shaping.mirrored(surface(row), (Boolean) typed))),
                place(Texts.PLANFORM_X, Surface::x, (on, x) -> Shaping.at(on, x, on.y(), on.z())),
                place(Texts.PLANFORM_Y, Surface::y, (on, y) -> Shaping.at(on, on.x(), y, on.z())),
                place(Texts.PLANFORM_Z, Surface::z, (on, z) -> Shaping.at(on, on.x(), on.y(), z)));
    }

    List<ShapeColumn> ofSections() {
        return List.of(
                ShapeColumn.shown(Texts.PLANFORM_SECTION_COLUMN.text(), this::sectionName),
                ShapeColumn.of(
                        Texts.PLANFORM_STATION.text(),
                        row -> lengths.text(station(row).along()),
                        (row, typed) ->
                                put(Shaping.along(chosen(), row, between(row, lengths.metres((String) typed))))),
                ShapeColumn.of(
                        Texts.PLANFORM_EDGE.text(),
                        row -> lengths.text(station(row).edge().x()),
                        (row, typed) -> put(Shaping.edge(chosen(), row, lengths.metres((String) typed)))),
                ShapeColumn.of(
                        Texts.PLANFORM_CHORD.text(),
                        row -> lengths.text(station(row).chord()),
                        (row, typed) -> put(Shaping.chord(
                                chosen(),
                                row,
                                accepted(
                                        (String) typed,
                                        lengths.metres((String) typed),
                                        0,
                                        Double.MAX_VALUE,
                                        lengths.text(0) + "+")))),
                ShapeColumn.of(
                        Texts.PLANFORM_DIHEDRAL.text(),
                        row -> row == 0 ? "" : Lengths.angle(station(row).dihedral()),
                        (row, typed) -> put(Shaping.dihedral(
                                chosen(),
                                row,
                                accepted(
                                        (String) typed,
                                        Lengths.radians((String) typed),
                                        -STEEPEST,
                                        STEEPEST,
                                        "-180° … 180°")))),
                ShapeColumn.of(
                        Texts.PLANFORM_TWIST.text(),
                        row -> row == 0 ? "" : Lengths.angle(station(row).twist()),
                        (row, typed) -> put(Shaping.twist(
                                chosen(),
                                row,
                                accepted(
                                        (String) typed,
                                        Lengths.radians((String) typed),
                                        -MOST_TWIST,
                                        MOST_TWIST,
                                        "-30° … 30°")))));
    }

    List<ShapeColumn> ofControls() {
        return List.of(
                ShapeColumn.of(Texts.PLANFORM_NAME.text(), row -> control(row).name(), (row, typed) -> {
                    var old = control(row);
                    return put(
                            row,
                            new Control(
                                    named((String) typed),
                                    old.role(),
                                    old.from(),
                                    old.to(),
                                    old.hinge(),
                                    old.hingeTo()));
                }),
                new ShapeColumn(
                        Texts.PLANFORM_ROLE.text(),
                        Role.class,
                        row -> control(row).role(),
                        (row, typed) -> {
                            var old = control(row);
                            return put(
                                    row,
                                    new Control(
                                            old.name(),
                                            (Role) typed,
                                            old.from(),
                                            old.to(),
                                            old.hinge(),
                                            old.hingeTo()));
                        }),
                share(
                        Texts.PLANFORM_FROM,
                        Control::from,
                        (old, share) ->
                                new Control(old.name(), old.role(), share, old.to(), old.hinge(), old.hingeTo())),
                share(
                        Texts.PLANFORM_TO,
                        Control::to,
                        (old, share) ->
                                new Control(old.name(), old.role(), old.from(), share, old.hinge(), old.hingeTo())),
                share(
                        Texts.PLANFORM_HINGE,
                        Control::hinge,
                        (old, share) -> new Control(
                                old.name(),
                                old.role(),
                                old.from(),
                                old.to(),
                                share,
                                old.hinge() == old.hingeTo() ? share : old.hingeTo())),
                share(
                        Texts.PLANFORM_HINGE_END,
                        Control::hingeTo,
                        (old, share) -> new Control(old.name(), old.role(), old.from(), old.to(), old.hinge(), share)));
    }

    void addSurface() {
        draft.shape().ifPresent(shape -> {
            var more = new ArrayList<>(shape.surfaces());
            more.add(Shaping.beside(shape, free(Texts.PLANFORM_NEW_SURFACE.text(), more.size(), shape)));
            draft.change(Texts.PLANFORM_ADD_SURFACE.text(), new Planform(more, shape.bodies()));
            draft.choose(more.size() - 1);
        });
    }

    /** The last surface stays. */
    void removeSurface() {
        draft.shape().filter(shape -> shape.surfaces().size() > 1).ifPresent(shape -> {
            var fewer = new ArrayList<>(shape.surfaces());
            fewer.remove(draft.chosen());
            draft.change(Texts.PLANFORM_REMOVE_SURFACE.text(), new Planform(fewer, shape.bodies()));
        });
    }

    void addSection(int after) {
        draft.shape()
                .ifPresent(shape -> draft.change(
                        Texts.PLANFORM_ADD_SECTION.text(), put(Shaping.split(chosen(), Math.max(0, after)))));
    }

    void removeSection(int section) {
        draft.shape()
                .ifPresent(shape ->
                        draft.change(Texts.PLANFORM_REMOVE_SECTION.text(), put(Shaping.without(chosen(), section))));
    }

    void addControl() {
        draft.shape().ifPresent(shape -> {
            var more = new ArrayList<>(chosen().controls());
            var role = SurfaceKind.of(shape, draft.chosen()).usual();
            more.add(new Control(Terms.of(role.word()), role, 0.5, 0.95, 0.75, 0.75));
            draft.change(Texts.PLANFORM_ADD_CONTROL.text(), put(Shaping.controls(chosen(), more)));
        });
    }

    void removeControl(int row) {
        if (row >= 0 && row < controls()) {
            var fewer = new ArrayList<>(chosen().controls());
            fewer.remove(row);
            draft.change(Texts.PLANFORM_REMOVE_CONTROL.text(), put(Shaping.controls(chosen(), fewer)));
        }
    }

    private interface Moved<T> {
        T to(T old, double number);
    }

    private ShapeColumn place(Texts title, Function<Surface, Double> read, Moved<Surface> moved) {
        return ShapeColumn.of(
                title.text(),
                row -> lengths.text(read.apply(surface(row))),
                (row, typed) -> put(row, moved.to(surface(row), lengths.metres((String) typed))));
    }

    private ShapeColumn share(Texts title, Function<Control, Double> read, Moved<Control> moved) {
        return ShapeColumn.of(
                title.text(),
                row -> Lengths.percent(read.apply(control(row))),
                (row, typed) -> put(row, moved.to(control(row), Lengths.share((String) typed))));
    }

    private Planform shape() {
        return draft.shape().orElseThrow();
    }

    private Surface surface(int row) {
        return shape().surfaces().get(row);
    }

    private Surface chosen() {
        return surface(draft.chosen());
    }

    private Station station(int row) {
        return Shaping.stations(chosen()).get(row);
    }

    private Control control(int row) {
        return chosen().controls().get(row);
    }

    private Planform put(int row, Surface changed) {
        return Shaping.surface(shape(), row, changed);
    }

    private Planform put(Surface changed) {
        return put(draft.chosen(), changed);
    }

    private Planform put(int row, Control changed) {
        return put(Shaping.controls(chosen(), Shaping.replaced(chosen().controls(), row, changed)));
    }

    private Texts kind(int row) {
        return switch (SurfaceKind.of(shape(), row)) {
            case WING -> Texts.KIND_WING;
            case TAIL -> Texts.KIND_TAIL;
            case CANARD -> Texts.KIND_CANARD;
            case V_TAIL -> Texts.KIND_V_TAIL;
            case FIN -> Texts.KIND_FIN;
        };
    }

    private String sectionName(int row) {
        return row == 0
                ? Texts.PLANFORM_ROOT.text()
                : row == chosen().panels().size() ? Texts.PLANFORM_TIP.text() : Texts.PLANFORM_SECTION.text(row + 1);
    }

    /** A station between the neighbours of a section, refused where it is not. */
    private double between(int row, double along) throws QuantityProblem {
        var stations = Shaping.stations(chosen());
        double least = row == 0 ? 0 : stations.get(row - 1).along() + Shaping.SHORTEST;
        double most = row == 0
                ? 0
                : row + 1 < stations.size() ? stations.get(row + 1).along() - Shaping.SHORTEST : Double.MAX_VALUE;
        return accepted(
                lengths.text(along),
                along,
                least,
                most,
                lengths.text(least) + " … " + (most == Double.MAX_VALUE ? "" : lengths.text(most)));
    }

    private static double accepted(String typed, double number, double least, double most, String range) {
        if (!(number >= least && number <= most)) {
            throw new IllegalArgumentException(Texts.PLANFORM_OUT_OF_RANGE.text(typed.strip(), range));
        }
        return number;
    }

    private static String named(String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(Texts.PLANFORM_NAMELESS.text());
        }
        return name.strip();
    }

    /** A surface is found by its name, so that no two may have the same. */
    private String free(String typed, int row) {
        var name = named(typed);
        boolean taken = IntStream.range(0, surfaces())
                .anyMatch(i -> i != row && surface(i).name().equalsIgnoreCase(name));
        if (taken) {
            throw new IllegalArgumentException(Texts.PLANFORM_TAKEN.text(name));
        }
        return name;
    }

    private static String free(String name, int number, Planform shape) {
        return Optional.of(name)
                .filter(wanted -> shape.surfaces().stream()
                        .noneMatch(surface -> surface.name().equalsIgnoreCase(wanted)))
                .orElse(name + " " + (number + 1));
    }
}
