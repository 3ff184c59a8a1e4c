package planewright.app.ui.planform;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import planewright.api.journal.Planform;
import planewright.api.quantity.Measured;
import planewright.api.quantity.Units;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Wrapping;
import planewright.shared.lattice.BalanceBand;
import planewright.shared.planform.SurfaceGeometry;
import planewright.shared.planform.SurfaceGeometry.View;

/** The figures of a shape, which follow every change of it. */
final class PlanformFigures extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final double TENTHS = 10;
    private static final String UNKNOWN = "–";

    private final transient Lengths lengths;
    private final JButton units;

    /**
     * @param units offers those in which they are shown
     */
    PlanformFigures(Lengths lengths, JButton units) {
        super(new Wrapping(18, 6));
        this.units = units;
        this.lengths = lengths;
        setName("planform-figures");
        setOpaque(false);
    }

    /**
     * Shows them.
     *
     * @param band where it should balance, as it was computed last; empty where that is not known
     * @param settled whether it is that of this very shape and no coarse one
     */
    void show(Planform shape, Optional<BalanceBand> band, boolean settled) {
        var figures = new ArrayList<JPanel>();
        wing(shape).ifPresent(wing -> {
            figures.add(figure(Texts.PLANFORM_AREA, lengths.area(wing.area()), true));
            figures.add(figure(Texts.PLANFORM_SPAN, lengths.shown(wing.span()), true));
            figures.add(figure(Texts.PLANFORM_ASPECT, tenths(wing.aspectRatio()), true));
            figures.add(figure(Texts.PLANFORM_MEAN_CHORD, lengths.shown(wing.meanChord()), true));
            figures.add(figure(
                    Texts.PLANFORM_MEAN_CHORD_EDGE,
                    lengths.shown(wing.leadingEdge().x()),
                    true));
            figures.add(figure(
                    Texts.PLANFORM_CENTROID, lengths.shown(wing.centroid().x()), true));
        });
        figures.add(figure(
                Texts.PLANFORM_NEUTRAL,
                band.map(known -> lengths.shown(known.neutral(), known.doubt())).orElse(UNKNOWN),
                settled));
        var range = figure(
                Texts.PLANFORM_RANGE,
                band.map(known -> lengths.shown(known.from()) + " – " + lengths.shown(known.to()))
                        .orElse(UNKNOWN),
                settled);
        range.setToolTipText(band.map(BalanceBand::margin)
                .map(margin ->
                        Texts.PLANFORM_RANGE_HINT.text(Lengths.percent(margin.from()), Lengths.percent(margin.to())))
                .orElse(null));
        figures.add(range);
        put(figures);
    }

    private void put(List<JPanel> figures) {
        removeAll();
        figures.forEach(this::add);
        add(units);
        revalidate();
        repaint();
    }

    private static Optional<SurfaceGeometry> wing(Planform shape) {
        try {
            return Optional.of(SurfaceGeometry.of(SurfaceGeometry.wings(shape), View.ABOVE));
        } catch (IllegalArgumentException none) {
            return Optional.empty();
        }
    }

    private static JPanel figure(Texts label, String value, boolean settled) {
        var panel = new JPanel(new MigLayout("insets 0, gap 0, wrap 1"));
        panel.setOpaque(false);
        var number = settled ? new JLabel(value) : Look.quiet(value);
        number.setName(label.name().toLowerCase(java.util.Locale.ROOT));
        number.getAccessibleContext().setAccessibleName(label.text() + ": " + value);
        panel.add(Look.sized(number, 1.1, Font.BOLD));
        panel.add(Look.sized(Look.quiet(label.text()), 0.88, Font.PLAIN));
        return panel;
    }

    private static String tenths(double number) {
        return Amounts.of(Measured.of(Math.rint(number * TENTHS) / TENTHS, Units.NUMBER));
    }
}
