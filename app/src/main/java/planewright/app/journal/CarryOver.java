package planewright.app.journal;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import planewright.api.journal.Entry;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.planform.Outlines;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/**
 * What a new build takes over from one that is known and from templates, before it is begun: each item can be left out, and
 * most values changed. Lengths go with the size, masses as {@link PartGrowth} says; angles, times and whatever was bought stay
 * as they are.
 *
 * @param from the build that is taken over from, its parts with what they were weighed at last
 * @param templates that are given to the new build
 * @param size of the new build against the old one
 * @param items in the order in which they are shown
 */
public record CarryOver(Optional<BuildRecord> from, List<TemplateRecord> templates, double size, List<Item> items) {
    /** The tag of the entry that tells what was carried over. */
    public static final String TAG = "carried over";

    /** Sizes outside are slips of the hand; chosen. */
    public static final double LEAST_SIZE = 0.1;

    public static final double MOST_SIZE = 10;

    public CarryOver {
        templates = List.copyOf(templates);
        items = List.copyOf(items);
    }

    /** Kinds of what is carried over. */
    public enum What {
        LAYOUT("layout"),
        DATUM("datum"),
        PLANFORM("planform"),
        PART("part"),
        SETTING("set-up value"),
        TEMPLATE("template");

        private final String word;

        What(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** How a value goes with the size. */
    public enum Scaling {
        STAYS("as it is", 0),
        LENGTH("in proportion", 1),
        AREA("with the area", 2),
        MASS("with the third power", 3);

        private final String word;
        private final int power;

        Scaling(String word, int power) {
            this.word = word;
            this.power = power;
        }

        double factor(double size) {
            return Math.pow(size, power);
        }

        public String word() {
            return word;
        }
    }

    /**
     * A thing that is carried over.
     *
     * @param key tells it from others of its kind
     * @param name what the builder calls it
     * @param value for people, scaled already
     * @param origin the name of the build or template that it comes from
     * @param wanted whether it is carried over
     */
    public record Item(
            What what, String key, String name, String value, Scaling scaling, String origin, boolean wanted) {
        /** Whether {@link #value} may be changed. */
        public boolean isEditable() {
            return what != What.PLANFORM && what != What.TEMPLATE;
        }

        public Item wanted(boolean changed) {
            return new Item(what, key, name, value, scaling, origin, changed);
        }

        public Item withValue(String changed) {
            return new Item(what, key, name, changed.strip(), scaling, origin, wanted);
        }

        /** As it was before: left out, or with another value than the one that was offered. */
        Item as(Item before, Optional<Item> offered) {
            boolean changed = origin.equals(before.origin)
                    && offered.filter(each -> each.value.equals(before.value)).isEmpty();
            return (changed ? withValue(before.value) : this).wanted(before.wanted);
        }

        /** What is wrong with the value; empty where nothing is. */
        public String problem() {
            try {
                if (what == What.SETTING) {
                    quantity();
                } else if (what == What.PART) {
                    mass();
                }
                return "";
            } catch (IllegalArgumentException wrong) {
                return wrong.getLocalizedMessage();
            }
        }

        private Written quantity() {
            return read(Units.NUMBER);
        }

        private Optional<Measured<Mass>> mass() {
            return value.isEmpty()
                    ? Optional.empty()
                    : Optional.of(read(Units.GRAM).measured().asType(Mass.class));
        }

        private Written read(Unit<?> otherwise) {
            try {
                return what == What.PART
                        ? QuantityText.parseLike(value, otherwise)
                        : QuantityText.parse(value, otherwise);
            } catch (QuantityProblem wrong) {
                throw new IllegalArgumentException(name + ": " + wrong.getLocalizedMessage(), wrong);
            }
        }
    }

    /**
     * What is said of it, in the builder's language.
     *
     * @param edit what the edit is called
     * @param title of the entry that tells what was carried over
     * @param text of that entry
     */
    public record Told(String edit, String title, List<String> text) {}

    /**
     * All that can be carried over.
     *
     * @param size from {@link #LEAST_SIZE} to {@link #MOST_SIZE}
     */
    public static CarryOver of(
            OpenJournal journal, Optional<BuildRecord> from, List<TemplateRecord> templates, double size) {
        if (!(size >= LEAST_SIZE && size <= MOST_SIZE)) {
            throw new IllegalArgumentException(Said.say(
                    "the size is {0} times that of the build it is begun from; accepted: {1} to {2}",
                    size, LEAST_SIZE, (int) MOST_SIZE));
        }
        var scaled = new Scaled(size);
        var items = new ArrayList<Item>();
        var weighed = from.map(build -> weighed(journal, build));
        weighed.ifPresent(build -> ofBuild(build, scaled, items));
        settings(journal, from, templates, scaled, items);
        templates.stream()
                .filter(template -> template.values().isEmpty())
                .forEach(template -> items.add(new Item(
                        What.TEMPLATE,
                        template.id(),
                        template.name(),
                        template.kind().word(),
                        Scaling.STAYS,
                        template.cameFrom().map(BuildDayRecord::name).orElse(""),
                        true)));
        return new CarryOver(weighed, templates, size, items);
    }

    /** The build with what its parts were weighed at last. */
    private static BuildRecord weighed(OpenJournal journal, BuildRecord build) {
        return build.withParts(build.parts().stream()
                .map(part -> part.withMass(Weighings.mass(journal, build.id(), part)))
                .toList());
    }

    private static void ofBuild(BuildRecord build, Scaled scaled, List<Item> items) {
        if (!build.layout().isEmpty()) {
            items.add(item(What.LAYOUT, "", build.layout(), Scaling.STAYS, build));
        }
        if (!build.datum().isEmpty()) {
            items.add(item(What.DATUM, "", build.datum(), Scaling.STAYS, build));
        }
        build.planform()
                .map(scaled::planform)
                .ifPresent(shape ->
                        items.add(item(What.PLANFORM, "span", span(Outlines.span(shape)), Scaling.LENGTH, build)));
        build.parts().stream()
                .map(scaled::part)
                .forEach(part -> items.add(new Item(
                        What.PART,
                        part.id(),
                        part.name(),
                        part.mass().map(QuantityText::show).orElse(""),
                        PartGrowth.of(part),
                        build.name(),
                        true)));
    }

    private static Item item(What what, String name, String value, Scaling scaling, BuildRecord build) {
        return new Item(what, "", name, value, scaling, build.name(), true);
    }

    private static String span(double metres) {
        return QuantityText.show(Measured.of(Math.round(metres * 10_000) / 10.0, Units.MILLIMETRE));
    }

    /** The newest of each name; a template's go before the build's. */
    private static void settings(
            OpenJournal journal,
            Optional<BuildRecord> from,
            List<TemplateRecord> templates,
            Scaled scaled,
            List<Item> items) {
        Map<String, Item> newest = new LinkedHashMap<>();
        from.ifPresent(build -> SetUpRecord.newest(journal.log(build.id()))
                .forEach(value -> newest.put(key(value), setting(value, scaled, build.name()))));
        templates.forEach(template ->
                template.values().forEach(value -> newest.put(key(value), setting(value, scaled, template.name()))));
        items.addAll(newest.values());
    }

    private static Item setting(SetUpRecord value, Scaled scaled, String origin) {
        return new Item(
                What.SETTING,
                key(value),
                value.name(),
                scaled.setting(value).quantity().text(),
                isLength(value) ? Scaling.LENGTH : Scaling.STAYS,
                origin,
                true);
    }

    private static String key(SetUpRecord value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    static boolean isLength(SetUpRecord value) {
        return Units.alike(value.quantity().unit(), Units.METRE);
    }

    /** The same with another item at a position. */
    public CarryOver with(int position, Item changed) {
        var all = new ArrayList<>(items);
        all.set(position, changed);
        return new CarryOver(from, templates, size, all);
    }

    /**
     * What was left out or changed in another list of the same things is left out or changed here as well.
     *
     * @param offered that list before anything was changed in it
     */
    public CarryOver as(CarryOver before, CarryOver offered) {
        var same = items.stream()
                .map(item -> before.same(item)
                        .map(known -> item.as(known, offered.same(item)))
                        .orElse(item))
                .toList();
        return new CarryOver(from, templates, size, same);
    }

    private Optional<Item> same(Item as) {
        return items.stream()
                .filter(each -> each.what() == as.what() && each.key().equals(as.key()))
                .findFirst();
    }

    /**
     * What is carried over and how it was scaled, a paragraph for each kind.
     *
     * @param word gives the words of {@link What} and {@link Scaling} in the builder's language
     */
    public List<String> told(UnaryOperator<String> word) {
        var lines = new ArrayList<String>();
        for (var kind : What.values()) {
            var names = wanted(kind).stream().map(item -> told(item, word)).toList();
            if (!names.isEmpty()) {
                lines.add(word.apply(kind.word()) + ": " + String.join("; ", names) + ".");
            }
        }
        return lines;
    }

    private String told(Item item, UnaryOperator<String> word) {
        var shown = item.what() == What.TEMPLATE ? word.apply(item.value()) : item.value();
        var how = size == 1 ? "" : " (" + word.apply(item.scaling().word()) + ")";
        var name = item.what() == What.PLANFORM ? word.apply(item.name()) : item.name();
        return (name + " " + shown).strip() + how;
    }

    /** What is wrong with the values that are carried over, one a line; empty where nothing is. */
    public String problems() {
        return String.join(
                "\n",
                items.stream()
                        .filter(Item::wanted)
                        .map(Item::problem)
                        .filter(problem -> !problem.isEmpty())
                        .toList());
    }

    /**
     * The edit that begins the build.
     *
     * @param begun what it is known to be; its layout and datum go before those that are carried over
     * @throws IllegalArgumentException where {@link #problems} has something to say
     */
    public Edit begin(BuildRecord begun, LocalDateTime now, Told told) {
        if (!problems().isEmpty()) {
            throw new IllegalArgumentException(problems());
        }
        var build = filled(begun, now.toLocalDate());
        var changes = new ArrayList<Edit.Change>();
        changes.add(new Edit.Change(Optional.empty(), Optional.of(build)));
        changes.add(new Edit.Change(Optional.empty(), Optional.of(entry(build, now, told))));
        var day = BuildDayRecord.of(build, now.toLocalDate());
        templates.stream()
                .filter(this::isCarried)
                .forEach(template -> changes.add(new Edit.Change(
                        Optional.of(template),
                        Optional.of(template.withLineage(template.lineage().goneTo(day))))));
        return new Edit(told.edit(), changes);
    }

    private EntryRecord entry(BuildRecord build, LocalDateTime now, Told told) {
        return EntryRecord.blank(build.id(), Entry.Kind.SET_UP, now)
                .withTitle(told.title())
                .withText(told.text())
                .withTags(List.of(TAG))
                .withSetUp(wanted(What.SETTING).stream()
                        .map(item -> new SetUpRecord(item.name(), item.quantity()))
                        .toList());
    }

    private BuildRecord filled(BuildRecord begun, LocalDate today) {
        var laidOut = begun.layout().isEmpty() ? begun.withLayout(value(What.LAYOUT)) : begun;
        var placed = laidOut.datum().isEmpty() ? laidOut.withDatum(value(What.DATUM)) : laidOut;
        return from.map(proven -> of(proven, placed).withBegunFrom(BuildDayRecord.of(proven, today)))
                .orElse(placed);
    }

    private BuildRecord of(BuildRecord proven, BuildRecord begun) {
        var scaled = new Scaled(size);
        var parts = new ArrayList<PartRecord>();
        for (var item : wanted(What.PART)) {
            proven.parts().stream()
                    .filter(part -> part.id().equals(item.key()))
                    .map(scaled::part)
                    .forEach(part -> parts.add(part.carried(item.mass())));
        }
        var shape = wanted(What.PLANFORM).isEmpty()
                ? Optional.<Planform>empty()
                : proven.planform().map(scaled::planform);
        return shape.map(begun::withPlanform).orElse(begun).withParts(parts);
    }

    private boolean isCarried(TemplateRecord template) {
        return template.values().isEmpty()
                ? wanted(What.TEMPLATE).stream().anyMatch(item -> item.key().equals(template.id()))
                : wanted(What.SETTING).stream().anyMatch(item -> item.origin().equals(template.name()));
    }

    private List<Item> wanted(What what) {
        return items.stream()
                .filter(item -> item.what() == what && item.wanted())
                .toList();
    }

    private String value(What what) {
        return wanted(what).stream().map(Item::value).findFirst().orElse("");
    }
}
