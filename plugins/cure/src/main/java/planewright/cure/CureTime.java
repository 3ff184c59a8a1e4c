package planewright.cure;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.pf4j.Extension;
import planewright.api.calculator.About;
import planewright.api.calculator.Calculator;
import planewright.api.calculator.Finding;
import planewright.api.calculator.From;
import planewright.api.calculator.From.Place;
import planewright.api.calculator.Input;
import planewright.api.calculator.Proposal;
import planewright.api.calculator.Result;
import planewright.api.calculator.Run;
import planewright.api.calculator.UnsuitableInput;
import planewright.api.figure.Chart;
import planewright.api.journal.BenchCalendar;
import planewright.api.quantity.Measured;

/** When a joint or a filler may be touched, and when it carries its load. */
@Extension
@About(
        id = "cure.time",
        version = "2",
        title = "Curing time",
        question = "When may I touch it, when may I load it?",
        sources = {
            "Table of materials of this program: each figure with its own source, listed with the answer",
            "S. Arrhenius, Zeitschrift für physikalische Chemie 4 (1889) 226-248: rate against temperature",
            "Thermochimica Acta 447 (2006) 167-177: activation energy of an epoxy and an amine",
            "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 4.3.9 and 5.1.2"
        },
        cautions = {
            "The maker's data sheet and safety sheet come first, and local rules on solvents and waste; these are"
                    + " usual figures of a class.",
            "Solvents and uncured glue give off fumes: work in moving air, away from flame, spark and hot wire, also"
                    + " while it dries.",
            "Gloves and glasses with epoxy, polyurethane and cyanoacrylate; sand and cut cured resin with a mask."
                    + " Resin on skin can make one allergic for life.",
            "Mixed resin in a cup or a thick pour heats itself, can smoke and melts foam: mix small lots and spread"
                    + " them out.",
            "Warm gently and evenly, below what the foam stands; never leave a heater alone with a curing part."
        })
public final class CureTime implements Calculator<CureTime.Inputs, CureTime.Results> {
    /** Which end of the range is counted on. */
    public enum Pace {
        SLOW_END,
        LIKELY
    }

    /** What a thermometer in the shop showed, or will. */
    public record ReadingLine(
            @Input(label = "At", help = "Clock time, such as 2025-03-14 22:00.")
            LocalDateTime at,

            @Input(
                    label = "Temperature",
                    help = "Of the air where the part lies.",
                    unit = "Cel",
                    atLeast = "-20 °C",
                    atMost = "60 °C",
                    usuallyFrom = "5 °C",
                    usuallyTo = "35 °C")
            Measured<Temperature> temperature) {}

    /** What is given. */
    public record Inputs(
            @Input(
                    label = "Joint",
                    help = "What is joined, filled or coated.",
                    from = @From(value = Place.JOINT, name = "name"))
            String joint,

            @Input(
                    label = "Material",
                    help = "Adhesive or filler by class; another word needs both times of your own below.",
                    from = @From(value = Place.MATERIAL, name = "cure"))
            String material,

            @Input(
                    label = "Start",
                    help = "When it was closed or spread: now, or a time such as 2025-03-14 20:15.",
                    initial = "now",
                    from = @From(value = Place.JOINT, name = "start"))
            LocalDateTime start,

            @Input(
                    label = "Thickness",
                    help = "Of the glue line, gap, layer or coat; empty for an ordinary one.",
                    unit = "mm",
                    above = "0 mm",
                    atMost = "50 mm",
                    usuallyTo = "10 mm")
            Optional<Measured<Length>> thickness,

            @Input(label = "Between closed-cell foams", help = "Neither face lets water, solvent or air through.")
            boolean betweenFoams,

            @Input(label = "Closed while wet", help = "Contact adhesive whose faces had not dried to the touch.")
            boolean closedWet,

            @Input(
                    label = "Temperature",
                    help = "Of the shop, where there are no readings below.",
                    unit = "Cel",
                    initial = "20 °C",
                    atLeast = "-20 °C",
                    atMost = "60 °C",
                    usuallyFrom = "5 °C",
                    usuallyTo = "35 °C",
                    under = "Shop",
                    from = @From(value = Place.MEASUREMENT, name = "shop temperature"))
            Measured<Temperature> temperature,

            @Input(
                    label = "Relative humidity",
                    help = "Of the shop's air.",
                    unit = "%",
                    initial = "50 %",
                    atLeast = "0 %",
                    atMost = "95 %",
                    usuallyFrom = "20 %",
                    usuallyTo = "85 %",
                    under = "Shop",
                    from = @From(value = Place.MEASUREMENT, name = "shop humidity"))
            Measured<Dimensionless> humidity,

            @Input(
                    label = "Readings",
                    help = "Temperatures through the night; it runs straight from one to the next.",
                    under = "Shop")
            List<ReadingLine> readings,

            @Input(
                    label = "The same every day",
                    help = "Readings tell the time of day only, and come again each day.",
                    under = "Shop")
            boolean daily,

            @Input(
                    label = "My hands off",
                    help = "Your own experience at this thickness, instead of the table's figure.",
                    unit = "h",
                    above = "0 s",
                    atMost = "90 d",
                    under = "My own experience")
            Optional<Measured<Time>> ownHandsOff,

            @Input(
                    label = "My fully cured",
                    help = "Your own experience at this thickness, instead of the table's figure.",
                    unit = "h",
                    above = "0 s",
                    atMost = "90 d",
                    under = "My own experience")
            Optional<Measured<Time>> ownFullyCured,

            @Input(
                    label = "At about",
                    help = "The temperature at which your own times were so.",
                    unit = "Cel",
                    initial = "20 °C",
                    atLeast = "-20 °C",
                    atMost = "60 °C",
                    under = "My own experience")
            Measured<Temperature> ownTemperature,

            @Input(
                    label = "Count on",
                    help = "Which end of the range the answer and the joint go by.",
                    initial = "slow end",
                    under = "Answer")
            Pace countOn,

            @Input(
                    label = "Bench sessions",
                    help = "When somebody is at the bench; tells in which session it may be touched.",
                    under = "Answer",
                    from = @From(Place.CALENDAR))
            Optional<BenchCalendar> sessions) {}

    /** When a stage is reached. */
    public record StageLine(
            @Result(label = "Stage") String stage,
            @Result(label = "Quick end") LocalDateTime quick,
            @Result(label = "Likely") LocalDateTime likely,
            @Result(label = "Slow end") LocalDateTime slow) {}

    /** A figure that was used. */
    public record FigureLine(
            @Result(label = "Figure") String figure,
            @Result(label = "Low") String low,
            @Result(label = "Usual") String usual,
            @Result(label = "High") String high,
            @Result(label = "Unit") String unit,
            @Result(label = "Known") String known,
            @Result(label = "Source") String source) {}

    /** What comes out. */
    public record Results(
            @Result(label = "Hands off until", help = "By the end of the range that is counted on.")
            LocalDateTime handsOffUntil,

            @Result(label = "Fully cured", help = "By the end of the range that is counted on.")
            LocalDateTime fullyCured,

            @Result(
                    label = "Touch it from",
                    help = "In the first bench session with a quarter of an hour left by then.")
            Optional<LocalDateTime> touchFrom,

            @Result(label = "Load it from", help = "In the first bench session after it is fully cured.")
            Optional<LocalDateTime> loadFrom,

            @Result(label = "Hands off for, likely", unit = "h")
            Measured<Time> handsOffFor,

            @Result(label = "Fully cured after, likely", unit = "h")
            Measured<Time> fullyCuredAfter,

            @Result(
                    label = "Working time",
                    help = "At the temperature of the start, from mixing or spreading to when it must be closed; less"
                            + " in a full cup.",
                    unit = "min")
            Optional<Measured<Time>> workingTime,

            @Result(
                    label = "Let it dry before closing",
                    help = "At the start's temperature; until it no longer sticks to a finger.",
                    unit = "min")
            Optional<Measured<Time>> flashOff,

            @Result(label = "Findings") List<Finding> findings,
            @Result(label = "Stages") List<StageLine> stages,
            @Result(label = "Cure over the clock") Chart cure,
            @Result(label = "Temperature of the shop") Chart shop,
            @Result(label = "Figures used") List<FigureLine> figures,
            @Result(label = "For the journal") List<Proposal> proposals) {}

    @Override
    public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
        return CureAnswer.of(inputs, run).results();
    }
}
