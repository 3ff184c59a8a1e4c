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
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.pf4j.PluginState;
import org.pf4j.PluginWrapper;
import planewright.api.Api;
import planewright.api.calculator.Calculator;
import planewright.app.calc.ListedPlugin.State;
import planewright.app.journal.Slow;

/** The calculators of all plugins that can be used, and why others cannot. One sick plugin never hides another. */
public final class PluginHost implements AutoCloseable {
    /** Longer than any plugin needs on a slow disk; one that never comes up keeps the others waiting no longer. */
    private static final int START_SECONDS = 10;

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
        manager.getPlugins().stream().map(PluginWrapper::getPluginId).toList().forEach(manager::unloadPlugin);
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

    /** All are started before the first is asked for its calculators: the library looks through all of them whenever one more has come. */
    private void begin(List<Path> shipped) {
        var byId = new HashMap<String, PluginPackage>();
        var candidates =
                found(shipped).stream().map(found -> candidate(found, byId)).toList();
        for (var candidate : candidates) {
            var brought = new ArrayList<String>();
            if (candidate.state() == State.RUNS) {
                brought.addAll(calculatorsOf(candidate));
            }
            candidate
                    .reasons()
                    .forEach(reason ->
                            problems.add(new PluginProblem(candidate.found().zip(), reason)));
            listed.add(listed(candidate, brought));
        }
    }

    private Candidate candidate(Found found, Map<String, PluginPackage> byId) {
        Optional<PluginPackage> plugin = Optional.empty();
        var reasons = new ArrayList<String>();
        try {
            plugin = Optional.of(PluginPackage.of(found.zip()));
            var first = byId.putIfAbsent(plugin.get().id(), plugin.get());
            if (first != null) {
                throw new Faulty("its plugin.id '" + plugin.get().id() + "' is also that of " + first.file()
                        + ", which was taken; remove one of the two");
            }
            if (choices.off().contains(plugin.get().id())) {
                return new Candidate(found, plugin, State.OFF, reasons);
            }
            if (!found.shipped()) {
                requireTrust(plugin.get());
            }
            start(plugin.get());
            return new Candidate(found, plugin, State.RUNS, reasons);
        } catch (Faulty faulty) {
            reasons.add(faulty.getMessage());
            return new Candidate(found, plugin, State.REFUSED, reasons);
        }
    }

    private List<String> calculatorsOf(Candidate candidate) {
        var plugin = candidate.plugin().orElseThrow();
        var brought = new ArrayList<String>();
        try {
            for (var described : inTime(plugin, () -> describe(plugin, candidate.reasons()))) {
                var first = calculators.putIfAbsent(described.id(), described);
                if (first == null) {
                    brought.add(described.id());
                } else {
                    candidate
                            .reasons()
                            .add("its calculator '" + described.id() + "' has the id of one of plugin "
                                    + first.plugin());
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
            throw new Faulty("its content is not what was trusted: its SHA-256 is " + plugin.hash() + ", trusted was "
                    + trusted.get() + "; add it again to be asked");
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
                    problems.add(new PluginProblem(place, "the folder cannot be read: " + unreadable.getMessage()));
                }
            } else {
                found.add(new Found(place, true));
            }
        }
        try {
            shelf.zips().forEach(zip -> found.add(new Found(zip, false)));
        } catch (IOException unreadable) {
            problems.add(new PluginProblem(shelf.unpacked(), "added plugins cannot be listed: " + unreadable));
        }
        return found;
    }

    private void start(PluginPackage plugin) throws Faulty {
        inTime(plugin, () -> {
            var id = manager.loadPlugin(plugin.unpackInto(shelf.unpacked()));
            var wrapper = manager.getPlugin(id);
            requireClass(wrapper);
            if (manager.startPlugin(id) != PluginState.STARTED) {
                throw new Faulty(reason(wrapper, plugin));
            }
            return id;
        });
    }

    /** Runs something of a plugin on a thread of its own, which is left alone if it does not come to an end. */
    private static <T> T inTime(PluginPackage plugin, Callable<T> work) throws Faulty {
        var task = new FutureTask<>(work);
        var thread = new Thread(task, "planewright-start-" + plugin.id());
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(START_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException never) {
            throw new Faulty("it has not come up within " + START_SECONDS + " s");
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new Faulty("the start was stopped");
        } catch (ExecutionException failure) {
            if (failure.getCause() instanceof Faulty faulty) {
                throw faulty;
            }
            throw new Faulty("it cannot be started: " + words(failure.getCause()));
        }
    }

    private static void requireClass(PluginWrapper wrapper) throws Faulty {
        var name = wrapper.getDescriptor().getPluginClass();
        try {
            if (name != null && !name.isBlank() && wrapper.getPluginState() != PluginState.DISABLED) {
                wrapper.getPluginClassLoader().loadClass(name);
            }
        } catch (ClassNotFoundException | LinkageError missing) {
            throw new Faulty("its plugin.class '" + name + "' cannot be loaded: " + words(missing));
        }
    }

    private static String reason(PluginWrapper wrapper, PluginPackage plugin) {
        if (wrapper.getPluginState() == PluginState.DISABLED) {
            return "it asks for API " + plugin.requires() + "; this program has " + Api.VERSION;
        }
        var cause = wrapper.getFailedException();
        return "it cannot be started" + (cause == null ? "" : ": " + words(cause));
    }

    /** Describes its calculators; what is wrong with some of them does not keep the others away. */
    private List<Described> describe(PluginPackage plugin, List<String> wrong) throws Faulty {
        var found = new ArrayList<Described>();
        var made = new ArrayList<String>();
        for (Calculator<?, ?> calculator : manager.getExtensions(Calculator.class, plugin.id())) {
            made.add(calculator.getClass().getName());
            try {
                found.add(Described.of(calculator, plugin.id() + " " + plugin.version()));
            } catch (Faulty faulty) {
                wrong.add(faulty.getMessage());
            } catch (RuntimeException | Error failure) {
                wrong.add(calculator.getClass().getName() + " cannot be described: " + words(failure));
            }
        }
        var named = manager.getExtensionClassNames(plugin.id());
        if (named.isEmpty()) {
            throw new Faulty("it brings no calculator; a calculator's class is marked @Extension");
        }
        for (var name : named) {
            if (!made.contains(name)) {
                var cause = manager.failedExtensions().get(name);
                wrong.add("its calculator " + name + " cannot be made" + (cause == null ? "" : ": " + words(cause)));
            }
        }
        return found;
    }

    private static String words(Throwable failure) {
        var root = failure;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        return root.getClass().getSimpleName() + (root.getMessage() == null ? "" : ", " + root.getMessage());
    }
}
