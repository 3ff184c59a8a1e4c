package planewright.app.ui.parts;

import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.planform.Sight;

/** The parts from above and from the side, and in words where they balance. */
final class PartsDrawing extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient PartsModel model;
    private final PartsView above;
    private final PartsView side;
    private final JTextArea balance = Words.of("");

    PartsDrawing(PartsModel model, PartsView.Choice choice) {
        super(new MigLayout("insets 0, gap 6, fill", "[grow 62,fill][grow 38,fill]", "[][120:200:,grow,fill]"));
        this.model = model;
        above = new PartsView(model, Sight.ABOVE, choice);
        side = new PartsView(model, Sight.SIDE, choice);
        balance.setName("parts-balance");
        add(
                Buttons.with(Icons.FIT, Buttons.of("parts-fit", Texts.PLANFORM_FIT.text(), this::fit)),
                "split 2, span 2, grow 0");
        add(balance, "growx, wmin 0, wrap");
        add(above, "wmin 0, hmin 0");
        add(side, "wmin 0, hmin 0");
    }

    void fit() {
        above.fit();
        side.fit();
    }

    /** What is shown, or what is chosen, is another. */
    void refresh() {
        above.refresh();
        side.refresh();
        Words.show(balance, model.balanceWords());
        balance.setVisible(true);
    }
}
