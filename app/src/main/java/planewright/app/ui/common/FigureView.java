package planewright.app.ui.common;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.List;
import javax.swing.JPanel;
import planewright.api.figure.Chart;
import planewright.api.figure.Drawing;
import planewright.app.figure.ChartPicture;
import planewright.app.figure.DrawingPicture;
import planewright.app.figure.History;
import planewright.app.figure.HistoryPicture;

/** A chart or drawing as large as it is given room. */
public final class FigureView extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int WIDTH = 420;
    private static final int HEIGHT = 200;

    private final transient Painter painter;

    private FigureView(String title, Dimension size, Painter painter) {
        this.painter = painter;
        setOpaque(false);
        setPreferredSize(size);
        setMinimumSize(new Dimension(120, size.height));
        getAccessibleContext().setAccessibleName(title);
        setToolTipText(title);
    }

    /** Has loaded what charts need by the time it returns, so that the first one is shown sooner; from any thread. */
    public static void prepare() {
        var axis = new Chart.Axis("value", "g");
        var day = LocalDate.EPOCH.atStartOfDay();
        var history = new History(
                "value", axis, List.of(new History.Reading(day, 1, 0.1), new History.Reading(day.plusDays(1), 2, 0.1)));
        var bars = new Chart.Bars("value", "", axis, List.of(new Chart.Bar("one", 1, 0.1)));
        var g = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB).createGraphics();
        var area = new Rectangle2D.Double(0, 0, WIDTH, HEIGHT);
        HistoryPicture.paint(history, g, area, Look.figures());
        ChartPicture.paint(bars, g, area, Look.figures());
        g.dispose();
    }

    public static FigureView of(Chart chart) {
        int bars = chart instanceof Chart.Bars some ? some.bars().size() : 6;
        return new FigureView(
                chart.title(),
                new Dimension(WIDTH, 90 + 26 * Math.max(3, bars)),
                (g, area) -> ChartPicture.paint(chart, g, area, Look.figures()));
    }

    public static FigureView of(History history) {
        return new FigureView(
                history.title(),
                new Dimension(WIDTH, HEIGHT),
                (g, area) -> HistoryPicture.paint(history, g, area, Look.figures()));
    }

    public static FigureView of(Drawing drawing) {
        var bounds = DrawingPicture.bounds(drawing).orElse(new Rectangle2D.Double(0, 0, 2, 1));
        double slimness = Math.max(0.35, Math.min(1, bounds.getHeight() / bounds.getWidth()));
        return new FigureView(
                drawing.title(),
                new Dimension(WIDTH, (int) (80 + WIDTH * slimness)),
                (g, area) -> DrawingPicture.paint(drawing, g, area, Look.figures()));
    }

    @Override
    protected void paintComponent(Graphics g) {
        painter.paint((Graphics2D) g, new Rectangle2D.Double(0, 0, getWidth(), getHeight()));
    }

    private interface Painter {
        void paint(Graphics2D g, Rectangle2D area);
    }
}
