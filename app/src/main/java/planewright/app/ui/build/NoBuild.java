package planewright.app.ui.build;

import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;

/** What stands where a build would: how to begin the first one, or that one is to be chosen. */
final class NoBuild extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JPanel first = new JPanel(new MigLayout("insets 0, gap 10, wrap 1", "[0:480:480,fill]"));
    private final JLabel pick = Look.quiet(Texts.PICK_BUILD.text());

    NoBuild() {
        super(new MigLayout("fill, hidemode 3", "[center]", "[center]"));
        setName("no-build");
        first.add(Look.heading(Texts.BEGIN_BUILD.text(), 1.3));
        for (var line : List.of(
                Texts.BEGIN_BUILD_NAME, Texts.BEGIN_BUILD_LOG, Texts.BEGIN_BUILD_BRING, Texts.BEGIN_BUILD_HELP)) {
            first.add(Words.quiet(line.text()), "wmin 0");
        }
        add(first, "wmin 0, cell 0 0");
        add(pick, "wmin 0, cell 0 0");
        teach(true);
    }

    /** Says how to begin where the journal is empty, else that a build is to be chosen. */
    void teach(boolean empty) {
        first.setVisible(empty);
        pick.setVisible(!empty);
    }
}
