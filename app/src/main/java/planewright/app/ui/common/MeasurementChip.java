package planewright.app.ui.common;

import java.awt.BorderLayout;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JToolTip;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.Reading;

/**
 * A measurement as a chip: a press shows it among all of the build, a stay of the mouse how it came to be what it is. Where
 * there is little room its name is shortened, never its value.
 */
public final class MeasurementChip extends JButton {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final transient Reading reading;

    public MeasurementChip(Workroom room, Reading reading) {
        this.room = room;
        this.reading = reading;
        setLayout(new BorderLayout(8, 0));
        add(new JLabel(reading.measurement().name()), BorderLayout.CENTER);
        add(new JLabel(value(room, reading)), BorderLayout.EAST);
        getAccessibleContext().setAccessibleName(text(room, reading));
        setName("measurement-" + reading.measurement().id());
        setContentAreaFilled(false);
        setBorder(BorderFactory.createEmptyBorder(3, 10, 3, 10));
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        ToolTipManager.sharedInstance().registerComponent(this);
        addActionListener(event -> room.showMeasurement(
                reading.entry().build(),
                reading.entry().id(),
                reading.measurement().id()));
    }

    /** Its words, in the unit that the builder prefers. */
    public static String text(Workroom room, Reading reading) {
        return reading.measurement().name() + "  " + value(room, reading);
    }

    private static String value(Workroom room, Reading reading) {
        return Amounts.of(room.units().written(reading.measurement().quantity()));
    }

    @Override
    public Dimension getPreferredSize() {
        return getLayout().preferredLayoutSize(this);
    }

    @Override
    public String getToolTipText() {
        var method = reading.measurement().method();
        return reading.measurement().name()
                + (method.isEmpty() ? "" : "  ·  " + method)
                + before().map(earlier -> "  ·  " + earlier).orElse("");
    }

    private Optional<String> before() {
        var log = room.journal().log(reading.entry().build());
        var history = Reading.history(log, reading.measurement());
        return history.stream()
                .takeWhile(each -> !each.isSame(reading))
                .reduce((earlier, later) -> later)
                .map(last -> Texts.MEASURED_BEFORE.text(
                        value(room, last), Times.date(last.entry().at().toLocalDate())));
    }

    @Override
    public JToolTip createToolTip() {
        var tip = new Trend();
        tip.setComponent(this);
        var history = MeasuredHistory.of(room, reading);
        if (history.readings().size() > 1) {
            tip.add(FigureView.of(history), "w 360!, h 190!");
        }
        return tip;
    }

    @Override
    protected void paintComponent(Graphics g) {
        Chip.frame(this, g, isFocusOwner() ? UIManager.getColor("Component.accentColor") : Look.colour("line"));
        super.paintComponent(g);
    }

    /** A tip that holds a chart below its words. */
    private static final class Trend extends JToolTip {
        private static final long serialVersionUID = 1L;

        private final JLabel words = new JLabel();

        Trend() {
            setLayout(new MigLayout("insets 6, gap 4, wrap 1"));
            add(words);
        }

        @Override
        public void setTipText(String text) {
            words.setText(text);
        }

        @Override
        public Dimension getPreferredSize() {
            return getLayout().preferredLayoutSize(this);
        }
    }
}
