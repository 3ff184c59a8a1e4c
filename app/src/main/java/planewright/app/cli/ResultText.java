package planewright.app.cli;

import java.util.ArrayList;
import java.util.List;
import planewright.app.calc.Described;
import planewright.app.calc.ResultView;

/** An answer as text. Charts and drawings are for the window and for paper. */
record ResultText(Desk desk) {
    void write(Described described, String build, ResultView view) {
        var out = desk.out();
        out.println(described.question() + (build.isEmpty() ? "" : "  " + build));
        out.println();
        view.byHeading().forEach((heading, values) -> {
            if (!heading.isEmpty()) {
                out.println();
                out.println(heading);
            }
            desk.table(
                    List.of(false, true),
                    values.stream()
                            .map(value -> List.of(value.label(), value.text()))
                            .toList());
        });
        if (!view.findings().isEmpty()) {
            out.println();
        }
        view.findings().forEach(finding -> out.println(finding.grade().word() + ": " + finding.text()));
        for (var table : view.tables()) {
            if (!table.rows().isEmpty()) {
                out.println();
                out.println(table.title());
                var rows = new ArrayList<List<String>>();
                rows.add(table.headings().stream().map(String::toUpperCase).toList());
                rows.addAll(table.rows());
                desk.table(table.numeric(), rows);
            }
        }
        if (!described.cautions().isEmpty()) {
            out.println();
        }
        for (var caution : described.cautions()) {
            out.println("Caution: " + caution);
        }
    }
}
