package planewright.app.ui.pictures;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;
import planewright.app.journal.PictureRecord;
import planewright.app.ui.common.Choosing;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Workroom;

/** Any number of pictures under headings of their days. Only what is seen is drawn, and only that is read. */
final class PictureGrid extends JComponent implements Scrollable, Choosing {
    private static final long serialVersionUID = 1L;

    private final transient ThumbnailsInView thumbnails;
    private final transient GridCell cells = new GridCell(this);
    private final transient Chosen chosen = new Chosen(this::chosenChanged);
    private transient List<LoggedPicture> pictures = List.of();
    private transient DayRows rows = new DayRows(List.of(), 1, new DayRows.Sizes(1, 1, 1));
    private int laidOutWidth = -1;
    private transient Runnable onChosen = () -> {};

    PictureGrid(Workroom room) {
        thumbnails = new ThumbnailsInView(room, this::arrived);
        setName("picture-grid");
        setOpaque(true);
        setFocusable(true);
        setToolTipText("");
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
    }

    JScrollPane scrolled() {
        var scroll = new JScrollPane(this);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }

    /** Hears when other pictures are chosen. */
    void onChosen(Runnable listener) {
        onChosen = listener;
    }

    void show(List<LoggedPicture> now) {
        var before = chosen.keys(pictures);
        pictures = List.copyOf(now);
        chosen.restore(before, pictures);
        layOutRows();
        revalidate();
        repaint();
        chosenChanged();
    }

    List<LoggedPicture> pictures() {
        return pictures;
    }

    Chosen chosen() {
        return chosen;
    }

    /** In the order in which they are shown. */
    List<LoggedPicture> chosenPictures() {
        return chosen.places().mapToObj(pictures::get).toList();
    }

    DayRows rows() {
        if (laidOutWidth != getWidth()) {
            layOutRows();
        }
        return rows;
    }

    /** Whether all that is seen is drawn as far as it can be; for tests. */
    boolean isDrawn() {
        return thumbnails.isIdle()
                && visible()
                        .mapToObj(place -> thumbnails.view(pictures.get(place).picture()))
                        .allMatch(Optional::isPresent);
    }

    /** Brings the one that was chosen last into view. */
    void reveal() {
        if (chosen.lead() >= 0) {
            scrollRectToVisible(rows().cell(chosen.lead()));
        }
    }

    private void chosenChanged() {
        getAccessibleContext()
                .setAccessibleName(Texts.PICTURES_GRID.text(
                        pictures.size(),
                        chosen.lead() < 0 ? "" : pictures.get(chosen.lead()).heading()));
        repaint();
        onChosen.run();
    }

    @Override
    public void chooseAt(Point place) {
        int at = rows().at(place.x, place.y);
        if (at >= 0 && !chosen.has(at)) {
            chosen.only(at);
        }
    }

    @Override
    public Point getPopupLocation(MouseEvent event) {
        if (event != null || chosen.lead() < 0) {
            return null;
        }
        var cell = rows().cell(chosen.lead());
        return new Point(cell.x + cell.width / 2, cell.y + cell.height / 2);
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        int at = rows().at(event.getX(), event.getY());
        if (at < 0) {
            return null;
        }
        var picture = pictures.get(at);
        var reason = thumbnails
                .view(picture.picture())
                .map(ThumbnailsInView.View::reason)
                .orElse("");
        return reason.isEmpty() ? picture.heading() : reason;
    }

    private void layOutRows() {
        laidOutWidth = getWidth();
        rows = new DayRows(
                pictures.stream().map(LoggedPicture::day).toList(), Math.max(1, laidOutWidth), cells.sizes());
    }

    private IntStream visible() {
        var seen = getVisibleRect();
        var span = rows().between(seen.y, seen.y + seen.height);
        return IntStream.range(span[0], span[1]);
    }

    private void arrived(PictureRecord picture) {
        visible()
                .filter(place -> pictures.get(place).picture().hash().equals(picture.hash()))
                .forEach(place -> repaint(rows().cell(place)));
    }

    @Override
    protected void paintComponent(Graphics g) {
        var own = (Graphics2D) g.create();
        own.setColor(getBackground());
        var clip = own.getClipBounds();
        own.fillRect(clip.x, clip.y, clip.width, clip.height);
        var sharp = cells.picture(own.getTransform().getScaleX());
        thumbnails.size(sharp.width, sharp.height);
        rows().daysBetween(clip.y, clip.y + clip.height).forEach(day -> cells.heading(own, day));
        var span = rows().between(clip.y, clip.y + clip.height);
        for (int place = span[0]; place < span[1]; place++) {
            var cell = rows().cell(place);
            if (cell.intersects(clip)) {
                var picture = pictures.get(place);
                cells.paint(
                        own,
                        cell,
                        picture,
                        thumbnails.view(picture.picture()),
                        chosen.has(place),
                        isFocusOwner() && place == chosen.lead());
            }
        }
        own.dispose();
        thumbnails.want(
                visible().mapToObj(place -> pictures.get(place).picture()).toList());
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(cells.sizes().cellWidth() * 2, rows().height() + UIScale.scale(12));
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        if (width != laidOutWidth) {
            layOutRows();
            revalidate();
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(javax.swing.UIManager.getColor("Panel.background"));
        laidOutWidth = -1;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(UIScale.scale(400), UIScale.scale(300));
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return cells.sizes().cellHeight() / 3;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(1, visible.height - cells.sizes().cellHeight() / 2);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.LIST;
                }
            };
        }
        return accessibleContext;
    }
}
