package planewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.store.JsonFiles;

/** {@code across}: values of all builds, and a line through them, for people, as JSON, CSV and PDF. */
class AcrossCommandTest {
    @TempDir
    private Path folder;

    private CommandLineBench bench;

    /** Four builds of 100 g a metre and one that is off. */
    @BeforeEach
    void journal() throws Exception {
        bench = new CommandLineBench(folder);
        String[] names = {"Able", "Baker", "Charlie", "Dog", "Easy"};
        int[] spans = {1000, 1500, 2000, 2500, 3000};
        int[] masses = {100, 150, 200, 250, 900};
        for (int i = 0; i < names.length; i++) {
            assertThat(bench.run("new", names[i]).code()).isZero();
            assertThat(bench.run(
                                    "add",
                                    "--build",
                                    names[i],
                                    "half wing " + masses[i] + " g",
                                    "reach " + spans[i] + " mm")
                            .code())
                    .isZero();
        }
    }

    @Test
    void theNextBuildIsToldFromThoseThatCount() throws Exception {
        var said = bench.run("across", "half wing", "--against", "reach", "--leave-out", "Easy", "--at", "1.8 m");
        assertThat(said.err()).isEmpty();
        assertThat(said.out())
                .contains("HALF WING", "REACH", "COUNTS")
                .containsPattern("Easy +2025-03-14 +900 g +measurement +3000 mm +no")
                .contains("By 4 builds: half wing (g) = ")
                .contains("At 1800 mm expect 180 g, between 180 g and 180 g.");
        var line = JsonFiles.parse(bench.run(
                                "across",
                                "half wing",
                                "--against",
                                "reach",
                                "--leave-out",
                                "Easy",
                                "--at",
                                "3.5 m",
                                "--json")
                        .out())
                .path("line");
        assertThat(line.path("b").doubleValue()).isCloseTo(0.1, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(line.at("/next/value").doubleValue()).isCloseTo(350, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(line.at("/next/among").booleanValue()).isFalse();
    }

    @Test
    void unitsAreChosenAndTheTableGoesOut() throws Exception {
        assertThat(bench.run("across", "half wing", "--unit", "kg").out()).contains("0.1 kg", "0.9 kg");
        var csv = bench.run("across", "half wing", "--against", "reach", "--csv", "-")
                .out();
        assertThat(csv).contains("Able,100,g,,100,2025-03-14T20:15,measurement,", ",1000,mm,,1000,");
        var pdf = folder.resolve("wings.pdf");
        assertThat(bench.run("across", "half wing", "--against", "reach", "--print", pdf.toString())
                        .code())
                .isZero();
        assertThat(Files.size(pdf)).isGreaterThan(1000);
        assertThat(bench.run("across").out())
                .containsPattern("half wing \\(g\\) +5")
                .containsPattern("entries +7");
    }

    @Test
    void whatIsWrongIsNamedWithWhatIsAccepted() {
        assertThat(bench.run("across", "tail plane").err())
                .startsWith("'tail plane' is no value of any build; accepted: days at work, entries, half wing (g)");
        assertThat(bench.run("across", "e").err()).contains("is more than one thing; accepted: entries, reach (mm)");
        assertThat(bench.run("across", "half wing", "--at", "3").code()).isEqualTo(2);
        assertThat(bench.run("across", "half wing", "--unit", "mm").err())
                .startsWith("--unit is 'mm'; accepted: kg, g");
        assertThat(bench.run("across", "half wing", "--against", "reach", "--at", "long")
                        .err())
                .startsWith("--at: ");
        assertThat(bench.run("across", "half wing", "--against", "reach", "--leave-out", "Fox")
                        .err())
                .contains("'Fox'");
        assertThat(bench.run("across", "half wing", "--against", "entries").out())
                .contains("No line: all builds that count have 1 across");
    }
}
