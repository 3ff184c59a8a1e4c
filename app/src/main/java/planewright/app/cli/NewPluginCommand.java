package planewright.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import javax.lang.model.SourceVersion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.api.Api;
import planewright.app.store.JsonFiles;

/** Writes the project of a plugin that builds, is tested and runs as it is. */
@Command(
        name = "new",
        description = "Begin a plugin: write a project with one working calculator and its test into a new folder.")
final class NewPluginCommand implements Callable<Integer> {
    private final Desk desk;

    @Mixin
    private PlainOptions common;

    @Parameters(paramLabel = "FOLDER", description = "Where the project goes; empty, or not there yet.")
    private Path folder;

    @Option(names = "--id", paramLabel = "ID", description = "The plugin's id; else the folder's name.")
    private Optional<String> id = Optional.empty();

    NewPluginCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws IOException {
        var name = id.orElseGet(
                () -> folder.toAbsolutePath().normalize().getFileName().toString());
        if (!name.matches("[a-z][a-z0-9-]{0,39}")) {
            throw CommandFailed.words("the plugin's id is '" + name
                    + "'; accepted: lower-case letters, digits and hyphens, a letter first; give it with --id");
        }
        if (Files.exists(folder) && !isEmptyFolder()) {
            throw CommandFailed.words("folder " + folder + " is not empty; accepted: a new one");
        }
        var project = project(name);
        for (var file : project.entrySet()) {
            var place = folder.resolve(file.getKey());
            Files.createDirectories(place.getParent());
            Files.writeString(place, file.getValue());
        }
        if (common.json()) {
            var node = JsonFiles.object().put("id", name).put("folder", folder.toString());
            project.keySet().forEach(node.putArray("files")::add);
            desk.json(node);
        } else {
            desk.out()
                    .println("Wrote plugin " + name + " into " + folder
                            + "; its README.md says how it is built and added");
        }
        return 0;
    }

    /** The files of the project by their names. */
    private static Map<String, String> project(String id) throws IOException {
        var packageName = packageOf(id);
        var path = packageName.replace('.', '/');
        var files = new LinkedHashMap<String, String>();
        for (var name : new String[] {"README.md", "pom.xml", "plugin.properties", "plugin-zip.xml"}) {
            files.put(name, filled(name, id, packageName));
        }
        files.put("src/main/java/" + path + "/Dihedral.java", filled("Dihedral.java", id, packageName));
        files.put("src/test/java/" + path + "/DihedralTest.java", filled("DihedralTest.java", id, packageName));
        return files;
    }

    private static String packageOf(String id) {
        var name = id.replace("-", "");
        return SourceVersion.isName(name) ? name : name + "_";
    }

    private static String filled(String resource, String id, String packageName) throws IOException {
        try (InputStream in = NewPluginCommand.class.getResourceAsStream("plugin/" + resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("@ID@", id)
                    .replace("@CALCULATORS@", id.replace("-", ""))
                    .replace("@PACKAGE@", packageName)
                    .replace("@PATH@", packageName.replace('.', '/'))
                    .replace("@REQUIRES@", Api.COMPATIBLE);
        }
    }

    private boolean isEmptyFolder() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }
}
