package planewright.app.ui.common;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.Stream;
import planewright.app.journal.Slow;
import planewright.app.store.UserFolders;

/**
 * What the window remembers from one time to the next, as lines {@code name=value}: light or dark, how large words are, the units of
 * the builder's choice. It is no loss if it cannot.
 */
public final class WindowMemory {
    private static final String LOOK = "look";
    private static final String SYSTEM = "system-look";
    private static final String TEXT_SIZE = "text-size";
    private static final String DARK = "dark";
    private static final String LIGHT = "light";

    private final Path file;
    private final Map<String, String> values = new ConcurrentSkipListMap<>();

    private WindowMemory(Path file) {
        this.file = file;
    }

    /** What was remembered; nothing where that cannot be read. */
    public static WindowMemory read(UserFolders user) {
        Slow.work("reading the window's memory");
        var memory = new WindowMemory(user.data().resolve("window.txt"));
        try {
            for (var line : Files.readAllLines(memory.file)) {
                int end = line.indexOf('=');
                if (end > 0) {
                    memory.put(line.substring(0, end), line.substring(end + 1));
                }
            }
        } catch (IOException notRemembered) {
            memory.values.clear();
        }
        return memory;
    }

    /** Light, dark, or as the system is; that, where nothing was chosen. */
    public LookChoice look() {
        return get(LOOK).flatMap(WindowMemory::choice).orElse(LookChoice.AS_SYSTEM);
    }

    public void setLook(LookChoice choice) {
        put(LOOK, choice.name().toLowerCase(Locale.ROOT));
    }

    /** How the window begins: where it is to be as the system, it is as that was last. */
    public Look.Style style() {
        boolean dark = look() == LookChoice.DARK
                || look() == LookChoice.AS_SYSTEM
                        && get(SYSTEM).filter(DARK::equals).isPresent();
        return new Look.Style(
                dark, get(TEXT_SIZE).flatMap(WindowMemory::percent).orElse(Look.Style.USUAL));
    }

    /** Keeps how large words are. */
    public void setTextSize(int percent) {
        put(TEXT_SIZE, String.valueOf(percent));
    }

    /** Keeps how the system was seen. */
    public void setSystemDark(boolean dark) {
        put(SYSTEM, dark ? DARK : LIGHT);
    }

    private static Optional<LookChoice> choice(String word) {
        return Stream.of(LookChoice.values())
                .filter(choice -> choice.name().equalsIgnoreCase(word))
                .findFirst();
    }

    private static Optional<Integer> percent(String word) {
        return word.matches("\\d{1,3}") ? Optional.of(Integer.valueOf(word)) : Optional.empty();
    }

    /** What was last put under a name. */
    public Optional<String> get(String name) {
        return Optional.ofNullable(values.get(name));
    }

    /** Keeps a value for as long as the window is open; {@link #write()} keeps it longer. */
    public void put(String name, String value) {
        values.put(name, value);
    }

    /** Keeps all of it on disk. */
    public synchronized void write() throws IOException {
        Slow.work("writing the window's memory");
        Files.createDirectories(file.getParent());
        Files.write(
                file,
                values.entrySet().stream()
                        .map(each -> each.getKey() + "=" + each.getValue())
                        .toList());
    }
}
