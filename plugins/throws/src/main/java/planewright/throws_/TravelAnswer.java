package planewright.throws_;

import static planewright.api.quantity.Units.NUMBER;
import static planewright.api.quantity.Units.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.Dimensionless;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.shared.uncertainty.Propagation;

/**
 * The answer for a model's throws.
 *
 * @param words in which it is told
 * @param inputs what was given
 * @param ruler how its millimetres are measured
 * @param travels each throw
 * @param expo what the stick is made to do
 */
record TravelAnswer(Words words, SurfaceTravel.Inputs inputs, Ruler ruler, List<Travel> travels, Expo expo) {
    static TravelAnswer of(Words words, SurfaceTravel.Inputs inputs) throws UnsuitableInput {
        var ruler = ruler(inputs.way());
        TravelChecks.require(words, inputs, ruler);
        var travels = inputs.surfaces().stream()
                .map(line -> Travel.of(line, inputs.chord(), ruler))
                .toList();
        return new TravelAnswer(
                words, inputs, ruler, travels, new Expo(inputs.expo().in(NUMBER)));
    }

    private static Ruler ruler(SurfaceTravel.Way way) {
        return switch (way) {
            case STRAIGHT_LINE -> Ruler.STRAIGHT;
            case SQUARE_TO_NEUTRAL -> Ruler.SQUARE;
            case ALONG_THE_ARC -> Ruler.ARC;
        };
    }

    SurfaceTravel.Results results() {
        var figures = new TravelFigures(this);
        return new SurfaceTravel.Results(
                expo(x -> x[1] * new Expo(x[0]).centre(), inputs.highRate()),
                stick(0.5, inputs.highRate()),
                new TravelFindings(this).all(),
                travels.stream().flatMap(this::lines).toList(),
                DoubleStream.of(25, 50, 75, 100).mapToObj(this::stickLine).toList(),
                figures.stick(),
                figures.rulers(),
                proposals());
    }

    /** What a share of the stick gives at a rate. */
    private Measured<Dimensionless> stick(double stick, Measured<Dimensionless> rate) {
        return expo(x -> x[1] * new Expo(x[0]).at(stick), rate);
    }

    private Measured<Dimensionless> expo(ToDoubleFunction<double[]> function, Measured<Dimensionless> rate) {
        return Propagation.through(function, new double[] {inputs.expo().in(NUMBER), rate.in(NUMBER)}, new double[] {
                    inputs.expo().spreadIn(NUMBER), rate.spreadIn(NUMBER)
                })
                .in(NUMBER)
                .to(PERCENT);
    }

    private Stream<SurfaceTravel.TravelLine> lines(Travel travel) {
        return Stream.of(
                line(travel, words.say("high"), inputs.highRate()), line(travel, words.say("low"), inputs.lowRate()));
    }

    private static SurfaceTravel.TravelLine line(Travel travel, String rate, Measured<Dimensionless> share) {
        return new SurfaceTravel.TravelLine(
                travel.name(),
                rate,
                travel.chord(),
                travel.angle(share),
                travel.distance(share, Ruler.STRAIGHT),
                travel.distance(share, Ruler.SQUARE),
                travel.distance(share, Ruler.ARC));
    }

    private SurfaceTravel.StickLine stickLine(double percent) {
        return new SurfaceTravel.StickLine(
                Measured.of(percent, PERCENT),
                stick(percent / 100, inputs.highRate()),
                stick(percent / 100, inputs.lowRate()));
    }

    /** Each throw in the unit that it was not given in, and at low rate in the one that it was. */
    private List<Proposal> proposals() {
        var proposals = new ArrayList<Proposal>();
        for (var travel : travels) {
            boolean degrees = travel.line().angle().isPresent();
            var full = Measured.of(100, PERCENT);
            propose(proposals, travel.name(), value(travel, full, !degrees));
            propose(proposals, travel.name() + ", low rate", value(travel, inputs.lowRate(), degrees));
        }
        return List.copyOf(proposals);
    }

    private Optional<? extends Measured<?>> value(Travel travel, Measured<Dimensionless> rate, boolean degrees) {
        return degrees ? travel.angle(rate) : travel.distance(rate, ruler);
    }

    private static void propose(List<Proposal> proposals, String name, Optional<? extends Measured<?>> value) {
        value.ifPresent(known -> proposals.add(new Proposal.NewSetUpValue(name, known)));
    }
}
