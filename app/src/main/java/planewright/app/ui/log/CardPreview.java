package planewright.app.ui.log;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import planewright.app.exchange.Brought;
import planewright.app.exchange.Intake;
import planewright.app.exchange.PictureFolder;
import planewright.app.exchange.SeenPictures;
import planewright.app.exchange.SeenPictures.Seen;
import planewright.app.exchange.Watch;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryRecord;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Card;
import planewright.app.ui.common.Icons;
import planewright.app.ui.common.LeftOutList;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Times;
import planewright.app.ui.common.WatchedWork;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.common.Wrapping;

/** Pictures of a card before they come into the log: by days, each with a tick; one edit brings in what is ticked. */
final class CardPreview extends Card {
    private static final long serialVersionUID = 1L;

    private final transient Workroom room;
    private final transient BuildRecord build;
    private final transient Runnable leave;
    private final WatchedWork work;
    private final JPanel days = new JPanel(new Stack(8));
    private final JButton bring = Buttons.with(Icons.PICTURES, Buttons.of("card-bring", "", this::bring));
    private final JButton away;
    private final transient List<PickTile> tiles = new ArrayList<>();
    private transient Optional<SeenPictures> seen = Optional.empty();

    /** What was seen, and what the days' entries are called already. */
    private record Found(SeenPictures seen, Map<LocalDate, EntryRecord> joined) {}

    /**
     * @param leave takes this preview away
     */
    CardPreview(Workroom room, BuildRecord build, List<Path> places, Runnable leave) {
        super(new Stack(8));
        this.room = room;
        this.build = build;
        this.leave = leave;
        setName("card-preview");
        getAccessibleContext().setAccessibleName(Texts.CARD.text());
        away = Buttons.plain("card-leave", Texts.CARD_LEAVE.text(), this::leave);
        work = new WatchedWork(room, "card", this::count);
        days.setOpaque(false);
        var actions = new JPanel(new Wrapping(6));
        actions.setOpaque(false);
        actions.add(bring);
        actions.add(away);
        add(Look.heading(Texts.CARD.text(), 1.15));
        add(work);
        add(days);
        add(actions);
        var now = room.now();
        work.look(
                watch -> look(PictureFolder.see(room.program().folder(), build, places, Optional.of(now), now, watch)),
                this::show);
        count();
    }

    private static Found look(SeenPictures seen) {
        var joined = new HashMap<LocalDate, EntryRecord>();
        for (var row : seen.of(seen.pictures()).rows()) {
            row.joins().ifPresent(entry -> joined.put(entry.at().toLocalDate(), entry));
        }
        return new Found(seen, joined);
    }

    private void show(Found found) {
        seen = Optional.of(found.seen());
        var byDay = found.seen().pictures().stream()
                .collect(Collectors.groupingBy(each -> each.at().toLocalDate(), TreeMap::new, Collectors.toList()));
        byDay.forEach((day, pictures) ->
                days.add(day(day, Optional.ofNullable(found.joined().get(day)), pictures)));
        if (byDay.isEmpty()) {
            days.add(Words.of(Texts.PREVIEW_NOTHING.text()));
        }
        LeftOutList.addTo(days, Texts.PREVIEW_LEFT_OUT, found.seen().leftOut());
        LeftOutList.addTo(days, Texts.PREVIEW_KNOWN, found.seen().known());
        count();
    }

    private JPanel day(LocalDate day, Optional<EntryRecord> joined, List<Seen> pictures) {
        var panel = new JPanel(new Stack(4));
        panel.setOpaque(false);
        var strip = new JPanel(new Wrapping(8));
        strip.setOpaque(false);
        var into = joined.map(entry -> entry.title().isEmpty() ? Texts.PREVIEW_JOINS.text() : entry.title())
                .orElseGet(Texts.PREVIEW_NEW::text);
        var all = new JCheckBox(Texts.CARD_DAY.text(Times.day(day), pictures.size(), into), true);
        all.setName("card-day-" + day);
        all.setOpaque(false);
        var ofDay = pictures.stream()
                .map(each -> new PickTile(room, each, this::count))
                .toList();
        all.addActionListener(event -> ofDay.forEach(tile -> tile.pick(all.isSelected())));
        ofDay.forEach(strip::add);
        tiles.addAll(ofDay);
        panel.add(all);
        panel.add(strip);
        return panel;
    }

    private List<Seen> picked() {
        return tiles.stream().filter(PickTile::isPicked).map(PickTile::seen).toList();
    }

    private void count() {
        int picked = picked().size();
        bring.setText(Texts.CARD_BRING.text(picked));
        bring.setEnabled(picked > 0 && !work.isBusy());
        revalidate();
        repaint();
    }

    private void bring() {
        var chosen = picked();
        work.write(watch -> write(chosen, watch), done -> {
            leave.run();
            room.say(Texts.BROUGHT.text(done.things(), done.entries()));
        });
    }

    private Brought write(List<Seen> chosen, Watch watch) throws java.io.IOException {
        Intake intake = seen.orElseThrow().of(chosen);
        return intake.write(watch);
    }

    private void leave() {
        work.stop();
        leave.run();
    }
}
