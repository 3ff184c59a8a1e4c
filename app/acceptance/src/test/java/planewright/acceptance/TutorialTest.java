package planewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import planewright.app.Program;
import planewright.app.Settings;
import planewright.app.calc.PluginShelf;
import planewright.app.calc.Staleness;
import planewright.app.calc.TestPlugins;
import planewright.app.cli.CommandLineProgram;
import planewright.app.store.UserFolders;
import planewright.shared.quantity.UnitChoice;

/**
 * Follows DEVELOPERS.md: a project is begun, compiled and tested, its plugin is trusted, and its calculator answers, is kept, goes stale
 * and is printed. Maven's part is done by the compiler and the contract kit themselves, for tests fetch nothing.
 */
class TutorialTest {
    private static final Pattern JAVA = Pattern.compile("```java\\n(package .*?)```", Pattern.DOTALL);

    @TempDir
    private Path temp;

    private Path project;

    private record Said(int code, String out, String err) {}

    @BeforeEach
    void begin() {
        project = temp.resolve("wing-shed");
        assertThat(run("plugins", "new", project.toString()).err()).isEmpty();
    }

    private Said run(String... words) {
        var out = new StringWriter();
        var err = new StringWriter();
        var settings =
                new Settings(UserFolders.under(temp.resolve("user")), List.of(), Optional.of(temp.resolve("journal")));
        var clock = Clock.fixed(Instant.parse("2025-03-14T20:15:00Z"), ZoneOffset.UTC);
        int code = new CommandLineProgram(settings, clock, new PrintWriter(out), new PrintWriter(err)).run(words);
        return new Said(code, out.toString(), err.toString());
    }

    private String source() throws IOException {
        return Files.readString(project.resolve("src/main/java/wingshed/Dihedral.java"));
    }

    @Test
    void theTextShowsWhatIsWritten() throws IOException {
        var shown = JAVA.matcher(Files.readString(Workplace.root().resolve("DEVELOPERS.md")));
        assertThat(shown.find()).isTrue();
        assertThat(shown.group(1)).isEqualTo(source());
    }

    @Test
    void itsOwnTestsPass() throws Exception {
        var classes = Files.createDirectories(temp.resolve("classes"));
        int compiled = ToolProvider.getSystemJavaCompiler()
                .run(
                        null,
                        null,
                        null,
                        "-processor",
                        "org.pf4j.processor.ExtensionAnnotationProcessor",
                        "-d",
                        classes.toString(),
                        "-classpath",
                        System.getProperty("java.class.path"),
                        project.resolve("src/main/java/wingshed/Dihedral.java").toString(),
                        project.resolve("src/test/java/wingshed/DihedralTest.java")
                                .toString());
        assertThat(compiled).isZero();
        try (var loader = new URLClassLoader(
                new URL[] {classes.toUri().toURL()}, getClass().getClassLoader())) {
            Thread.currentThread().setContextClassLoader(loader);
            var type = loader.loadClass("wingshed.DihedralTest");
            var maker = type.getDeclaredConstructor();
            maker.setAccessible(true);
            int tests = 0;
            for (var method : type.getDeclaredMethods()) {
                method.setAccessible(true);
                if (method.isAnnotationPresent(Test.class)) {
                    method.invoke(maker.newInstance());
                    tests++;
                }
            }
            var contract = type.getDeclaredMethod("everyCalculatorKeepsTheContract");
            contract.setAccessible(true);
            tests += run((Stream<?>) contract.invoke(maker.newInstance()));
            assertThat(tests).isGreaterThan(8);
        } finally {
            Thread.currentThread().setContextClassLoader(getClass().getClassLoader());
        }
    }

    private static int run(Stream<?> nodes) throws Exception {
        int tests = 0;
        for (var node : nodes.map(DynamicNode.class::cast).toList()) {
            try {
                if (node instanceof DynamicTest test) {
                    test.getExecutable().execute();
                    tests++;
                } else {
                    tests += run(((DynamicContainer) node).getChildren());
                }
            } catch (Throwable failure) {
                throw new AssertionError(node.getDisplayName(), failure);
            }
        }
        return tests;
    }

    @Test
    void itAnswersIsKeptGoesStaleAndIsPrinted() throws IOException {
        var properties = Files.readString(project.resolve("plugin.properties"));
        var zip = TestPlugins.zip(
                temp.resolve("target/wing-shed-0.1.0.zip"),
                properties.replace("${project.version}", "0.1.0"),
                Map.of("wingshed.Dihedral", source()));
        var trusted = PluginShelf.look(zip).hash();
        assertThat(run("plugins", "add", zip.toString(), "--trust", trusted).out())
                .contains("which brings wingshed.dihedral");
        var answer = run(
                "calc",
                "wingshed.dihedral",
                "--left",
                "52 mm ± 1 mm",
                "--right",
                "50 mm ± 1 mm",
                "--half",
                "600 mm ± 1 mm");
        assertThat(answer.out()).contains("4.972° ± 0.096°", "4.780° ± 0.096°", "Both halves rise alike.");
        assertThat(run("calc", "wingshed.dihedral", "--describe").out()).contains("\"left\"", "From the front");
        assertThat(run("new", "Wing shed", "--in", temp.resolve("journal").toString())
                        .err())
                .isEmpty();
        assertThat(run("new", "Plover").err()).isEmpty();
        measure("left tip height=52 mm ± 1 mm", "right tip height=50 mm ± 1 mm", "half span=600 mm ± 1 mm");
        var pdf = temp.resolve("dihedral.pdf");
        var kept = run("calc", "wingshed.dihedral", "--build", "Plover", "--keep", "--print", pdf.toString());
        assertThat(kept.err()).isEmpty();
        assertThat(kept.out()).contains("4.972° ± 0.096°", "Kept in the log of 'Plover'");
        assertThat(pdf).isNotEmptyFile();
        assertThat(changes()).isEmpty();
        assertThat(run("add", "--build", "Plover", "--at", "2025-03-15T19:00", "--measurement", "left tip height=61 mm")
                        .err())
                .isEmpty();
        assertThat(changes()).singleElement().asString().contains("52 mm", "61 mm");
    }

    private void measure(String... measurements) {
        for (var each : measurements) {
            assertThat(run("add", "--build", "Plover", "--measurement", each).err())
                    .isEmpty();
        }
    }

    /** What has changed since the answer was kept. */
    private List<String> changes() throws IOException {
        var user = UserFolders.under(temp.resolve("user"));
        try (var program = Program.open(temp.resolve("journal"), user, List.of(), Clock.systemUTC())) {
            var journal = program.journal();
            var build = journal.builds().get(0).id();
            var kept = journal.log(build).stream()
                    .flatMap(entry -> entry.keptResult().stream())
                    .findFirst()
                    .orElseThrow();
            var described =
                    program.plugins().join().calculator("wingshed.dihedral").orElseThrow();
            return Staleness.changes(kept, described, journal, build, UnitChoice.NONE);
        }
    }
}
