package planewright.cure;

import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import planewright.api.journal.JournalReader;
import planewright.api.journal.JournalReader.Dated;
import planewright.api.journal.Measurement;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;

/**
 * What the builder has seen, which goes before the table: typed in, else the newest measurement of any build called {@code
 * laminating epoxy hands off} or {@code laminating epoxy fully cured}.
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
     * @param names what the material may be called
     */
    static Experience of(CureTime.Inputs inputs, JournalReader journal, List<String> names) {
        var handsOff = found(inputs.ownHandsOff(), journal, names, Curing.HANDS_OFF);
        var fullyCured = found(inputs.ownFullyCured(), journal, names, Curing.FULLY_CURED);
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

    private static Optional<Found> found(
            Optional<Measured<Time>> typed, JournalReader journal, List<String> names, String stage) {
        return typed.map(own -> new Found(range(own), "your own figure for " + stage))
                .or(() -> names.stream()
                        .flatMap(name -> inJournal(journal, name + " " + stage).stream())
                        .findFirst());
    }

    private static Optional<Found> inJournal(JournalReader journal, String name) {
        return journal.builds().stream()
                .flatMap(build -> journal.latestMeasurement(build.id(), name).stream())
                .filter(Experience::isTime)
                .max(Comparator.comparing(dated -> dated.entry().at()))
                .map(dated -> new Found(
                        range(dated.what().value().asType(Time.class)),
                        "'" + dated.what().name() + "' measured "
                                + DAY.format(dated.entry().at())));
    }

    private static boolean isTime(Dated<Measurement> dated) {
        var value = dated.what().value();
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
