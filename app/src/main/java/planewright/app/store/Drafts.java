package planewright.app.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import planewright.app.files.SafeFile;
import planewright.app.journal.EntryDraft;
import planewright.app.journal.Slow;

/**
 * Half-written entries of one journal, a file each in the user's own data folder: they are nobody else's business, so they lie
 * outside the journal, and no cache, so they survive until they are saved or thrown away.
 */
public final class Drafts {
    private static final System.Logger LOGGER = System.getLogger(Drafts.class.getName());
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final int SCHEMA = 1;
    private static final String ENDING = ".json";

    private final Path folder;

    /** Those of a journal, wherever its folder has been moved to meanwhile. */
    public static Drafts of(JournalFolder journal, UserFolders user) {
        return new Drafts(user.data().resolve("drafts").resolve(journal.id()));
    }

    Drafts(Path folder) {
        this.folder = folder;
    }

    /** Keeps a draft, instead of what was kept of the same entry before; when it returns, the draft survives a crash. */
    public void keep(KeptDraft draft) throws IOException {
        Slow.work("keeping a draft");
        var tree = JsonFiles.object()
                .put("schema", SCHEMA)
                .put("kept", draft.kept().toString());
        tree.put("saved", draft.saved());
        tree.set("begun", RecordFiles.json(draft.begun()));
        tree.set("written", tree(draft.written()));
        SafeFile.write(file(draft.begun().id()), JsonFiles.text(tree).getBytes(StandardCharsets.UTF_8));
    }

    /** Forgets what was kept of an entry. */
    public void drop(String entryId) throws IOException {
        Slow.work("forgetting a draft");
        if (Files.exists(file(entryId))) {
            SafeFile.delete(file(entryId));
        }
    }

    /** Everything kept that can be read, the newest first. What cannot be read stays where it is. */
    public List<KeptDraft> all() throws IOException {
        Slow.work("looking for drafts");
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        SafeFile.sweep(folder);
        var drafts = new ArrayList<KeptDraft>();
        try (Stream<Path> files = Files.list(folder)) {
            for (var file :
                    files.filter(each -> each.toString().endsWith(ENDING)).toList()) {
                try {
                    drafts.add(read(JsonFiles.read(file)));
                } catch (Unreadable | JsonProcessingException | DateTimeException damaged) {
                    LOGGER.log(System.Logger.Level.WARNING, "draft " + file + " cannot be read", damaged);
                }
            }
        }
        drafts.sort(Comparator.comparing(KeptDraft::kept).reversed());
        return drafts;
    }

    private static KeptDraft read(ObjectNode tree) throws Unreadable, JsonProcessingException {
        if (!(tree.get("begun") instanceof ObjectNode begun) || !(tree.get("written") instanceof ObjectNode written)) {
            throw new Unreadable("it holds no draft");
        }
        var entry = FileKind.ENTRY.read(begun);
        return new KeptDraft(
                LocalDateTime.parse(tree.path("kept").asText()),
                entry,
                tree.path("saved").asBoolean(),
                draft(tree(EntryDraft.of(entry)).setAll(written)));
    }

    /** A draft field by field. */
    static ObjectNode tree(EntryDraft draft) {
        return MAPPER.valueToTree(draft);
    }

    /** The draft that such fields make. */
    static EntryDraft draft(JsonNode tree) throws JsonProcessingException {
        return MAPPER.treeToValue(tree, EntryDraft.class);
    }

    private Path file(String entryId) {
        return folder.resolve(entryId + ENDING);
    }
}
