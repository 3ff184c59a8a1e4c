package planewright.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import planewright.app.calc.Described;
import planewright.app.calc.Origin;
import planewright.app.calc.Outcome;
import planewright.app.calc.ResultView;
import planewright.app.pictures.PictureShelf;
import planewright.app.print.CutLines;
import planewright.app.print.Paper;
import planewright.app.print.SheetPdf;
import planewright.app.print.Sheets;

/** Into which files an answer goes. */
final class ResultFiles {
    @Option(names = "--print", paramLabel = "FILE.pdf", description = "Print the answer as well.")
    private Optional<Path> print = Optional.empty();

    @Option(
            names = "--true-size",
            description = "With --print: only the drawings to cut from, at true size, on as many pages as they need.")
    private boolean trueSize;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            description = "With --print: ${COMPLETION-CANDIDATES}; A4 where not said.")
    private Optional<Paper> paper = Optional.empty();

    @Option(
            names = "--svg",
            paramLabel = "FILE.svg",
            description = "Write the lines to cut and to fold along as well, for a machine that cuts; 1 unit is 1 mm.")
    private Optional<Path> svg = Optional.empty();

    boolean wanted() {
        return print.isPresent() || svg.isPresent();
    }

    /** Refuses options that go with another one which is missing. */
    void check() {
        if (print.isEmpty() && (trueSize || paper.isPresent())) {
            throw CommandFailed.words(
                    (trueSize ? "--true-size" : "--paper") + " needs --print FILE.pdf, into which it is printed");
        }
    }

    void write(
            Described described,
            String build,
            Outcome.Answered answered,
            Map<String, Origin> origins,
            Optional<PictureShelf> pictures)
            throws IOException {
        var drawings = ResultView.of(described, answered).drawings();
        if ((trueSize || svg.isPresent()) && drawings.stream().noneMatch(CutLines::in)) {
            throw CommandFailed.words((trueSize ? "--true-size" : "--svg") + ": '" + described.id()
                    + "' draws nothing to cut from; accepted: a calculator that does, or --print alone");
        }
        if (print.isPresent()) {
            var sheet = trueSize
                    ? Sheets.trueSize(described, build, answered)
                    : Sheets.result(described, build, answered, origins, pictures);
            SheetPdf.write(sheet, paper.orElse(Paper.A4), print.get());
        }
        if (svg.isPresent()) {
            CutLines.write(drawings, svg.get());
        }
    }

    /** What was written, in words. */
    List<String> written() {
        return Stream.concat(
                        print.map(file -> "Printed to " + file).stream(),
                        svg.map(file -> "Lines to cut are in " + file).stream())
                .toList();
    }
}
