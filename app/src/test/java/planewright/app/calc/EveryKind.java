package planewright.app.calc;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import planewright.api.calculator.About;
import planewright.api.calculator.Calculator;
import planewright.api.calculator.Finding;
import planewright.api.calculator.From;
import planewright.api.calculator.From.Place;
import planewright.api.calculator.Input;
import planewright.api.calculator.InputProblem;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.Result;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.api.figure.Outline;
import planewright.api.figure.Point;
import planewright.api.journal.BenchCalendar;
import planewright.api.journal.Picture;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/** A calculator with an input and a result of every kind, whose computing a test may replace. */
@About(
        id = "bench.every",
        version = "2",
        title = "Every kind",
        question = "What comes back?",
        sources = "A bench book, 2nd printing",
        cautions = "Propeller off.")
final class EveryKind implements Calculator<EveryKind.Inputs, EveryKind.Results> {
    static final Outline TRIANGLE = Outline.around(
            List.of(new Drawing.Path(List.of(new Point(0, 0), new Point(60, 0), new Point(40, 80)), true)));

    private static final Chart.Axis STATION = new Chart.Axis("Station", "mm");
    private static final Chart.Axis MASS = new Chart.Axis("Mass", "g");

    static final Chart BANDS = new Chart.Bands(
            "Spread",
            STATION,
            MASS,
            List.of(new Chart.Band("likely", List.of(new Chart.Span(0, 1, 2, 3), new Chart.Span(10, 2, 4, 7)))),
            List.of(new Chart.Level("limit", 5, Optional.of(6.0))));
    static final Chart SCATTER = new Chart.Scatter(
            "Builds",
            STATION,
            MASS,
            List.of(
                    new Chart.Group("flown", List.of(new Chart.Dot("Heron", new Point(1, 2)))),
                    new Chart.Group("planned", List.of(new Chart.Dot("", new Point(2, 5))))),
            Optional.of(new Chart.Series("fitted", List.of(new Point(0, 0), new Point(3, 6)))));
    static final Chart REGION = new Chart.Region(
            "Where it may be",
            STATION,
            MASS,
            List.of(new Chart.Area(
                    "safe", Chart.Sense.ALLOWED, List.of(new Point(0, 0), new Point(9, 0), new Point(9, 9)))),
            List.of(new Chart.Series("edge", List.of(new Point(0, 0), new Point(9, 9)))),
            List.of(new Chart.Dot("now", new Point(5, 3))));

    private final BiFunction<Inputs, Run, Results> computing;

    EveryKind() {
        this((inputs, run) -> answer(inputs));
    }

    EveryKind(BiFunction<Inputs, Run, Results> computing) {
        this.computing = computing;
    }

    enum Glue {
        WHITE_GLUE,
        EPOXY
    }

    record Row(
            @Input(label = "Part", from = @From(value = Place.PART, name = "name"))
            String name,

            @Input(
                    label = "Mass",
                    unit = "g",
                    above = "0 g",
                    atMost = "50 kg",
                    usuallyFrom = "1 g",
                    usuallyTo = "5 kg",
                    from = @From(value = Place.PART, name = "mass"))
            Measured<Mass> mass,

            @Input(label = "X", unit = "mm", from = @From(value = Place.PART, name = "x"))
            Optional<Measured<Length>> x) {}

    record Scale(
            @Input(label = "Scale", from = @From(Place.ROW_NAME))
            String name,

            @Input(label = "Reading", unit = "g", from = @From(Place.MEASUREMENT))
            Measured<Mass> reading,

            @Input(label = "Station", unit = "mm", from = @From(value = Place.MEASUREMENT, name = "x"))
            Optional<Measured<Length>> x) {}

    record Bond(
            @Input(label = "Joint", from = @From(value = Place.JOINT, name = "name"))
            String name,

            @Input(label = "Material", from = @From(value = Place.JOINT, name = "material"))
            String material,

            @Input(label = "Closed", from = @From(value = Place.JOINT, name = "start"))
            LocalDateTime start,

            @Input(label = "Hands off", from = @From(value = Place.JOINT, name = "handsOffUntil"))
            Optional<LocalDateTime> handsOff,

            @Input(label = "Cured", from = @From(value = Place.JOINT, name = "fullyCured"))
            Optional<LocalDateTime> cured) {}

    record Hinge(
            @Input(label = "Name", from = @From(value = Place.CONTROL, name = "name"))
            String name,

            @Input(label = "Surface", from = @From(value = Place.CONTROL, name = "surface"))
            String surface,

            @Input(label = "Does", from = @From(value = Place.CONTROL, name = "role"))
            Planform.Role role,

            @Input(label = "Hinge", unit = "%", from = @From(value = Place.CONTROL, name = "hinge"))
            Measured<Dimensionless> hinge,

            @Input(label = "Hinge at its end", unit = "%", from = @From(value = Place.CONTROL, name = "hingeTo"))
            Optional<Measured<Dimensionless>> hingeTo) {}

    record Throw(
            @Input(label = "Name", from = @From(Place.ROW_NAME))
            String name,

            @Input(label = "Angle", unit = "deg", from = @From(Place.SET_UP))
            Optional<Measured<Angle>> angle,

            @Input(label = "Distance", unit = "mm", from = @From(Place.SET_UP))
            Optional<Measured<Length>> distance,

            @Input(label = "Chord", unit = "mm", from = @From(value = Place.MEASUREMENT, name = "chord"))
            Optional<Measured<Length>> chord) {}

    record Inputs(
            @Input(label = "Parts", from = @From(Place.PART_ROWS))
            List<Row> parts,

            @Input(label = "Scales", from = @From(value = Place.MEASUREMENT_ROWS, name = "scale"))
            List<Scale> scales,

            @Input(
                    label = "Wing mass",
                    unit = "g",
                    initial = "212 g",
                    atLeast = "0 g",
                    atMost = "50 kg",
                    usuallyFrom = "10 g",
                    usuallyTo = "5 kg",
                    from = @From(value = Place.MEASUREMENT, name = "wing"))
            Measured<Mass> wing,

            @Input(label = "Target x", unit = "mm", from = @From(value = Place.SET_UP, name = "balance point"))
            Optional<Measured<Length>> targetX,

            @Input(label = "Room", unit = "Cel", initial = "20 °C", above = "-20 °C")
            Measured<Temperature> room,

            @Input(label = "Datum", from = @From(value = Place.BUILD, name = "datum"))
            String datum,

            @Input(label = "Wet") boolean wet,

            @Input(label = "Coats", initial = "2", atLeast = "1", atMost = "9")
            int coats,

            @Input(label = "Glue", initial = "white glue") Glue glue,

            @Input(label = "Closed at", initial = "now", from = @From(value = Place.JOINT, name = "start"))
            LocalDateTime closed,

            @Input(label = "Sanded at") Optional<LocalDateTime> sanded,

            @Input(label = "Drying time", unit = "h", initial = "45 min", above = "0 s", atMost = "60 d")
            Measured<Time> drying,

            @Input(label = "Joints", from = @From(Place.JOINT_ROWS))
            List<Bond> joints,

            @Input(label = "Filler", from = @From(value = Place.MATERIAL, name = "cure"))
            String filler,

            @Input(label = "Shape", from = @From(value = Place.BUILD, name = "planform"))
            Optional<Planform> shape,

            @Input(label = "Fin", from = @From(value = Place.TEMPLATE, name = "fin"))
            Optional<Outline> fin,

            @Input(label = "Own shape", from = @From(Place.TEMPLATE))
            Optional<Outline> own,

            @Input(label = "Sessions", from = @From(Place.CALENDAR))
            Optional<BenchCalendar> sessions,

            @Input(label = "Photo", from = @From(value = Place.PICTURE, name = "wing"))
            Optional<Picture> photo,

            @Input(label = "Throws", from = @From(value = Place.SET_UP_ROWS, name = "throw"))
            List<Throw> travels,

            @Input(label = "Hinges", from = @From(Place.CONTROL_ROWS))
            List<Hinge> hinges) {}

    record Line(
            @Result(label = "Name") String name,
            @Result(label = "Share", unit = "%") Measured<javax.measure.quantity.Dimensionless> share) {}

    record Results(
            @Result(label = "Mass in all", unit = "g") Measured<Mass> mass,
            @Result(label = "Station", unit = "mm") Optional<Measured<Length>> x,
            @Result(label = "Word") String word,
            @Result(label = "Dry") boolean dry,
            @Result(label = "Coats") int coats,
            @Result(label = "Glue") Glue glue,
            @Result(label = "Dry at") LocalDateTime dryAt,
            @Result(label = "Sanded at") Optional<LocalDateTime> sanded,
            @Result(label = "Drying time", unit = "min") Measured<Time> drying,
            @Result(label = "Lines") List<Line> lines,
            @Result(label = "Shape") Optional<Planform> shape,
            @Result(label = "Fin") Optional<Outline> fin,
            @Result(label = "Sessions") Optional<BenchCalendar> sessions,
            @Result(label = "Photo") Optional<Picture> photo,
            @Result(label = "Chart") Chart chart,
            @Result(label = "Drying") Chart dryness,
            @Result(label = "Spread") Chart bands,
            @Result(label = "Builds") Chart scatter,
            @Result(label = "Where it may be") Chart region,
            @Result(label = "Drawing") Drawing drawing,
            @Result(label = "Remarks") List<Finding> findings,
            @Result(label = "For the log") List<Proposal> proposals) {}

    @Override
    public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
        if (inputs.coats() == 7) {
            throw new UnsuitableInput(List.of(new InputProblem("coats", "Coats", "7", "any but 7", "Sand one off")));
        }
        return computing.apply(inputs, run);
    }

    /** Masses added up; everything else is given back. */
    static Results answer(Inputs inputs) {
        double mass = inputs.wing().in(Units.GRAM)
                + inputs.parts().stream()
                        .mapToDouble(row -> row.mass().in(Units.GRAM))
                        .sum();
        return answer(inputs, mass, new Chart.Bars("Masses", "Part", new Chart.Axis("Mass", "g"), List.of()));
    }

    static Results answer(Inputs inputs, double mass, Chart chart) {
        return new Results(
                Measured.of(mass, 1, Units.GRAM),
                inputs.targetX(),
                inputs.datum(),
                !inputs.wet(),
                inputs.coats(),
                inputs.glue(),
                inputs.closed().plusHours(1),
                inputs.sanded(),
                inputs.drying(),
                List.of(new Line("wing", Measured.of(0.5, Units.NUMBER))),
                inputs.shape(),
                inputs.fin(),
                inputs.sessions(),
                inputs.photo(),
                chart,
                overTime(inputs.closed()),
                BANDS,
                SCATTER,
                REGION,
                new Drawing(
                        "Mark",
                        List.of(new Drawing.Layer(
                                Drawing.Use.MARK,
                                List.of(new Drawing.Mark(new Point(1, 2), Drawing.Sign.TARGET, "here"))))),
                List.of(Finding.fine("All dry.")),
                List.of(
                        new Proposal.NewMeasurement("all-up mass", Measured.of(mass, 1, Units.GRAM)),
                        new Proposal.NewSetUpValue("balance point", Measured.of(92, Units.MILLIMETRE)),
                        new Proposal.NewJoint(
                                "fin to hull",
                                "white glue",
                                inputs.closed(),
                                inputs.closed().plusHours(1),
                                inputs.closed().plusDays(1)),
                        new Proposal.NewTask("sand the fin", Optional.of(Measured.of(45, Units.MINUTE))),
                        new Proposal.NewOutline("fin", TRIANGLE, List.of("Grain along the leading edge.")),
                        new Proposal.NewText("what comes next", List.of("Fit the *hinges*.", "Then the horn."))));
    }

    static Chart.OverTime overTime(LocalDateTime from) {
        return new Chart.OverTime(
                "Drying",
                from,
                new Chart.Axis("Dry", "%"),
                List.of(new Chart.Series("likely", List.of(new Point(0, 0), new Point(1.5, 100)))),
                List.of(new Chart.Level("hands off", 40, Optional.empty())),
                List.of(new Chart.Moment("sand", from.plusHours(1))));
    }

    /** Its description. */
    Described described() {
        try {
            return Described.of(this, "bench 1.2.0");
        } catch (Faulty faulty) {
            throw new IllegalStateException(faulty);
        }
    }
}
