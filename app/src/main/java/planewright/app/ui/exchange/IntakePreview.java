package planewright.app.ui.exchange;

import java.awt.Dimension;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.function.Function;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.DefaultTableModel;
import planewright.app.exchange.Intake;
import planewright.app.ui.common.LeftOutList;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Tables;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;

/** What would be written, entry by entry, and what would not and why. */
final class IntakePreview extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int MOST_ROWS = 12;
    private static final int MOST_THINGS = 6;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM);

    /**
     * @param buildName what a build's id stands for
     */
    IntakePreview(Intake intake, Function<String, String> buildName) {
        super(new Stack(8));
        setOpaque(false);
        if (intake.rows().isEmpty()) {
            add(Words.of(Texts.PREVIEW_NOTHING.text()));
        } else {
            add(Look.heading(Texts.PREVIEW.text(), 1));
            add(table(intake.rows(), buildName));
        }
        LeftOutList.addTo(this, Texts.PREVIEW_LEFT_OUT, intake.leftOut());
        LeftOutList.addTo(this, Texts.PREVIEW_KNOWN, intake.known());
    }

    private static JScrollPane table(List<Intake.Row> rows, Function<String, String> buildName) {
        var model = new DefaultTableModel(0, 0) {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isCellEditable(int row, int column) {
                return false;
            }
        };
        model.setColumnIdentifiers(new Object[] {
            Texts.PREVIEW_DAY.text(), Texts.BUILD.text(), Texts.PREVIEW_ENTRY.text(), Texts.PREVIEW_THINGS.text()
        });
        rows.forEach(row -> model.addRow(new Object[] {
            DAY.format(row.entry().at()),
            buildName.apply(row.entry().build()),
            row.joins()
                    .map(entry -> entry.title().isEmpty() ? Texts.PREVIEW_JOINS.text() : entry.title())
                    .orElse(Texts.PREVIEW_NEW.text()),
            things(row.things())
        }));
        var table = new JTable(model);
        table.setName("preview");
        table.getAccessibleContext().setAccessibleName(Texts.PREVIEW.text());
        table.getTableHeader().setReorderingAllowed(false);
        Tables.fit(table);
        var scroll = new JScrollPane(table);
        int height = table.getRowHeight() * Math.min(MOST_ROWS, rows.size())
                + table.getTableHeader().getPreferredSize().height;
        scroll.setPreferredSize(new Dimension(0, height + 4));
        return scroll;
    }

    private static String things(List<String> things) {
        var shown = String.join(", ", things.subList(0, Math.min(MOST_THINGS, things.size())));
        return things.size() == 1
                ? shown
                : "(" + things.size() + ") " + shown + (things.size() > MOST_THINGS ? ", …" : "");
    }
}
