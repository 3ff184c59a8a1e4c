package planewright.app.ui.across;

import java.util.Optional;
import javax.measure.Unit;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;

/** A field for the value across of the next build, and the reason where it cannot be understood. */
final class AskedValue {
    private final JTextField field = new JTextField();
    private final JTextArea problem = Words.problem();

    /**
     * @param edited runs at every change
     */
    AskedValue(Runnable edited) {
        field.setToolTipText(Texts.ACROSS_AT_HINT.text());
        Buttons.onEdit(field, edited);
    }

    JTextField field() {
        return field;
    }

    JTextArea problem() {
        return problem;
    }

    /** Shows a value that may be asked for, as long as none is typed. */
    void suggest(String value) {
        field.putClientProperty("JTextField.placeholderText", value);
    }

    /** What was typed, in the unit of the axis, in which a number alone is taken; empty where nothing is asked or understood. */
    Optional<Double> in(Unit<?> across) {
        refuse("");
        if (field.getText().isBlank()) {
            return Optional.empty();
        }
        try {
            var typed = QuantityText.parseLike(field.getText(), across).measured();
            return Optional.of(QuantityText.in(typed, across).value().getValue().doubleValue());
        } catch (QuantityProblem wrong) {
            refuse(wrong.getLocalizedMessage());
            return Optional.empty();
        }
    }

    private void refuse(String words) {
        Words.mark(field, words);
        Words.show(problem, words);
    }
}
