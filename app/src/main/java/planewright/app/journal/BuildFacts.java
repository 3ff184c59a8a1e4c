package planewright.app.journal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
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

    private static final String BALANCE_POINT = "balance point";

    private BuildFacts() {}

    /** Says an English sentence in some language. */
    public interface Saying {
        String say(String english, Object... values);
    }

    /** How firm a fact is. */
    public enum Standing {
        FIRM,
        /** As it was carried over from another build. */
        CARRIED,
        /** Set before it was measured otherwise. */
        OLDER,
        /** Measured since it was set. */
        NEWER
    }

    /**
     * A fact: what it is, and its value, rounded for people.
     *
     * @param at when it was set or measured, where that matters
     */
    public record Fact(String label, Measured<?> value, Standing standing, Optional<LocalDate> at) {
        Fact(String label, Measured<?> value) {
            this(label, value, Standing.FIRM, Optional.empty());
        }

        Fact(String label, Measured<?> value, boolean carried) {
            this(label, value, carried ? Standing.CARRIED : Standing.FIRM, Optional.empty());
        }

        /**
         * Its label, with how firm it is.
         *
         * @param say a sentence in the reader's language
         * @param day how the reader writes a day
         */
        public String words(Saying say, Function<LocalDate, String> day) {
            var name = say.say(label);
            var when = at.map(day).orElse("");
            return switch (standing) {
                case FIRM -> name;
                case CARRIED -> say.say("{0}, carried over", name);
                case OLDER -> say.say("{0}, set {1}", name, when);
                case NEWER -> say.say("{0}, newer: {1}", name, when);
            };
        }

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
        var facts = new ArrayList<>(figures(journal, build, weighed(journal, build)));
        int masses = (int)
                facts.stream().filter(fact -> fact.label().endsWith("mass")).count();
        facts.addAll(masses, balancePoint(journal, build));
        return facts;
    }

    /** That which is set, and beside it the measured one where it is newer. */
    private static List<Fact> balancePoint(OpenJournal journal, BuildRecord build) {
        var set = journal.setUpValue(build.id(), BALANCE_POINT);
        var measured = journal.latestMeasurement(build.id(), BALANCE_POINT)
                .filter(dated -> Units.alike(dated.what().value().value().getUnit(), Units.MILLIMETRE))
                .filter(dated -> set.filter(known ->
                                !dated.entry().at().isAfter(known.entry().at()))
                        .isEmpty());
        var facts = new ArrayList<Fact>();
        set.ifPresent(dated -> facts.add(new Fact(
                BALANCE_POINT,
                dated.what().value(),
                Carried.isIn(dated.entry()) ? Standing.CARRIED : measured.isPresent() ? Standing.OLDER : Standing.FIRM,
                Optional.of(dated.entry().at().toLocalDate()))));
        measured.ifPresent(dated -> facts.add(new Fact(
                "measured balance point",
                dated.what().value(),
                set.isPresent() ? Standing.NEWER : Standing.FIRM,
                Optional.of(dated.entry().at().toLocalDate()))));
        return facts;
    }

    /**
     * What follows from a build's parts and shape.
     *
     * @param weighed what it weighs all up, where that is known
     */
    public static List<Fact> figures(OpenJournal journal, BuildRecord build, Optional<Measured<Mass>> weighed) {
        boolean carriedMass = weighed.isEmpty() && build.parts().stream().anyMatch(PartRecord::carried);
        boolean carriedShape = Carried.isShapeOf(journal, build);
        var figures = new ArrayList<Fact>();
        var mass = weighed.or(() -> ledger(build)).map(each -> Measured.of(each.in(Units.GRAM), Units.GRAM));
        mass.ifPresent(all -> figures.add(new Fact(weighed.isPresent() ? ALL_UP_MASS : LEDGER_MASS, all, carriedMass)));
        build.planform().filter(shape -> Outlines.span(shape) > 0).ifPresent(shape -> {
            figures.add(new Fact("span", mm(Outlines.span(shape)), carriedShape));
            wing(shape).ifPresent(area -> {
                figures.add(new Fact("wing area", square(area), carriedShape));
                mass.ifPresent(
                        all -> figures.add(new Fact("wing loading", loading(all, area), carriedMass || carriedShape)));
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
