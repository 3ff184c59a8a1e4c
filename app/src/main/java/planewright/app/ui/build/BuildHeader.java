package planewright.app.ui.build;

import java.awt.Font;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import planewright.api.journal.Life;
import planewright.app.journal.BuildFacts;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Edit;
import planewright.app.ui.common.Beside;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.PlanView;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.common.Wrapping;

/** What a build is: plan view, name, life, layout, datum and the numbers that matter; to be changed in place. */
final class BuildHeader extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private transient Optional<BuildRecord> shown = Optional.empty();
    private boolean editing;

    BuildHeader(Workroom room) {
        super(new Stack(0));
        this.room = room;
        setName("header");
        room.onChange(this::refresh);
        refresh();
    }

    private void refresh() {
        boolean other = !room.build().map(BuildRecord::id).equals(shown.map(BuildRecord::id));
        if (editing && !other) {
            return;
        }
        shown = room.build();
        editing = false;
        fill();
    }

    private void fill() {
        removeAll();
        shown.ifPresent(build -> add(editing ? form(build) : view(build)));
        revalidate();
        repaint();
    }

    private Card view(BuildRecord build) {
        var words = new JPanel(new Stack(4));
        words.setOpaque(false);
        words.add(Look.heading(build.name(), 1.5));
        words.add(Look.quiet(line(build)));
        var facts = new JPanel(new Wrapping(18));
        facts.setOpaque(false);
        BuildFacts.of(room.journal(), build).forEach(fact -> facts.add(fact(fact)));
        words.add(facts);
        if (!build.datum().isEmpty()) {
            words.add(Words.quiet(Texts.DATUM.text() + ": " + build.datum()));
        }
        var card = new Card(new Beside(14, 1));
        card.add(new PlanView(build.planform(), build.name(), 150, 96));
        card.add(words);
        card.add(Buttons.plain("edit-build", Texts.EDIT.text(), () -> {
            editing = true;
            fill();
        }));
        return card;
    }

    private static String line(BuildRecord build) {
        return build.life().word() + (build.layout().isEmpty() ? "" : " · " + build.layout()) + " · "
                + Texts.BEGUN.text(build.begun().toString());
    }

    private static JPanel fact(BuildFacts.Fact fact) {
        var panel = new JPanel(new MigLayout("insets 0, gap 0, wrap 1"));
        panel.setOpaque(false);
        panel.add(Look.sized(new JLabel(fact.text()), 1.1, Font.BOLD));
        panel.add(Look.sized(Look.quiet(fact.label()), 0.88, Font.PLAIN));
        return panel;
    }

    private Card form(BuildRecord build) {
        var name = new JTextField(build.name());
        var life = new JComboBox<>(Life.values());
        life.setRenderer(Words.choice(each -> ((Life) each).word()));
        life.setSelectedItem(build.life());
        var layout = new JTextField(build.layout());
        var datum = new JTextField(build.datum());
        var problem = Words.problem();
        var card = new Card(new MigLayout("insets 12, gap 6, wrap 4", "[][grow,fill]14[][grow,fill]"));
        Words.labelled(card, Texts.NAME.text(), name, "build-name");
        Words.labelled(card, Texts.LIFE.text(), life, "build-life");
        Words.labelled(card, Texts.LAYOUT.text(), layout, "build-layout");
        Words.labelled(card, Texts.DATUM.text(), datum, "build-datum");
        card.add(problem, "span 4, growx, hidemode 3");
        card.add(
                Buttons.of("save-build", Texts.SAVE.text(), () -> {
                    if (name.getText().isBlank() || taken(build, name.getText())) {
                        Words.show(
                                problem,
                                name.getText().isBlank()
                                        ? Texts.NAME_NEEDED.text()
                                        : Texts.NAME_TAKEN.text(name.getText().strip()));
                        return;
                    }
                    save(
                            build,
                            build.withName(name.getText())
                                    .withLife((Life) life.getSelectedItem())
                                    .withLayout(layout.getText().strip())
                                    .withDatum(datum.getText().strip()));
                }),
                "span 4, split 2");
        card.add(Buttons.of("discard-build", Texts.DISCARD.text(), this::close));
        return card;
    }

    private boolean taken(BuildRecord build, String name) {
        return room.journal().builds().stream()
                .anyMatch(each -> !each.id().equals(build.id()) && each.name().equalsIgnoreCase(name.strip()));
    }

    private void save(BuildRecord before, BuildRecord after) {
        if (before.equals(after)) {
            close();
        } else {
            room.edit(Edit.change(Texts.BUILD_EDIT.text(after.name()), before, after), this::close);
        }
    }

    private void close() {
        editing = false;
        shown = Optional.empty();
        refresh();
    }
}
