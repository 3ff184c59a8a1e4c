package planewright.app.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.quantity.Mass;
import planewright.api.journal.JournalReader;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.planform.Outlines;
import planewright.shared.quantity.QuantityText;

/** The numbers of a build that matter, as far as the journal has them. */
public final class BuildFacts {
    /** What the whole weighs, where it was weighed. */
    public static final String ALL_UP_MASS = "all-up mass";

    /** What its parts weigh together. */
    public static final String LEDGER_MASS = "ledger mass";

    private BuildFacts() {}

    /** A fact: what it is, and its value, rounded for people. */
    public record Fact(String label, Measured<?> value) {
        /** The value as it is read in English. */
        public String text() {
            return QuantityText.show(value);
        }
    }

    /** In the order in which they are read. */
    public static List<Fact> of(OpenJournal journal, BuildRecord build) {
        var facts = new ArrayList<>(measures(journal, build));
        var log = journal.log(build.id());
        long days =
                log.stream().map(entry -> entry.at().toLocalDate()).distinct().count();
        facts.add(new Fact(days == 1 ? "day at work" : "days at work", Measured.of(days, Units.NUMBER)));
        facts.add(new Fact(log.size() == 1 ? "entry" : "entries", Measured.of(log.size(), Units.NUMBER)));
        return facts;
    }

    /** Those of the aircraft itself: masses, balance point, sizes. */
    public static List<Fact> measures(OpenJournal journal, BuildRecord build) {
        var facts = figures(build, weighed(journal, build));
        int masses = (int)
                facts.stream().filter(fact -> fact.label().endsWith("mass")).count();
        journal.setUpValue(build.id(), "balance point")
                .ifPresent(dated ->
                        facts.add(masses, new Fact("balance point", dated.what().value())));
        return facts;
    }

    /**
     * What follows from a build's parts and shape.
     *
     * @param weighed what it weighs all up, where that is known
     */
    public static List<Fact> figures(BuildRecord build, Optional<Measured<Mass>> weighed) {
        var figures = new ArrayList<Fact>();
        var mass = weighed.or(() -> ledger(build)).map(each -> Measured.of(each.in(Units.GRAM), Units.GRAM));
        mass.ifPresent(all -> figures.add(new Fact(weighed.isPresent() ? ALL_UP_MASS : LEDGER_MASS, all)));
        build.planform().filter(shape -> Outlines.span(shape) > 0).ifPresent(shape -> {
            figures.add(new Fact("span", mm(Outlines.span(shape))));
            wing(shape).ifPresent(area -> {
                figures.add(new Fact("wing area", square(area)));
                mass.ifPresent(all -> figures.add(new Fact("wing loading", loading(all, area))));
            });
        });
        return figures;
    }

    private static Optional<Measured<Mass>> weighed(JournalReader journal, BuildRecord build) {
        return journal.latestMeasurement(build.id(), ALL_UP_MASS)
                .<Measured<?>>map(dated -> dated.what().value())
                .filter(value -> Units.alike(value.value().getUnit(), Units.GRAM))
                .map(value -> value.asType(Mass.class));
    }

    private static Optional<Measured<Mass>> ledger(BuildRecord build) {
        double grams = build.parts().stream()
                .flatMap(part -> part.mass().stream())
                .mapToDouble(mass -> mass.in(Units.GRAM))
                .sum();
        return grams > 0 ? Optional.of(Measured.of(grams, Units.GRAM)) : Optional.empty();
    }

    private static Measured<?> mm(double metres) {
        return Measured.of(Math.round(metres * 1000), Units.MILLIMETRE);
    }

    /** Area of all surfaces called a wing, both of a biplane; m². */
    private static Optional<Double> wing(Planform shape) {
        double area = shape.surfaces().stream()
                .filter(surface -> surface.name().toLowerCase(Locale.ROOT).contains("wing"))
                .mapToDouble(Outlines::projectedArea)
                .sum();
        return area > 0 ? Optional.of(area) : Optional.empty();
    }

    private static Measured<?> square(double squareMetres) {
        return Measured.of(Math.round(squareMetres * 1000) / 10.0, Units.SQUARE_DECIMETRE);
    }

    private static Measured<?> loading(Measured<Mass> mass, double area) {
        double gramPerSquareDecimetre = mass.in(Units.GRAM) / (area * 100);
        return Measured.of(Math.round(gramPerSquareDecimetre * 10) / 10.0, Units.GRAM_PER_SQUARE_DECIMETRE);
    }
}
