package planewright.app.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import planewright.app.calc.ListedPlugin;
import planewright.app.calc.PluginHost;
import planewright.app.calc.PluginShelf;
import planewright.app.store.JsonFiles;

/** Words for the plugins that bring calculators. */
@Command(name = "plugins", description = "Which plugins there are; add, remove, switch off and begin one.")
final class PluginsCommand extends Group {
    static CommandLine line(Desk desk) {
        return new CommandLine(new PluginsCommand())
                .addSubcommand(new Listing(desk))
                .addSubcommand(new Add(desk))
                .addSubcommand(new Remove(desk))
                .addSubcommand("on", new Switch(desk, true))
                .addSubcommand("off", new Switch(desk, false))
                .addSubcommand(new NewPluginCommand(desk));
    }

    @Command(name = "list", description = "List all plugins, whether they run, and why not.")
    private static final class Listing implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private PlainOptions common;

        Listing(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() {
            try (var host = host(desk)) {
                if (common.json()) {
                    json(host);
                } else {
                    tell(host);
                }
            }
            return 0;
        }

        private void json(PluginHost host) {
            var node = JsonFiles.object();
            var array = node.putArray("plugins");
            for (var each : host.plugins()) {
                var plugin = array.addObject()
                        .put("id", each.id())
                        .put("version", each.version())
                        .put("description", each.description())
                        .put("provider", each.provider())
                        .put("needsApi", each.requires())
                        .put("file", each.file().toString())
                        .put("sha256", each.hash())
                        .put("shipped", each.shipped())
                        .put("state", word(each.state()));
                each.calculators().forEach(plugin.putArray("calculators")::add);
                each.reasons().forEach(plugin.putArray("reasons")::add);
            }
            desk.json(node);
        }

        private void tell(PluginHost host) {
            desk.table(
                    List.of(false, false, false, false, false),
                    host.plugins().stream()
                            .map(each -> List.of(
                                    word(each.state()),
                                    each.id().isEmpty()
                                            ? each.file().getFileName().toString()
                                            : each.id(),
                                    each.version(),
                                    each.shipped() ? "came with the program" : "added by you",
                                    each.calculators().isEmpty()
                                            ? each.description()
                                            : String.join(", ", each.calculators())))
                            .toList());
            host.problems().forEach(each -> desk.out().println(each.file() + ": " + each.reason()));
        }
    }

    @Command(
            name = "add",
            description = {
                "Add a plugin from its zip, or replace the one of the same id.",
                "A plugin is a program: it can do whatever you can do on this computer. Nothing of it runs before you have"
                        + " said that you trust it, and nothing once its content has changed."
            })
    private static final class Add implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private PlainOptions common;

        @Parameters(paramLabel = "FILE", description = "The plugin's zip.")
        private Path file;

        @Option(
                names = "--trust",
                paramLabel = "SHA256",
                description = "Trust this content without being asked; for scripts.")
        private Optional<String> trust = Optional.empty();

        Add(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            var offer = PluginShelf.look(file);
            if (trust.isPresent()) {
                if (!trust.get().strip().equalsIgnoreCase(offer.hash())) {
                    throw CommandFailed.words("--trust is '" + trust.get() + "', but the SHA-256 of " + file + " is "
                            + offer.hash() + "; accepted: that, if you trust it");
                }
            } else if (!asked(offer)) {
                throw CommandFailed.work("not added: only the answer 'trust' adds a plugin");
            }
            new PluginShelf(desk.settings().user().data()).add(offer);
            return report(offer);
        }

        private boolean asked(PluginShelf.Offer offer) throws IOException {
            var out = desk.out();
            out.println("Plugin     " + offer.id() + " " + offer.version());
            out.println("what       " + said(offer.description()));
            out.println("made by    " + said(offer.provider()));
            out.println("needs API  " + offer.requires());
            out.println("SHA-256    " + offer.hash());
            out.println("A plugin is a program: it can do whatever you can do on this computer, to your journal too.");
            out.print("Do you trust whoever made it, and is this what they gave you? Type 'trust' to add it: ");
            out.flush();
            var answer = new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())).readLine();
            return answer != null && answer.strip().toLowerCase(Locale.ROOT).equals("trust");
        }

        private static String said(String text) {
            return text.isBlank() ? "it does not say" : text;
        }

        private int report(PluginShelf.Offer offer) {
            try (var host = host(desk)) {
                var added = host.plugins().stream()
                        .filter(each -> each.hash().equals(offer.hash()))
                        .findFirst();
                var reasons = added.map(ListedPlugin::reasons).orElse(List.of());
                if (added.isEmpty() || added.get().calculators().isEmpty()) {
                    throw CommandFailed.work("plugin " + offer.id() + " was added, but does not run: "
                            + (reasons.isEmpty() ? "it was not found" : String.join("; ", reasons)));
                }
                var brought = added.get().calculators();
                if (common.json()) {
                    var node = JsonFiles.object().put("id", offer.id()).put("sha256", offer.hash());
                    brought.forEach(node.putArray("calculators")::add);
                    desk.json(node);
                } else {
                    desk.out()
                            .println("Added plugin " + offer.id() + " " + offer.version() + ", which brings "
                                    + String.join(", ", brought));
                    reasons.forEach(desk.out()::println);
                }
            }
            return 0;
        }
    }

    @Command(name = "remove", description = "Remove a plugin that you have added.")
    private static final class Remove implements Callable<Integer> {
        private final Desk desk;

        @Mixin
        private PlainOptions common;

        @Parameters(paramLabel = "ID", description = "Such as 'plugins list' tells.")
        private String id;

        Remove(Desk desk) {
            this.desk = desk;
        }

        @Override
        public Integer call() throws IOException {
            new PluginShelf(desk.settings().user().data()).remove(id);
            done(desk, common, id, "Removed plugin " + id);
            return 0;
        }
    }

    @Command(description = "Switch a plugin on or off.")
    private static final class Switch implements Callable<Integer> {
        private final Desk desk;
        private final boolean on;

        @Mixin
        private PlainOptions common;

        @Parameters(paramLabel = "ID", description = "Such as 'plugins list' tells.")
        private String id;

        Switch(Desk desk, boolean on) {
            this.desk = desk;
            this.on = on;
        }

        @Override
        public Integer call() throws IOException {
            try (var host = host(desk)) {
                var ids = host.plugins().stream().map(ListedPlugin::id).toList();
                if (!ids.contains(id)) {
                    throw CommandFailed.words("plugin '" + id + "' is not there; accepted: " + String.join(", ", ids));
                }
            }
            new PluginShelf(desk.settings().user().data()).switchTo(id, on);
            done(desk, common, id, "Switched plugin " + id + (on ? " on" : " off"));
            return 0;
        }
    }

    private static void done(Desk desk, PlainOptions common, String id, String words) {
        if (common.json()) {
            desk.json(JsonFiles.object().put("id", id));
        } else {
            desk.out().println(words);
        }
    }

    private static PluginHost host(Desk desk) {
        return PluginHost.open(
                desk.settings().pluginPlaces(), desk.settings().user().data());
    }

    private static String word(ListedPlugin.State state) {
        return state.name().toLowerCase(Locale.ROOT);
    }
}
