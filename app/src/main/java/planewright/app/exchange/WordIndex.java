package planewright.app.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.journal.EntryWords;
import planewright.app.journal.OpenJournal;

/**
 * The words of all entries as a script, for a page that was opened from a disk may read a script and nothing else: an array a
 * entry of its place, day, build, title, and all that is written in it.
 */
final class WordIndex {
    private static final Parser PARSER = Parser.builder().build();
    private static final TextContentRenderer PLAIN =
            TextContentRenderer.builder().build();

    private WordIndex() {}

    static void write(OpenJournal journal, List<BuildRecord> builds, OutputStream out) throws IOException {
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        writer.write("window.planewrightWords = ");
        try (var json = new JsonFactory().createGenerator(writer).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)) {
            json.writeStartArray();
            for (var build : builds) {
                for (var entry : journal.log(build.id())) {
                    json.writeRaw('\n');
                    json.writeArray(
                            new String[] {
                                BuildPage.place(build) + "#" + BuildPage.anchor(entry),
                                entry.at().toLocalDate().toString(),
                                build.name(),
                                entry.title(),
                                words(entry)
                            },
                            0,
                            5);
                }
            }
            json.writeEndArray();
        }
        writer.write(";\n");
        writer.flush();
    }

    private static String words(EntryRecord entry) {
        return Stream.of(
                        entry.text().stream().map(paragraph -> PLAIN.render(PARSER.parse(paragraph))),
                        entry.measurements().stream()
                                .map(each -> each.name() + " " + each.quantity().text() + " " + each.method()),
                        entry.setUp().stream()
                                .map(each -> each.name() + " " + each.quantity().text()),
                        entry.joints().stream().map(each -> each.name() + " " + each.material()),
                        entry.flights().stream().map(EntryWords::flight),
                        entry.repairs().stream().map(EntryWords::repair),
                        entry.tasks().stream().map(EntryWords::task),
                        entry.pictures().stream().map(each -> each.caption()),
                        entry.tags().stream(),
                        Stream.of(entry.kind().word()))
                .flatMap(each -> each)
                .map(words -> words.replaceAll("\\s+", " ").strip())
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(" · "));
    }
}
