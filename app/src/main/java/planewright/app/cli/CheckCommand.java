package planewright.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import planewright.api.journal.Picture;
import planewright.app.Program;
import planewright.app.journal.TemplateRecord;
import planewright.app.pictures.PictureShelf;
import planewright.app.store.JsonFiles;
import planewright.app.store.SetAside;

@Command(
        name = "check",
        description = "Read every file of a journal, pictures too, and tell what is wrong. Changes nothing.")
final class CheckCommand implements Callable<Integer> {
    private final Desk desk;

    @Mixin
    private JournalOption common;

    CheckCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() throws IOException {
        try (var program = desk.open(common.journal())) {
            var wrong = new ArrayList<>(program.folder().setAside());
            int entries = 0;
            for (var build : program.journal().builds()) {
                for (var entry : program.journal().log(build.id())) {
                    entries++;
                    for (var picture : entry.pictures()) {
                        check(program, picture, wrong);
                    }
                }
            }
            for (var template : program.journal().templates()) {
                template.outline().ifPresent(hash -> check(program, template, hash, wrong));
            }
            tell(program, entries, wrong);
            return wrong.isEmpty() ? 0 : 1;
        }
    }

    private void tell(Program program, int entries, List<SetAside> wrong) {
        int builds = program.journal().builds().size();
        int templates = program.journal().templates().size();
        if (common.json()) {
            var node = JsonFiles.object()
                    .put("builds", builds)
                    .put("entries", entries)
                    .put("templates", templates);
            var array = node.putArray("wrong");
            wrong.forEach(each ->
                    array.addObject().put("file", place(program, each.file())).put("reason", each.reason()));
            desk.json(node);
            return;
        }
        desk.out()
                .println(Desk.count(builds, "build", "builds") + ", " + Desk.count(entries, "entry", "entries") + ", "
                        + (templates == 0 ? "" : Desk.count(templates, "template", "templates") + ", ")
                        + Desk.count(wrong.size(), "file", "files") + " wrong");
        wrong.forEach(each -> desk.out().println(place(program, each.file()) + ": " + each.reason()));
    }

    private static void check(Program program, TemplateRecord template, String hash, List<SetAside> wrong) {
        try {
            program.folder().outlines().read(hash);
        } catch (IOException reason) {
            wrong.add(new SetAside(
                    program.folder().outlines().file(hash),
                    "the outline of '" + template.name() + "': " + reason.getMessage()));
        }
    }

    private static void check(Program program, Picture picture, List<SetAside> wrong) throws IOException {
        var file = program.pictures().file(picture);
        if (!Files.isRegularFile(file)) {
            wrong.add(new SetAside(file, "the picture '" + picture.caption() + "' is missing"));
        } else if (!PictureShelf.hash(Files.readAllBytes(file)).equals(picture.hash())) {
            wrong.add(new SetAside(file, "its content is not what its name says; take it from a copy of the journal"));
        }
    }

    private static String place(Program program, Path file) {
        return program.folder().folder().relativize(file).toString();
    }
}
