package planewright.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.junit.jupiter.api.Test;

/**
 * What plugins were compiled against is still there. The baseline lists every public thing of the API as it is since its version began,
 * a line each: lines may come, none may go or change. What must go needs a next minor version, a decision record that says what to write
 * instead, and a new baseline: run the test with {@code -Dplanewright.api=renew}.
 */
class ApiBaselineTest {
    private static final Path BASELINE = Path.of("src/test/resources/planewright/api/baseline.txt");

    @Test
    void nothingThatPluginsUseIsGone() throws Exception {
        var now = signatures();
        if ("renew".equals(System.getProperty("planewright.api"))) {
            Files.writeString(BASELINE, "API " + Api.VERSION + "\n" + String.join("\n", now) + "\n");
        }
        var lines = Files.readAllLines(BASELINE, StandardCharsets.UTF_8);
        assertThat(lines.get(0))
                .as("a baseline is renewed when the version is raised")
                .isEqualTo("API " + Api.VERSION);
        var gone = new ArrayList<>(lines.subList(1, lines.size()));
        gone.removeAll(now);
        assertThat(gone).isEmpty();
        assertThat(now).hasSizeGreaterThan(200);
    }

    /** A method without a body that comes to an interface breaks those who implement it. */
    @Test
    void interfacesAskForNothingMore() throws Exception {
        var lines = Files.readAllLines(BASELINE, StandardCharsets.UTF_8);
        var known = lines.stream()
                .map(line -> line.substring(0, line.indexOf(' ') + 1))
                .collect(Collectors.toSet());
        assertThat(signatures())
                .filteredOn(line -> line.contains(" asks ") && known.contains(line.substring(0, line.indexOf(' ') + 1)))
                .isSubsetOf(lines);
    }

    @Test
    void everyTypeTellsSinceWhenItIsThereAndHowLongItStays() throws Exception {
        assertThat(types())
                .filteredOn(type -> type.getEnclosingClass() == null)
                .isNotEmpty()
                .allSatisfy(type -> {
                    var told = type.getAnnotation(API.class);
                    assertThat(told).as(type.getName()).isNotNull();
                    assertThat(told.since()).as(type.getName()).matches("0\\.[0-9]+\\.0");
                });
    }

    private static List<Class<?>> types() throws IOException, URISyntaxException, ClassNotFoundException {
        var root = Path.of(
                Api.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        var types = new ArrayList<Class<?>>();
        try (Stream<Path> files = Files.walk(root)) {
            for (var file :
                    files.filter(each -> each.toString().endsWith(".class")).toList()) {
                var name = root.relativize(file)
                        .toString()
                        .replaceAll("[/\\\\]", ".")
                        .replaceFirst("\\.class$", "");
                if (!name.endsWith("package-info") && !name.endsWith("module-info")) {
                    var type = Class.forName(name, false, Api.class.getClassLoader());
                    if (isOpen(type)) {
                        types.add(type);
                    }
                }
            }
        }
        return types;
    }

    private static boolean isOpen(Class<?> type) {
        return Modifier.isPublic(type.getModifiers())
                && (type.getEnclosingClass() == null || isOpen(type.getEnclosingClass()));
    }

    private static TreeSet<String> signatures() throws Exception {
        var lines = new TreeSet<String>();
        for (var type : types()) {
            var name = type.getName();
            lines.add(name + " is " + kind(type) + " of " + type.getGenericSuperclass() + " "
                    + Arrays.stream(type.getGenericInterfaces())
                            .map(Object::toString)
                            .sorted()
                            .toList());
            for (var method : type.getDeclaredMethods()) {
                if (shown(method.getModifiers()) && !method.isSynthetic()) {
                    lines.add(name
                            + (isAsked(type, method) ? " asks " : " has ")
                            + method.toGenericString()
                            + preset(method));
                }
            }
            for (Executable constructor : type.getDeclaredConstructors()) {
                if (shown(constructor.getModifiers()) && !constructor.isSynthetic()) {
                    lines.add(name + " is made by " + constructor.toGenericString());
                }
            }
            for (var field : type.getDeclaredFields()) {
                if (shown(field.getModifiers()) && !field.isSynthetic()) {
                    lines.add(name + " holds " + field.toGenericString());
                }
            }
        }
        return lines;
    }

    private static boolean shown(int modifiers) {
        return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
    }

    private static boolean isAsked(Class<?> type, Method method) {
        return type.isInterface() && Modifier.isAbstract(method.getModifiers()) && method.getDefaultValue() == null;
    }

    private static String preset(Method method) {
        return method.getDefaultValue() == null ? "" : " by default";
    }

    private static String kind(Class<?> type) {
        if (type.isAnnotation()) {
            return "annotation";
        }
        return type.isRecord() ? "record" : type.isEnum() ? "enum" : type.isInterface() ? "interface" : "class";
    }
}
