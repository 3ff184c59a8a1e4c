package planewright.app.ui.bench;

import java.time.LocalDateTime;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.shared.material.Cautions;

/** What is on the bench over all builds: hands off, still curing, ready; and the cautions of the materials at work. */
public final class BenchRail extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int TICK_MILLIS = 2000;

    private final transient Workroom room;
    private final transient BenchJoints joints;
    private final transient Background.Latest looks;
    private final transient ReadyNotice notice;
    private final transient IntConsumer count;
    private final Column column = new Column(8, 2);
    private final JTextArea news = Words.coloured("", "fine");
    private final Timer timer = new Timer(TICK_MILLIS, event -> tick());
    private transient List<BenchJoint> bench = List.of();
    private transient LocalDateTime looked;
    private boolean dark = Look.isDark();

    /**
     * @param count hears how many joints still cure
     */
    public BenchRail(Workroom room, IntConsumer count) {
        super(new MigLayout("insets 10 6 10 10, gap 8, fill, wrap 1, hidemode 3", "[grow,fill]", "[][][grow,fill]"));
        this.room = room;
        this.count = count;
        joints = new BenchJoints(room.journal());
        looks = room.background().latest();
        notice = new ReadyNotice(this::say);
        looked = room.now();
        setName("bench");
        getAccessibleContext().setAccessibleName(Texts.BENCH.text());
        news.setName("bench-news");
        news.setVisible(false);
        add(Look.heading(Texts.BENCH.text(), 1.15));
        add(news, "wmin 0");
        add(column.scrolled(), "wmin 0");
        room.onChange(this::look);
        timer.start();
        look();
    }

    /** No more ticking; on the event thread. */
    public void stop() {
        timer.stop();
        notice.stop();
    }

    /** Reads what the journal says now. */
    private void look() {
        var now = room.now();
        looks.ask(() -> atBench(now), found -> {
            boolean same = found.equals(bench) && now.equals(looked) && dark == Look.isDark();
            bench = found;
            if (!same || column.getComponentCount() == 0) {
                show(now);
            }
        });
    }

    private List<BenchJoint> atBench(LocalDateTime now) {
        Cautions.prepare();
        return joints.at(now);
    }

    /** Once a minute everything is a minute older. */
    private void tick() {
        var now = room.now();
        if (now.equals(looked)) {
            return;
        }
        var ready = bench.stream()
                .filter(joint -> joint.becameReady(looked, now))
                .map(joint -> (joint.state(now) == BenchJoint.State.READY ? Texts.NOTICE_READY : Texts.NOTICE_TOUCHABLE)
                        .text(joint.joint().name(), joint.build().name()))
                .toList();
        looked = now;
        show(now);
        if (!ready.isEmpty()) {
            notice.tell(String.join("\n", ready));
        }
    }

    private void say(String words) {
        Words.show(news, words);
        room.say(words.replace('\n', ' '));
    }

    private void show(LocalDateTime now) {
        dark = Look.isDark();
        column.removeAll();
        var shown = bench.stream()
                .filter(joint -> joint.state(now) != BenchJoint.State.PAST)
                .toList();
        if (shown.isEmpty()) {
            column.add(Words.quiet(Texts.BENCH_EMPTY.text()));
        }
        shown.forEach(joint -> column.add(new JointCard(room, joint, now)));
        var atWork = shown.stream()
                .filter(joint -> joint.state(now) != BenchJoint.State.READY)
                .toList();
        cautions(atWork);
        count.accept(atWork.size());
        column.revalidate();
        column.repaint();
    }

    private void cautions(List<BenchJoint> atWork) {
        var usual = Cautions.usual(atWork.stream()
                .flatMap(joint ->
                        Stream.of(joint.joint().material(), joint.joint().name()))
                .toList());
        if (!usual.isEmpty()) {
            column.add(Look.heading(Texts.CAUTIONS.text(), 1));
            usual.forEach(caution -> column.add(Words.coloured(caution, "warn")));
        }
    }
}
