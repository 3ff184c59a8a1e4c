package planewright.app.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import planewright.api.calculator.From;
import planewright.api.calculator.Language;
import planewright.api.journal.Build;
import planewright.api.journal.Entry;
import planewright.api.journal.Joint;
import planewright.api.journal.JournalReader;
import planewright.api.journal.JournalReader.Dated;
import planewright.api.journal.Measurement;
import planewright.api.journal.Part;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.journal.Carried;
import planewright.app.journal.EntryRecord;
import planewright.app.store.JsonFiles;
import planewright.app.store.PlanformJson;

/**
 * Takes a calculator's inputs from the journal, as its description says where. What the calculator itself has measured or set,
 * in results kept before, it is not given again: it would only agree with itself. Rows of the set-up alone are as it flies now.
 */
public final class Prefill {
    private final JournalReader journal;
    private final JournalReader others;
    private final Build build;
    private final Language language;
    private final Joints joints;
    private final Map<String, Origin> origins = new LinkedHashMap<>();

    private Prefill(Described calculator, JournalReader journal, Build build) {
        this.journal = journal;
        this.others = new WithoutAnswersOf(calculator.id(), journal);
        this.build = build;
        this.language = calculator.language();
        this.joints = Joints.of(journal.log(build.id()));
    }

    /**
     * What the journal has for a calculator.
     *
     * @throws IllegalArgumentException for an unknown build
     */
    public static Filled of(Described calculator, JournalReader journal, String buildId) {
        var build = journal.build(buildId)
                .orElseThrow(() -> new IllegalArgumentException("build " + buildId + " is not in the journal"));
        var prefill = new Prefill(calculator, journal, build);
        var inputs = JsonFiles.object();
        for (var field : calculator.inputs().fields()) {
            prefill.value(field, field.name()).ifPresent(node -> inputs.set(field.name(), node));
        }
        return new Filled(inputs, prefill.origins);
    }

    private Optional<JsonNode> value(Field field, String path) {
        if (field.from().isEmpty()) {
            return Optional.empty();
        }
        var from = field.from().get();
        return switch (from.value()) {
            case MEASUREMENT -> measurement(field, from.name(), path);
            case SET_UP -> setUp(others, field, from.name(), path);
            case BUILD -> ofBuild(from.name(), path);
            case PART_ROWS -> partRows(field, path);
            case CONTROL_ROWS -> controlRows(field, path);
            case MEASUREMENT_ROWS -> measurementRows(field, from.name(), path);
            case SET_UP_ROWS -> setUpRows(field, from.name(), path);
            case JOINT_ROWS -> jointRows(field, path);
            case JOINT -> joints.unfinished().flatMap(joint -> ofJoint(joint, from.name(), path));
            case TEMPLATE -> take(path, Shelved.template(language, journal, build, from.name()));
            case PICTURE -> take(path, Shelved.picture(language, journal, build, from.name()));
            case CALENDAR -> take(path, Shelved.calendar(language, journal));
            case MATERIAL -> joints.newest().flatMap(joint -> ofJoint(joint, "material", path));
            case NOWHERE, PART, CONTROL, ROW_NAME -> Optional.empty();
        };
    }

    private Optional<JsonNode> measurement(Field field, String name, String path) {
        return others.latestMeasurement(build.id(), name)
                .filter(dated -> fits(field, dated.what().value()))
                .map(dated -> {
                    origins.put(path, measured(dated.what(), dated.entry()));
                    return written(dated.what());
                });
    }

    private Optional<JsonNode> setUp(JournalReader from, Field field, String name, String path) {
        return from.setUpValue(build.id(), name)
                .filter(dated -> fits(field, dated.what().value()))
                .map(dated -> {
                    origins.put(
                            path,
                            new Origin(
                                    "set-up",
                                    dated.what().name(),
                                    Optional.of(dated.entry().id()),
                                    language.say(
                                            Carried.isIn(dated.entry()) ? "carried over {0}" : "set-up of {0}",
                                            day(dated.entry()))));
                    return written(dated.what().written(), dated.what().value());
                });
    }

    private Optional<JsonNode> ofBuild(String name, String path) {
        Optional<JsonNode> node = switch (name) {
            case "name" -> text(build.name());
            case "layout" -> text(build.layout());
            case "datum" -> text(build.datum());
            case "planform" -> build.planform().map(PlanformJson::write);
            default -> Optional.empty();
        };
        node.ifPresent(present ->
                origins.put(path, new Origin("build", name, Optional.empty(), language.say("the build's " + name))));
        return node;
    }

    private Optional<JsonNode> partRows(Field field, String path) {
        var rows = JsonFiles.object().putArray("rows");
        for (var part : build.parts()) {
            var row = rows.addObject();
            for (var cell : field.row().orElseThrow().fields()) {
                cell.from()
                        .filter(from -> from.value() == From.Place.PART)
                        .flatMap(from -> ofPart(part, from.name(), path + "[" + (rows.size() - 1) + "]." + cell.name()))
                        .ifPresent(node -> row.set(cell.name(), node));
            }
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows);
    }

    private Optional<JsonNode> ofPart(Part part, String name, String path) {
        return switch (name) {
            case "name" -> text(part.name());
            case "group" -> text(part.group());
            case "mass" -> mass(part, path);
            case "x" -> ledger(part, part.x(), path);
            case "y" -> ledger(part, part.y(), path);
            case "z" -> ledger(part, part.z(), path);
            case "length" -> ledger(part, part.length(), path);
            case "width" -> ledger(part, part.width(), path);
            case "height" -> ledger(part, part.height(), path);
            default -> Optional.empty();
        };
    }

    private Optional<JsonNode> mass(Part part, String path) {
        var weighed = others.latestMeasurement(build.id(), part.name())
                .filter(dated -> Units.alike(dated.what().value().value().getUnit(), Units.GRAM));
        if (weighed.isEmpty()) {
            return ledger(part, part.mass(), path);
        }
        origins.put(path, measured(weighed.get().what(), weighed.get().entry()));
        return Optional.of(written(weighed.get().what()));
    }

    private Optional<JsonNode> ledger(Part part, Optional<? extends Measured<?>> value, String path) {
        return value.map(known -> {
            origins.put(path, new Origin("mass ledger", part.name(), Optional.empty(), language.say("mass ledger")));
            return QuantityJson.write(
                    QuantityJson.digits(known.value().getValue().doubleValue()), known);
        });
    }

    private Optional<JsonNode> controlRows(Field field, String path) {
        var rows = JsonFiles.object().putArray("rows");
        for (var surface : build.planform().map(Planform::surfaces).orElse(List.of())) {
            for (var control : surface.controls()) {
                var row = rows.addObject();
                for (var cell : field.row().orElseThrow().fields()) {
                    cell.from()
                            .filter(from -> from.value() == From.Place.CONTROL)
                            .flatMap(from -> ofControl(surface, control, from.name()))
                            .ifPresent(node -> {
                                row.set(cell.name(), node);
                                origins.put(
                                        path + "[" + (rows.size() - 1) + "]." + cell.name(),
                                        new Origin(
                                                "planform",
                                                control.name(),
                                                Optional.empty(),
                                                language.say("the build's planform")));
                            });
                }
            }
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows);
    }

    private static Optional<JsonNode> ofControl(Planform.Surface surface, Planform.Control control, String name) {
        return switch (name) {
            case "name" -> text(control.name());
            case "surface" -> text(surface.name());
            case "role" -> text(control.role().word());
            case "from" -> share(control.from());
            case "to" -> share(control.to());
            case "hinge" -> share(control.hinge());
            case "hingeTo" -> control.hingeTo() == control.hinge() ? Optional.empty() : share(control.hingeTo());
            default -> Optional.empty();
        };
    }

    /** In percent, to nine decimals as the build's file has it. */
    private static Optional<JsonNode> share(double share) {
        double percent = Math.rint(share * 1e11) / 1e9;
        return Optional.of(QuantityJson.write(QuantityJson.digits(percent), Measured.of(percent, Units.PERCENT)));
    }

    private Optional<JsonNode> measurementRows(Field field, String prefix, String path) {
        var shape = field.row().orElseThrow();
        var rows = JsonFiles.object().putArray("rows");
        for (var subject : subjects(shape, prefix)) {
            var row = JsonFiles.object();
            for (var cell : shape.fields()) {
                ofSubject(cell, subject, path + "[" + rows.size() + "]." + cell.name())
                        .ifPresent(node -> row.set(cell.name(), node));
            }
            rows.add(row);
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows);
    }

    private Optional<JsonNode> ofSubject(Field cell, String subject, String path) {
        if (cell.from().isEmpty()) {
            return Optional.empty();
        }
        var from = cell.from().get();
        return switch (from.value()) {
            case ROW_NAME -> text(subject.substring(subject.indexOf(' ') + 1));
            case MEASUREMENT -> measurement(cell, (subject + " " + from.name()).strip(), path);
            default -> Optional.empty();
        };
    }

    /** What was measured itself: {@code scale nose}, but not {@code scale nose x}, which belongs to it. */
    private Set<String> subjects(Shape shape, String prefix) {
        var own = shape.fields().stream()
                .flatMap(cell -> cell.from().stream())
                .filter(from ->
                        from.value() == From.Place.MEASUREMENT && !from.name().isEmpty())
                .map(from -> " " + from.name())
                .toList();
        var subjects = new LinkedHashSet<String>();
        others.measurements(build.id()).stream()
                .map(dated -> dated.what().name().strip().toLowerCase(Locale.ROOT))
                .filter(name -> name.startsWith(prefix + " "))
                .filter(name -> own.stream().noneMatch(name::endsWith))
                .forEach(subjects::add);
        return subjects;
    }

    private Optional<JsonNode> setUpRows(Field field, String word, String path) {
        var rows = JsonFiles.object().putArray("rows");
        for (var name : setUpNames(word)) {
            var row = JsonFiles.object();
            for (var cell : field.row().orElseThrow().fields()) {
                ofSetUp(cell, name, word, path + "[" + rows.size() + "]." + cell.name())
                        .ifPresent(node -> row.set(cell.name(), node));
            }
            rows.add(row);
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows);
    }

    private Optional<JsonNode> ofSetUp(Field cell, String name, String word, String path) {
        if (cell.from().isEmpty()) {
            return Optional.empty();
        }
        var from = cell.from().get();
        return switch (from.value()) {
            case ROW_NAME -> text(name);
            case SET_UP -> setUp(journal, cell, name, path);
            case MEASUREMENT -> {
                var thing = name.substring(0, name.toLowerCase(Locale.ROOT).indexOf(" " + word) + 1);
                yield thing.isEmpty() ? Optional.empty() : measurement(cell, thing + from.name(), path);
            }
            default -> Optional.empty();
        };
    }

    /** Each name once, as it was last cased, in the order of the log. */
    private Collection<String> setUpNames(String word) {
        var names = new LinkedHashMap<String, String>();
        journal.log(build.id()).stream()
                .flatMap(entry -> entry.setUp().stream())
                .map(value -> value.name().strip())
                .filter(name -> !name.contains(",")
                        && List.of(name.toLowerCase(Locale.ROOT).split("\\s+")).contains(word))
                .forEach(name -> names.put(name.toLowerCase(Locale.ROOT), name));
        return names.values();
    }

    private Optional<JsonNode> jointRows(Field field, String path) {
        var rows = JsonFiles.object().putArray("rows");
        for (var joint : joints.newestFirst()) {
            var row = rows.addObject();
            for (var cell : field.row().orElseThrow().fields()) {
                cell.from()
                        .filter(from -> from.value() == From.Place.JOINT)
                        .flatMap(from ->
                                ofJoint(joint, from.name(), path + "[" + (rows.size() - 1) + "]." + cell.name()))
                        .ifPresent(node -> row.set(cell.name(), node));
            }
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows);
    }

    private Optional<JsonNode> ofJoint(Dated<Joint> dated, String name, String path) {
        var joint = dated.what();
        Optional<JsonNode> node = switch (name) {
            case "name" -> text(joint.name());
            case "material" -> text(joint.material());
            case "start" -> text(joint.start().toString());
            case "handsOffUntil" -> joint.handsOffUntil().flatMap(time -> text(time.toString()));
            case "fullyCured" -> joint.fullyCured().flatMap(time -> text(time.toString()));
            default -> Optional.empty();
        };
        node.ifPresent(present -> origins.put(
                path,
                new Origin(
                        "joint",
                        joint.name(),
                        Optional.of(dated.entry().id()),
                        language.say("joint of {0}, {1}", day(dated.entry()), joint.name()))));
        return node;
    }

    private Optional<JsonNode> take(String path, Optional<Shelved.Taken> taken) {
        return taken.map(found -> {
            origins.put(path, found.origin());
            return found.node();
        });
    }

    /** A journal without the results of one calculator. */
    private record WithoutAnswersOf(String calculator, JournalReader journal) implements JournalReader {
        @Override
        public List<? extends Build> builds() {
            return journal.builds();
        }

        @Override
        public List<? extends Entry> log(String buildId) {
            return journal.log(buildId).stream()
                    .filter(entry -> !isAnswer(entry))
                    .toList();
        }

        private boolean isAnswer(Entry entry) {
            return entry instanceof EntryRecord record
                    && record.keptResult()
                            .filter(kept -> kept.calculator().equals(calculator))
                            .isPresent();
        }
    }

    private static boolean fits(Field field, Measured<?> value) {
        return field.unit()
                .map(unit -> Units.alike(unit, value.value().getUnit()))
                .orElse(false);
    }

    private Origin measured(Measurement measurement, Entry entry) {
        var how = measurement.method().isEmpty() ? "" : ", " + measurement.method();
        return new Origin(
                "measurement",
                measurement.name(),
                Optional.of(entry.id()),
                language.say("measured {0}", day(entry)) + how);
    }

    private static JsonNode written(Measurement measurement) {
        return written(measurement.written(), measurement.value());
    }

    private static JsonNode written(String number, Measured<?> value) {
        return QuantityJson.write(number, value);
    }

    private static Optional<JsonNode> text(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(TextNode.valueOf(text));
    }

    private String day(Entry entry) {
        return ClockText.day(entry.at().toLocalDate(), language.locale());
    }
}
