package planewright.app.calc;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.pf4j.PluginState;
import org.pf4j.PluginWrapper;
import planewright.api.Api;
import planewright.api.calculator.Calculator;
import planewright.app.journal.Slow;

/** The calculators of all plugins that can be used, and why others cannot. One sick plugin never hides another. */
public final class PluginHost implements AutoCloseable {
    private final List<PluginProblem> problems = new ArrayList<>();
    private final Map<String, Described> calculators = new LinkedHashMap<>();
    private final IsolatingPluginManager manager;

    private PluginHost(Path unpackFolder) {
        manager = new IsolatingPluginManager(unpackFolder, Api.VERSION);
    }

    /**
     * Finds and starts plugins.
     *
     * @param places plugin zips, and folders that hold some
     * @param unpackFolder where they are unpacked; a folder of the user's data
     */
    public static PluginHost open(List<Path> places, Path unpackFolder) {
        Slow.work("starting plugins");
        var host = new PluginHost(unpackFolder);
        host.packages(places).forEach(plugin -> host.start(plugin, unpackFolder));
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

    @Override
    public void close() {
        manager.getPlugins().stream().map(PluginWrapper::getPluginId).toList().forEach(manager::unloadPlugin);
    }

    private List<PluginPackage> packages(List<Path> places) {
        var byId = new LinkedHashMap<String, PluginPackage>();
        for (var zip : zips(places)) {
            try {
                var plugin = PluginPackage.of(zip);
                var first = byId.putIfAbsent(plugin.id(), plugin);
                if (first != null) {
                    throw new Faulty("its plugin.id '" + plugin.id() + "' is also that of " + first.file()
                            + ", which was taken; remove one of the two");
                }
            } catch (Faulty faulty) {
                problems.add(new PluginProblem(zip, faulty.getMessage()));
            }
        }
        return List.copyOf(byId.values());
    }

    private List<Path> zips(List<Path> places) {
        var zips = new ArrayList<Path>();
        for (var place : places) {
            if (Files.isDirectory(place)) {
                try (Stream<Path> files = Files.list(place)) {
                    files.filter(file -> file.getFileName().toString().endsWith(".zip"))
                            .sorted()
                            .forEach(zips::add);
                } catch (IOException unreadable) {
                    problems.add(new PluginProblem(place, "the folder cannot be read: " + unreadable.getMessage()));
                }
            } else {
                zips.add(place);
            }
        }
        return zips;
    }

    private void start(PluginPackage plugin, Path unpackFolder) {
        try {
            var id = manager.loadPlugin(plugin.unpackInto(unpackFolder));
            var wrapper = manager.getPlugin(id);
            requireClass(wrapper);
            var state = manager.startPlugin(id);
            if (state != PluginState.STARTED) {
                throw new Faulty(reason(wrapper, plugin));
            }
            describe(plugin);
        } catch (Faulty faulty) {
            problems.add(new PluginProblem(plugin.file(), faulty.getMessage()));
        } catch (Exception | Error failure) {
            problems.add(new PluginProblem(plugin.file(), "it cannot be started: " + words(failure)));
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

    private void describe(PluginPackage plugin) throws Faulty {
        var found = new ArrayList<String>();
        for (Calculator<?, ?> calculator : manager.getExtensions(Calculator.class, plugin.id())) {
            found.add(calculator.getClass().getName());
            try {
                add(Described.of(calculator, plugin.id() + " " + plugin.version()));
            } catch (Faulty faulty) {
                problems.add(new PluginProblem(plugin.file(), faulty.getMessage()));
            } catch (RuntimeException | Error failure) {
                problems.add(new PluginProblem(
                        plugin.file(), calculator.getClass().getName() + " cannot be described: " + words(failure)));
            }
        }
        var named = manager.getExtensionClassNames(plugin.id());
        if (named.isEmpty()) {
            throw new Faulty("it brings no calculator; a calculator's class is marked @Extension");
        }
        for (var name : named) {
            if (!found.contains(name)) {
                var cause = manager.failedExtensions().get(name);
                problems.add(new PluginProblem(
                        plugin.file(),
                        "its calculator " + name + " cannot be made" + (cause == null ? "" : ": " + words(cause))));
            }
        }
    }

    private void add(Described described) throws Faulty {
        var first = calculators.putIfAbsent(described.id(), described);
        if (first != null) {
            throw new Faulty("its calculator '" + described.id() + "' has the id of one of plugin " + first.plugin());
        }
    }

    private static String words(Throwable failure) {
        var root = failure;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        return root.getClass().getSimpleName() + (root.getMessage() == null ? "" : ", " + root.getMessage());
    }
}
