package planewright.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.app.print.Paper;
import planewright.app.print.SheetPdf;
import planewright.app.print.Sheets;
import planewright.app.store.JsonFiles;

@Command(name = "print", description = "Print a build's log, or one entry, as PDF.")
final class PrintCommand implements Callable<Integer> {
    private final Desk desk;

    @Mixin
    private JournalOption common;

    @Parameters(index = "0", paramLabel = "BUILD")
    private String build;

    @Parameters(index = "1", paramLabel = "ENTRY", arity = "0..1", description = "Its id, or the end of it.")
    private Optional<String> entry = Optional.empty();

    @Option(names = "--to", required = true, paramLabel = "FILE.pdf")
    private Path to;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            description = "${COMPLETION-CANDIDATES}; ${DEFAULT-VALUE} where not said.")
    private Paper paper = Paper.A4;

    PrintCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws IOException {
        try (var program = desk.open(common.journal())) {
            var printed = Desk.build(program, build);
            var sheet = entry.isPresent()
                    ? Sheets.entry(printed, Desk.entry(program, printed, entry.get()), program.pictures())
                    : Sheets.log(printed, program.journal().log(printed.id()), program.pictures());
            SheetPdf.write(sheet, paper, to);
            if (common.json()) {
                desk.json(JsonFiles.object().put("file", to.toString()));
            } else {
                desk.out().println("Printed to " + to);
            }
        }
        return 0;
    }
}
