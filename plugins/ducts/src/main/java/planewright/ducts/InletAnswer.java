package planewright.ducts;

import static planewright.api.quantity.Units.METRE;
import static planewright.api.quantity.Units.MILLIMETRE;
import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.RADIAN;
import static planewright.api.quantity.Units.SQUARE_METRE;
import static planewright.api.quantity.Units.SQUARE_MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import planewright.api.calculator.Proposal;
import planewright.api.quantity.Measured;
import planewright.shared.uncertainty.Propagation;

/** The answer for one inlet. */
final class InletAnswer {
    private static final int LIP_STATIONS = 9;

    /** Where the numbers stand that a shape is made of. */
    private static final int SIZE = 0;

    private static final int RATIO = 1;
    private static final int RAMP = 2;
    private static final int SKIN = 3;
    private static final int RADIUS = 4;
    private static final int FOAM = 5;

    private final Words words;
    private final SubmergedInlet.Inputs inputs;
    private final double[] values;
    private final double[] spreads;
    private final InletShape shape;

    InletAnswer(Words words, SubmergedInlet.Inputs inputs) {
        this.words = words;
        this.inputs = inputs;
        this.values = values(inputs);
        this.spreads = spreads(inputs);
        this.shape = shape(inputs, values);
    }

    static InletShape shape(SubmergedInlet.Inputs inputs) {
        return shape(inputs, values(inputs));
    }

    Words words() {
        return words;
    }

    InletShape shape() {
        return shape;
    }

    SubmergedInlet.Inputs inputs() {
        return inputs;
    }

    SubmergedInlet.Results results() {
        var figures = new InletFigures(this);
        var width = length(InletShape::width);
        var depth = length(InletShape::depth);
        var length = length(InletShape::length);
        var area = area(InletShape::area);
        return new SubmergedInlet.Results(
                length,
                width,
                depth,
                area,
                length(InletShape::floorDepth),
                inputs.foamThickness().map(foam -> foamLeft()),
                length(each -> each.length() + each.lip().length()),
                length(each -> each.lip().noseRadius()),
                area(InletShape::cutOut),
                new InletFindings(this).all(),
                figures.planAndSection(),
                figures.entrance(),
                stations(),
                lip(),
                proposals(figures, area, width, depth, length));
    }

    private List<Proposal> proposals(
            InletFigures figures,
            Measured<Area> area,
            Measured<Length> width,
            Measured<Length> depth,
            Measured<Length> length) {
        var proposals = new ArrayList<Proposal>();
        proposals.add(new Proposal.NewMeasurement("inlet area", area));
        proposals.add(new Proposal.NewMeasurement("inlet width", width));
        proposals.add(new Proposal.NewMeasurement("inlet depth", depth));
        proposals.add(new Proposal.NewMeasurement("inlet length", length));
        figures.outline()
                .ifPresent(outline -> proposals.add(new Proposal.NewOutline(
                        String.format(Locale.ROOT, "submerged inlet, %.0f mm wide", width.in(MILLIMETRE)),
                        outline,
                        List.of(words.say(
                                "To lay on the skin, narrow end forward. Ramp {0} from the skin at the narrow end to {1} below it"
                                        + " at the wide one.",
                                words.degrees(shape.ramp()), words.mm(shape.floorDepth()))))));
        return proposals;
    }

    /** One over the radius of the skin along the flow, 1/m; 0 where it is straight. */
    double curvatureAlong() {
        return inputs.radiusAlong().map(radius -> 1 / radius.in(METRE)).orElse(0.0);
    }

    Optional<Double> foam() {
        return inputs.foamThickness().map(foam -> foam.in(METRE));
    }

    private static double[] values(SubmergedInlet.Inputs inputs) {
        return new double[] {
            inputs.width()
                    .map(width -> width.in(METRE))
                    .orElseGet(() -> inputs.area().orElseThrow().in(SQUARE_METRE)),
            inputs.ratio().in(NUMBER),
            inputs.ramp().in(RADIAN),
            inputs.skinThickness().in(METRE),
            inputs.radiusAcross().map(radius -> radius.in(METRE)).orElse(Double.POSITIVE_INFINITY),
            inputs.foamThickness().map(foam -> foam.in(METRE)).orElse(0.0)
        };
    }

    private static double[] spreads(SubmergedInlet.Inputs inputs) {
        return new double[] {
            inputs.width()
                    .map(width -> width.spreadIn(METRE))
                    .orElseGet(() -> inputs.area().orElseThrow().spreadIn(SQUARE_METRE)),
            inputs.ratio().spreadIn(NUMBER),
            inputs.ramp().spreadIn(RADIAN),
            inputs.skinThickness().spreadIn(METRE),
            inputs.radiusAcross().map(radius -> radius.spreadIn(METRE)).orElse(0.0),
            inputs.foamThickness().map(foam -> foam.spreadIn(METRE)).orElse(0.0)
        };
    }

    /** From a width w and a ratio k the depth is w/k; from an area A the width is √(A·k). */
    private static InletShape shape(SubmergedInlet.Inputs inputs, double[] from) {
        double width = inputs.width().isPresent() ? from[SIZE] : Math.sqrt(from[SIZE] * from[RATIO]);
        double depth = width / from[RATIO];
        Lip lip = inputs.lip() == SubmergedInlet.Edge.SHAPED ? new ShapedLip(depth) : new PlainLip(from[SKIN], depth);
        return new InletShape(width, depth, from[RAMP], lip, 1 / from[RADIUS]);
    }

    private Measured<Length> length(ToDoubleFunction<InletShape> of) {
        return through(each -> of.applyAsDouble(shape(inputs, each))).in(METRE).to(MILLIMETRE);
    }

    private Measured<Area> area(ToDoubleFunction<InletShape> of) {
        return through(each -> of.applyAsDouble(shape(inputs, each)))
                .in(SQUARE_METRE)
                .to(SQUARE_MILLIMETRE);
    }

    private Measured<Length> foamLeft() {
        return through(each -> each[FOAM] - shape(inputs, each).floorDepth())
                .in(METRE)
                .to(MILLIMETRE);
    }

    private Propagation through(ToDoubleFunction<double[]> function) {
        return Propagation.through(function, values, spreads);
    }

    private List<SubmergedInlet.StationLine> stations() {
        var lines = new ArrayList<SubmergedInlet.StationLine>();
        for (int i = 0; i < Wall.STATIONS; i++) {
            double x = shape.length() * Wall.place(i);
            lines.add(new SubmergedInlet.StationLine(
                    mm(x),
                    mm(shape.length() - x),
                    mm(shape.halfWidth(x)),
                    mm(shape.halfWidthOnSkin(x)),
                    mm(shape.floorBelow(x)),
                    mm(shape.floorBelowAtWall(x))));
        }
        return lines;
    }

    /** Closer together towards the nose, where it bends most. */
    private List<SubmergedInlet.LipLine> lip() {
        var lip = shape.lip();
        var lines = new ArrayList<SubmergedInlet.LipLine>();
        for (int i = 0; i < LIP_STATIONS; i++) {
            double part = (double) i / (LIP_STATIONS - 1);
            double x = lip.length() * part * part;
            lines.add(new SubmergedInlet.LipLine(mm(x), mm(lip.above(x)), mm(lip.below(x))));
        }
        return lines;
    }

    /** To the hundredth, which is finer than a knife cuts and a printer prints. */
    private static Measured<Length> mm(double metres) {
        return Measured.of(Math.rint(1e5 * metres) / 100, MILLIMETRE);
    }
}
