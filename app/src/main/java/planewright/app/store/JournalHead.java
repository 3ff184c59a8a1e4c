package planewright.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import planewright.app.files.SafeFile;
import planewright.app.pictures.PictureShelf;

/** The file that makes a folder a journal, and what every journal explains about itself: its layout and its schemas. */
final class JournalHead {
    private static final String FORMAT = "planewright journal";
    private static final String README = "README.md";

    /** SHA-256 of what earlier versions wrote into a journal's README; somebody's own words there are left alone. */
    private static final Set<String> EARLIER_READMES = Set.of(
            "455803122a703d570955c3afdf0cf2ecbea77da8ead293772c1766f259d88cc2",
            "d042eb4a5f96fcef3891602d3ab0755dc901b9b9dea50089f31e96cdfead0d27",
            "3009404965cb5b15814d27aac0ab58ba56dd1e315154804dee0a98caa7ae078f");

    private final Path folder;
    private final String id;
    private final String name;
    private int minReader;

    private JournalHead(Path folder, Fields fields) throws Unreadable {
        this.folder = folder;
        this.id = fields.text("id");
        this.name = fields.text("name");
        this.minReader = fields.whole("minReader");
    }

    /** What a new head says. */
    static String text(UUID id, String name) {
        return JsonFiles.text(new Writing()
                .text("format", FORMAT)
                .whole(Schema.FIELD, Schema.ofHead())
                .whole("minReader", Schema.FORMAT)
                .text("id", id.toString())
                .text("name", name.strip())
                .done());
    }

    /** Makes a head and what belongs to it in an empty folder. */
    static void create(Path folder, String name) throws IOException {
        for (var file : List.of("gitignore", "gitattributes")) {
            SafeFile.write(folder.resolve("." + file), resource(file));
        }
        explain(folder);
        SafeFile.write(file(folder), bytes(text(UUID.randomUUID(), name)));
    }

    static JournalHead read(Path folder) throws IOException {
        var fields = new Fields(JsonFiles.read(file(folder)));
        if (!fields.text("format").equals(FORMAT)) {
            throw new Unreadable("field 'format' is '{0}'; accepted: '{1}'", fields.text("format"), FORMAT);
        }
        return new JournalHead(folder, fields);
    }

    String id() {
        return id;
    }

    String name() {
        return name;
    }

    /** Why this program may not write in the journal; empty where it may. */
    Optional<String> refusal() {
        return minReader > Schema.FORMAT
                ? Optional.of(StoreWords.say(
                        "it was written by a newer version of the program (minReader is {0}; this one writes up to "
                                + "{1}); use that version to change it",
                        minReader, Schema.FORMAT))
                : Optional.empty();
    }

    /**
     * Called before a file of a format is written, so that an older program, which would not understand it, stops writing in
     * this journal first. A crash between the two leaves a journal that asks for more than it needs.
     */
    void require(int format) throws IOException {
        if (format <= minReader) {
            return;
        }
        explain(folder);
        var head = JsonFiles.read(file(folder));
        head.put("minReader", format);
        SafeFile.write(file(folder), bytes(JsonFiles.text(head)));
        minReader = format;
    }

    private static void explain(Path folder) throws IOException {
        for (var schema : Schema.files()) {
            var file = folder.resolve("schema").resolve(schema);
            if (Files.notExists(file)) {
                SafeFile.write(file, resource("schema/" + schema));
            }
        }
        var readme = folder.resolve(README);
        if (Files.notExists(readme) || EARLIER_READMES.contains(PictureShelf.hash(Files.readAllBytes(readme)))) {
            SafeFile.write(readme, resource(README));
        }
    }

    private static Path file(Path folder) {
        return folder.resolve(JournalFolder.HEAD);
    }

    private static byte[] resource(String name) throws IOException {
        try (InputStream in = JournalHead.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
