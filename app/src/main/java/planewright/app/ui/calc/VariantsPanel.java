package planewright.app.ui.calc;

import javax.swing.JPanel;
import planewright.app.calc.Outcome;
import planewright.app.calc.Variants;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.UnitsMenu;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.common.Wrapping;

/** Sets answers beside the one that is shown, and forgets them again; offers the units in which all of them are shown. */
final class VariantsPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final transient Variants variants;
    private final transient Outcome.Answered answered;

    VariantsPanel(Workroom room, Variants variants, Outcome.Answered answered) {
        super(new Stack(6));
        this.room = room;
        this.variants = variants;
        this.answered = answered;
        setOpaque(false);
        setName("variants");
        fill();
    }

    private void fill() {
        removeAll();
        var actions = new JPanel(new Wrapping(8));
        actions.setOpaque(false);
        var keep = Buttons.of("keep-variant", Texts.VARIANT_KEEP.text(), () -> {
            variants.keep(answered);
            fill();
        });
        keep.setToolTipText(Texts.VARIANT_KEEP_HINT.text());
        actions.add(keep);
        if (!variants.isEmpty()) {
            add(new TableCard(variants.table(
                    answered,
                    new Variants.Headings(
                            Texts.VARIANTS.text(),
                            Texts.VARIANT_NOW.text(),
                            Texts.VARIANT.text(),
                            Texts.VARIANT_ROWS.text()),
                    answered.units())));
            actions.add(Buttons.plain("forget-variants", Texts.VARIANT_FORGET.text(), () -> {
                variants.forget();
                fill();
            }));
        }
        actions.add(UnitsMenu.button(room, "answer-units"));
        add(actions);
        revalidate();
        repaint();
    }
}
