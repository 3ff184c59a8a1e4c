package planewright.app.ui.exchange;

import java.time.format.DateTimeFormatter;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.app.exchange.Column;
import planewright.app.exchange.CsvForm;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;

/** How a table is written: what stands between cells, how dates look, and which column is what. */
final class CsvOptions extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JComboBox<Separator> separator = new JComboBox<>(Separator.values());
    private final JTextField dates = new JTextField();
    private final JCheckBox skipBad = new JCheckBox(Texts.BRING_SKIP_BAD.text());
    private final JPanel mapping =
            new JPanel(new MigLayout("insets 0, gap 6, fillx, wrap 4", "[][grow,fill,sg box]16[][grow,fill,sg box]"));
    private final transient Map<Column, JComboBox<String>> choices = new EnumMap<>(Column.class);
    private final transient Runnable edited;
    private transient List<String> headers = List.of();

    private enum Separator {
        COMMA(','),
        SEMICOLON(';'),
        TAB('\t');

        private final char sign;

        Separator(char sign) {
            this.sign = sign;
        }
    }

    /**
     * @param edited runs at every change
     */
    CsvOptions(Runnable edited) {
        super(new Stack(8));
        this.edited = edited;
        setOpaque(false);
        mapping.setOpaque(false);
        skipBad.setOpaque(false);
        skipBad.setName("bring-skip-bad");
        var form = new JPanel(new MigLayout("insets 0, gap 6, fillx", "[][130!]16[][grow,fill]"));
        form.setOpaque(false);
        separator.setRenderer(Words.choice(each -> word((Separator) each)));
        Words.labelled(form, Texts.BRING_SEPARATOR.text(), separator, "bring-separator");
        Words.labelled(form, Texts.BRING_DATES.text(), dates, "bring-dates");
        dates.putClientProperty("JTextField.placeholderText", Texts.BRING_DATES_HINT.text());
        separator.addActionListener(event -> edited.run());
        skipBad.addActionListener(event -> edited.run());
        Buttons.onEdit(dates, edited);
        add(form);
        add(mapping);
        add(skipBad);
    }

    private static String word(Separator separator) {
        return switch (separator) {
            case COMMA -> Texts.SEPARATOR_COMMA.text();
            case SEMICOLON -> Texts.SEPARATOR_SEMICOLON.text();
            case TAB -> Texts.SEPARATOR_TAB.text();
        };
    }

    boolean skipsBad() {
        return skipBad.isSelected();
    }

    char separator() {
        return ((Separator) separator.getSelectedItem()).sign;
    }

    /** Shows the columns of a table, each with what it is by its name; what was chosen for the same columns stays. */
    void show(List<String> found) {
        if (found.equals(headers)) {
            return;
        }
        headers = List.copyOf(found);
        choices.clear();
        mapping.removeAll();
        for (var column : Column.values()) {
            var choice = new JComboBox<String>();
            choice.addItem("");
            found.forEach(choice::addItem);
            found.stream().filter(column::isCalled).findFirst().ifPresent(choice::setSelectedItem);
            choice.setRenderer(Words.choice(each -> "".equals(each) ? Texts.BRING_NO_COLUMN.text() : each.toString()));
            choice.addActionListener(event -> edited.run());
            choices.put(column, choice);
            Words.labelled(mapping, Terms.of(column.word()), choice, "column-" + column.word());
        }
        mapping.revalidate();
    }

    /**
     * @throws IllegalArgumentException if dates cannot be written so; the message says how they can
     */
    CsvForm form() {
        var columns = new EnumMap<Column, String>(Column.class);
        choices.forEach((column, choice) -> {
            if (!"".equals(choice.getSelectedItem())) {
                columns.put(column, (String) choice.getSelectedItem());
            }
        });
        return new CsvForm(columns, separator(), pattern());
    }

    private Optional<DateTimeFormatter> pattern() {
        var typed = dates.getText().strip();
        try {
            return typed.isEmpty() ? Optional.empty() : Optional.of(CsvForm.days(typed));
        } catch (IllegalArgumentException wrong) {
            throw new IllegalArgumentException(Texts.BRING_DATES_WRONG.text(typed), wrong);
        }
    }
}
