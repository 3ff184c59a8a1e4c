package planewright.app.ui.common;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Small helpers for controls. */
public final class Buttons {
    /** The key that saves what is being written. */
    public static final String SAVE = "ctrl ENTER";

    private Buttons() {}

    /** A button with a name for tests and words for people. */
    public static JButton of(String name, String text, Runnable action) {
        var button = new JButton(text);
        button.setName(name);
        button.addActionListener(event -> action.run());
        return button;
    }

    /** Saves what is written in a form; its key does the same from anywhere in it. */
    public static JButton save(String name, JComponent form, Runnable save) {
        bind(form, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, SAVE, save);
        return hint(of(name, Texts.SAVE.text(), save), Texts.SAVE.text(), SAVE);
    }

    /** A button without an edge, for lesser actions. */
    public static JButton plain(String name, String text, Runnable action) {
        var button = of(name, text, action);
        button.putClientProperty("JButton.buttonType", "borderless");
        return button;
    }

    /** A button that leads to a page, and is marked as long as the page is there; who lays pages says so. */
    public static JToggleButton toPage(String name, String text, Runnable action) {
        var button = new JToggleButton(text);
        button.setName(name);
        button.putClientProperty("JButton.buttonType", "borderless");
        button.addActionListener(event -> action.run());
        return button;
    }

    /** The same button with a sign before its words. */
    public static <T extends AbstractButton> T with(Icons sign, T button) {
        button.setIcon(sign);
        return button;
    }

    /** The same button with a sign in place of its words, which those who need them still get. */
    public static <T extends AbstractButton> T asSign(Icons sign, T button) {
        button.getAccessibleContext().setAccessibleName(button.getText());
        if (button.getToolTipText() == null) {
            button.setToolTipText(button.getText());
        }
        button.setText(null);
        return with(sign, button);
    }

    /** Tells on the pointer what a component is for, and which key does the same. */
    public static <T extends JComponent> T hint(T component, String words, String stroke) {
        component.setToolTipText(words + " (" + keyText(stroke) + ")");
        return component;
    }

    /** A key as its keyboard says it. */
    public static String keyText(String stroke) {
        var key = KeyStroke.getKeyStroke(stroke);
        var held = InputEvent.getModifiersExText(key.getModifiers());
        return (held.isEmpty() ? "" : held + "+") + KeyEvent.getKeyText(key.getKeyCode());
    }

    /** Runs an action at every change of a text. */
    public static void onEdit(JTextComponent field, Runnable action) {
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                action.run();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                action.run();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                action.run();
            }
        });
    }

    /** A key that works anywhere in the window. */
    public static void key(JComponent root, String stroke, Runnable action) {
        bind(root, JComponent.WHEN_IN_FOCUSED_WINDOW, stroke, action);
    }

    private static void bind(JComponent root, int where, String stroke, Runnable action) {
        root.getInputMap(where).put(KeyStroke.getKeyStroke(stroke), stroke);
        root.getActionMap().put(stroke, new javax.swing.AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                action.run();
            }
        });
    }
}
