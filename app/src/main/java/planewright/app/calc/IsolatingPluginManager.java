package planewright.app.calc;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.pf4j.CompoundPluginDescriptorFinder;
import org.pf4j.DefaultExtensionFactory;
import org.pf4j.DefaultPluginLoader;
import org.pf4j.DefaultPluginManager;
import org.pf4j.ExtensionFactory;
import org.pf4j.PluginClassLoader;
import org.pf4j.PluginDescriptor;
import org.pf4j.PluginDescriptorFinder;
import org.pf4j.PluginLoader;
import org.pf4j.PluginRepository;
import org.pf4j.PluginRuntimeException;
import org.pf4j.PluginState;
import org.pf4j.PluginStateEvent;
import org.pf4j.PluginWrapper;
import org.pf4j.PropertiesPluginDescriptorFinder;

/** PF4J over folders that are unpacked already; the API's classes always come from the program, and only they do. */
final class IsolatingPluginManager extends DefaultPluginManager {
    private final ClassLoader view = new ProgramView();
    private final Map<String, Throwable> failedExtensions = new ConcurrentHashMap<>();

    IsolatingPluginManager(Path root, String apiVersion) {
        super(root);
        setSystemVersion(apiVersion);
    }

    /** Why extensions could not be made, by class name. */
    Map<String, Throwable> failedExtensions() {
        return failedExtensions;
    }

    @Override
    protected PluginDescriptorFinder createPluginDescriptorFinder() {
        return new CompoundPluginDescriptorFinder().add(new PropertiesPluginDescriptorFinder());
    }

    /** Plugins are loaded one by one; nothing is looked for. */
    @Override
    protected PluginRepository createPluginRepository() {
        return new PluginRepository() {
            @Override
            public List<Path> getPluginPaths() {
                return List.of();
            }

            @Override
            public boolean deletePluginPath(Path path) {
                return false;
            }
        };
    }

    /**
     * What was loaded may be started. The library would put all plugins in the order of their dependencies whenever one more has come; but
     * a plugin that depends on another is refused before it gets here.
     */
    @Override
    protected void resolvePlugins() {
        for (var plugin : List.copyOf(unresolvedPlugins)) {
            var before = plugin.getPluginState();
            if (!before.isDisabled()) {
                plugin.setPluginState(PluginState.RESOLVED);
            }
            unresolvedPlugins.remove(plugin);
            resolvedPlugins.add(plugin);
            firePluginStateEvent(new PluginStateEvent(this, plugin, before));
        }
    }

    /** Lets all go; for that the library wants to know what depends on what. */
    void unloadAll() {
        super.resolvePlugins();
        getPlugins().stream().map(PluginWrapper::getPluginId).toList().forEach(this::unloadPlugin);
    }

    @Override
    protected PluginLoader createPluginLoader() {
        return new DefaultPluginLoader(this) {
            @Override
            protected PluginClassLoader createPluginClassLoader(Path path, PluginDescriptor descriptor) {
                return new ProgramFirst(descriptor);
            }
        };
    }

    @Override
    protected ExtensionFactory createExtensionFactory() {
        return new DefaultExtensionFactory() {
            @Override
            public <T> T create(Class<T> extension) {
                try {
                    return super.create(extension);
                } catch (RuntimeException | Error failure) {
                    failedExtensions.put(extension.getName(), failure);
                    throw new PluginRuntimeException(failure);
                }
            }
        };
    }

    private final class ProgramFirst extends PluginClassLoader {
        ProgramFirst(PluginDescriptor descriptor) {
            super(IsolatingPluginManager.this, descriptor, view);
        }

        @Override
        public Class<?> loadClass(String name) throws ClassNotFoundException {
            return ProgramView.shows(name) ? getParent().loadClass(name) : super.loadClass(name);
        }
    }
}
