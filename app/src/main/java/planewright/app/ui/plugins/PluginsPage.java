package planewright.app.ui.plugins;

import java.awt.EventQueue;
import java.awt.Font;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import planewright.app.calc.ListedPlugin;
import planewright.app.calc.ListedPlugin.State;
import planewright.app.calc.PluginShelf;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Beside;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Files;
import planewright.app.ui.common.KeyboardKept;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.PictureIntake;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;

/** All plugins, each with what it brings or why it does not run; one is added here, once it is trusted. */
public final class PluginsPage extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final transient Background.Latest questions;
    private final Column column = new Column(10, 10);

    /**
     * @param back leads to where the builder came from
     */
    public PluginsPage(Workroom room, Runnable back) {
        super(new MigLayout("insets 8 0 0 0, gap 6, fill", "[grow,fill]", "[][grow,fill]"));
        this.room = room;
        this.questions = room.background().latest();
        setName("plugins");
        var bar = new JPanel(new MigLayout("insets 0 10 0 10", "[][grow][]"));
        bar.add(Buttons.of("plugins-back", Texts.BACK_TO_CALCULATORS.text(), back));
        bar.add(new JPanel());
        bar.add(Buttons.of(
                "add-plugin",
                Texts.PLUGIN_ADD.text(),
                () -> Files.chooseFile(this, "zip").ifPresent(this::offer)));
        add(bar, "wrap");
        add(column.scrolled(), "wmin 0");
        PictureIntake.on(column, files -> offer(files.get(0)), nothing -> {});
        refresh();
        room.program().onPlugins(() -> EventQueue.invokeLater(this::refresh));
        room.onChange(() -> {
            if (isShowing()) {
                refresh();
            }
        });
    }

    private void refresh() {
        questions.ask(() -> room.program().plugins().join().plugins(), this::show);
    }

    private void show(List<ListedPlugin> plugins) {
        KeyboardKept.in(column, column, () -> fill(plugins));
        column.revalidate();
        column.repaint();
    }

    private void fill(List<ListedPlugin> plugins) {
        column.removeAll();
        column.add(Words.quiet(Texts.PLUGINS_HINT.text()));
        plugins.forEach(each -> column.add(card(each)));
    }

    private Card card(ListedPlugin plugin) {
        var name = plugin.id().isEmpty() ? plugin.file().getFileName().toString() : plugin.id();
        var words = new JPanel(new Stack(3));
        words.setOpaque(false);
        words.add(Look.sized(Words.of(name + " " + plugin.version()), 1.1, Font.BOLD));
        words.add(state(plugin.state()));
        if (!plugin.told().isBlank()) {
            words.add(Words.of(plugin.told()));
        }
        if (!plugin.calculators().isEmpty()) {
            words.add(Words.quiet(Texts.PLUGIN_BRINGS.text(String.join(", ", plugin.calculators()))));
        }
        plugin.reasons().forEach(reason -> words.add(Words.coloured(reason, "stop")));
        words.add(Words.quiet(origin(plugin)));
        var card = new Card(new Beside(6, 0));
        card.setName("plugin-" + name);
        card.add(words);
        if (!plugin.id().isEmpty()) {
            card.add(onOff(plugin));
        }
        if (!plugin.shipped()) {
            card.add(remove(plugin));
        }
        return card;
    }

    private JButton onOff(ListedPlugin plugin) {
        var shelf = room.program().pluginShelf();
        boolean off = plugin.state() == State.OFF;
        return Buttons.of(
                off ? "switch-on" : "switch-off",
                (off ? Texts.SWITCH_ON : Texts.SWITCH_OFF).text(),
                () -> change(() -> {
                    shelf.switchTo(plugin.id(), off);
                    return (off ? Texts.PLUGIN_ON : Texts.PLUGIN_OFF).text(plugin.id());
                }));
    }

    /** A zip that cannot be read goes by the name of its file. */
    private JButton remove(ListedPlugin plugin) {
        var id = plugin.id().isEmpty()
                ? plugin.file().getFileName().toString().replaceFirst("[.]zip$", "")
                : plugin.id();
        return Buttons.plain(
                "remove-plugin",
                Texts.REMOVE.text(),
                () -> change(() -> {
                    room.program().pluginShelf().remove(id);
                    return Texts.PLUGIN_REMOVED.text(id);
                }));
    }

    private static JTextArea state(State state) {
        return switch (state) {
            case RUNS -> Words.of(Texts.PLUGIN_RUNS.text());
            case OFF -> Words.quiet(Texts.PLUGIN_IS_OFF.text());
            case REFUSED -> Words.coloured(Texts.PLUGIN_REFUSED.text(), "stop");
        };
    }

    private static String origin(ListedPlugin plugin) {
        var from = (plugin.shipped() ? Texts.PLUGIN_SHIPPED : Texts.PLUGIN_ADDED).text();
        var by = plugin.provider().isBlank() ? "" : " " + Texts.PLUGIN_BY.text(plugin.provider());
        return plugin.hash().isEmpty() ? from + by : from + by + " SHA-256 " + plugin.hash();
    }

    /** Shows what there is to know of a plugin, and adds it if the builder trusts it. */
    private void offer(Path zip) {
        room.background().run(() -> PluginShelf.look(zip), offer -> {
            if (TrustQuestion.isTrusted(this, offer)) {
                change(() -> {
                    room.program().pluginShelf().add(offer);
                    return Texts.PLUGIN_IS_ADDED.text(offer.id(), offer.version());
                });
            }
        });
    }

    private void change(Callable<String> change) {
        room.background()
                .run(
                        () -> {
                            var done = change.call();
                            room.program().reopenPlugins();
                            return done;
                        },
                        room::say);
    }
}
