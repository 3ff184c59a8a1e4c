package planewright.app.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import planewright.api.Api;

/** A sick plugin is told by file and reason, and hides no other. */
class PluginHostTest {
    private static final String OTHER = "plugin.id=other\nplugin.version=1.0.0\n";

    @TempDir
    private Path folder;

    private Path plugins;
    private Path unpacked;

    @BeforeEach
    void soundPlugin() throws IOException {
        plugins = folder.resolve("plugins");
        unpacked = folder.resolve("unpacked");
        TestPlugins.station(plugins);
    }

    @Test
    void soundPluginIsThereAndDescribed() {
        try (var host = open()) {
            assertThat(host.problems()).isEmpty();
            assertThat(host.calculators()).extracting(Described::id).containsExactly("bench.station");
            assertThat(host.calculator("bench.station").orElseThrow().plugin()).isEqualTo("bench 1.2.0");
            assertThat(host.calculator("bench.nothing")).isEmpty();
        }
    }

    @Test
    void zipIsTakenAloneToo() {
        try (var host = PluginHost.open(List.of(plugins.resolve("bench.zip")), unpacked)) {
            assertThat(host.calculators()).hasSize(1);
        }
    }

    static Stream<Arguments> sickClasses() {
        return Stream.of(
                Arguments.of(
                        "start throws an exception",
                        OTHER + "plugin.class=other.Main\n",
                        Map.of("other.Main", starting("throw new IllegalStateException(\"no glue left\");")),
                        "no glue left"),
                Arguments.of(
                        "start throws an error",
                        OTHER + "plugin.class=other.Main\n",
                        Map.of("other.Main", starting("throw new AssertionError(\"bent spar\");")),
                        "bent spar"),
                Arguments.of(
                        "plugin.class missing",
                        OTHER + "plugin.class=other.Gone\n",
                        Map.of("other.Sum", sum("other.sum", "")),
                        "plugin.class 'other.Gone'"),
                Arguments.of(
                        "requires not met",
                        OTHER + "plugin.requires=>=7.0.0 & <8.0.0\n",
                        Map.of("other.Sum", sum("other.sum", "")),
                        "API >=7.0.0 & <8.0.0; this program has " + Api.VERSION),
                Arguments.of(
                        "requires is no range",
                        OTHER + "plugin.requires=whatever there is\n",
                        Map.of("other.Sum", sum("other.sum", "")),
                        "whatever"),
                Arguments.of(
                        "constructor throws",
                        OTHER,
                        Map.of("other.Sum", sum("other.sum", "public Sum() { throw new RuntimeException(\"dull\"); }")),
                        "other.Sum cannot be made: RuntimeException, dull"),
                Arguments.of(
                        "no @About",
                        OTHER,
                        Map.of("other.Sum", sum("other.sum", "").replaceAll("@About.*\n", "")),
                        "no @About"),
                Arguments.of("id of another form", OTHER, Map.of("other.Sum", sum("Sum it", "")), "'Sum it'"),
                Arguments.of("id taken", OTHER, Map.of("other.Sum", sum("bench.station", "")), "'bench.station'"),
                Arguments.of(
                        "input without @Input",
                        OTHER,
                        Map.of("other.Sum", sum("other.sum", "").replace("@Input(label = \"A\")", "")),
                        "component 'a' of Inputs has no @Input"),
                Arguments.of(
                        "input of a type that is none",
                        OTHER,
                        Map.of("other.Sum", sum("other.sum", "").replace("int a", "java.io.File a")),
                        "component 'a' of Inputs is a File"),
                Arguments.of(
                        "quantity without a unit",
                        OTHER,
                        Map.of(
                                "other.Sum",
                                sum("other.sum", "")
                                        .replace(
                                                "int a",
                                                "planewright.api.quantity.Measured<javax.measure.quantity.Mass> a")),
                        "component 'a' of Inputs has the unit ''"),
                Arguments.of("no calculator", OTHER, Map.of("other.Main", starting("")), "no calculator"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sickClasses")
    void sickPluginIsNamedWithItsReason(String what, String properties, Map<String, String> sources, String reason)
            throws IOException {
        var sick = TestPlugins.zip(plugins.resolve("other.zip"), properties, sources);
        assertOneProblem(sick, reason);
    }

    @Test
    void calculatorThatCannotLinkIsNamed() throws IOException {
        var sources = Map.of(
                "other.Sum",
                sum("other.sum", "private static final int HELP = Helper.number();"),
                "other.Helper",
                "package other; class Helper { static int number() { return 3; } }");
        var sick = TestPlugins.zip(
                plugins.resolve("other.zip"), OTHER, sources, path -> !path.equals("other/Helper.class"));
        assertOneProblem(sick, "other.Sum cannot be made: ClassNotFoundException, other.Helper");
    }

    @Test
    void sickCalculatorDoesNotHideAnotherOfItsPlugin() throws IOException {
        var sources = Map.of(
                "other.Sum",
                sum("other.sum", "static { if (true) { throw new AssertionError(\"warped\"); } }"),
                "other.Total",
                sum("other.total", "").replace("Sum", "Total"));
        var sick = TestPlugins.zip(plugins.resolve("other.zip"), OTHER, sources);
        try (var host = open()) {
            assertThat(host.problems()).hasSize(1);
            assertThat(host.problems().get(0).file()).isEqualTo(sick);
            assertThat(host.problems().get(0).reason()).contains("other.Sum", "warped");
            assertThat(host.calculators()).extracting(Described::id).containsExactly("bench.station", "other.total");
        }
    }

    @Test
    void calculatorWhoseClassIsGoneIsNamed() throws IOException {
        var sick = TestPlugins.zip(
                plugins.resolve("other.zip"),
                OTHER,
                Map.of("other.Sum", sum("other.sum", "")),
                path -> !path.equals("other/Sum.class"));
        assertOneProblem(sick, "other.Sum");
    }

    @ParameterizedTest
    @CsvSource({"bench, depends on other plugins (bench)", "paint?, depends on other plugins (paint?)"})
    void pluginThatNeedsAnotherIsRefused(String dependency, String reason) throws IOException {
        var sick = TestPlugins.zip(
                plugins.resolve("other.zip"),
                OTHER + "plugin.dependencies=" + dependency + "\n",
                Map.of("other.Sum", sum("other.sum", "")));
        assertOneProblem(sick, reason);
    }

    @Test
    void secondOfOneIdIsRefusedAndBothFilesAreNamed() throws IOException {
        var second = TestPlugins.zip(
                plugins.resolve("cellar.zip"),
                TestPlugins.SOUND.replace("1.2.0", "9.0.0"),
                Map.of("other.Sum", sum("other.sum", "")));
        try (var host = open()) {
            assertThat(host.problems()).hasSize(1);
            var problem = host.problems().get(0);
            assertThat(problem.file() + " " + problem.reason())
                    .contains(second.toString(), plugins.resolve("bench.zip").toString(), "plugin.id 'bench'");
            assertThat(host.calculators()).hasSize(1);
        }
    }

    @Test
    void garbageIsNamed() throws IOException {
        assertOneProblem(Files.writeString(plugins.resolve("other.zip"), "this is no zip"), "no sound zip");
    }

    @Test
    void emptyFileIsNamed() throws IOException {
        assertOneProblem(Files.createFile(plugins.resolve("other.zip")), "no sound zip");
    }

    @Test
    void zipCutOffIsNamedAndDoesNotStandInForTheWholeOne() throws IOException {
        var whole = TestPlugins.zip(plugins.resolve("other.zip"), OTHER, Map.of("other.Sum", sum("other.sum", "")));
        var bytes = Files.readAllBytes(whole);
        Files.write(whole, java.util.Arrays.copyOf(bytes, bytes.length * 2 / 3));
        assertOneProblem(whole, "no sound zip");
        Files.write(whole, bytes);
        try (var host = open()) {
            assertThat(host.problems()).isEmpty();
            assertThat(host.calculators()).extracting(Described::id).containsExactly("bench.station", "other.sum");
        }
    }

    @Test
    void zipDamagedInTheMiddleIsNamedAndLeavesNothingUnpacked() throws IOException {
        var damaged = TestPlugins.zip(plugins.resolve("other.zip"), OTHER, Map.of("other.Sum", sum("other.sum", "")));
        var bytes = Files.readAllBytes(damaged);
        for (int i = bytes.length / 2; i < bytes.length / 2 + 40; i++) {
            bytes[i] ^= 0x55;
        }
        Files.write(damaged, bytes);
        assertOneProblem(damaged, "");
        assertThat(unpackedNames()).noneMatch(name -> name.startsWith("other") || name.startsWith("."));
    }

    @ParameterizedTest
    @CsvSource({
        "'plugin.version=1.0.0', plugin.id is ''",
        "'plugin.id=Other One\nplugin.version=1.0.0', plugin.id is 'Other One'",
        "'plugin.id=../other\nplugin.version=1.0.0', plugin.id is '../other'",
        "'plugin.id=other', no plugin.version"
    })
    void unsoundPropertiesAreTold(String properties, String reason) throws IOException {
        var sick = TestPlugins.zipOf(plugins.resolve("other.zip"), Map.of("plugin.properties", properties));
        assertOneProblem(sick, reason.strip());
    }

    @Test
    void whatItDoesIsToldInTheLanguagesThatItSaysItIn() throws Exception {
        var said = OTHER + "\nplugin.description=How loud it is\nplugin.description.de=Wie laut es ist";
        var plugin =
                PluginPackage.of(TestPlugins.zipOf(plugins.resolve("other.zip"), Map.of("plugin.properties", said)));
        assertThat(plugin.description()).isEqualTo("How loud it is");
        assertThat(plugin.description(Locale.GERMANY)).isEqualTo("Wie laut es ist");
        assertThat(plugin.description(Locale.FRENCH)).isEqualTo("How loud it is");
    }

    @Test
    void zipThatIsNoPluginIsTold() throws IOException {
        assertOneProblem(
                TestPlugins.zipOf(plugins.resolve("other.zip"), Map.of("letter.txt", "hello")), "no plugin.properties");
    }

    @Test
    void zipThatLeadsOutOfItsFolderWritesNothingThere() throws IOException {
        var sick = TestPlugins.zipOf(
                plugins.resolve("other.zip"), Map.of("plugin.properties", OTHER, "../../escaped.txt", "gotcha"));
        assertOneProblem(sick, "'../../escaped.txt' leads out");
        assertThat(folder.resolve("escaped.txt")).doesNotExist();
    }

    @Test
    void nothingIsUnpackedBesideTheZip() throws IOException {
        var before = names(plugins);
        open().close();
        assertThat(names(plugins)).isEqualTo(before);
        assertThat(unpackedNames()).hasSize(1).allMatch(name -> name.startsWith("bench-"));
    }

    @Test
    void changedZipIsTakenThoughItsTimeIsOlder() throws IOException {
        open().close();
        var changed = TestPlugins.zip(
                plugins.resolve("bench.zip"),
                TestPlugins.SOUND,
                Map.of("bench.Station", TestPlugins.STATION.replace("version = \"3\"", "version = \"4\"")));
        Files.setLastModifiedTime(changed, FileTime.fromMillis(0));
        try (var host = open()) {
            assertThat(host.calculator("bench.station").orElseThrow().about().version())
                    .isEqualTo("4");
        }
    }

    @Test
    void apiWithinAPluginDoesNotHideItsCalculators() throws IOException {
        var bundling = Map.of(
                "other.Sum",
                sum("other.sum", ""),
                "planewright.api.calculator.Finding",
                "package planewright.api.calculator; public record Finding(String mine) {}");
        TestPlugins.zip(plugins.resolve("other.zip"), OTHER, bundling);
        try (var host = open()) {
            assertThat(host.problems()).isEmpty();
            assertThat(host.calculator("other.sum")).isPresent();
        }
    }

    @Test
    void placeThatIsNotThereIsNamed() {
        var gone = folder.resolve("gone.zip");
        try (var host = PluginHost.open(List.of(gone, plugins), unpacked)) {
            assertThat(host.problems()).extracting(PluginProblem::file).containsExactly(gone);
            assertThat(host.calculators()).hasSize(1);
        }
    }

    private void assertOneProblem(Path file, String reason) {
        try (var host = open()) {
            assertThat(host.problems()).hasSize(1);
            assertThat(host.problems().get(0).file()).isEqualTo(file);
            assertThat(host.problems().get(0).reason())
                    .contains(reason)
                    .isNotBlank()
                    .doesNotContain("\n");
            assertThat(host.calculators()).extracting(Described::id).containsExactly("bench.station");
        }
    }

    private PluginHost open() {
        return PluginHost.open(List.of(plugins), unpacked);
    }

    private List<String> unpackedNames() throws IOException {
        return names(unpacked.resolve("plugins-unpacked"));
    }

    private static List<String> names(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static String starting(String body) {
        return "package other; public class Main extends org.pf4j.Plugin { @Override public void start() { if (true) { "
                + body + " } } }";
    }

    private static String sum(String id, String member) {
        return """
                package other;
                import planewright.api.calculator.*;
                @org.pf4j.Extension
                @About(id = "%s", version = "1", title = "Sum", question = "How many?")
                public final class Sum implements Calculator<Sum.Inputs, Sum.Results> {
                    public record Inputs(@Input(label = "A") int a) {}
                    public record Results(@Result(label = "B") int b) {}
                    %s
                    @Override
                    public Results compute(Inputs inputs, Run run) {
                        return new Results(inputs.hashCode());
                    }
                }
                """.formatted(id, member);
    }
}
