package planewright.shared.lattice;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import planewright.api.journal.Planform;

/**
 * A vortex lattice over all surfaces of a planform. Where both sides of the aircraft are alike it holds the right one only,
 * and solves symmetric and antisymmetric flows apart. The influence matrix of each is factored when first needed and kept,
 * as is the flow of each {@link Motion}. Safe to share between threads.
 */
public final class Lattice {
    private final Mesh mesh;
    private final Vector centre;
    private final Map<Symmetry, Influence> influences = new EnumMap<>(Symmetry.class);
    private final Map<Motion, double[]> circulations = new EnumMap<>(Motion.class);

    private Lattice(Mesh mesh, Vector centre) {
        this.mesh = mesh;
        this.centre = centre;
    }

    /**
     * A lattice whose aircraft turns about the datum.
     *
     * @throws IllegalArgumentException for a planform without surfaces
     */
    public static Lattice of(Planform planform, Resolution resolution) {
        return of(planform, resolution, Vector.ZERO);
    }

    /**
     * A lattice.
     *
     * @param centre about which the aircraft pitches, rolls and yaws
     * @throws IllegalArgumentException for a planform without surfaces
     */
    public static Lattice of(Planform planform, Resolution resolution, Vector centre) {
        var mesh = new Mesh(planform, resolution);
        if (mesh.horseshoes.isEmpty()) {
            throw new IllegalArgumentException("a planform has no surfaces; accepted: 1 or more");
        }
        return new Lattice(mesh, centre);
    }

    /** How many panels stand for the whole aircraft, both sides. */
    public int panels() {
        long single = mesh.horseshoes.stream()
                .filter(horseshoe -> !mesh.bothSidesAlike
                        || mesh.strips.get(horseshoe.strip()).inPlane())
                .count();
        return (int) (2 * mesh.horseshoes.size() - single);
    }

    /** Whether only the right side is in the lattice. */
    public boolean bothSidesAlike() {
        return mesh.bothSidesAlike;
    }

    public List<Strip> strips() {
        return List.copyOf(mesh.strips);
    }

    /** The vortices in a motion, per unit of it. */
    public Flow flow(Motion motion) {
        return new Flow(kept(motion).clone(), symmetry(motion.symmetry()));
    }

    /** The vortices that a part of a surface makes, per radian by which it turns. */
    public Flow flow(Turn turn) {
        boolean inPlane = mesh.strips.stream().anyMatch(strip -> strip.surface() == turn.surface() && strip.inPlane());
        var symmetry = symmetry(inPlane ? Symmetry.ANTISYMMETRIC : turn.sides());
        var through = mesh.horseshoes.stream()
                .mapToDouble(horseshoe -> turn.through(mesh.strips.get(horseshoe.strip()), horseshoe))
                .toArray();
        return new Flow(influence(symmetry).solve(through), symmetry);
    }

    /** Circulation of each horseshoe in a motion, per unit of it. */
    public double[] circulation(Motion motion) {
        return kept(motion).clone();
    }

    /** Sum of the circulations of each strip in a motion, per unit of it; half the local lift coefficient times the chord. */
    public double[] stripCirculation(Motion motion) {
        return stripCirculation(flow(motion));
    }

    /** The same of any flow. */
    public double[] stripCirculation(Flow flow) {
        var sums = new double[mesh.strips.size()];
        for (int i = 0; i < flow.circulation().length; i++) {
            sums[mesh.horseshoes.get(i).strip()] += flow.circulation()[i];
        }
        return sums;
    }

    /** Velocity that the vortices of a motion cause at a place, per unit of it. */
    public Vector wash(Motion motion, Vector place) {
        return influence(symmetry(motion.symmetry())).velocity(kept(motion), place);
    }

    /**
     * The load on the bound vortices of one motion in the air of another, U × Γ, both sides together; the vortices'
     * velocities on each other, which are of second order, left out.
     */
    public Load load(Motion vortices, Motion air) {
        return load(flow(vortices), air);
    }

    /** The same of any flow. */
    public Load load(Flow vortices, Motion air) {
        return mesh.strips.stream()
                .mapToInt(Strip::surface)
                .distinct()
                .sorted()
                .mapToObj(surface -> load(vortices, air, surface))
                .reduce(Load.NONE, Load::plus);
    }

    /** The same on one surface of the planform, counted from 0. */
    public Load load(Motion vortices, Motion air, int surface) {
        return load(flow(vortices), air, surface);
    }

    private Load load(Flow vortices, Motion air, int surface) {
        var circulation = vortices.circulation();
        var sum = Load.NONE;
        for (int i = 0; i < circulation.length; i++) {
            var horseshoe = mesh.horseshoes.get(i);
            var strip = mesh.strips.get(horseshoe.strip());
            if (strip.surface() == surface && circulation[i] != 0) {
                var place = horseshoe.middle();
                var load = Load.at(
                        place,
                        air.air(place.minus(centre)).cross(horseshoe.bound()).times(circulation[i]));
                sum = sum.plus(load);
                if (mesh.bothSidesAlike && !strip.inPlane()) {
                    int alike = vortices.symmetry() == air.symmetry() ? 1 : -1;
                    sum = sum.plus(load.mirrored().times(alike));
                }
            }
        }
        return sum;
    }

    /** About which the aircraft pitches, rolls and yaws. */
    public Vector centre() {
        return centre;
    }

    private Symmetry symmetry(Symmetry ofHalf) {
        return mesh.bothSidesAlike ? ofHalf : Symmetry.NONE;
    }

    private synchronized Influence influence(Symmetry symmetry) {
        return influences.computeIfAbsent(symmetry, which -> new Influence(mesh.horseshoes, mesh.strips, which));
    }

    private synchronized double[] kept(Motion motion) {
        return circulations.computeIfAbsent(
                motion,
                which -> influence(symmetry(which.symmetry()))
                        .solve(mesh.horseshoes.stream()
                                .mapToDouble(horseshoe -> which.air(
                                                horseshoe.control().minus(centre))
                                        .dot(horseshoe.normal()))
                                .toArray()));
    }
}
