package planewright.balance;

import static planewright.api.quantity.Units.GRAM;
import static planewright.api.quantity.Units.KILOGRAM;
import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.balance.BallastSearch.How;
import planewright.balance.MassPoint.Vector;
import planewright.balance.Placing.Plan;

/** Puts the results together: what goes where, what moves, where it balances before and after. */
record BallastAnswer(
        Words words,
        Ballast.Inputs inputs,
        List<Ballast.PartLine> parts,
        List<BallastStock.Kind> kinds,
        BallastSearch search,
        MassProperties before) {
    /** A shift below this is none, m. */
    private static final double LEAST_MOVE = 1e-6;

    /** A shift is told to a tenth of a millimetre. */
    private static final double TENTHS = 1e4;

    static BallastAnswer of(Ballast.Inputs inputs, Run run) throws UnsuitableInput {
        var words = new Words(run.language());
        BallastChecks.require(words, inputs);
        var parts = inputs.parts().stream()
                .filter(BallastChecks::counts)
                .filter(line -> !leftOut(inputs, line))
                .toList();
        var kinds = BallastStock.of(words, inputs);
        return new BallastAnswer(
                words,
                inputs,
                parts,
                kinds,
                BallastSearch.of(inputs, parts, kinds, run),
                MassProperties.of(parts.stream()
                        .map(part -> point(part, part.x().orElseThrow().in(METRE)))
                        .toList()));
    }

    Ballast.Results results() {
        var after = after(search.plan());
        var placed = placed(search.plan());
        return new Ballast.Results(
                added(search.plan()),
                pieces(search.plan()),
                length(before.balance().x().value(), before.balance().x().spread()),
                length(before.balance().y().value(), before.balance().y().spread()),
                length(after.balance().x().value(), after.balance().x().spread()),
                length(after.balance().y().value(), after.balance().y().spread()),
                WeighingAnswer.measured(after.mass().value(), after.mass().spread(), KILOGRAM)
                        .to(GRAM),
                new BallastFindings(this, after).all(),
                placed,
                moves(search.plan()),
                search.answer().others().stream().map(this::other).toList(),
                new BallastFigures(this).plan(after),
                new BallastFigures(this).perPocket(),
                proposals(after));
    }

    /** Where it balances with a plan carried out. */
    MassProperties after(Plan plan) {
        var stations = stations(plan);
        var points = new ArrayList<MassPoint>();
        parts.forEach(part -> points.add(point(part, stations.get(part.name()))));
        for (int p = 0; p < inputs.pockets().size(); p++) {
            var line = inputs.pockets().get(p);
            double mass = mass(plan, p);
            if (mass > 0) {
                points.add(new MassPoint(
                        mass,
                        spread(plan, p),
                        new Vector(line.x().in(METRE), line.y().in(METRE), 0),
                        new Vector(Refusals.spread(line.x(), METRE), Refusals.spread(line.y(), METRE), 0),
                        Vector.ZERO,
                        Vector.ZERO));
            }
        }
        return MassProperties.of(points);
    }

    /** Ballast in a pocket, kg. */
    double mass(Plan plan, int pocket) {
        double mass = 0;
        for (int k = 0; k < kinds.size(); k++) {
            mass += plan.counts()[k][pocket] * kinds.get(k).mass();
        }
        return mass;
    }

    /** The standard uncertainty of that, kg. */
    double spread(Plan plan, int pocket) {
        double spread = 0;
        for (int k = 0; k < kinds.size(); k++) {
            int count = plan.counts()[k][pocket];
            spread = Math.hypot(spread, count == 0 ? 0 : kinds.get(k).spreadOf(count));
        }
        return spread;
    }

    private Measured<Mass> added(Plan plan) {
        double spread = 0;
        for (int k = 0; k < kinds.size(); k++) {
            int count = count(plan, k);
            spread = Math.hypot(spread, count == 0 ? 0 : kinds.get(k).spreadOf(count));
        }
        return WeighingAnswer.measured(plan.mass() / BallastStock.STEPS, spread, KILOGRAM)
                .to(GRAM);
    }

    /** Whole pieces, and one for each lump. */
    int pieces(Plan plan) {
        int lumps = 0;
        for (int k = 0; k < kinds.size(); k++) {
            for (int p = 0; p < inputs.pockets().size(); p++) {
                lumps += kinds.get(k).loose() && plan.counts()[k][p] > 0 ? 1 : 0;
            }
        }
        return plan.pieces() + lumps;
    }

    private static int count(Plan plan, int kind) {
        int count = 0;
        for (int here : plan.counts()[kind]) {
            count += here;
        }
        return count;
    }

    private List<Ballast.PlacedLine> placed(Plan plan) {
        var placed = new ArrayList<Ballast.PlacedLine>();
        for (int p = 0; p < inputs.pockets().size(); p++) {
            var pocket = inputs.pockets().get(p);
            for (int k = 0; k < kinds.size(); k++) {
                int count = plan.counts()[k][p];
                var kind = kinds.get(k);
                if (count > 0) {
                    Measured<Mass> mass = WeighingAnswer.measured(count * kind.mass(), kind.spreadOf(count), KILOGRAM);
                    placed.add(new Ballast.PlacedLine(
                            pocket.name(),
                            kind.name(),
                            kind.loose() ? 1 : count,
                            mass.to(GRAM),
                            pocket.x().to(MILLIMETRE),
                            pocket.y().to(MILLIMETRE)));
                }
            }
        }
        return placed;
    }

    /** {@code nose: 2 × US nickel, 1 × US dime; right tip: 1 × US cent}. */
    String told(Plan plan) {
        var told = new ArrayList<String>();
        for (int p = 0; p < inputs.pockets().size(); p++) {
            var here = new ArrayList<String>();
            for (int k = 0; k < kinds.size(); k++) {
                if (plan.counts()[k][p] > 0) {
                    here.add(BallastStock.told(words, kinds.get(k), plan.counts()[k][p]));
                }
            }
            if (!here.isEmpty()) {
                told.add(inputs.pockets().get(p).name() + ": " + String.join(", ", here));
            }
        }
        return told.isEmpty() ? words.say("nothing") : String.join("; ", told);
    }

    private Ballast.OtherLine other(Plan plan) {
        var after = after(plan);
        return new Ballast.OtherLine(
                told(plan),
                added(plan),
                pieces(plan),
                length(after.balance().x().value(), after.balance().x().spread()),
                length(after.balance().y().value(), after.balance().y().spread()));
    }

    List<Ballast.MovedLine> moves(Plan plan) {
        var stations = stations(plan);
        return parts.stream()
                .filter(part -> Math.abs(stations.get(part.name())
                                - part.x().orElseThrow().in(METRE))
                        > LEAST_MOVE)
                .map(part -> {
                    double from = part.x().orElseThrow().in(METRE);
                    double to = stations.get(part.name());
                    return new Ballast.MovedLine(
                            part.name(),
                            part.x().orElseThrow().to(MILLIMETRE),
                            length(to, Refusals.spread(part.x().orElseThrow(), METRE)),
                            length(Math.rint((to - from) * TENTHS) / TENTHS, 0));
                })
                .toList();
    }

    /** Shifts the heaviest part that may move first: it needs the shortest way. */
    private Map<String, Double> stations(Plan plan) {
        var stations = parts.stream()
                .collect(Collectors.toMap(
                        Ballast.PartLine::name, part -> part.x().orElseThrow().in(METRE), (one, other) -> one));
        if (search.how() == How.AS_IT_IS || inputs.targetX().isEmpty()) {
            return stations;
        }
        double target = inputs.targetX().orElseThrow().in(METRE);
        double moment = target * plan.mass() / BallastStock.STEPS;
        for (int p = 0; p < inputs.pockets().size(); p++) {
            moment -= mass(plan, p) * inputs.pockets().get(p).x().in(METRE);
        }
        for (var part : parts) {
            moment += mass(part) * (target - stations.get(part.name()));
        }
        return shifted(new HashMap<>(stations), moment);
    }

    private Map<String, Double> shifted(Map<String, Double> stations, double wanted) {
        double moment = wanted;
        var heaviest = parts.stream()
                .sorted(Comparator.comparingDouble(part -> -mass(part)))
                .toList();
        for (var part : heaviest) {
            var range = BallastSearch.range(inputs, part);
            if (range.isPresent()) {
                double from = stations.get(part.name());
                double to = Math.max(
                        range.get().from().in(METRE), Math.min(range.get().to().in(METRE), from + moment / mass(part)));
                stations.put(part.name(), to);
                moment -= mass(part) * (to - from);
            }
        }
        return stations;
    }

    private List<Proposal> proposals(MassProperties after) {
        var proposals = new ArrayList<Proposal>();
        for (int p = 0; p < inputs.pockets().size(); p++) {
            double mass = mass(search.plan(), p);
            if (mass > 0) {
                proposals.add(new Proposal.NewMeasurement(
                        "ballast " + inputs.pockets().get(p).name().strip(),
                        WeighingAnswer.measured(mass, spread(search.plan(), p), KILOGRAM)
                                .to(GRAM)));
            }
        }
        moves(search.plan())
                .forEach(move -> proposals.add(
                        new Proposal.NewSetUpValue("station of " + move.part().strip(), move.to())));
        if (search.how() != How.NEAREST && inputs.targetX().isPresent()) {
            proposals.add(new Proposal.NewSetUpValue(
                    "balance point",
                    length(after.balance().x().value(), after.balance().x().spread())));
        }
        return proposals;
    }

    private static boolean leftOut(Ballast.Inputs inputs, Ballast.PartLine line) {
        return inputs.leaveOut()
                .map(name -> name.strip().equalsIgnoreCase(line.name().strip()))
                .orElse(false);
    }

    private static double mass(Ballast.PartLine part) {
        return part.mass().orElseThrow().in(KILOGRAM);
    }

    private static MassPoint point(Ballast.PartLine part, double x) {
        return new MassPoint(
                mass(part),
                Refusals.spread(part.mass().orElseThrow(), KILOGRAM),
                new Vector(x, part.y().in(METRE), 0),
                new Vector(Refusals.spread(part.x().orElseThrow(), METRE), Refusals.spread(part.y(), METRE), 0),
                Vector.ZERO,
                Vector.ZERO);
    }

    private static Measured<Length> length(double metres, double spread) {
        return WeighingAnswer.measured(metres, spread, METRE).to(MILLIMETRE);
    }
}
