package planewright.app.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import planewright.app.calc.Described;
import planewright.app.calc.Field;
import planewright.app.calc.InputTexts;
import planewright.app.calc.Kind;
import planewright.app.calc.OutlineJson;
import planewright.app.store.JsonFiles;

/** Options that are a calculator's inputs. */
final class InputOptions {
    private InputOptions() {}

    /** The inputs that words give; a problem with a word itself ends the command, values are checked by the calculator. */
    static ObjectNode parse(Described described, List<String> words) {
        var spec = CommandSpec.create();
        described.inputs().fields().forEach(field -> spec.addOption(option(field)));
        var given = JsonFiles.object();
        try {
            var parsed = new CommandLine(spec).parseArgs(words.toArray(String[]::new));
            for (var field : described.inputs().fields()) {
                if (parsed.hasMatchedOption(field.option())) {
                    put(given, field, parsed.matchedOption(field.option()));
                }
            }
        } catch (CommandLine.ParameterException wrong) {
            throw CommandFailed.words(what(wrong) + "; inputs of " + described.id() + ": "
                    + String.join(
                            ", ",
                            described.inputs().fields().stream()
                                    .map(Field::option)
                                    .toList()));
        }
        return given;
    }

    /** {@code name=value} pairs, with inputs by their names in JSON, as the words of options. */
    static List<String> words(Described described, List<String> pairs) {
        var words = new ArrayList<String>();
        for (var pair : pairs) {
            int sign = pair.indexOf('=');
            var name = sign < 0 ? pair : pair.substring(0, sign).strip();
            var field = described.inputs().fields().stream()
                    .filter(each -> each.name().equals(name))
                    .findFirst();
            if (sign < 0 || field.isEmpty()) {
                throw CommandFailed.words("--set is '" + pair + "'; accepted: INPUT=VALUE with an input of "
                        + described.id() + ": "
                        + described.inputs().fields().stream().map(Field::name).collect(Collectors.joining(", ")));
            }
            words.add(field.get().option());
            words.add(pair.substring(sign + 1).strip());
        }
        return words;
    }

    private static String what(CommandLine.ParameterException wrong) {
        return wrong instanceof CommandLine.UnmatchedArgumentException unmatched
                ? "'" + unmatched.getUnmatched().get(0) + "' is no input"
                : wrong.getMessage();
    }

    private static OptionSpec option(Field field) {
        var option = OptionSpec.builder(field.option()).paramLabel("VALUE");
        return field.kind() == Kind.ROWS
                ? option.type(List.class)
                        .auxiliaryTypes(String.class)
                        .arity("1")
                        .build()
                : option.type(String.class).arity("1").build();
    }

    private static void put(ObjectNode given, Field field, OptionSpec option) {
        if (field.kind() == Kind.ROWS) {
            var rows = given.putArray(field.name());
            for (Object row : (List<?>) option.getValue()) {
                try {
                    rows.add(InputTexts.row(field, (String) row));
                } catch (IllegalArgumentException wrong) {
                    throw CommandFailed.words(wrong.getMessage());
                }
            }
        } else {
            given.set(field.name(), node(field, option.getValue()));
        }
    }

    /** What is typed, or what stands in the file that is named: an outline as SVG, a shape or a calendar as in the journal. */
    private static JsonNode node(Field field, String typed) {
        boolean outline =
                field.kind() == Kind.OUTLINE && typed.toLowerCase(Locale.ROOT).endsWith(".svg");
        boolean tree = field.kind() == Kind.PLANFORM || field.kind() == Kind.CALENDAR;
        if (typed.isBlank() || !outline && !tree) {
            return InputTexts.node(typed);
        }
        var file = Path.of(typed.strip());
        try {
            return outline ? OutlineJson.ofFile(file) : tree(field, file);
        } catch (NoSuchFileException missing) {
            throw CommandFailed.words(field.option() + ": " + file + " is not there; accepted: "
                    + (field.kind() == Kind.PLANFORM ? "a build.json" : "a calendar.json"));
        } catch (IOException unreadable) {
            throw CommandFailed.words(field.option() + ": " + unreadable.getMessage());
        }
    }

    private static JsonNode tree(Field field, Path file) throws IOException {
        var tree = JsonFiles.read(file);
        return field.kind() == Kind.PLANFORM && tree.path("planform").isObject() ? tree.path("planform") : tree;
    }
}
