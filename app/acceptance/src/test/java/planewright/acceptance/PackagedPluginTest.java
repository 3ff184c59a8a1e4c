package planewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pf4j.Extension;
import planewright.api.Api;
import planewright.api.calculator.Calculator;
import planewright.app.calc.Described;
import planewright.app.calc.Field;
import planewright.app.calc.JsonSchemas;
import planewright.app.calc.Kind;
import planewright.app.calc.PluginHost;
import planewright.app.calc.Shape;
import planewright.app.store.JsonFiles;

/** Every plugin as it is handed out: the zip that the build packed, in the host that a user has. */
class PackagedPluginTest {
    @TempDir
    private Path temp;

    static List<Path> zips() {
        return Workplace.pluginZips();
    }

    @ParameterizedTest
    @MethodSource("zips")
    void saysWhatItIs(Path zip) throws IOException {
        var properties = properties(zip);
        assertThat(properties.getProperty("plugin.id")).isEqualTo(module(zip));
        assertThat(properties.getProperty("plugin.version")).matches("\\d+\\.\\d+\\.\\d+");
        assertThat(zip.getFileName().toString())
                .isEqualTo("planewright-" + module(zip) + "-" + properties.getProperty("plugin.version") + ".zip");
        assertThat(properties.getProperty("plugin.description")).isNotBlank().doesNotContain("$");
        assertThat(properties.getProperty("plugin.requires")).startsWith(">=").contains(" & <");
        assertThat(properties.getProperty("plugin.requires")).contains(Api.VERSION);
        assertThat(properties.getProperty("plugin.dependencies", "")).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("zips")
    void bringsItsOwnClassesAndNoneOfTheHost(Path zip) throws IOException {
        var entries = names(zip);
        assertThat(entries).allMatch(name -> name.equals("plugin.properties") || name.matches("lib/[^/]+\\.jar"));
        var classes = new TreeSet<String>();
        content(zip).forEach((jar, names) -> classes.addAll(names));
        var own = Workplace.packageOf(module(zip)).replace('.', '/') + "/";
        assertThat(classes).anyMatch(name -> name.startsWith(own));
        assertThat(classes)
                .noneMatch(name -> name.startsWith("planewright/api/"))
                .noneMatch(name -> name.startsWith("planewright/app/"))
                .noneMatch(name -> name.startsWith("org/pf4j/"))
                .noneMatch(name -> name.startsWith("org/slf4j/"))
                .noneMatch(name -> name.startsWith("javax/measure/"))
                .noneMatch(name -> name.startsWith("tech/units/"));
    }

    @ParameterizedTest
    @MethodSource("zips")
    void itsIndexListsEveryCalculator(Path zip) throws IOException {
        var marked = new ClassFileImporter()
                .importPath(zip.resolveSibling("classes")).stream()
                        .filter(each -> each.isAnnotatedWith(Extension.class))
                        .map(JavaClass::getName)
                        .toList();
        assertThat(marked).isNotEmpty();
        var listed = Files.readAllLines(zip.resolveSibling("classes/META-INF/extensions.idx")).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();
        assertThat(listed).containsExactlyInAnyOrderElementsOf(marked);
        var own = content(zip).entrySet().stream()
                .filter(jar -> jar.getKey().startsWith("lib/planewright-" + module(zip) + "-"))
                .findFirst()
                .orElseThrow()
                .getValue();
        assertThat(own).contains("META-INF/extensions.idx");
        assertThat(own)
                .containsAll(marked.stream()
                        .map(name -> name.replace('.', '/') + ".class")
                        .toList());
        assertThat(found(zip))
                .extracting(each -> each.calculator().getClass().getName())
                .containsExactlyInAnyOrderElementsOf(marked);
    }

    @ParameterizedTest
    @MethodSource("zips")
    void eachCalculatorIsDescribedInFull(Path zip) {
        for (var each : found(zip)) {
            var about = each.about();
            assertThat(each.id()).startsWith(module(zip) + ".");
            assertThat(about.title()).matches("[A-Z].{2,40}");
            assertThat(about.question()).matches("[A-Z].*\\?");
            assertThat(about.sources())
                    .as("sources of %s", each.id())
                    .isNotEmpty()
                    .doesNotContain("");
            assertThat(about.cautions()).as("cautions of %s", each.id()).allMatch(caution -> caution.endsWith("."));
            assertThat(each.inputs().fields()).isNotEmpty();
            assertThat(fields(each.inputs())).allSatisfy(field -> {
                assertThat(field.label()).isNotBlank();
                assertThat(field.help()).as("help of %s", field.name()).isNotBlank();
            });
            assertThat(fields(each.results())).allMatch(field -> !field.label().isBlank());
            assertThat(fields(each.results()).stream().map(Field::kind))
                    .as("%s answers with a number, says what to make of it, and draws", each.id())
                    .contains(Kind.QUANTITY, Kind.FINDINGS)
                    .containsAnyOf(Kind.CHART, Kind.DRAWING);
        }
    }

    /** A result that decides whether an aircraft may fly is put to use near propellers and packs. */
    @Test
    void balanceTellsWhatCanHurt() {
        var balance = zips().stream()
                .filter(zip -> module(zip).equals("balance"))
                .findFirst()
                .orElseThrow();
        assertThat(found(balance))
                .extracting(Described::id)
                .contains("balance.ledger", "balance.weighing", "balance.ballast", "balance.lean");
        for (var each : found(balance)) {
            assertThat(String.join(" ", each.about().cautions())).contains("propeller off", "pack disconnected");
        }
    }

    @ParameterizedTest
    @MethodSource("zips")
    void eachSchemaIsOneOfItsDialect(Path zip) {
        var meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(JsonFiles.object().put("type", "nonsense"))).isNotEmpty();
        for (var each : found(zip)) {
            var schema = JsonSchemas.describe(each);
            assertThat(schema.path("$schema").textValue()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
            assertThat(meta.validate(schema)).as(each.id()).isEmpty();
        }
    }

    @Test
    void allOfThemStandSideBySideAndAreUnpackedOnlyThere() throws IOException {
        var unpacked = temp.resolve("unpacked");
        var before = Workplace.pluginModules().stream()
                .map(PackagedPluginTest::built)
                .toList();
        try (var host = PluginHost.open(zips(), unpacked)) {
            assertThat(host.problems()).isEmpty();
            assertThat(host.calculators()).hasSizeGreaterThanOrEqualTo(2);
        }
        assertThat(unpacked).isDirectory();
        assertThat(Workplace.pluginModules().stream().map(PackagedPluginTest::built))
                .isEqualTo(before);
    }

    /** The API that a plugin computes with is the host's: no class of it comes from the plugin. */
    @ParameterizedTest
    @MethodSource("zips")
    void itsClassesAreItsOwnAndTheApiIsTheHosts(Path zip) {
        for (var each : found(zip)) {
            var loader = each.calculator().getClass().getClassLoader();
            assertThat(loader).isNotSameAs(Described.class.getClassLoader());
            assertThatExceptionOfType(ClassNotFoundException.class)
                    .isThrownBy(() -> Class.forName(each.calculator().getClass().getName()));
            assertThat(each.calculator().getClass().getInterfaces()).containsExactly(Calculator.class);
        }
    }

    private List<Described> found(Path zip) {
        try (var host = PluginHost.open(List.of(zip), temp.resolve("unpacked"))) {
            assertThat(host.problems()).isEmpty();
            assertThat(host.calculators()).isNotEmpty();
            return host.calculators();
        }
    }

    private static List<Field> fields(Shape shape) {
        var fields = new ArrayList<Field>();
        for (var field : shape.fields()) {
            fields.add(field);
            field.row().ifPresent(row -> fields.addAll(fields(row)));
        }
        return fields;
    }

    private static String module(Path zip) {
        return zip.getParent().getParent().getFileName().toString();
    }

    private static List<String> built(Path module) {
        return List.of(module.resolve("target").toFile().list()).stream()
                .sorted()
                .toList();
    }

    private static Properties properties(Path zip) throws IOException {
        var properties = new Properties();
        try (var file = new ZipFile(zip.toFile());
                var in = file.getInputStream(file.getEntry("plugin.properties"))) {
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        return properties;
    }

    private static List<String> names(Path zip) throws IOException {
        try (var file = new ZipFile(zip.toFile())) {
            return file.stream()
                    .filter(entry -> !entry.isDirectory())
                    .map(Object::toString)
                    .toList();
        }
    }

    /** What each jar of a plugin holds, by the jar's name. */
    private static TreeMap<String, List<String>> content(Path zip) throws IOException {
        var jars = new TreeMap<String, List<String>>();
        try (var file = new ZipFile(zip.toFile())) {
            for (var jar : names(zip)) {
                if (jar.endsWith(".jar")) {
                    var bytes = file.getInputStream(file.getEntry(jar)).readAllBytes();
                    jars.put(jar, entries(bytes));
                }
            }
        }
        assertThat(jars).isNotEmpty();
        return jars;
    }

    private static List<String> entries(byte[] jar) throws IOException {
        var entries = new ArrayList<String>();
        try (var zip = new ZipInputStream(new ByteArrayInputStream(jar))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.add(entry.getName());
            }
        }
        return entries;
    }
}
