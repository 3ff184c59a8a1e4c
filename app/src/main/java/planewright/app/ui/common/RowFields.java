package planewright.app.ui.common;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Rows of text fields under a heading, to which rows are added and from which they are taken. */
public final class RowFields extends JPanel {
    private static final long serialVersionUID = 1L;

    private final String name;
    private final transient List<Column> columns;
    private final transient Runnable edited;
    private final JPanel fields;
    private final transient List<JLabel> labels;
    private final transient List<Row> rows = new ArrayList<>();

    /**
     * A column.
     *
     * @param name the last word of its problems' paths
     * @param label what belongs there
     * @param wide has a line of its own in each row, above the others
     */
    public record Column(String name, String label, boolean wide) {
        public Column(String name, String label) {
            this(name, label, false);
        }

        private String place() {
            return wide ? "span, growx, wmin 40" : "wmin 40";
        }
    }

    /** A row: the id of what it stands for, empty for a new one, and its fields. */
    public record Row(String id, List<JTextField> fields, JButton remove) {
        /** What stands in a column. */
        public String text(int column) {
            return fields.get(column).getText();
        }

        private Row standingFor(String record) {
            return new Row(record, fields, remove);
        }

        private boolean isNew() {
            return id.isEmpty()
                    && !fields.stream().allMatch(field -> field.getText().isBlank());
        }
    }

    /**
     * @param name the first word of its problems' paths, and of its components' names
     * @param edited runs at every change
     */
    public RowFields(String name, String heading, List<Column> columns, Runnable edited) {
        super(new MigLayout("insets 0, gap 4, fillx", "[grow,fill]", "[][]"));
        this.name = name;
        this.columns = columns;
        this.edited = edited;
        labels = columns.stream().map(RowFields::label).toList();
        setOpaque(false);
        int narrow = (int) columns.stream().filter(column -> !column.wide()).count();
        fields = new JPanel(new MigLayout(
                "insets 0, gap 4, fillx, wrap " + (narrow + 1), "[grow,fill,sg field]".repeat(narrow) + "[]"));
        fields.setOpaque(false);
        var head = new JPanel(new MigLayout("insets 0", "[]12[]"));
        head.setOpaque(false);
        head.add(Look.heading(heading, 0.95));
        head.add(Buttons.with(Icons.ADD, Buttons.plain("add-" + name, Texts.ADD_ROW.text(), this::addEmpty)));
        add(head, "wrap");
        add(fields, "wmin 0");
    }

    private static JLabel label(Column column) {
        var label = Look.sized(Look.quiet(column.label()), 0.88, Font.PLAIN);
        label.setToolTipText(column.label());
        return label;
    }

    /** Adds a row without words and puts the keyboard there. */
    private void addEmpty() {
        add("", columns.stream().map(column -> "").toList());
        rows.get(rows.size() - 1).fields().get(0).requestFocusInWindow();
        edited.run();
    }

    /** Has a row to write in: an empty one where there is none. */
    public void offer() {
        if (rows.isEmpty()) {
            add("", columns.stream().map(column -> "").toList());
        }
    }

    /** Adds a row; Enter in it begins the next. */
    public void add(String id, List<String> texts) {
        if (rows.isEmpty()) {
            for (int i = 0; i < columns.size(); i++) {
                fields.add(labels.get(i), columns.get(i).place());
            }
            fields.add(new JLabel());
        }
        var made = new ArrayList<JTextField>();
        for (int i = 0; i < columns.size(); i++) {
            var field = Words.named(
                    new JTextField(texts.get(i)),
                    columns.get(i).label(),
                    name + "-" + columns.get(i).name() + "-" + rows.size());
            field.putClientProperty("JTextField.placeholderText", null);
            Buttons.onEdit(field, edited);
            field.addActionListener(event -> addEmpty());
            made.add(field);
        }
        var remove = Buttons.plain("remove-" + name + "-" + rows.size(), Texts.REMOVE.text(), () -> {});
        remove.addActionListener(event -> remove(remove));
        rows.add(new Row(id, List.copyOf(made), remove));
        for (int i = 0; i < columns.size(); i++) {
            fields.add(made.get(i), columns.get(i).place());
        }
        fields.add(remove);
        revalidate();
    }

    /** From now on, rows that were written since stand for those of these records that no row stands for, in their order. */
    public <T> void stand(List<T> records, Function<T, String> id) {
        var known = rows.stream().map(Row::id).toList();
        var made =
                records.stream().map(id).filter(each -> !known.contains(each)).iterator();
        rows.replaceAll(row -> row.isNew() && made.hasNext() ? row.standingFor(made.next()) : row);
    }

    /** The rows, from top to bottom. */
    public List<Row> rows() {
        return List.copyOf(rows);
    }

    /** Marks fields as wrong by the paths of their problems, and all others as right. */
    public void mark(Map<String, String> problems) {
        for (int i = 0; i < rows.size(); i++) {
            for (int j = 0; j < columns.size(); j++) {
                var path = name + "[" + i + "]." + columns.get(j).name();
                Words.mark(rows.get(i).fields().get(j), problems.getOrDefault(path, ""));
            }
        }
    }

    private void remove(JButton pressed) {
        rows.stream().filter(row -> row.remove() == pressed).findFirst().ifPresent(row -> {
            rows.remove(row);
            row.fields().forEach(fields::remove);
        });
        fields.remove(pressed);
        if (rows.isEmpty()) {
            fields.removeAll();
        }
        revalidate();
        repaint();
        edited.run();
    }
}
