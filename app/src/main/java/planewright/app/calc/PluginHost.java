package planewright.app.calc;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.pf4j.PluginState;
import org.pf4j.PluginWrapper;
import planewright.api.Api;
import planewright.api.calculator.Calculator;
import planewright.app.calc.ListedPlugin.State;
import planewright.app.journal.Slow;

/** The calculators of all plugins that can be used, and why others cannot. One sick plugin never hides another. */
public final class PluginHost implements AutoCloseable {
    private final PluginShelf shelf;
    private final PluginChoices choices;
    private final List<PluginProblem> problems = new ArrayList<>();
    private final List<ListedPlugin> listed = new ArrayList<>();
    private final Map<String, Described> calculators = new LinkedHashMap<>();
    private final IsolatingPluginManager manager;

    private PluginHost(PluginShelf shelf) {
        this.shelf = shelf;
        this.choices = shelf.said();
        this.manager = new IsolatingPluginManager(shelf.unpacked(), Api.VERSION);
    }

    /**
     * Finds and starts plugins: those that came with the program, then those that the user has added and trusts.
     *
     * @param shipped plugin zips, and folders that hold some
     * @param user the folder of the user's data, in which added plugins lie and all are unpacked
     */
    public static PluginHost open(List<Path> shipped, Path user) {
        Slow.work("starting plugins");
        var host = new PluginHost(new PluginShelf(user));
        host.begin(shipped);
        return host;
    }

    /** In order of their ids. */
    public List<Described> calculators() {
        return calculators.values().stream()
                .sorted(Comparator.comparing(Described::id))
                .toList();
    }

    public Optional<Described> calculator(String id) {
        return Optional.ofNullable(calculators.get(id));
    }

    /** What cannot be used, and why. */
    public List<PluginProblem> problems() {
        return List.copyOf(problems);
    }

    /** All plugins that were found, in the order in which they were. */
    public List<ListedPlugin> plugins() {
        return List.copyOf(listed);
    }

    @Override
    public void close() {
        manager.unloadAll();
    }

    /** A zip that was found, and whether it came with the program. */
    private record Found(Path zip, boolean shipped) {}

    /**
     * A plugin on its way.
     *
     * @param plugin what its zip says; empty where it says nothing
     * @param reasons why it, or a calculator of it, does not run
     */
    private record Candidate(Found found, Optional<PluginPackage> plugin, State state, List<String> reasons) {}

    /**
     * Files are read by many threads, and calculators describe themselves on threads of their own at once. Between the two the library
     * loads and starts one plugin after the other, for it bears no more; it looks through all of them whenever one more has come.
     */
    private void begin(List<Path> shipped) {
        var byId = new HashMap<String, PluginPackage>();
        var read = found(shipped).parallelStream().map(PluginHost::read).toList();
        var candidates = read.stream().map(each -> start(each, byId)).toList();
        var asked = candidates.stream().map(this::ask).toList();
        for (int i = 0; i < candidates.size(); i++) {
            var candidate = candidates.get(i);
            var brought =
                    asked.get(i).map(answer -> calculators(candidate, answer)).orElse(List.of());
            candidate
                    .reasons()
                    .forEach(reason ->
                            problems.add(new PluginProblem(candidate.found().zip(), reason)));
            listed.add(listed(candidate, brought));
        }
    }

    private static Candidate read(Found found) {
        try {
            return new Candidate(found, Optional.of(PluginPackage.of(found.zip())), State.RUNS, new ArrayList<>());
        } catch (Faulty faulty) {
            return new Candidate(found, Optional.empty(), State.REFUSED, List.of(faulty.getMessage()));
        }
    }

    /** The candidate as it stands once it was started, or was not. */
    private Candidate start(Candidate read, Map<String, PluginPackage> byId) {
        if (read.plugin().isEmpty()) {
            return read;
        }
        var plugin = read.plugin().get();
        try {
            var first = byId.putIfAbsent(plugin.id(), plugin);
            if (first != null) {
                throw new Faulty(
                        "its plugin.id '{0}' is also that of {1}, which was taken; remove one of the two",
                        plugin.id(), first.file());
            }
            if (choices.off().contains(plugin.id())) {
                return new Candidate(read.found(), read.plugin(), State.OFF, List.of());
            }
            if (!read.found().shipped()) {
                requireTrust(plugin);
            }
            start(plugin);
            return read;
        } catch (Faulty faulty) {
            return new Candidate(read.found(), read.plugin(), State.REFUSED, List.of(faulty.getMessage()));
        }
    }

    private Optional<PluginThread<List<Described>>> ask(Candidate candidate) {
        return candidate
                .plugin()
                .filter(plugin -> candidate.state() == State.RUNS)
                .map(plugin -> PluginThread.begin(plugin, () -> describe(plugin, candidate.reasons())));
    }

    /** Takes the calculators that an answer brings; the ids of those that were taken. */
    private List<String> calculators(Candidate candidate, PluginThread<List<Described>> answer) {
        var brought = new ArrayList<String>();
        try {
            for (var described : answer.result()) {
                var first = calculators.putIfAbsent(described.id(), described);
                if (first == null) {
                    brought.add(described.id());
                } else {
                    candidate
                            .reasons()
                            .add(PluginWords.say(
                                    "its calculator '{0}' has the id of one of plugin {1}",
                                    described.id(), first.plugin()));
                }
            }
        } catch (Faulty faulty) {
            candidate.reasons().add(faulty.getMessage());
        }
        return brought;
    }

    private static ListedPlugin listed(Candidate candidate, List<String> brought) {
        var plugin = candidate.plugin();
        return new ListedPlugin(
                candidate.found().zip(),
                plugin.map(PluginPackage::id).orElse(""),
                plugin.map(PluginPackage::version).orElse(""),
                plugin.map(PluginPackage::description).orElse(""),
                plugin.map(each -> each.description(PluginWords.locale())).orElse(""),
                plugin.map(PluginPackage::provider).orElse(""),
                plugin.map(PluginPackage::requires).orElse(""),
                plugin.map(PluginPackage::hash).orElse(""),
                candidate.found().shipped(),
                brought.isEmpty() && candidate.state() == State.RUNS ? State.REFUSED : candidate.state(),
                candidate.reasons(),
                brought);
    }

    private void requireTrust(PluginPackage plugin) throws Faulty {
        var trusted = choices.trusted(plugin.id());
        if (trusted.isEmpty()) {
            throw new Faulty("nobody has said that it is trusted; add it to be asked");
        }
        if (!trusted.get().equals(plugin.hash())) {
            throw new Faulty(
                    "its content is not what was trusted: its SHA-256 is {0}, trusted was {1}; add it again to be asked",
                    plugin.hash(), trusted.get());
        }
    }

    private List<Found> found(List<Path> shipped) {
        var found = new ArrayList<Found>();
        for (var place : shipped) {
            if (Files.isDirectory(place)) {
                try (Stream<Path> files = Files.list(place)) {
                    files.filter(file -> file.getFileName().toString().endsWith(".zip"))
                            .sorted()
                            .forEach(zip -> found.add(new Found(zip, true)));
                } catch (IOException unreadable) {
                    problems.add(new PluginProblem(
                            place, PluginWords.say("the folder cannot be read: {0}", unreadable.getMessage())));
                }
            } else {
                found.add(new Found(place, true));
            }
        }
        try {
            shelf.zips().forEach(zip -> found.add(new Found(zip, false)));
        } catch (IOException unreadable) {
            problems.add(new PluginProblem(
                    shelf.unpacked(), PluginWords.say("added plugins cannot be listed: {0}", unreadable)));
        }
        return found;
    }

    private void start(PluginPackage plugin) throws Faulty {
        PluginThread.begin(plugin, () -> {
                    var id = manager.loadPlugin(plugin.unpackInto(shelf.unpacked()));
                    var wrapper = manager.getPlugin(id);
                    requireClass(wrapper);
                    if (manager.startPlugin(id) != PluginState.STARTED) {
                        throw new Faulty(reason(wrapper, plugin));
                    }
                    return id;
                })
                .result();
    }

    private static void requireClass(PluginWrapper wrapper) throws Faulty {
        var name = wrapper.getDescriptor().getPluginClass();
        try {
            if (name != null && !name.isBlank() && wrapper.getPluginState() != PluginState.DISABLED) {
                wrapper.getPluginClassLoader().loadClass(name);
            }
        } catch (ClassNotFoundException | LinkageError missing) {
            throw new Faulty("its plugin.class '{0}' cannot be loaded: {1}", name, PluginThread.words(missing));
        }
    }

    private static String reason(PluginWrapper wrapper, PluginPackage plugin) {
        if (wrapper.getPluginState() == PluginState.DISABLED) {
            return PluginWords.say("it asks for API {0}; this program has {1}", plugin.requires(), Api.VERSION);
        }
        var cause = wrapper.getFailedException();
        return cause == null
                ? PluginWords.say("it cannot be started")
                : PluginWords.say("it cannot be started: {0}", PluginThread.words(cause));
    }

    /** The first to ask lets the library look through all plugins; the others wait for that. */
    private List<String> named(PluginPackage plugin) {
        synchronized (manager) {
            return List.copyOf(manager.getExtensionClassNames(plugin.id()));
        }
    }

    /**
     * Describes its calculators; what is wrong with some of them does not keep the others away. Those that this program has found sound
     * before are not read through again.
     */
    private List<Described> describe(PluginPackage plugin, List<String> wrong) throws Faulty {
        var found = new ArrayList<Described>();
        var made = new ArrayList<String>();
        var named = named(plugin);
        boolean known = plugin.isKnownSound(shelf.unpacked());
        for (Calculator<?, ?> calculator : manager.getExtensions(Calculator.class, plugin.id())) {
            made.add(calculator.getClass().getName());
            try {
                var from = plugin.id() + " " + plugin.version();
                found.add(known ? Described.named(calculator, from) : Described.of(calculator, from));
            } catch (Faulty faulty) {
                wrong.add(faulty.getMessage());
            } catch (RuntimeException | Error failure) {
                wrong.add(PluginWords.say(
                        "{0} cannot be described: {1}", calculator.getClass().getName(), PluginThread.words(failure)));
            }
        }
        if (named.isEmpty()) {
            throw new Faulty("it brings no calculator; a calculator's class is marked @Extension");
        }
        for (var name : named) {
            if (!made.contains(name)) {
                var cause = manager.failedExtensions().get(name);
                wrong.add(
                        cause == null
                                ? PluginWords.say("its calculator {0} cannot be made", name)
                                : PluginWords.say(
                                        "its calculator {0} cannot be made: {1}", name, PluginThread.words(cause)));
            }
        }
        if (!known && wrong.isEmpty()) {
            plugin.rememberSound(shelf.unpacked());
        }
        return found;
    }
}
