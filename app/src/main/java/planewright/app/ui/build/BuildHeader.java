package planewright.app.ui.build;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Font;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.HierarchyBoundsAdapter;
import java.awt.event.HierarchyEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.BuildFacts;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.CarryOver;
import planewright.app.journal.TemplateRecord;
import planewright.app.ui.common.Amounts;
import planewright.app.ui.common.Beside;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.PlanView;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Terms;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.common.Wrapping;

/** What a build is: plan view, name, life, layout, datum and the numbers that matter; to be changed in place. */
final class BuildHeader extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int LEAST_FOR_PLAN = 720;
    private static final int MOST_FOR_LABEL = 180;
    private static final double SMALL = 0.88;

    /** Height of header and pages together that leaves both the lines about the build their room, px. */
    private static final int LEAST_FOR_ALL_LINES = 560;

    private final transient Workroom room;
    private final transient Runnable compare;
    /** What is being written, by build. */
    private final transient Map<String, HeaderForm> forms = new LinkedHashMap<>();

    private transient Optional<BuildRecord> shown = Optional.empty();
    private transient Optional<PlanView> plan = Optional.empty();
    private final transient List<JLabel> lesser = new ArrayList<>();

    /**
     * @param compare sets the build that is shown beside another
     */
    BuildHeader(Workroom room, Runnable compare) {
        super(new Stack(0));
        this.compare = compare;
        this.room = room;
        setName("header");
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                makeRoom();
            }
        });
        addHierarchyBoundsListener(new HierarchyBoundsAdapter() {
            @Override
            public void ancestorResized(HierarchyEvent event) {
                makeRoom();
            }
        });
        room.onChange(this::refresh);
        refresh();
    }

    /** Names of builds whose headers are being written and not yet saved. */
    List<String> unsaved() {
        return forms.values().stream()
                .filter(HeaderForm::isChanged)
                .map(HeaderForm::heading)
                .toList();
    }

    /** A form that is being written in stays as it is. */
    private void refresh() {
        var now = room.build();
        boolean same = now.map(BuildRecord::id).equals(shown.map(BuildRecord::id));
        shown = now;
        if (!same || now.map(BuildRecord::id).filter(forms::containsKey).isEmpty()) {
            fill();
        }
    }

    /** The numbers go before the plan view, which the shelf shows too, and the pages before lines that the pointer tells. */
    private void makeRoom() {
        int height = getParent() == null ? 0 : getParent().getHeight();
        lesser.forEach(line -> line.setVisible(height == 0 || height >= UIScale.scale(LEAST_FOR_ALL_LINES)));
        plan.ifPresent(view -> view.setVisible(getWidth() == 0 || getWidth() >= UIScale.scale(LEAST_FOR_PLAN)));
    }

    private void fill() {
        removeAll();
        shown.ifPresent(build -> add(forms.containsKey(build.id()) ? forms.get(build.id()) : view(build)));
        revalidate();
        repaint();
    }

    private Card view(BuildRecord build) {
        var words = new JPanel(new Stack(4));
        words.setOpaque(false);
        var name = Look.heading(build.name(), 1.5);
        name.setToolTipText(build.name());
        words.add(name);
        var line = oneLine(line(build));
        words.add(line);
        lesser.clear();
        lineage(build).ifPresent(from -> lesser.add(oneLine(from)));
        if (!build.datum().isEmpty()) {
            lesser.add(oneLine(Texts.DATUM.text() + ": " + build.datum()));
        }
        line.setToolTipText(Stream.concat(Stream.of(line), lesser.stream())
                .map(JLabel::getText)
                .collect(Collectors.joining(" · ")));
        var facts = new JPanel(new Wrapping(9, 6));
        facts.setOpaque(false);
        var measures = BuildFacts.measures(room.journal(), build);
        boolean allCarried = !measures.isEmpty()
                && measures.stream().allMatch(fact -> fact.standing() == BuildFacts.Standing.CARRIED);
        measures.forEach(fact -> facts.add(fact(fact, allCarried ? Optional.empty() : standing(fact))));
        facts.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                facts.revalidate();
            }
        });
        words.add(facts);
        if (allCarried) {
            words.add(Look.sized(oneLine(Texts.FACTS_CARRIED.text()), SMALL, Font.PLAIN));
        }
        lesser.forEach(words::add);
        var card = new Card(new Beside(14, 1));
        plan = Optional.of(new PlanView(build.planform(), build.name(), 150, 96));
        makeRoom();
        card.add(plan.get());
        card.add(words);
        var actions = new JPanel(new MigLayout("insets 0, gap 2, wrap 1", "[fill]"));
        actions.setOpaque(false);
        actions.add(Buttons.with(Icons.EDIT, Buttons.plain("edit-build", Texts.EDIT.text(), () -> edit(build))));
        actions.add(Buttons.with(Icons.COMPARE, Buttons.plain("compare-build", Texts.COMPARE_BUTTON.text(), compare)));
        card.add(actions);
        return card;
    }

    /** Cut off where the window is narrow, so that the pages keep their room; the pointer tells the rest. */
    private static JLabel oneLine(String words) {
        var label = Look.quiet(words);
        label.setToolTipText(words);
        return label;
    }

    private String line(BuildRecord build) {
        var log = room.journal().lines(build.id());
        long days =
                log.stream().map(entry -> entry.at().toLocalDate()).distinct().count();
        return Terms.of(build.life().word()) + (build.layout().isEmpty() ? "" : " · " + Terms.of(build.layout()))
                + " · " + Texts.BEGUN.text(build.begun())
                + (log.isEmpty() ? "" : " · " + Texts.ENTRIES_ON_DAYS.text(log.size(), days));
    }

    /** Where it came from and what was begun from it. */
    private Optional<String> lineage(BuildRecord build) {
        var all = room.journal().builds();
        var from = build.begunFrom().map(day -> Texts.BEGUN_FROM.text(day.name()));
        var templates = names(
                room.journal().templates().stream()
                        .filter(each -> each.wentTo().stream()
                                .anyMatch(day -> day.build().equals(build.id())))
                        .map(TemplateRecord::name),
                Texts.WITH_TEMPLATES);
        var followers = names(
                all.stream()
                        .filter(each -> each.begunFrom()
                                .filter(day -> day.build().equals(build.id()))
                                .isPresent())
                        .map(BuildRecord::name),
                Texts.FOLLOWED_BY);
        var said =
                Stream.of(from, templates, followers).flatMap(Optional::stream).collect(Collectors.joining(" · "));
        return Optional.of(said).filter(words -> !words.isEmpty());
    }

    private static Optional<String> names(Stream<String> names, Texts said) {
        var all = names.toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(said.text(all.size(), String.join(", ", all)));
    }

    /** Its value, what it is, and how firm it is, where that is told. */
    private JPanel fact(BuildFacts.Fact fact, Optional<String> standing) {
        var panel = new JPanel(new MigLayout("insets 0, gap 0, wrap 1"));
        panel.setOpaque(false);
        panel.add(Look.sized(new JLabel(Amounts.of(room.units().written(fact.value()))), 1.1, Font.BOLD));
        Stream.concat(Stream.of(Terms.of(fact.label())), standing.stream())
                .forEach(words -> panel.add(
                        Look.sized(oneLine(words), SMALL, Font.PLAIN), "wmax " + UIScale.scale(MOST_FOR_LABEL)));
        return panel;
    }

    private static Optional<String> standing(BuildFacts.Fact fact) {
        var day = fact.at().map(Times::date).orElse("");
        return switch (fact.standing()) {
            case FIRM -> Optional.empty();
            case CARRIED -> Optional.of(Terms.of(CarryOver.TAG));
            case OLDER -> Optional.of(Texts.FACT_OLDER.text(day));
            case NEWER -> Optional.of(Texts.FACT_NEWER.text(day));
        };
    }

    private void edit(BuildRecord build) {
        var form = new HeaderForm(room, build, this::close);
        forms.put(build.id(), form);
        fill();
        SwingUtilities.invokeLater(form::focus);
    }

    private void close(HeaderForm form) {
        forms.values().remove(form);
        refresh();
    }
}
