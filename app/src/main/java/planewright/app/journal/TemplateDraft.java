package planewright.app.journal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Time;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;

/**
 * A template while somebody writes it: everything as typed, right or wrong, so that nothing typed is lost.
 *
 * @param name what it is called
 * @param notes paragraphs, with empty lines between them
 * @param tags with commas between them
 * @param content what it says
 */
public record TemplateDraft(String name, String notes, String tags, Content content) {
    /** The names of its fields in the paths of problems. */
    public static final String NAME = "name";

    public static final String STEPS = "steps";
    public static final String VALUES = "values";

    /** What a template says, as typed. */
    public sealed interface Content {}

    /** An outline, which is not typed. */
    public record Outlined(String hash) implements Content {}

    /** Steps; one without anything typed does not count. */
    public record Stepwise(List<Doing> steps) implements Content {
        public Stepwise {
            steps = List.copyOf(steps);
        }
    }

    /** Values of a set-up; one without anything typed does not count. */
    public record Valued(List<EntryDraft.Setting> values) implements Content {
        public Valued {
            values = List.copyOf(values);
        }
    }

    /**
     * A step as typed.
     *
     * @param id empty until it has one
     * @param materials with commas between them
     * @param cautions with semicolons between them
     */
    public record Doing(String id, String text, String handsOn, String waiting, String materials, String cautions) {
        boolean isBlank() {
            return (text + handsOn + waiting + materials + cautions).isBlank();
        }
    }

    /**
     * What came of a draft.
     *
     * @param template the template, where there are no problems
     * @param problems what cannot be understood, by path: {@code name}, {@code steps[0].handsOn}
     */
    public record Checked(Optional<TemplateRecord> template, Map<String, String> problems) {}

    /** A template, ready to be changed. */
    public static TemplateDraft of(TemplateRecord template) {
        return new TemplateDraft(
                template.name(),
                String.join("\n\n", template.notes()),
                String.join(", ", template.tags()),
                content(template.content()));
    }

    private static Content content(TemplateContent content) {
        if (content instanceof TemplateContent.Outline outline) {
            return new Outlined(outline.hash());
        }
        if (content instanceof TemplateContent.Procedure procedure) {
            return new Stepwise(
                    procedure.steps().stream().map(TemplateDraft::typed).toList());
        }
        return valued(((TemplateContent.SetUp) content).values());
    }

    private static Doing typed(StepRecord step) {
        return new Doing(
                step.id(),
                step.text(),
                EntryDraft.shown(step.handsOn()),
                EntryDraft.shown(step.waiting()),
                String.join(", ", step.materials()),
                String.join("; ", step.cautions()));
    }

    /** A set-up of these values. */
    public static Valued valued(List<SetUpRecord> values) {
        return new Valued(values.stream()
                .map(each -> new EntryDraft.Setting(each.name(), Said.text(each.quantity())))
                .toList());
    }

    /**
     * The template that this draft makes of the one it began with, or all that is wrong with it.
     *
     * @param before with the id, the day and the lineage that stay
     * @param others no two templates bear one name
     */
    public Checked check(TemplateRecord before, List<TemplateRecord> others) {
        var problems = new LinkedHashMap<String, String>();
        if (name.isBlank()) {
            problems.put(NAME, Said.say("the name is empty; accepted: a name that no other template has"));
        } else if (others.stream()
                .anyMatch(each -> !each.id().equals(before.id()) && each.name().equalsIgnoreCase(name.strip()))) {
            problems.put(
                    NAME, Said.say("template '{0}' is in the journal already; accepted: another name", name.strip()));
        }
        var read = read(before, problems);
        return problems.isEmpty()
                ? new Checked(
                        read.map(content -> before.withName(name.strip())
                                .withNotes(split(notes, "\\n\\s*\\n"))
                                .withTags(split(tags, ","))
                                .withContent(content)),
                        Map.of())
                : new Checked(Optional.empty(), problems);
    }

    private Optional<TemplateContent> read(TemplateRecord before, Map<String, String> problems) {
        if (content instanceof Outlined outlined) {
            return Optional.of(new TemplateContent.Outline(outlined.hash()));
        }
        if (content instanceof Stepwise stepwise) {
            var steps = new ArrayList<StepRecord>();
            for (int i = 0; i < stepwise.steps().size(); i++) {
                var typed = stepwise.steps().get(i);
                if (!typed.isBlank()) {
                    step(typed, STEPS + "[" + i + "]", problems).ifPresent(steps::add);
                }
            }
            return some(STEPS, Said.say("a procedure has no step; accepted: 1 or more"), steps, problems)
                    .map(TemplateContent.Procedure::new);
        }
        var values = new ArrayList<SetUpRecord>();
        var rows = ((Valued) content).values();
        for (int i = 0; i < rows.size(); i++) {
            if (!rows.get(i).isBlank()) {
                setting(before, rows.get(i), VALUES + "[" + i + "]", problems).ifPresent(values::add);
            }
        }
        return some(VALUES, Said.say("a set-up has no value; accepted: 1 or more"), values, problems)
                .map(TemplateContent.SetUp::new);
    }

    private static <T> Optional<List<T>> some(
            String path, String otherwise, List<T> rows, Map<String, String> problems) {
        if (rows.isEmpty() && problems.isEmpty()) {
            problems.put(path, otherwise);
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows);
    }

    private static Optional<StepRecord> step(Doing typed, String path, Map<String, String> problems) {
        if (typed.text().isBlank()) {
            problems.put(path + ".text", Said.say("a step has no words; accepted: what to do"));
            return Optional.empty();
        }
        return Optional.of(new StepRecord(
                typed.id().isEmpty() ? Ids.small() : typed.id(),
                typed.text(),
                time(typed.handsOn(), path + ".handsOn", problems),
                time(typed.waiting(), path + ".waiting", problems),
                split(typed.materials(), ","),
                split(typed.cautions(), ";")));
    }

    private static Optional<Measured<Time>> time(String typed, String path, Map<String, String> problems) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    QuantityText.parseLike(typed, Units.MINUTE).measured().asType(Time.class));
        } catch (QuantityProblem wrong) {
            problems.put(path, wrong.getLocalizedMessage());
            return Optional.empty();
        }
    }

    /** What was typed, or what stood there before where that shows the same text. */
    private static Optional<SetUpRecord> setting(
            TemplateRecord before, EntryDraft.Setting typed, String path, Map<String, String> problems) {
        if (typed.name().isBlank()) {
            problems.put(path + ".name", Said.say("a value has no name; accepted: such as 'elevon, low rate'"));
            return Optional.empty();
        }
        var kept = before.values().stream()
                .filter(each -> each.name().equals(typed.name()))
                .filter(each -> DraftReader.stands(Optional.of(each.quantity()), typed.quantity()))
                .findFirst();
        if (kept.isPresent()) {
            return kept;
        }
        try {
            return Optional.of(new SetUpRecord(typed.name(), QuantityText.parse(typed.quantity(), Units.NUMBER)));
        } catch (QuantityProblem wrong) {
            problems.put(path + ".quantity", typed.name().strip() + ": " + wrong.getLocalizedMessage());
            return Optional.empty();
        }
    }

    private static List<String> split(String typed, String separator) {
        return Arrays.stream(typed.split(separator))
                .map(String::strip)
                .filter(each -> !each.isEmpty())
                .toList();
    }
}
