package planewright.balance;

import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.RADIAN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.quantity.Dimensionless;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.shared.lattice.Flow;
import planewright.shared.lattice.Lattice;
import planewright.shared.lattice.Motion;
import planewright.shared.lattice.Symmetry;
import planewright.shared.lattice.Turn;
import planewright.shared.planform.SurfaceGeometry;
import planewright.shared.planform.SurfaceGeometry.View;

/** How the surfaces of an aircraft are set, what sections they have and what turns on them. */
final class Rigging {
    /** Greatest lift coefficient of a section that is not given: a small wing's, common practice, no source. */
    static final double USUAL_MOST_LIFT = 1.0;

    static final double USUAL_MOST_LIFT_SPREAD = 0.15;

    private final Planform planform;
    private final List<Section> sections;
    private final List<Control> controls;

    private Rigging(Planform planform, List<Section> sections, List<Control> controls) {
        this.planform = planform;
        this.sections = sections;
        this.controls = controls;
    }

    /**
     * The section of a surface.
     *
     * @param surface which, from 0
     * @param incidence against its own line of no lift, rad
     * @param moment coefficient about the quarter chord
     * @param mostLift greatest lift coefficient
     * @param mostLiftSpread its standard uncertainty
     * @param given whether the builder gave it
     */
    record Section(
            int surface, double incidence, double moment, double mostLift, double mostLiftSpread, boolean given) {}

    /**
     * A way in which a control surface moves.
     *
     * @param name with the way, where there are two
     * @param turn what moves
     * @param trims whether it pitches and is not a flap
     * @param responds the axis about which it is meant to turn the aircraft
     */
    record Control(String name, Turn turn, boolean trims, Axis responds) {
        private static final String BOTH_ALIKE = ", both alike";
        private static final String OPPOSITE = ", opposite";

        /** The name in the builder's language. */
        String told(Words words) {
            if (name.endsWith(BOTH_ALIKE)) {
                return words.say("{0}, both alike", name.substring(0, name.length() - BOTH_ALIKE.length()));
            }
            return name.endsWith(OPPOSITE)
                    ? words.say("{0}, opposite", name.substring(0, name.length() - OPPOSITE.length()))
                    : name;
        }
    }

    /** What a control surface is for. */
    enum Axis {
        LIFT,
        PITCH,
        ROLL,
        YAW
    }

    /** Of inputs that were checked. */
    static Rigging of(BalanceRange.Inputs inputs) {
        var surfaces = inputs.planform().surfaces();
        var sections = IntStream.range(0, surfaces.size())
                .mapToObj(i -> inputs.sections().stream()
                        .filter(line -> named(inputs.planform(), line.surface()) == i)
                        .findFirst()
                        .map(line -> section(i, line))
                        .orElse(new Section(i, 0, 0, USUAL_MOST_LIFT, USUAL_MOST_LIFT_SPREAD, false)))
                .toList();
        var controls = new ArrayList<Control>();
        inputs.controls().forEach(line -> controls.addAll(controls(inputs.planform(), line)));
        return new Rigging(inputs.planform(), sections, List.copyOf(controls));
    }

    /** Which surface bears a name, from 0; −1 where none does. */
    static int named(Planform planform, String name) {
        return IntStream.range(0, planform.surfaces().size())
                .filter(i -> planform.surfaces().get(i).name().strip().equalsIgnoreCase(name.strip()))
                .findFirst()
                .orElse(-1);
    }

    /** The vortices of twist, settings and camber, straight ahead. */
    Flow straight(Lattice lattice) {
        var flow = lattice.flow(Motion.AHEAD);
        for (var section : sections) {
            if (section.incidence() != 0) {
                flow = flow.plus(lattice.flow(Turn.whole(section.surface())).times(section.incidence()));
            }
        }
        return flow;
    }

    /** Moment of all sections about their quarter chords, nose up, per ½ρU², m³. */
    double moment() {
        return sections.stream()
                .filter(section -> section.moment() != 0)
                .mapToDouble(section -> {
                    var geometry = SurfaceGeometry.of(planform.surfaces().get(section.surface()), View.ABOVE);
                    return section.moment() * geometry.area() * geometry.meanChord();
                })
                .sum();
    }

    Section section(int surface) {
        return sections.get(surface);
    }

    List<Control> controls() {
        return controls;
    }

    Optional<Control> trimming() {
        return controls.stream().filter(Control::trims).findFirst();
    }

    private static Section section(int surface, BalanceRange.SectionLine line) {
        double set = line.setAt().map(angle -> angle.in(RADIAN)).orElse(0.0);
        double zero = line.zeroLift().map(angle -> angle.in(RADIAN)).orElse(0.0);
        return new Section(
                surface,
                set - zero,
                line.moment().map(moment -> moment.in(NUMBER)).orElse(0.0),
                line.mostLift().map(lift -> lift.in(NUMBER)).orElse(USUAL_MOST_LIFT),
                line.mostLift().map(lift -> lift.spreadIn(NUMBER)).orElse(USUAL_MOST_LIFT_SPREAD),
                line.mostLift().isPresent());
    }

    private static List<Control> controls(Planform planform, BalanceRange.ControlLine line) {
        double hinge = line.hinge().in(NUMBER);
        var alike = new Turn(
                named(planform, line.surface()),
                share(line.from()),
                share(line.to()),
                hinge,
                line.hingeTo().map(end -> end.in(NUMBER)).orElse(hinge),
                Symmetry.SYMMETRIC);
        var opposite = alike.turning(Symmetry.ANTISYMMETRIC);
        return switch (line.does()) {
            case ELEVATOR -> List.of(new Control(line.name(), alike, true, Axis.PITCH));
            case FLAP -> List.of(new Control(line.name(), alike, false, Axis.LIFT));
            case AILERON -> List.of(new Control(line.name(), opposite, false, Axis.ROLL));
            case RUDDER -> List.of(new Control(line.name(), opposite, false, Axis.YAW));
            case ELEVON ->
                List.of(
                        new Control(line.name() + Control.BOTH_ALIKE, alike, true, Axis.PITCH),
                        new Control(line.name() + Control.OPPOSITE, opposite, false, Axis.ROLL));
            case RUDDERVATOR ->
                List.of(
                        new Control(line.name() + Control.BOTH_ALIKE, alike, true, Axis.PITCH),
                        new Control(line.name() + Control.OPPOSITE, opposite, false, Axis.YAW));
        };
    }

    private static double share(Measured<Dimensionless> percent) {
        return Math.max(0, Math.min(1, percent.in(NUMBER)));
    }
}
