package planewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Settings;
import planewright.app.calc.TestPlugins;

/** A calculator that takes an outline finds it in the journal by its template's name, with a build or without one. */
class NamedOutlineTest {
    private static final String WIDTH = """
            package sheet;
            import javax.measure.quantity.Length;
            import org.pf4j.Extension;
            import planewright.api.calculator.*;
            import planewright.api.figure.Outline;
            import planewright.api.quantity.*;
            @Extension
            @About(id = "sheet.width", version = "1", title = "Sheet", question = "How wide a sheet?")
            public final class Width implements Calculator<Width.Inputs, Width.Results> {
                public record Inputs(@Input(label = "Shape", from = @From(From.Place.TEMPLATE)) Outline shape) {}
                public record Results(@Result(label = "Sheet", unit = "mm") Measured<Length> width) {}
                @Override
                public Results compute(Inputs inputs, Run run) {
                    return new Results(Measured.of(inputs.shape().width(), Units.MILLIMETRE));
                }
            }
            """;

    @TempDir
    private Path folder;

    private CommandLineBench bench;
    private List<Path> plugins;

    @BeforeEach
    void fin() throws Exception {
        bench = new CommandLineBench(folder);
        plugins = List.of(TestPlugins.zip(
                folder.resolve("sheet/sheet.zip"),
                "plugin.id=sheet\nplugin.version=1.0.0\n",
                Map.of("sheet.Width", WIDTH)));
        var svg = bench.file(
                "fin.svg",
                "<svg xmlns='http://www.w3.org/2000/svg' width='80mm' height='40mm' viewBox='0 0 80 40'>"
                        + "<path d='M0 0 L80 0 L80 40 Z'/></svg>");
        assertThat(bench.run("template", "new", "Fin", "--outline", svg.toString())
                        .code())
                .isZero();
    }

    @Test
    void withoutABuild() {
        var said = run(Optional.of(bench.journal()), "calc", "sheet.width", "--shape", "fin");
        assertThat(said.err()).isEmpty();
        assertThat(said.out()).contains("Sheet  80 mm");
    }

    @Test
    void inAJournalThatIsNamed() {
        var said = run(
                Optional.empty(),
                "calc",
                "sheet.width",
                "--shape",
                "Fin",
                "--journal",
                bench.journal().toString());
        assertThat(said.out()).contains("Sheet  80 mm");
    }

    @Test
    void oneThatIsNotThereIsRefusedWithThoseThatAre() {
        var said = run(Optional.of(bench.journal()), "calc", "sheet.width", "--shape", "rudder");
        assertThat(said.code()).isEqualTo(2);
        assertThat(said.err()).contains("rudder", "'Fin'");
    }

    @Test
    void withoutAJournalOneIsAskedFor() {
        var said = run(Optional.empty(), "calc", "sheet.width", "--shape", "fin");
        assertThat(said.code()).isEqualTo(2);
        assertThat(said.err()).contains("--journal");
    }

    @Test
    void aFileNeedsNoJournal() {
        var said = run(
                Optional.empty(),
                "calc",
                "sheet.width",
                "--shape",
                bench.path("fin.svg").toString());
        assertThat(said.out()).contains("Sheet  80 mm");
    }

    private CommandLineBench.Said run(Optional<Path> journal, String... words) {
        return CommandLineBench.run(new Settings(bench.settings().user(), plugins, journal), words);
    }
}
