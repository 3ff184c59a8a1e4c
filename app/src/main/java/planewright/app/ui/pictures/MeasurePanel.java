package planewright.app.ui.pictures;

import java.awt.Font;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.api.quantity.Units;
import planewright.app.journal.MeasurementRecord;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.shared.quantity.QuantityProblem;
import planewright.shared.quantity.QuantityText;
import planewright.shared.quantity.Written;

/** What to do next while something is measured on a picture, and what came of it. */
final class MeasurePanel extends Card {
    private static final long serialVersionUID = 1L;
    /** Room for the longest step, so that nothing moves under the pointer from one step to the next. */
    private static final int MOST_LINES = 6;

    private final transient Workroom room;
    private final transient Runnable repaint;
    private final JTextArea next = Words.of("");
    private final JTextField known = Words.named(new JTextField(14), Texts.MEASURE_KNOWN.text(), "measure-known");
    private final JComboBox<MeasureTool.Kind> kind = new JComboBox<>(MeasureTool.Kind.values());
    private final JLabel result = Look.sized(new JLabel(" "), 1.15, Font.BOLD);
    private final JTextField name = Words.named(new JTextField(14), Texts.MEASURE_NAME.text(), "measure-name");
    private final JButton keep = Buttons.of("measure-keep", Texts.MEASURE_KEEP.text(), this::keep);
    private final JTextArea problem = Words.problem();
    private transient Optional<LoggedPicture> picture = Optional.empty();
    private transient MeasureTool tool = new MeasureTool(this::refresh);

    /**
     * @param repaint draws the picture anew
     */
    MeasurePanel(Workroom room, Runnable repaint) {
        super(new MigLayout("insets 0, gap 6, fillx, hidemode 3, wrap 1", "[grow,fill]"));
        this.room = room;
        this.repaint = repaint;
        setName("measure-panel");
        kind.setName("measure-kind");
        kind.getAccessibleContext().setAccessibleName(Texts.MEASURE_WHAT.text());
        kind.setToolTipText(Texts.MEASURE_WHAT.text());
        kind.setRenderer(Words.choice(
                each -> (each == MeasureTool.Kind.LENGTH ? Texts.MEASURE_LENGTH : Texts.MEASURE_ANGLE).text()));
        result.setName("measure-result");
        next.setName("measure-next");
        next.setRows(MOST_LINES);
        add(next, "wmin 0");
        add(known, "wmin 0, gaptop 4");
        add(Buttons.of("measure-calibrate", Texts.MEASURE_CALIBRATE.text(), this::calibrate));
        add(kind, "gaptop 8");
        add(result, "wmin 0");
        add(name, "wmin 0");
        add(keep);
        add(problem, "wmin 0");
        add(Buttons.plain("measure-anew", Texts.MEASURE_ANEW.text(), this::startAnew));
        add(Look.sized(Words.quiet(Texts.MEASURE_LIMITS.text()), 0.9, Font.PLAIN), "wmin 0, gaptop 8");
        known.addActionListener(event -> calibrate());
        name.addActionListener(event -> keep());
        kind.addActionListener(event -> tool.measure((MeasureTool.Kind) kind.getSelectedItem()));
        refresh();
    }

    MeasureTool tool() {
        return tool;
    }

    /** Another picture, or another page of it, is measured from the beginning. */
    void about(LoggedPicture wanted) {
        boolean same =
                picture.map(LoggedPicture::key).filter(wanted.key()::equals).isPresent();
        picture = Optional.of(wanted);
        if (!same) {
            tool = new MeasureTool(this::refresh);
            tool.measure((MeasureTool.Kind) kind.getSelectedItem());
        }
        showResult();
    }

    private void showResult() {
        result.setText(tool.result()
                .map(value -> Amounts.of(room.units().written(value)))
                .orElse(" "));
    }

    private void startAnew() {
        tool.startAnew();
        known.setText("");
        known.requestFocusInWindow();
    }

    private void refresh() {
        next.setText(nextStep());
        next.getAccessibleContext().setAccessibleName(next.getText());
        showResult();
        keep.setEnabled(tool.result().isPresent());
        Words.show(problem, "");
        revalidate();
        repaint.run();
    }

    private String nextStep() {
        if (tool.kind() == MeasureTool.Kind.ANGLE && tool.ends() == 2) {
            return Texts.MEASURE_NEXT_ANGLE.text();
        }
        if (tool.ends() < 2) {
            return Texts.MEASURE_NEXT_ENDS.text(2 - tool.ends());
        }
        return tool.known().isEmpty() ? Texts.MEASURE_NEXT_KNOWN.text() : Texts.MEASURE_NEXT_LENGTH.text();
    }

    private void calibrate() {
        try {
            var length = QuantityText.parseLike(known.getText(), Units.MILLIMETRE)
                    .measured()
                    .asType(Length.class);
            if (!(length.in(Units.METRE) > 0)) {
                throw new QuantityProblem("'{0}' is not above 0", "a length such as 100 mm ± 0.5 mm", known.getText());
            }
            tool.calibrate(length);
            Words.mark(known, "");
        } catch (QuantityProblem wrong) {
            refuse(known, wrong.getLocalizedMessage());
        }
    }

    private void keep() {
        if (name.getText().isBlank()) {
            refuse(name, Texts.MEASURE_NAME_NEEDED.text());
            return;
        }
        if (picture.isPresent() && tool.result().isPresent()) {
            Words.mark(name, "");
            var value = Written.of(tool.result().get());
            var measurement = MeasurementRecord.of(name.getText().strip(), value, method());
            room.edit(
                    picture.get()
                            .edit(
                                    Texts.PICTURE_MEASURED_EDIT.text(measurement.name()),
                                    picture.get().measured(measurement)),
                    () -> room.say(Texts.MEASURE_KEPT.text(
                            measurement.name(), Amounts.of(room.units().written(value)))),
                    failure -> Words.show(problem, failure.getLocalizedMessage()));
        }
    }

    private String method() {
        return tool.kind() == MeasureTool.Kind.ANGLE
                ? Texts.MEASURE_METHOD_ANGLE.text()
                : Texts.MEASURE_METHOD.text(Amounts.of(tool.known().orElseThrow()));
    }

    private void refuse(JTextField field, String words) {
        Words.mark(field, words);
        Words.show(problem, words);
        field.requestFocusInWindow();
        revalidate();
    }
}
