package planewright.app.ui.pictures;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.UIManager;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;

/** Draws one picture of the grid with its caption, and the headings of days. */
final class GridCell {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM);
    private static final int WIDTH = 180;
    private static final int HEIGHT = 135;
    private static final int EDGE = 8;
    private static final int CAPTION_LINES = 2;
    private static final String MORE = "…";

    private final JComponent over;

    GridCell(JComponent over) {
        this.over = over;
    }

    private static int scaled(int pixels) {
        return UIScale.scale(pixels);
    }

    private static Font font(double factor, int style) {
        var font = UIManager.getFont("Label.font");
        return font.deriveFont(style, (float) (font.getSize2D() * factor));
    }

    private FontMetrics captions() {
        return over.getFontMetrics(font(0.9, Font.PLAIN));
    }

    DayRows.Sizes sizes() {
        return new DayRows.Sizes(
                scaled(WIDTH + 2 * EDGE),
                scaled(HEIGHT + 3 * EDGE) + CAPTION_LINES * captions().getHeight(),
                scaled(20) + over.getFontMetrics(font(1.05, Font.BOLD)).getHeight());
    }

    /** How large a picture is at most, in pixels of the screen. */
    Dimension picture(double density) {
        return new Dimension((int) (scaled(WIDTH) * density), (int) (scaled(HEIGHT) * density));
    }

    void heading(Graphics2D g, DayRows.Day day) {
        hint(g);
        g.setFont(font(1.05, Font.BOLD));
        g.setColor(UIManager.getColor("Label.foreground"));
        var words = DAY.format(day.date());
        int base = day.top() + scaled(12) + g.getFontMetrics().getAscent();
        g.drawString(words, day.x() + scaled(EDGE), base);
        int after = day.x() + scaled(EDGE) + g.getFontMetrics().stringWidth(words) + scaled(10);
        int end = day.x() + day.width() - scaled(EDGE);
        g.setColor(Look.colour("line"));
        g.drawLine(after, base - scaled(4), Math.max(after, end), base - scaled(4));
    }

    void paint(
            Graphics2D g,
            Rectangle cell,
            LoggedPicture picture,
            Optional<ThumbnailsInView.View> view,
            boolean chosen,
            boolean lead) {
        hint(g);
        if (chosen) {
            g.setColor(UIManager.getColor("List.selectionBackground"));
            g.fillRoundRect(cell.x + 2, cell.y + 2, cell.width - 4, cell.height - 4, scaled(10), scaled(10));
        }
        if (lead) {
            g.setColor(UIManager.getColor("Label.foreground"));
            g.setStroke(new BasicStroke(1.5f));
            g.drawRoundRect(cell.x + 2, cell.y + 2, cell.width - 5, cell.height - 5, scaled(10), scaled(10));
        }
        var frame = new Rectangle(cell.x + scaled(EDGE), cell.y + scaled(EDGE), scaled(WIDTH), scaled(HEIGHT));
        var ink = UIManager.getColor(chosen ? "List.selectionForeground" : "Label.foreground");
        view.ifPresentOrElse(
                there -> there.image()
                        .ifPresentOrElse(
                                image -> image(g, image, frame), () -> broken(g, frame, there.reason(), ink, chosen)),
                () -> frame(g, frame));
        g.setFont(captions().getFont());
        g.setColor(picture.caption().isEmpty() && !chosen ? Look.colour("quiet") : ink);
        lines(g, picture.words(), frame.x, frame.y + frame.height + scaled(EDGE) / 2, frame.width, CAPTION_LINES);
    }

    private static void frame(Graphics2D g, Rectangle frame) {
        g.setColor(Look.colour("card"));
        g.fillRect(frame.x, frame.y, frame.width, frame.height);
        g.setColor(Look.colour("line"));
        g.drawRect(frame.x, frame.y, frame.width - 1, frame.height - 1);
    }

    /** A pixel of the image on one of the screen. */
    private static void image(Graphics2D g, BufferedImage image, Rectangle frame) {
        var before = g.getTransform();
        double density = before.getScaleX();
        double width = image.getWidth() / density;
        double height = image.getHeight() / density;
        g.translate(frame.x + (frame.width - width) / 2, frame.y + frame.height - height);
        g.drawImage(image, AffineTransform.getScaleInstance(1 / density, 1 / density), null);
        g.setTransform(before);
    }

    private static void broken(Graphics2D g, Rectangle frame, String reason, Color ink, boolean chosen) {
        frame(g, frame);
        g.setColor(Look.colour("stop"));
        g.setFont(font(0.95, Font.BOLD));
        int top = frame.y + scaled(6);
        g.drawString(
                Texts.PICTURE_BROKEN.text(),
                frame.x + scaled(6),
                top + g.getFontMetrics().getAscent());
        top += g.getFontMetrics().getHeight();
        g.setFont(font(0.8, Font.PLAIN));
        g.setColor(chosen ? UIManager.getColor("Label.foreground") : ink);
        int room =
                (frame.y + frame.height - top - scaled(4)) / g.getFontMetrics().getHeight();
        lines(g, reason, frame.x + scaled(6), top, frame.width - scaled(12), room);
    }

    /** Words in so many lines; what has no room is cut off with a sign of it. */
    private static void lines(Graphics2D g, String words, int x, int top, int width, int lines) {
        var metrics = g.getFontMetrics();
        var rest = words.strip();
        int base = top + metrics.getAscent();
        for (int line = 1; line <= lines && !rest.isEmpty(); line++) {
            int end = fitting(metrics, rest, width);
            if (end < rest.length() && line == lines) {
                int cut = fitting(metrics, rest, width - metrics.stringWidth(MORE));
                g.drawString(rest.substring(0, cut).stripTrailing() + MORE, x, base);
                return;
            }
            int space = rest.lastIndexOf(' ', Math.min(end, rest.length() - 1));
            int stop = end < rest.length() && space > 0 ? space : end;
            g.drawString(rest.substring(0, stop), x, base);
            rest = rest.substring(stop).stripLeading();
            base += metrics.getHeight();
        }
    }

    /** How many letters have room, at least one. */
    private static int fitting(FontMetrics metrics, String words, int width) {
        if (metrics.stringWidth(words) <= width) {
            return words.length();
        }
        int fits = 1;
        int tooMany = words.length();
        while (tooMany - fits > 1) {
            int middle = (fits + tooMany) / 2;
            if (metrics.stringWidth(words.substring(0, middle)) <= width) {
                fits = middle;
            } else {
                tooMany = middle;
            }
        }
        return fits;
    }

    private static void hint(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        if (java.awt.Toolkit.getDefaultToolkit().getDesktopProperty("awt.font.desktophints")
                instanceof java.util.Map<?, ?> hints) {
            g.addRenderingHints(hints);
        }
    }
}
