package planewright.app.ui.common;

import java.awt.AWTKeyStroke;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.HashSet;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JLayeredPane;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/**
 * Offers beside a field how its text may go on. Down and Up choose, Enter or Tab takes what is chosen, a click takes too, Escape
 * closes. Nothing is chosen by itself: Enter without a choice means the text as it is typed, and Tab takes the first.
 */
public final class Completion {
    private static final int NONE = -1;

    private final JTextField field;
    private final Source source;
    private final JList<Offer> rows = new JList<>();
    private final JPanel popup = new JPanel(new BorderLayout());
    private List<Offer> offered = List.of();
    private boolean taking;

    /**
     * A way for the text to go on.
     *
     * @param words what is to be seen
     * @param kind what it is, in a word
     * @param text the text of the field once this is taken
     */
    public record Offer(String words, String kind, String text) {}

    /** Knows how a text may go on; answers on the event thread, in no time or later. */
    public interface Source {
        void ask(String text, Consumer<List<Offer>> answer);
    }

    private Completion(JTextField field, Source source) {
        this.field = field;
        this.source = source;
        rows.setName(field.getName() + "-offers");
        rows.getAccessibleContext().setAccessibleName(Texts.COMPLETIONS.text());
        rows.setFocusable(false);
        rows.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        rows.setCellRenderer(new Row());
        rows.addListSelectionListener(event -> tell());
        var mouse = new Mouse();
        rows.addMouseListener(mouse);
        rows.addMouseMotionListener(mouse);
        popup.add(rows);
        Buttons.onEdit(field, this::edited);
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                close();
            }
        });
        field.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                close();
            }

            @Override
            public void componentMoved(ComponentEvent event) {
                close();
            }
        });
        key("DOWN", this::isOpen, () -> move(1));
        key("UP", this::isOpen, () -> move(-1));
        key("TAB", this::isOpen, () -> take(Math.max(0, rows.getSelectedIndex())));
        key("ESCAPE", this::isOpen, this::close);
        key("ENTER", () -> true, this::enter);
    }

    /** From now on the field offers what the source knows. */
    public static void on(JTextField field, Source source) {
        new Completion(field, source);
    }

    private void edited() {
        if (taking || !field.isFocusOwner()) {
            close();
            return;
        }
        var text = field.getText();
        source.ask(text, offers -> {
            if (text.equals(field.getText()) && field.isFocusOwner()) {
                offer(offers);
            }
        });
    }

    private void offer(List<Offer> offers) {
        if (isOpen() && offers.equals(offered)) {
            return;
        }
        close();
        offered = offers;
        var root = SwingUtilities.getRootPane(field);
        if (offers.isEmpty() || root == null) {
            return;
        }
        rows.setListData(offers.toArray(Offer[]::new));
        SwingUtilities.updateComponentTreeUI(popup);
        popup.setBorder(BorderFactory.createLineBorder(Look.colour("line")));
        place(root.getLayeredPane());
        keepTab(true);
        tell();
    }

    /** Above the field where it stands low in the window, else below it. */
    private void place(JLayeredPane pane) {
        var wanted = popup.getPreferredSize();
        var size =
                new Dimension(Math.min(Math.max(wanted.width, field.getWidth() / 3), field.getWidth()), wanted.height);
        var at = SwingUtilities.convertPoint(field, 0, 0, pane);
        int y = at.y > pane.getHeight() / 2 ? at.y - size.height - 2 : at.y + field.getHeight() + 2;
        popup.setBounds(at.x, y, size.width, size.height);
        pane.add(popup, JLayeredPane.POPUP_LAYER);
        popup.validate();
        popup.repaint();
    }

    private boolean isOpen() {
        return popup.getParent() != null;
    }

    private void close() {
        var pane = popup.getParent();
        if (pane != null) {
            pane.remove(popup);
            pane.repaint(popup.getX(), popup.getY(), popup.getWidth(), popup.getHeight());
            rows.clearSelection();
            keepTab(false);
            field.getAccessibleContext().setAccessibleDescription(field.getToolTipText());
        }
    }

    /** Tab belongs to what is offered while it is to be seen, and moves on at all other times. */
    private void keepTab(boolean kept) {
        var moving = new HashSet<>(field.getFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS));
        var tab = AWTKeyStroke.getAWTKeyStroke("TAB");
        if (kept ? moving.remove(tab) : moving.add(tab)) {
            field.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, moving);
        }
    }

    /** Up from the first row, or down from the last, nothing is chosen. */
    private void move(int by) {
        int places = rows.getModel().getSize() + 1;
        int to = Math.floorMod(rows.getSelectedIndex() + 1 + by, places) - 1;
        if (to == NONE) {
            rows.clearSelection();
        } else {
            rows.setSelectedIndex(to);
        }
    }

    private void enter() {
        if (isOpen() && !rows.isSelectionEmpty()) {
            take(rows.getSelectedIndex());
        } else {
            close();
            field.postActionEvent();
        }
    }

    private void take(int row) {
        var text = rows.getModel().getElementAt(row).text();
        taking = true;
        field.setText(text);
        taking = false;
        edited();
    }

    /** A screen reader says what is offered, or what is chosen. */
    private void tell() {
        var chosen = rows.getSelectedValue();
        field.getAccessibleContext()
                .setAccessibleDescription(
                        chosen == null
                                ? Texts.COMPLETIONS_OFFERED.text(rows.getModel().getSize())
                                : chosen.words() + ", " + chosen.kind());
    }

    private void key(String stroke, BooleanSupplier when, Runnable action) {
        field.getInputMap().put(KeyStroke.getKeyStroke(stroke), "completion " + stroke);
        field.getActionMap().put("completion " + stroke, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isEnabled() {
                return when.getAsBoolean();
            }

            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    /** What is under the pointer is chosen, and taken by a press. */
    private final class Mouse extends MouseAdapter {
        @Override
        public void mouseMoved(MouseEvent event) {
            rows.setSelectedIndex(rows.locationToIndex(event.getPoint()));
        }

        @Override
        public void mouseExited(MouseEvent event) {
            rows.clearSelection();
        }

        @Override
        public void mousePressed(MouseEvent event) {
            take(rows.locationToIndex(event.getPoint()));
        }
    }

    /** A name, and at the right what it is. */
    private static final class Row extends JPanel implements ListCellRenderer<Offer> {
        private static final long serialVersionUID = 1L;

        private final JLabel words = new JLabel();
        private final JLabel kind = new JLabel();

        Row() {
            super(new BorderLayout(24, 0));
            setBorder(BorderFactory.createEmptyBorder(3, 8, 3, 8));
            add(words);
            add(kind, BorderLayout.LINE_END);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Offer> list, Offer offer, int index, boolean selected, boolean focused) {
            words.setText(offer.words());
            kind.setText(offer.kind());
            var font = UIManager.getFont("Label.font");
            words.setFont(font);
            kind.setFont(font);
            setBackground(selected ? UIManager.getColor("List.selectionBackground") : Look.colour("card"));
            var ink = UIManager.getColor(selected ? "List.selectionForeground" : "Label.foreground");
            words.setForeground(ink);
            kind.setForeground(selected ? ink : Look.colour("quiet"));
            getAccessibleContext().setAccessibleName(offer.words() + ", " + offer.kind());
            return this;
        }
    }
}
