package planewright.cure;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.material.MaterialFact;
import planewright.shared.material.Materials;
import planewright.shared.uncertainty.Propagation;

/**
 * The answer for one joint.
 *
 * @param words in which it is told
 * @param inputs what was given
 * @param now the builder's clock
 * @param curing how the material cures, with what the builder has seen
 * @param experience what that was
 * @param bench where it cures
 * @param touching until it may be touched
 * @param loading until it carries its load
 * @param handsOff when that ends
 * @param cured when that ends
 */
record CureAnswer(
        Words words,
        CureTime.Inputs inputs,
        LocalDateTime now,
        Curing curing,
        Experience experience,
        Bench bench,
        Waiting touching,
        Waiting loading,
        Stage handsOff,
        Stage cured) {
    private static final double NANOS_OF_AN_HOUR = 3.6e12;
    private static final double PER_MINUTE = 60;

    static CureAnswer of(CureTime.Inputs inputs, Run run) throws UnsuitableInput {
        var language = new Words(run.language().and(Materials.class));
        var checks = new CureChecks(language);
        checks.inputs(inputs);
        var words = inputs.material().strip();
        var own = Experience.listed(run.journal(), words);
        var name = Materials.table()
                .meant(Materials.CURE, words)
                .or(() -> own.flatMap(material -> Materials.table().meant(Materials.CURE, material.material())));
        var experience = words.isEmpty()
                ? new Experience(Optional.empty(), Optional.empty(), List.of())
                : Experience.of(
                        language,
                        inputs,
                        run.journal(),
                        Stream.concat(Stream.of(words), name.stream())
                                .distinct()
                                .toList(),
                        own.isPresent() ? own : name.flatMap(known -> Experience.listed(run.journal(), known)),
                        name.map(known -> Curing.of(Materials.table(), known).energy())
                                .orElse(Curing.RULE_OF_THUMB)
                                .typical());
        if (name.isEmpty() && !experience.isComplete()) {
            checks.material(words);
        }
        var curing = curing(inputs, name, words, experience);
        var bench = bench(inputs, curing);
        var touching = new Waiting(
                bench,
                curing,
                curing.handsOff(),
                experience.handsOff().isPresent() ? mm -> 1 : curing::touchFactor,
                experience.handsOff().isPresent());
        var loading = new Waiting(
                bench,
                curing,
                curing.fullyCured(),
                experience.fullyCured().isPresent() ? mm -> 1 : curing::thicknessFactor,
                experience.fullyCured().isPresent());
        if (!touching.ends() || !loading.ends()) {
            checks.neverEnds(inputs, curing);
        }
        var handsOff = touching.stage();
        return new CureAnswer(
                language,
                inputs,
                run.now(),
                curing,
                experience,
                bench,
                touching,
                loading,
                handsOff,
                loading.stage().notBefore(handsOff));
    }

    private static Curing curing(CureTime.Inputs inputs, Optional<String> name, String words, Experience experience) {
        double kelvin = inputs.ownTemperature().in(Units.KELVIN);
        if (name.isEmpty()) {
            return Curing.own(
                    words,
                    experience.handsOff().orElseThrow(),
                    experience.fullyCured().orElseThrow(),
                    kelvin);
        }
        var table = Curing.of(Materials.table(), name.get());
        var closed = inputs.closedWet() ? table.closedWet() : table;
        return experience.said().isEmpty()
                ? closed
                : closed.withOwn(experience.handsOff(), experience.fullyCured(), kelvin);
    }

    private static Bench bench(CureTime.Inputs inputs, Curing curing) {
        double spread = inputs.readings().isEmpty()
                ? kelvins(inputs.temperature())
                : inputs.readings().stream()
                        .mapToDouble(reading -> kelvins(reading.temperature()))
                        .max()
                        .orElse(0);
        return new Bench(
                air(inputs),
                spread,
                inputs.humidity().in(Units.NUMBER),
                inputs.humidity().spreadIn(Units.NUMBER),
                inputs.thickness().map(thick -> thick.in(Units.MILLIMETRE)).orElse(curing.ordinaryThickness()),
                inputs.thickness()
                        .map(thick -> thick.spreadIn(Units.MILLIMETRE))
                        .orElse(0.0));
    }

    private static double kelvins(Measured<Temperature> temperature) {
        return temperature.spreadIn(Units.KELVIN);
    }

    private static ShopAir air(CureTime.Inputs inputs) {
        if (inputs.readings().isEmpty()) {
            return ShopAir.constant(inputs.temperature().in(Units.KELVIN));
        }
        var readings = inputs.readings().stream()
                .map(line -> new ShopAir.Reading(
                        inputs.daily() ? clock(line.at()) : hours(inputs.start(), line.at()),
                        line.temperature().in(Units.KELVIN)))
                .sorted(Comparator.comparingDouble(ShopAir.Reading::hours))
                .toList();
        return inputs.daily() ? ShopAir.daily(readings, clock(inputs.start())) : ShopAir.history(readings);
    }

    private static double clock(LocalDateTime time) {
        return time.toLocalTime().toNanoOfDay() / NANOS_OF_AN_HOUR;
    }

    private static double hours(LocalDateTime from, LocalDateTime to) {
        return Duration.between(from, to).toSeconds() / 3600.0;
    }

    /** The clock so many hours after the start, to the next full minute. */
    LocalDateTime clock(double hours) {
        var time = inputs.start().plusSeconds((long) Math.ceil(hours * 3600));
        var minute = time.truncatedTo(ChronoUnit.MINUTES);
        return minute.isEqual(time) ? minute : minute.plusMinutes(1);
    }

    LocalDateTime handsOffUntil() {
        return clock(handsOff.countedOn(inputs.countOn()));
    }

    LocalDateTime fullyCured() {
        return clock(cured.countedOn(inputs.countOn()));
    }

    /** The bench session in which something can be done that may be from an instant on, which is not before now. */
    Optional<NextSession> session(LocalDateTime ready) {
        return inputs.sessions().flatMap(calendar -> NextSession.after(ready.isBefore(now) ? now : ready, calendar));
    }

    /** A time of the table at the temperature of the start, with the ± of table and air. */
    Optional<Measured<Time>> atTheStart(String property) {
        var energy = curing.energy();
        return curing.hours(property)
                .map(hours -> Propagation.through(
                                x -> PER_MINUTE * x[0] / Arrhenius.rate(Math.max(0, x[1]), x[2], curing.kelvin()),
                                new double[] {
                                    hours.typical(),
                                    energy.typical(),
                                    bench.air().at(0)
                                },
                                new double[] {hours.spread(), energy.spread(), bench.airSpread()})
                        .in(Units.MINUTE));
    }

    CureTime.Results results() {
        var figures = new CureFigures(this);
        return new CureTime.Results(
                handsOffUntil(),
                fullyCured(),
                session(handsOffUntil()).map(NextSession::from),
                session(fullyCured()).map(NextSession::from),
                handsOff.measured(),
                cured.measured(),
                atTheStart(Curing.WORKING_TIME),
                inputs.closedWet() ? Optional.empty() : atTheStart(Curing.FLASH_OFF),
                new CureFindings(this).all(),
                List.of(line(words.say("Hands off"), handsOff), line(words.say("Fully cured"), cured)),
                figures.cure(),
                figures.shop(),
                curing.facts().stream().map(this::figure).toList(),
                List.of(
                        new Proposal.NewJoint(name(), material(), inputs.start(), handsOffUntil(), fullyCured()),
                        new Proposal.NewTask(task(), Optional.empty())));
    }

    /** The class in the builder's language, or the builder's own word. */
    String material() {
        return curing.told(words);
    }

    private String task() {
        return "apply " + curing.name()
                + (inputs.joint().isBlank() ? "" : " to " + inputs.joint().strip());
    }

    private String name() {
        return inputs.joint().isBlank()
                ? curing.name() + " joint"
                : inputs.joint().strip();
    }

    private CureTime.StageLine line(String name, Stage stage) {
        return new CureTime.StageLine(name, clock(stage.quick()), clock(stage.likely()), clock(stage.slow()));
    }

    private CureTime.FigureLine figure(MaterialFact fact) {
        var unit = Units.ofCode(fact.unit());
        return new CureTime.FigureLine(
                Curing.told(words, fact),
                number(fact.low(), unit),
                fact.typical().isPresent() ? number(fact.typical(), unit) : words.say(fact.note()),
                number(fact.high(), unit),
                unit.map(words.language()::unit).map(Units::symbolOf).orElse(fact.unit()),
                known(fact),
                fact.source());
    }

    /** How it is known, for low, usual and high apart where they differ. */
    private String known(MaterialFact fact) {
        return Stream.of(fact.known().split("/")).map(words::say).collect(Collectors.joining("/"));
    }

    private String number(OptionalDouble number, Optional<Unit<?>> unit) {
        return number.isPresent() ? words.figure(number.getAsDouble(), unit) : "";
    }
}
