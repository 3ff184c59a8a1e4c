package planewright.app.ui.common;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JTable;
import planewright.app.journal.BuildRecord;

/**
 * The cells of a page's tables that are being typed in. They stay open while the build of their rows is shown; once another one
 * is, what was typed goes to the build that it was typed for.
 */
public final class OpenCells {
    private final Workroom room;
    private final List<JTable> tables = new ArrayList<>();
    private Optional<String> build = Optional.empty();

    public OpenCells(Workroom room) {
        this.room = room;
    }

    /** A table of the page. */
    public void add(JTable table) {
        tables.add(table);
    }

    /** Whether the rows of the build that is shown may be filled in: not while one of their cells is open. */
    public boolean giveWay() {
        var shown = room.build().map(BuildRecord::id);
        if (!shown.equals(build)) {
            var left = build;
            build = shown;
            end(left);
        }
        return tables.stream().noneMatch(JTable::isEditing);
    }

    /** Ends typing; false where a cell holds what cannot be understood, and stays open. */
    public boolean stop() {
        return tables.stream()
                .allMatch(table -> !table.isEditing() || table.getCellEditor().stopCellEditing());
    }

    /** Ends typing for good: what cannot be taken is dropped, and that is said. */
    public void end() {
        end("");
    }

    /** As {@link #end()}, for rows of a build: where it is gone nothing is taken. */
    public void end(Optional<String> of) {
        end(of.flatMap(room.journal()::build).isPresent() ? "" : Texts.CELL_BUILD_GONE.text());
    }

    private void end(String against) {
        tables.stream().filter(JTable::isEditing).map(JTable::getCellEditor).forEach(editor -> {
            if (editor instanceof CheckedCell cell) {
                cell.end(against);
            } else if (!against.isEmpty() || !editor.stopCellEditing()) {
                editor.cancelCellEditing();
            }
        });
    }
}
