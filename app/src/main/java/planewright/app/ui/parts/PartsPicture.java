package planewright.app.ui.parts;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import planewright.app.figure.FigureColours;
import planewright.app.figure.Labels;
import planewright.app.ui.common.Texts;
import planewright.app.ui.planform.Ground;
import planewright.app.ui.planform.Sight;

/** Paints parts as discs whose areas go with their masses, where they balance, and those that have no place yet. */
final class PartsPicture {
    private static final double LARGEST = 20;
    /** Smaller ones could not be taken hold of. */
    private static final double SMALLEST = 4.5;

    private static final int NAMED = 40;
    private static final double CROSS = 9;
    private static final double LEAST_ELLIPSE = 3;
    private static final int CLEAR = 110;
    private static final BasicStroke FINE = new BasicStroke(1.3f);
    private static final BasicStroke STRONG = new BasicStroke(2.4f);
    private static final BasicStroke WIDE = new BasicStroke(5, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);

    private final Graphics2D g;
    private final Sight sight;
    private final Ground ground;
    private final FigureColours colours;

    PartsPicture(Graphics2D g, Sight sight, Ground ground, FigureColours colours) {
        this.g = g;
        this.sight = sight;
        this.ground = ground;
        this.colours = colours;
    }

    /** Of a disc, px. */
    static double radius(DrawnPart part, double heaviest) {
        return heaviest > 0 ? Math.max(SMALLEST, LARGEST * Math.sqrt(part.grams() / heaviest)) : SMALLEST;
    }

    static double heaviest(List<DrawnPart> parts) {
        return parts.stream().mapToDouble(DrawnPart::grams).max().orElse(0);
    }

    /** Where it should balance. */
    void range(Range range) {
        g.setStroke(WIDE);
        g.setColor(colours.second());
        g.draw(new Line2D.Double(ground.at(0, range.from()), ground.at(0, range.to())));
    }

    /**
     * The parts that have a place, the heaviest lowest.
     *
     * @param chosen the row of the one that is chosen
     */
    void parts(List<DrawnPart> parts, int chosen, boolean focused) {
        double heaviest = heaviest(parts);
        parts.stream()
                .filter(DrawnPart::isPlaced)
                .sorted(Comparator.comparingDouble(DrawnPart::grams).reversed())
                .forEach(part -> disc(part, radius(part, heaviest), part.row() == chosen, focused));
    }

    private void disc(DrawnPart part, double radius, boolean chosen, boolean focused) {
        var at = ground.at(part.place(), sight);
        var disc = new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius);
        var colour = chosen ? colours.second() : colours.accent();
        g.setStroke(chosen ? STRONG : FINE);
        g.setColor(part.mass().isPresent() ? colours.faint(colour, CLEAR) : colours.paper());
        g.fill(disc);
        g.setColor(chosen && focused ? colours.ink() : colour);
        g.draw(disc);
    }

    /** Names beside discs, none over another disc; of very many the heaviest and the chosen one. */
    void names(List<DrawnPart> parts, int chosen, Rectangle2D area) {
        var labels = new Labels(g, colours, 1, area);
        double heaviest = heaviest(parts);
        var placed = parts.stream()
                .filter(DrawnPart::isPlaced)
                .sorted(Comparator.comparing((DrawnPart part) -> part.row() == chosen)
                        .thenComparingDouble(DrawnPart::grams))
                .toList();
        for (int i = 0; i < placed.size(); i++) {
            var part = placed.get(i);
            labels.add(
                    ground.at(part.place(), sight),
                    i >= placed.size() - NAMED ? part.part().name() : "",
                    colours.ink(),
                    2 * radius(part, heaviest));
        }
        labels.paint();
    }

    /** A cross with the ellipse of its standard uncertainty. */
    void balance(Balance balance) {
        var across = balance.across(sight);
        var at = ground.at(across.station(), balance.x().station());
        double wide = Math.max(LEAST_ELLIPSE, across.spread() * ground.scale());
        double high = Math.max(LEAST_ELLIPSE, balance.x().spread() * ground.scale());
        var ellipse = new Ellipse2D.Double(at.getX() - wide, at.getY() - high, 2 * wide, 2 * high);
        g.setStroke(FINE);
        g.setColor(colours.faint(colours.ink(), CLEAR));
        g.fill(ellipse);
        g.setColor(colours.ink());
        g.draw(ellipse);
        cross(at);
    }

    private void cross(Point2D at) {
        g.draw(new Line2D.Double(at.getX() - CROSS, at.getY(), at.getX() + CROSS, at.getY()));
        g.draw(new Line2D.Double(at.getX(), at.getY() - CROSS, at.getX(), at.getY() + CROSS));
    }

    void tray(Tray tray, int chosen, int width, int height) {
        if (tray.slips().isEmpty()) {
            return;
        }
        g.setFont(colours.font());
        var letters = g.getFontMetrics();
        g.setColor(colours.paper());
        g.fillRect(0, tray.top(), width, height - tray.top());
        g.setColor(colours.quiet());
        g.setStroke(FINE);
        g.drawLine(0, tray.top(), width, tray.top());
        g.drawString(
                Texts.PARTS_TRAY.text() + (tray.more() > 0 ? " · +" + tray.more() : ""),
                6,
                tray.top() + letters.getAscent() + 1);
        for (var slip : tray.slips()) {
            boolean isChosen = slip.part().row() == chosen;
            g.setColor(colours.faint(isChosen ? colours.second() : colours.accent(), CLEAR / 2));
            g.fill(slip.box());
            g.setColor(isChosen ? colours.second() : colours.accent());
            g.draw(slip.box());
            g.setColor(colours.ink());
            g.drawString(
                    slip.part().part().name(),
                    slip.box().x + 8,
                    slip.box().y + (slip.box().height + letters.getAscent() - letters.getDescent()) / 2);
        }
    }
}
