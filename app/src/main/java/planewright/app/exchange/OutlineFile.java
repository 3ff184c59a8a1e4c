package planewright.app.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import planewright.app.files.SafeFile;
import planewright.app.journal.Slow;
import planewright.app.journal.TemplateRecord;
import planewright.app.store.JournalFolder;

/** The outline of a template as a file of its own. */
public final class OutlineFile {
    private OutlineFile() {}

    /**
     * Writes it as the journal keeps it.
     *
     * @throws ExchangeRefused if the template has no outline, or it may not be written there
     * @throws IOException if the outline is missing or damaged
     */
    public static Taken take(JournalFolder journal, TemplateRecord template, Path file, boolean replace)
            throws IOException {
        Slow.work("taking an outline out");
        var hash = template.outline()
                .orElseThrow(() -> new ExchangeRefused(ExchangeWords.say(
                        "template '{0}' is a {1}; accepted: an outline",
                        template.name(), template.kind().word())));
        var target = Target.file(file, replace);
        Target.outside(target, journal.folder());
        journal.outlines().read(hash);
        SafeFile.write(target, Files.readAllBytes(journal.outlines().file(hash)));
        return new Taken(1, 0, List.of());
    }
}
