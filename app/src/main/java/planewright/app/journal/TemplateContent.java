package planewright.app.journal;

import java.util.List;
import planewright.api.journal.Template;

/** What a template says. */
public sealed interface TemplateContent {
    Template.Kind kind();

    /**
     * A shape at true size.
     *
     * @param hash SHA-256 of its SVG file
     */
    record Outline(String hash) implements TemplateContent {
        public Outline {
            Checks.hash("an outline", hash);
        }

        @Override
        public Template.Kind kind() {
            return Template.Kind.OUTLINE;
        }
    }

    /**
     * What to do, in order.
     *
     * @param steps at least one
     */
    record Procedure(List<StepRecord> steps) implements TemplateContent {
        public Procedure {
            steps = List.copyOf(steps);
            Checks.some("a procedure", "steps", steps);
        }

        @Override
        public Template.Kind kind() {
            return Template.Kind.PROCEDURE;
        }
    }

    /**
     * What to fly with.
     *
     * @param values at least one
     */
    record SetUp(List<SetUpRecord> values) implements TemplateContent {
        public SetUp {
            values = List.copyOf(values);
            Checks.some("a set-up", "values", values);
        }

        @Override
        public Template.Kind kind() {
            return Template.Kind.SET_UP;
        }
    }
}
