package planewright.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything that plugins see is described: javac's own check of comments (doclint, all groups) finds nothing. */
class ApiDocumentationTest {
    /** Of these JDK 17 asks for a comment, and JDK 25 no longer: the record's own tells what it refuses. */
    private static final Pattern COMPACT_CONSTRUCTOR = Pattern.compile("\\s*public \\w+ \\{");

    @TempDir
    private Path classes;

    @Test
    void everyTypeMethodParameterAndConstantIsDescribed() throws IOException {
        assertThat(complaints(sources(Path.of("src/main/java")))).isEmpty();
    }

    @Test
    void whatIsNotDescribedIsFound() throws IOException {
        var bare = Files.writeString(
                classes.resolve("Bare.java"),
                "/** A thing. */ public class Bare {\n /** {@return how many}\n * @param twice so */\n"
                        + " public int many(int once) { return once; }\n public void silent() {}\n}\n");
        assertThat(complaints(List.of(bare)))
                .anyMatch(line -> line.contains("no @param for once"))
                .anyMatch(line -> line.contains("no comment"));
    }

    private List<String> complaints(List<Path> sources) throws IOException {
        var compiler = ToolProvider.getSystemJavaCompiler();
        var found = new DiagnosticCollector<JavaFileObject>();
        try (var files = compiler.getStandardFileManager(found, Locale.ROOT, null)) {
            var options = List.of(
                    "-Xdoclint:all/protected",
                    "-proc:none",
                    "-Xmaxwarns",
                    "1000",
                    "-classpath",
                    System.getProperty("java.class.path"),
                    "-d",
                    classes.toString());
            compiler.getTask(null, files, found, options, null, files.getJavaFileObjectsFromPaths(sources))
                    .call();
        }
        return found.getDiagnostics().stream()
                .filter(each -> each.getCode().startsWith("compiler.warn.proc.messager")
                        || each.getKind() == Diagnostic.Kind.ERROR)
                .filter(each -> !isOfACompactConstructor(each))
                .map(each -> each.getSource() == null
                        ? each.getMessage(Locale.ROOT)
                        : each.getSource().getName() + ":" + each.getLineNumber() + " " + each.getMessage(Locale.ROOT))
                .toList();
    }

    private static boolean isOfACompactConstructor(Diagnostic<? extends JavaFileObject> each) {
        try {
            return each.getMessage(Locale.ROOT).contains("no comment")
                    && COMPACT_CONSTRUCTOR
                            .matcher(Files.readAllLines(Path.of(each.getSource().toUri()))
                                    .get((int) each.getLineNumber() - 1))
                            .matches();
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    private static List<Path> sources(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }
}
