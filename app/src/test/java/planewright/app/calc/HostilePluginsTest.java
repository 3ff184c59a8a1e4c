package planewright.app.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import planewright.app.Bench;
import planewright.app.store.JsonFiles;
import planewright.shared.quantity.UnitChoice;

/** Plugins that would hurt: each is refused or stopped by name, sound ones run beside it, and no journal is touched. */
class HostilePluginsTest {
    private static final String SICK = "plugin.id=sick\nplugin.version=1\n";

    private static final String CALCULATOR = """
            package sick;
            import planewright.api.calculator.*;
            @org.pf4j.Extension
            @About(id = "sick.one", version = "1", title = "One", question = "What?")
            public final class One implements Calculator<One.Inputs, One.Results> {
                public record Inputs() {}
                public record Results(@Result(label = "Text") String text) {}
                @Override
                public Results compute(Inputs inputs, Run run) {
                    %s
                }
            }
            """;

    @TempDir
    private Path temp;

    private PluginHost open() throws IOException {
        TestPlugins.station(temp.resolve("plugins"));
        return PluginHost.open(List.of(temp.resolve("plugins")), temp.resolve("user"));
    }

    private Path plugin(String body) throws IOException {
        return TestPlugins.zip(temp.resolve("plugins/sick.zip"), SICK, Map.of("sick.One", CALCULATOR.formatted(body)));
    }

    private static Outcome run(PluginHost host, AtomicBoolean stopped) {
        return new Apart()
                .run(
                        host.calculator("sick.one").orElseThrow(),
                        JsonFiles.object(),
                        Runs.unwatched(Bench.inMemory(List.of(), List.of()), Bench.EVENING),
                        UnitChoice.NONE,
                        stopped::get);
    }

    private void assertRefused(String reason) throws IOException {
        try (var host = open()) {
            assertThat(host.calculator("bench.station")).isPresent();
            assertThat(host.calculator("sick.one")).isEmpty();
            assertThat(host.problems()).singleElement().satisfies(problem -> {
                assertThat(problem.file().getFileName().toString()).endsWith("sick.zip");
                assertThat(problem.reason()).contains(reason);
            });
            assertThat(host.plugins())
                    .filteredOn(each -> each.state() == ListedPlugin.State.REFUSED)
                    .hasSize(1);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "System.exit(3); return null;",
                "Runtime.getRuntime().halt(3); return null;",
                "try { new ProcessBuilder(\"true\").start(); } catch (java.io.IOException e) { } return null;",
            })
    void aCalculatorThatEndsTheProgramOrStartsAnotherIsRefused(String body) throws IOException {
        plugin(body);
        assertRefused("its class sick.One calls ");
    }

    @Test
    void aCalculatorWithoutAnEndIsLeftToItselfAndNotAskedAgain() throws IOException {
        plugin("while (!Boolean.getBoolean(\"planewright.test.enough\")) { } return new Results(\"done\");");
        try (var host = open()) {
            var apart = new Apart();
            var described = host.calculator("sick.one").orElseThrow();
            var run = Runs.unwatched(Bench.inMemory(List.of(), List.of()), Bench.EVENING);
            assertThat(apart.run(described, JsonFiles.object(), run, UnitChoice.NONE, () -> true))
                    .isInstanceOfSatisfying(
                            Outcome.Failed.class,
                            failed -> assertThat(failed.message()).contains("sick.one", "does not stop"));
            assertThat(apart.run(described, JsonFiles.object(), run, UnitChoice.NONE, () -> false))
                    .isInstanceOfSatisfying(
                            Outcome.Failed.class,
                            failed -> assertThat(failed.message()).contains("sick.one", "still busy"));
        } finally {
            System.setProperty("planewright.test.enough", "true");
        }
    }

    @Test
    void aCalculatorThatWantsAllMemoryFailsByName() throws IOException {
        plugin("""
                var hoard = new java.util.ArrayList<long[]>();
                while (true) { hoard.add(new long[Integer.MAX_VALUE - 8]); }""");
        try (var host = open()) {
            assertThat(run(host, new AtomicBoolean()))
                    .isInstanceOfSatisfying(
                            Outcome.Failed.class,
                            failed -> assertThat(failed.message()).contains("sick.one"));
            assertThat(host.calculator("bench.station")).isPresent();
        }
    }

    @Test
    void aCalculatorThatCallsItselfForeverFailsByName() throws IOException {
        plugin("return compute(inputs, run);");
        try (var host = open()) {
            assertThat(run(host, new AtomicBoolean()))
                    .isInstanceOfSatisfying(
                            Outcome.Failed.class,
                            failed -> assertThat(failed.message()).contains("sick.one"));
        }
    }

    @Test
    void aPluginThatNeverComesUpKeepsNoOtherWaiting() throws IOException {
        TestPlugins.zip(
                temp.resolve("plugins/a sick.zip"),
                SICK + "plugin.class=sick.Main\n",
                Map.of("sick.One", CALCULATOR.formatted("return null;"), "sick.Main", """
                        package sick;
                        public class Main extends org.pf4j.Plugin {
                            @Override public void start() {
                                while (!Boolean.getBoolean("planewright.test.started")) { Thread.onSpinWait(); }
                            }
                        }"""));
        try {
            assertRefused("it has not come up within 10 s");
        } finally {
            System.setProperty("planewright.test.started", "true");
        }
    }

    @Test
    void aZipThatUnpacksToMoreThanItSaysIsRefusedAndLeavesNothing() throws IOException {
        Files.createDirectories(temp.resolve("plugins"));
        try (var out = new ZipOutputStream(Files.newOutputStream(temp.resolve("plugins/sick.zip")))) {
            out.putNextEntry(new ZipEntry("plugin.properties"));
            out.write(SICK.getBytes(StandardCharsets.UTF_8));
            out.putNextEntry(new ZipEntry("lib/bomb.bin"));
            var nothing = new byte[1 << 20];
            for (int i = 0; i <= 500; i++) {
                out.write(nothing);
            }
        }
        assertRefused("it unpacks to more than 500 MB");
        assertThat(temp.resolve("user/plugins-unpacked")).isDirectoryNotContaining("glob:**.unpacking*");
    }

    @Test
    void aClassThatIsNoneIsRefused() throws IOException {
        var jar = new ByteArrayOutputStream();
        try (var out = new ZipOutputStream(jar)) {
            out.putNextEntry(new ZipEntry("sick/One.class"));
            out.write("no class".getBytes(StandardCharsets.UTF_8));
        }
        Files.createDirectories(temp.resolve("plugins"));
        try (var out = new ZipOutputStream(Files.newOutputStream(temp.resolve("plugins/sick.zip")))) {
            out.putNextEntry(new ZipEntry("plugin.properties"));
            out.write(SICK.getBytes(StandardCharsets.UTF_8));
            var entry = new ZipEntry("lib/sick.jar");
            entry.setMethod(ZipEntry.STORED);
            entry.setSize(jar.size());
            var sum = new CRC32();
            sum.update(jar.toByteArray());
            entry.setCrc(sum.getValue());
            out.putNextEntry(entry);
            out.write(jar.toByteArray());
        }
        assertRefused("its class sick/One.class cannot be read: no class file");
    }

    /** What a plugin reaches: each name is asked for from within it. */
    @Test
    void aPluginSeesTheApiJavaAndItselfOnly() throws IOException {
        plugin("""
                var seen = new java.util.ArrayList<String>();
                for (var name : java.util.List.of(
                        "planewright.app.store.JournalFolder", "planewright.app.journal.Edit", "planewright.app.Program",
                        "planewright.shared.quantity.QuantityText", "com.fasterxml.jackson.databind.ObjectMapper",
                        "org.apache.lucene.index.IndexWriter", "com.formdev.flatlaf.FlatLightLaf", "picocli.CommandLine",
                        "net.miginfocom.swing.MigLayout", "org.junit.jupiter.api.Test",
                        "planewright.api.quantity.Units", "javax.measure.Quantity", "java.util.List", "sick.One")) {
                    try { seen.add(Class.forName(name).getSimpleName()); }
                    catch (ClassNotFoundException outOfReach) { }
                }
                if (One.class.getClassLoader().getResource("planewright/app/ui/Texts.properties") != null) { seen.add("texts"); }
                return new Results(String.join(" ", seen));""");
        try (var host = open()) {
            assertThat(run(host, new AtomicBoolean()))
                    .isInstanceOfSatisfying(
                            Outcome.Answered.class,
                            answered -> assertThat(answered.json().path("text").asText())
                                    .isEqualTo("Units Quantity List One"));
        }
    }
}
