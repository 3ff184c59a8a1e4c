package planewright.app.ui.pictures;

import java.util.Comparator;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.common.Wrapping;

/** Two pictures beside each other, the earlier at the left; coming closer to one comes closer to both, unless they are let free. */
final class ComparePictures extends JPanel {
    private static final long serialVersionUID = 1L;

    private final ZoomView then;
    private final ZoomView now;
    private final JTextArea thenWords = Words.of(" ");
    private final JTextArea nowWords = Words.of(" ");
    private final JCheckBox together = new JCheckBox(Texts.COMPARE_TOGETHER.text(), true);

    /**
     * @param back leads to the grid
     */
    ComparePictures(Workroom room, Runnable back) {
        super(new MigLayout(
                "insets 0, gap 6, fill, wrap 2", "[grow,fill,sg half][grow,fill,sg half]", "[][grow,fill][]"));
        then = new ZoomView(room, "compare-then");
        now = new ZoomView(room, "compare-now");
        setName("compare");
        var bar = new JPanel(new Wrapping(6, 2));
        bar.add(Buttons.of("compare-back", Texts.PICTURES_ALL.text(), back));
        bar.add(Buttons.plain("compare-fit", Texts.FIT.text(), () -> {
            then.fitNow();
            now.fitNow();
        }));
        bar.add(Buttons.plain("compare-one", "1:1", () -> {
            then.oneToOne();
            now.oneToOne();
        }));
        together.setName("compare-together");
        together.setToolTipText(Texts.COMPARE_TOGETHER_HINT.text());
        together.addActionListener(event -> link(then, now));
        bar.add(together);
        add(bar, "span 2, wmin 0");
        add(then, "wmin 0, hmin 80");
        add(now, "wmin 0, hmin 80");
        add(thenWords, "wmin 0");
        add(nowWords, "wmin 0");
        then.onMoved(() -> link(then, now));
        now.onMoved(() -> link(now, then));
        getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ESCAPE"), "back");
        getActionMap().put("back", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                back.run();
            }
        });
    }

    private void link(ZoomView from, ZoomView to) {
        if (together.isSelected()) {
            to.follow(from);
        }
    }

    void show(LoggedPicture one, LoggedPicture other) {
        var inOrder = List.of(one, other).stream()
                .sorted(Comparator.comparing(each -> each.entry().at()))
                .toList();
        then.show(inOrder.get(0));
        now.show(inOrder.get(1));
        tell(thenWords, inOrder.get(0));
        tell(nowWords, inOrder.get(1));
        revalidate();
    }

    private static void tell(JTextArea words, LoggedPicture picture) {
        words.setText(picture.heading());
        words.getAccessibleContext().setAccessibleName(picture.heading());
    }

    void focusPicture() {
        then.requestFocusInWindow();
    }

    void close() {
        then.clear();
        now.clear();
    }
}
