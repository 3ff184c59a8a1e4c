package planewright.cure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import planewright.shared.material.MaterialFact;
import planewright.shared.material.Materials;

/**
 * How a material cures, from the table of materials.
 *
 * @param name the class, or the builder's word where the table has none
 * @param way what it waits for
 * @param handsOff hours at the reference
 * @param fullyCured hours at the reference
 * @param energy activation energy, J/mol
 * @param kelvin the reference temperature
 * @param facts the figures it stands on
 */
record Curing(
        String name, Way way, Range handsOff, Range fullyCured, Range energy, double kelvin, List<MaterialFact> facts) {
    static final String HANDS_OFF = "hands off";
    static final String FULLY_CURED = "fully cured";
    static final String CLOSED_WET = "closed wet";
    static final String WORKING_TIME = "working time";
    static final String FLASH_OFF = "flash-off";

    /** 0 °C. */
    static final double ZERO_CELSIUS = 273.15;

    private static final String THIN_GAP = "set at a gap of 0.0254 mm";
    private static final List<String> GAPS = List.of(THIN_GAP, "set at a gap of 0.127 mm", "set at a gap of 0.381 mm");
    private static final List<Double> GAP_MILLIMETRES = List.of(0.0254, 0.127, 0.381);
    private static final double KILO = 1000;

    /** Without a figure of its own, a reactive class doubles its rate per 10 K: 53 kJ/mol, see the table. */
    static final Range RULE_OF_THUMB = new Range(50_000, 53_000, 55_000);

    /** What a material waits for. */
    enum Way {
        REACTION,
        MOISTURE,
        WATER,
        SOLVENT,
        COOLING
    }

    /** A material of the table. */
    static Curing of(Materials table, String name) {
        var facts = table.of(Materials.CURE, name);
        return new Curing(
                name,
                Way.valueOf(fact(facts, "way of curing").orElseThrow().note().toUpperCase(java.util.Locale.ROOT)),
                hours(fact(facts, HANDS_OFF).orElseThrow()),
                hours(fact(facts, FULLY_CURED).orElseThrow()),
                fact(facts, "activation energy")
                        .map(fact -> Range.of(fact).times(KILO))
                        .orElse(Range.exactly(0)),
                fact(facts, "reference temperature").orElseThrow().typical().orElseThrow() + ZERO_CELSIUS,
                facts);
    }

    /** A material that only the builder knows: both times are needed. */
    static Curing own(String name, Range handsOff, Range fullyCured, double kelvin) {
        return new Curing(name, Way.REACTION, handsOff, fullyCured, RULE_OF_THUMB, kelvin, List.of());
    }

    /** The class in the builder's language; a word of the builder's own stays as it is. */
    String told(Words words) {
        return facts.isEmpty() ? name : words.say(name);
    }

    /** The same with the builder's own times; where one is missing, the table's stays. */
    Curing withOwn(Optional<Range> ownHandsOff, Optional<Range> ownFullyCured, double atKelvin) {
        return new Curing(
                name,
                way,
                ownHandsOff.orElseGet(() -> handsOff.times(Arrhenius.rate(energy.typical(), kelvin, atKelvin))),
                ownFullyCured.orElseGet(() -> fullyCured.times(Arrhenius.rate(energy.typical(), kelvin, atKelvin))),
                energy,
                atKelvin,
                facts);
    }

    /** The same, closed before its solvent had left: both times are those of the solvent leaving. */
    Curing closedWet() {
        var wet = fact(CLOSED_WET).map(Curing::hours);
        return wet.map(range -> new Curing(name, way, range, range, energy, kelvin, facts))
                .orElse(this);
    }

    Optional<MaterialFact> fact(String property) {
        return fact(facts, property);
    }

    /** The usual value of a figure, in its unit in the table. */
    OptionalDouble usual(String property) {
        return fact(property).map(MaterialFact::typical).orElse(OptionalDouble.empty());
    }

    Optional<Range> hours(String property) {
        return fact(property).map(Curing::hours);
    }

    /**
     * How many times longer a layer or joint takes than the table's until it is hard right through. Drying, and moisture
     * creeping in, take time with the square of the thickness (diffusion similarity, Fourier number; cited from memory); a
     * reaction does not. Thinner than the table's joint counts as the table's, a filler's layer excepted.
     */
    double thicknessFactor(double millimetres) {
        return usual("reference thickness").stream()
                .map(reference -> millimetres * millimetres / (reference * reference))
                .map(factor -> isFiller() ? factor : Math.max(1, factor))
                .findFirst()
                .orElse(1);
    }

    /** The same until it may be touched: a filler's skin, a thin adhesive's gap, else as right through. */
    double touchFactor(double millimetres) {
        var skin = usual("skin thickness");
        if (skin.isPresent()) {
            double share = Math.min(1, millimetres / skin.getAsDouble());
            return share * share;
        }
        return fact(THIN_GAP).isPresent() ? gapFactor(millimetres) : thicknessFactor(millimetres);
    }

    /** The thickness that the table's times are for, mm. */
    double ordinaryThickness() {
        return usual("reference thickness").orElse(GAP_MILLIMETRES.get(0));
    }

    /** How much faster it runs at a relative humidity than at 50 %. Common practice and Dalton's law; see {@link Humidity}. */
    double humidityRate(double relative) {
        return switch (way) {
            case MOISTURE -> Humidity.takingItUp(relative);
            case WATER -> Humidity.givingItOff(relative);
            case REACTION, SOLVENT, COOLING -> 1;
        };
    }

    boolean isFiller() {
        return fact("skin thickness").isPresent();
    }

    /** Straight between the gaps that were timed, on logarithms of gap and time; below and beyond them along the ends. */
    private double gapFactor(double millimetres) {
        if (millimetres <= GAP_MILLIMETRES.get(0)) {
            return 1;
        }
        int upper = millimetres <= GAP_MILLIMETRES.get(1) ? 1 : 2;
        double from = GAP_MILLIMETRES.get(upper - 1);
        double along = Math.log(millimetres / from) / Math.log(GAP_MILLIMETRES.get(upper) / from);
        double start = usual(GAPS.get(upper - 1)).orElseThrow();
        double end = usual(GAPS.get(upper)).orElseThrow();
        return start * Math.pow(end / start, along) / usual(THIN_GAP).orElseThrow();
    }

    /** A figure's name as it is read: the gaps of some are told in the reader's unit. */
    static String told(Words words, MaterialFact fact) {
        int gap = GAPS.indexOf(fact.property());
        return gap < 0
                ? words.say(fact.property())
                : words.say("set at a gap of {0}", words.length(GAP_MILLIMETRES.get(gap)));
    }

    private static Optional<MaterialFact> fact(List<MaterialFact> facts, String property) {
        return facts.stream().filter(fact -> fact.property().equals(property)).findFirst();
    }

    private static Range hours(MaterialFact fact) {
        return Range.of(fact)
                .times(
                        switch (fact.unit()) {
                            case "s" -> 1 / 3600.0;
                            case "min" -> 1 / 60.0;
                            case "h" -> 1;
                            default -> throw new IllegalStateException(fact + " is no time");
                        });
    }
}
