package planewright.app.calc;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Plugins that are written, compiled and zipped as their authors would. */
public final class TestPlugins {
    /** What a sound plugin says of itself. */
    public static final String SOUND = "plugin.id=bench\nplugin.version=1.2.0\n";

    /** Sums masses and their moments: {@code bench.station}. */
    public static final String STATION = """
            package bench;
            import java.util.List;
            import java.util.Optional;
            import javax.measure.quantity.Length;
            import javax.measure.quantity.Mass;
            import org.pf4j.Extension;
            import planewright.api.calculator.*;
            import planewright.api.quantity.*;
            @Extension
            @About(id = "bench.station", version = "3", title = "Station", question = "Where is its middle?",
                    cautions = "Propeller off.")
            public final class Station implements Calculator<Station.Inputs, Station.Results> {
                public record Row(
                        @Input(label = "Part", from = @From(value = From.Place.PART, name = "name")) String name,
                        @Input(label = "Mass", unit = "g", above = "0 g", atMost = "50 kg", usuallyTo = "5 kg",
                                from = @From(value = From.Place.PART, name = "mass")) Measured<Mass> mass,
                        @Input(label = "X", unit = "mm", from = @From(value = From.Place.PART, name = "x"))
                                Measured<Length> x) {}
                public record Inputs(
                        @Input(label = "Parts", from = @From(From.Place.PART_ROWS)) List<Row> parts,
                        @Input(label = "Target x", unit = "mm",
                                from = @From(value = From.Place.SET_UP, name = "balance point"))
                                Optional<Measured<Length>> targetX) {}
                public record Results(
                        @Result(label = "Mass in all", unit = "g") Measured<Mass> mass,
                        @Result(label = "Station", unit = "mm") Measured<Length> x,
                        @Result(label = "Remarks") List<Finding> findings,
                        @Result(label = "For the log") List<Proposal> proposals) {}
                @Override
                public Results compute(Inputs inputs, Run run) throws UnsuitableInput {
                    if (inputs.parts().isEmpty()) {
                        throw new UnsuitableInput(List.of(new InputProblem(
                                "parts", "Parts", "empty", "1 or more", "Weigh the parts")));
                    }
                    double mass = 0;
                    double moment = 0;
                    for (var part : inputs.parts()) {
                        mass += part.mass().in(Units.KILOGRAM);
                        moment += part.mass().in(Units.KILOGRAM) * part.x().in(Units.METRE);
                    }
                    var x = Measured.of(moment / mass, Units.METRE);
                    var far = inputs.targetX().map(target -> target.in(Units.METRE) - x.in(Units.METRE));
                    return new Results(Measured.of(mass, Units.KILOGRAM), x,
                            far.map(by -> List.of(Finding.lookAgain("It is off the target."))).orElse(List.of()),
                            List.of(new Proposal.NewMeasurement("balance point", x)));
                }
            }
            """;

    private static byte[] station = {};

    private TestPlugins() {}

    /** A sound plugin with {@code bench.station}, in a folder; compiled once, for it takes a second. */
    public static synchronized Path station(Path folder) throws IOException {
        Files.createDirectories(folder);
        var file = folder.resolve("bench.zip");
        if (station.length == 0) {
            station = Files.readAllBytes(zip(file, SOUND, Map.of("bench.Station", STATION)));
        }
        return Files.write(file, station);
    }

    /** A plugin of sources by class name. */
    public static Path zip(Path file, String properties, Map<String, String> sources) throws IOException {
        return zip(file, properties, sources, path -> true);
    }

    /** A plugin of sources by class name, with only those class files whose path is wanted. */
    public static Path zip(Path file, String properties, Map<String, String> sources, Predicate<String> wanted)
            throws IOException {
        Files.createDirectories(file.getParent());
        var classes = Files.createTempDirectory(file.getParent(), "classes");
        compile(sources, classes);
        var jar = Files.createTempFile(file.getParent(), "plugin", ".jar");
        try (var out = new ZipOutputStream(Files.newOutputStream(jar))) {
            for (var path : filesIn(classes)) {
                var name = classes.relativize(path).toString().replace('\\', '/');
                if (wanted.test(name)) {
                    entry(out, name, Files.readAllBytes(path));
                }
            }
        }
        try (var out = new ZipOutputStream(Files.newOutputStream(file))) {
            entry(out, "plugin.properties", properties.getBytes(StandardCharsets.UTF_8));
            entry(out, "lib/" + jar.getFileName(), Files.readAllBytes(jar));
        }
        Files.delete(jar);
        return file;
    }

    /** A zip of entries by name. */
    public static Path zipOf(Path file, Map<String, String> entries) throws IOException {
        try (OutputStream to = Files.newOutputStream(file);
                var out = new ZipOutputStream(to)) {
            for (var each : entries.entrySet()) {
                entry(out, each.getKey(), each.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
        return file;
    }

    private static void compile(Map<String, String> sources, Path classes) {
        var units = new ArrayList<JavaFileObject>();
        sources.forEach((name, text) -> units.add(new Source(name, text)));
        var options = List.of(
                "-d",
                classes.toString(),
                "-classpath",
                System.getProperty("java.class.path"),
                "-processor",
                "org.pf4j.processor.ExtensionAnnotationProcessor");
        var said = new DiagnosticCollector<JavaFileObject>();
        var done = ToolProvider.getSystemJavaCompiler()
                .getTask(null, null, said, options, null, units)
                .call();
        if (!done) {
            throw new IllegalArgumentException("the plugin does not compile: "
                    + said.getDiagnostics().stream()
                            .filter(each -> each.getKind() == Diagnostic.Kind.ERROR)
                            .toList());
        }
    }

    private static List<Path> filesIn(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static void entry(ZipOutputStream out, String name, byte[] content) throws IOException {
        out.putNextEntry(new ZipEntry(name));
        out.write(content);
        out.closeEntry();
    }

    private static final class Source extends SimpleJavaFileObject {
        private final String text;

        Source(String name, String text) {
            super(URI.create("string:///" + name.replace('.', '/') + Kind.SOURCE.extension), Kind.SOURCE);
            this.text = text;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
        }
    }
}
