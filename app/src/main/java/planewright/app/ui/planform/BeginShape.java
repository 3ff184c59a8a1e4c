package planewright.app.ui.planform;

import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.api.journal.Planform;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.PlanView;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.shared.planform.Layout;
import planewright.shared.quantity.QuantityProblem;

/** Where a build has no shape yet: begins one from a layout, with its span and root chord, and shows it on the way. */
final class BeginShape extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final double MOST = 20;

    private final transient PlanformDraft draft;
    private final transient Lengths lengths;
    private final JComboBox<Layout> layout = new JComboBox<>(Layout.values());
    private final JTextField span = new JTextField(10);
    private final JTextField chord = new JTextField(10);
    private final JPanel preview = new JPanel(new MigLayout("insets 0"));
    private final JTextArea problem = Words.problem();

    BeginShape(PlanformDraft draft, Lengths lengths) {
        super(new MigLayout("insets 24, gap 10, wrap 2", "[][grow,fill,220:300:640]"));
        this.draft = draft;
        this.lengths = lengths;
        setName("begin-shape");
        add(Look.heading(Texts.PLANFORM_BEGIN.text(), 1.3), "span");
        add(Words.quiet(Texts.PLANFORM_BEGIN_HINT.text()), "span, growx, wmin 0, wmax 640");
        layout.setRenderer(Words.choice(each -> name((Layout) each).text()));
        span.setText(lengths.text(1.2));
        chord.setText(lengths.text(0.22));
        Words.labelled(this, Texts.PLANFORM_LAYOUT.text(), layout, "shape-layout");
        Words.labelled(this, Texts.PLANFORM_WHOLE_SPAN.text(), span, "shape-span");
        Words.labelled(this, Texts.PLANFORM_ROOT_CHORD.text(), chord, "shape-chord");
        add(problem, "span, growx, wmin 0");
        add(preview, "span");
        add(Buttons.of("begin-planform", Texts.PLANFORM_BEGIN_BUTTON.text(), this::begin), "span, growx 0");
        layout.addActionListener(event -> refresh());
        Buttons.onEdit(span, this::refresh);
        Buttons.onEdit(chord, this::refresh);
        span.addActionListener(event -> begin());
        chord.addActionListener(event -> begin());
        refresh();
    }

    private void refresh() {
        var shape = read();
        preview.removeAll();
        preview.add(new PlanView(shape, name((Layout) layout.getSelectedItem()).text(), 320, 210));
        preview.revalidate();
        preview.repaint();
    }

    /** What is wrong is marked and said. */
    private Optional<Planform> read() {
        Words.show(problem, "");
        double wide = length(span, Texts.PLANFORM_WHOLE_SPAN);
        double deep = length(chord, Texts.PLANFORM_ROOT_CHORD);
        return wide > 0 && deep > 0
                ? Optional.of(((Layout) layout.getSelectedItem()).shape(wide, deep))
                : Optional.empty();
    }

    private double length(JTextField field, Texts label) {
        try {
            double metres = lengths.metres(field.getText());
            if (!(metres > 0 && metres <= MOST)) {
                throw new IllegalArgumentException(Texts.PLANFORM_OUT_OF_RANGE.text(
                        field.getText().strip(), "> " + lengths.text(0) + " … " + lengths.text(MOST)));
            }
            Words.mark(field, "");
            return metres;
        } catch (QuantityProblem | IllegalArgumentException wrong) {
            var words = label.text() + ": " + wrong.getLocalizedMessage();
            Words.mark(field, words);
            Words.show(problem, words);
            return 0;
        }
    }

    private void begin() {
        read().ifPresent(shape -> draft.build().ifPresent(build -> {
            var after = build.withPlanform(shape);
            if (after.layout().isBlank()) {
                after = after.withLayout(((Layout) layout.getSelectedItem()).word());
            }
            if (after.datum().isBlank()) {
                after = after.withDatum(Texts.PLANFORM_DATUM.text());
            }
            draft.change(Texts.PLANFORM_BEGIN_EDIT.text(), after);
        }));
    }

    private static Texts name(Layout layout) {
        return switch (layout) {
            case CONVENTIONAL -> Texts.LAYOUT_CONVENTIONAL;
            case SWEPT_FLYING_WING -> Texts.LAYOUT_SWEPT;
            case STRAIGHT_FLYING_WING -> Texts.LAYOUT_STRAIGHT;
            case DELTA -> Texts.LAYOUT_DELTA;
            case CANARD -> Texts.LAYOUT_CANARD;
            case V_TAIL -> Texts.LAYOUT_V_TAIL;
            case BIPLANE -> Texts.LAYOUT_BIPLANE;
        };
    }
}
