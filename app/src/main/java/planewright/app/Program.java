package planewright.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import planewright.app.calc.PluginHost;
import planewright.app.calc.PluginShelf;
import planewright.app.index.SearchIndex;
import planewright.app.journal.OpenJournal;
import planewright.app.pictures.PictureShelf;
import planewright.app.store.Drafts;
import planewright.app.store.JournalFolder;
import planewright.app.store.UserFolders;

/** An open journal and what works on it. Index and plugins are opened when somebody first asks for them. */
public final class Program implements AutoCloseable {
    private static final Duration INDEX_AGAIN = Duration.ofMinutes(1);

    private final JournalFolder folder;
    private final UserFolders user;
    private final List<Path> pluginPlaces;
    private final Clock clock;
    private final ExecutorService background = Executors.newFixedThreadPool(2, work -> {
        var thread = new Thread(work, "planewright-background");
        thread.setDaemon(true);
        return thread;
    });
    private final List<SearchIndex.Progress> indexing = new CopyOnWriteArrayList<>();
    private final List<Runnable> onPlugins = new CopyOnWriteArrayList<>();
    private CompletableFuture<SearchIndex> index;
    private Instant indexAsked = Instant.EPOCH;
    private CompletableFuture<PluginHost> plugins;

    private Program(JournalFolder folder, UserFolders user, List<Path> pluginPlaces, Clock clock) {
        this.folder = folder;
        this.user = user;
        this.pluginPlaces = List.copyOf(pluginPlaces);
        this.clock = clock;
    }

    /**
     * Opens a journal; reads files, so not on the event thread.
     *
     * @param pluginPlaces plugin zips, and folders that hold some
     * @throws IOException if the journal cannot be opened; the message says why
     */
    public static Program open(Path journal, UserFolders user, List<Path> pluginPlaces, Clock clock)
            throws IOException {
        return new Program(JournalFolder.open(journal, user), user, pluginPlaces, clock);
    }

    /**
     * As {@link #open}, with what was known of the entries when the journal was open last; {@link #look} takes in what has
     * changed since. Where nothing was known, everything is read first.
     *
     * @param progress hears how far that reading has come
     */
    public static Program openAsKnown(
            Path journal, UserFolders user, List<Path> pluginPlaces, Clock clock, JournalFolder.Progress progress)
            throws IOException {
        CompletableFuture.runAsync(SearchIndex::warmUp);
        var opened = new Program(JournalFolder.openAsKnown(journal, user), user, pluginPlaces, clock);
        try {
            if (!opened.folder.isKnown()) {
                opened.folder.look(progress);
            }
            return opened;
        } catch (IOException | RuntimeException failure) {
            opened.close();
            throw failure;
        }
    }

    /** Takes in what other programs do to the journal's files from now on. */
    public void watch() throws IOException {
        folder.watch();
    }

    /** Takes in what other programs have done to the journal's files. */
    public void look() throws IOException {
        folder.look((done, all) -> {});
    }

    public JournalFolder folder() {
        return folder;
    }

    public OpenJournal journal() {
        return folder.journal();
    }

    public PictureShelf pictures() {
        return folder.pictures();
    }

    /** What was half-written when the program last ended. */
    public Drafts drafts() {
        return Drafts.of(folder, user);
    }

    /** Where the user's own files go. */
    public UserFolders user() {
        return user;
    }

    public Clock clock() {
        return clock;
    }

    /** The search index, opened or made in the background; where it could not be, tried again once a minute has passed. */
    public synchronized CompletableFuture<SearchIndex> index() {
        if (index == null || index.isCompletedExceptionally() && isPast(INDEX_AGAIN)) {
            indexAsked = clock.instant();
            index = CompletableFuture.supplyAsync(this::openIndex, background);
        }
        return index;
    }

    /** A clock that jumped counts as well. */
    private boolean isPast(Duration pause) {
        return Duration.between(indexAsked, clock.instant()).abs().compareTo(pause) >= 0;
    }

    /** The plugins, found and started in the background. */
    public synchronized CompletableFuture<PluginHost> plugins() {
        if (plugins == null) {
            plugins = CompletableFuture.supplyAsync(this::openPlugins, background);
        }
        return plugins;
    }

    private PluginHost openPlugins() {
        return PluginHost.open(pluginPlaces, user.data());
    }

    /** The plugins that the user has added, and what is trusted. After a change there, {@link #reopenPlugins}. */
    public PluginShelf pluginShelf() {
        return new PluginShelf(user.data());
    }

    /** Finds and starts plugins anew, and lets those go that ran; a calculation under way in one of them may fail. */
    public void reopenPlugins() {
        PluginHost before;
        synchronized (this) {
            before = plugins().join();
            plugins = CompletableFuture.completedFuture(openPlugins());
        }
        before.close();
        onPlugins.forEach(Runnable::run);
    }

    /** Somebody hears when there are other plugins, on the thread that opened them. */
    public void onPlugins(Runnable listener) {
        onPlugins.add(listener);
    }

    /** Waits for index and plugins if they are just being opened, then closes them and the journal. */
    @Override
    public synchronized void close() throws IOException {
        background.shutdown();
        try {
            opened(plugins).ifPresent(PluginHost::close);
            var found = opened(index);
            if (found.isPresent()) {
                found.get().close();
            }
        } finally {
            folder.close();
        }
    }

    /** What was opened; empty where nobody asked for it, or it could not be. */
    private static <T> Optional<T> opened(CompletableFuture<T> asked) {
        return asked == null
                ? Optional.empty()
                : asked.handle((opened, failure) -> Optional.ofNullable(opened)).join();
    }

    /** Somebody hears how far the search index has come while it is opened or made. */
    public void onIndexing(SearchIndex.Progress listener) {
        indexing.add(listener);
    }

    private SearchIndex openIndex() {
        try {
            return SearchIndex.open(
                    user.cacheOf(folder.id(), folder.folder()),
                    folder.journal(),
                    (done, all) -> indexing.forEach(listener -> listener.at(done, all)));
        } catch (IOException failure) {
            throw new UncheckedIOException("the search index cannot be opened: " + failure.getMessage(), failure);
        }
    }
}
