package planewright.cure;

import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import planewright.api.journal.JournalReader;
import planewright.api.journal.OwnMaterial;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/**
 * What the builder has seen, which goes before the table: typed in, else written down among the journal's materials, else the
 * newest measurement of any build called {@code laminating epoxy hands off} or {@code laminating epoxy fully cured}.
 *
 * @param handsOff hours
 * @param fullyCured hours
 * @param said where each came from, in words
 */
record Experience(Optional<Range> handsOff, Optional<Range> fullyCured, List<String> said) {
    /** As the bounds of the inputs. */
    private static final double LONGEST = 90 * ShopAir.DAY;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    /** The least share of an own time that its ± may leave over. */
    private static final double LEAST = 0.1;

    /**
     * All times are those at the temperature of the own times in the inputs.
     *
     * @param words in which it is told
     * @param names what the material may be called
     * @param own the material as the journal's list has it
     * @param energy its activation energy, J/mol, by which a time of the list is carried over to another temperature
     */
    static Experience of(
            Words words,
            CureTime.Inputs inputs,
            JournalReader journal,
            List<String> names,
            Optional<? extends OwnMaterial> own,
            double energy) {
        double kelvin = inputs.ownTemperature().in(Units.KELVIN);
        var handsOff = found(
                words,
                inputs.ownHandsOff(),
                own.flatMap(material -> listed(words, material, material.handsOff(), Curing.HANDS_OFF, energy, kelvin)),
                journal,
                names,
                Curing.HANDS_OFF);
        var fullyCured = found(
                words,
                inputs.ownFullyCured(),
                own.flatMap(
                        material -> listed(words, material, material.fullyCured(), Curing.FULLY_CURED, energy, kelvin)),
                journal,
                names,
                Curing.FULLY_CURED);
        return new Experience(
                handsOff.map(Found::hours),
                fullyCured.map(Found::hours),
                Stream.of(handsOff, fullyCured)
                        .flatMap(Optional::stream)
                        .map(Found::said)
                        .toList());
    }

    boolean isComplete() {
        return handsOff.isPresent() && fullyCured.isPresent();
    }

    /** The material of the journal's list that is called so, else one of that class. */
    static Optional<? extends OwnMaterial> listed(JournalReader journal, String called) {
        var materials = journal.materials();
        return materials.stream()
                .filter(material -> JournalReader.sameName(material.name(), called))
                .findFirst()
                .<Optional<? extends OwnMaterial>>map(Optional::of)
                .orElseGet(() -> materials.stream()
                        .filter(material -> JournalReader.sameName(material.material(), called))
                        .findFirst());
    }

    private static Optional<Found> listed(
            Words words,
            OwnMaterial material,
            Optional<Measured<Time>> time,
            String stage,
            double energy,
            double kelvin) {
        double at = material.at().map(known -> known.in(Units.KELVIN)).orElse(kelvin);
        return time.filter(Experience::isTime)
                .map(known -> new Found(
                        range(known).times(Arrhenius.rate(energy, at, kelvin)),
                        words.say("'{0}' {1} in your materials", material.name(), words.say(stage))));
    }

    private static Optional<Found> found(
            Words words,
            Optional<Measured<Time>> typed,
            Optional<Found> listed,
            JournalReader journal,
            List<String> names,
            String stage) {
        return typed.map(own -> new Found(range(own), words.say("your own figure for {0}", words.say(stage))))
                .or(() -> listed)
                .or(() -> names.stream()
                        .flatMap(name -> inJournal(words, journal, name + " " + stage).stream())
                        .findFirst());
    }

    private static Optional<Found> inJournal(Words words, JournalReader journal, String name) {
        return journal.builds().stream()
                .flatMap(build -> journal.latestMeasurement(build.id(), name).stream())
                .filter(dated -> isTime(dated.what().value()))
                .max(Comparator.comparing(dated -> dated.entry().at()))
                .map(dated -> new Found(
                        range(dated.what().value().asType(Time.class)),
                        words.say(
                                "'{0}' measured {1}",
                                dated.what().name(),
                                DAY.localizedBy(words.language().locale())
                                        .format(dated.entry().at()))));
    }

    private static boolean isTime(Measured<?> value) {
        if (!Units.alike(value.value().getUnit(), Units.HOUR)) {
            return false;
        }
        double hours = value.asType(Time.class).in(Units.HOUR);
        return hours > 0 && hours <= LONGEST;
    }

    /** Twice the ± either way: JCGM 100:2008, 6.3.3, coverage factor 2. */
    private static Range range(Measured<Time> own) {
        double hours = own.in(Units.HOUR);
        double reach = 2 * Math.min(own.spreadIn(Units.HOUR), LONGEST);
        return new Range(Math.max(LEAST * hours, hours - reach), hours, hours + reach);
    }

    private record Found(Range hours, String said) {}
}
