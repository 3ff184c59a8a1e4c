package planewright.app.ui.build;

import java.awt.Component;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.calc.CalcPage;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Cards;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.log.EntryEditor;
import planewright.app.ui.log.LogPage;
import planewright.app.ui.measurements.MeasurementsPage;
import planewright.app.ui.parts.PartsPage;
import planewright.app.ui.pictures.PicturesPage;
import planewright.app.ui.planform.PlanformPage;
import planewright.app.ui.setup.SetUpPage;

/** The build that is shown: its header and its pages. */
public final class BuildPage extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final String SHOWN = "shown";
    private static final String NONE = "none";

    private final Cards cards = new Cards();
    private final PageTabs tabs = new PageTabs();
    private final NoBuild nothing = new NoBuild();
    private final LogPage log;
    private final BuildHeader header;

    /**
     * @param compare sets the build that is shown beside another
     */
    public BuildPage(Workroom room, Runnable compare) {
        setLayout(cards);
        setName("build");
        log = new LogPage(room);
        header = new BuildHeader(room, compare);
        var calculators = new CalcPage(room);
        var pictures = new PicturesPage(room, log::takeFiles, log::takePasted);
        var measurements = new MeasurementsPage(room);
        tabs.add(Texts.LOG, Icons.LOG, log);
        tabs.add(Texts.PICTURES, Icons.PICTURES, pictures);
        tabs.add(Texts.MEASUREMENTS, Icons.MEASUREMENTS, measurements);
        tabs.add(Texts.PARTS, Icons.PARTS, new PartsPage(room));
        tabs.add(Texts.PLANFORM, Icons.PLANFORM, new PlanformPage(room));
        tabs.add(Texts.SET_UP_PAGE, Icons.SET_UP, new SetUpPage(room));
        tabs.add(Texts.CALCULATORS, Icons.CALCULATORS, calculators);
        var page = new JPanel(new MigLayout("insets 10 6 0 10, gap 6, fill", "[grow,fill]", "[][grow,fill]"));
        page.add(header, "wmin 0, wrap");
        page.add(tabs, "wmin 0, hmin 0");
        add(page, SHOWN);
        add(nothing, NONE);
        log.onWanted(this::showLog);
        room.onChange(() -> show(room));
        room.onEntryWanted(entry -> tabs.setSelectedComponent(log));
        room.onPictureWanted((entry, picture, captioned) -> {
            var from = shown();
            tabs.setSelectedComponent(pictures);
            pictures.show(entry, picture, captioned, () -> tabs.setSelectedComponent(from));
        });
        room.onMeasurementWanted((entry, measurement) -> {
            tabs.setSelectedComponent(measurements);
            measurements.choose(entry, measurement);
        });
        room.onCalculatorWanted(calculator -> tabs.setSelectedComponent(calculators));
        show(room);
    }

    /** The log, for keys that write into it. */
    public LogPage log() {
        return log;
    }

    /** What is being written and not yet saved, in words. */
    public List<String> unsaved() {
        return Stream.concat(header.unsaved().stream(), log.unsaved().stream().map(EntryEditor::heading))
                .toList();
    }

    /** The page that is in front. */
    public Component shown() {
        return tabs.getSelectedComponent();
    }

    /** Brings the log to the front. */
    public void showLog() {
        tabs.setSelectedComponent(log);
    }

    /**
     * Makes the keys work anywhere in the window that bring a page to the front together with the keyboard.
     *
     * @param before brings the build to the front
     */
    public void keys(JComponent root, Runnable before) {
        for (int i = 0; i < tabs.getTabCount(); i++) {
            int page = i;
            Buttons.key(root, PageTabs.key(page), () -> {
                before.run();
                tabs.setSelectedIndex(page);
                shown().transferFocus();
            });
        }
    }

    private void show(Workroom room) {
        nothing.teach(room.journal().builds().isEmpty());
        cards.show(this, room.build().isPresent() ? SHOWN : NONE);
    }
}
