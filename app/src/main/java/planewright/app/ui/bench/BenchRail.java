package planewright.app.ui.bench;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import planewright.app.journal.BuildRecord;
import planewright.app.ui.common.Background;
import planewright.app.ui.common.Column;
import planewright.app.ui.common.KeyboardKept;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.shared.material.Cautions;

/**
 * What is on the bench over all builds: hands off, still curing, ready; what may be touched at the next session; the next steps of
 * procedures; and the cautions of what is at work.
 */
public final class BenchRail extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int TICK_MILLIS = 2000;

    private final transient Workroom room;
    private final transient BenchLook joints;
    private final transient Background.Latest looks;
    private final transient ReadyNotice notice;
    private final transient IntConsumer count;
    private final EarlierJoints earlier;
    private final Column column = new Column(8, 2);
    private final JTextArea news = Words.coloured("", "fine");
    private final Timer timer = new Timer(TICK_MILLIS, event -> tick());
    private transient OnBench bench = OnBench.NOTHING;
    private transient LocalDateTime looked;
    private transient Look.Style style = Look.style();

    /**
     * @param count hears how many joints still cure
     */
    public BenchRail(Workroom room, IntConsumer count) {
        super(new MigLayout("insets 10 6 10 10, gap 8, fill, wrap 1, hidemode 3", "[grow,fill]", "[][][grow,fill]"));
        this.room = room;
        this.count = count;
        joints = new BenchLook(room.journal());
        earlier = new EarlierJoints(room);
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
        var shown = room.build().map(BuildRecord::id);
        looks.ask(() -> atBench(now, shown), found -> {
            boolean same = found.equals(bench) && now.equals(looked) && style.equals(Look.style());
            bench = found;
            if (!same || column.getComponentCount() == 0) {
                show(now);
            }
        });
    }

    private OnBench atBench(LocalDateTime now, Optional<String> shown) {
        Cautions.prepare(Locale.getDefault());
        return joints.at(now, shown);
    }

    /** Once a minute everything is a minute older. */
    private void tick() {
        var now = room.now();
        if (now.equals(looked)) {
            return;
        }
        var ready = bench.joints().stream()
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
        style = Look.style();
        KeyboardKept.in(column, column, () -> fill(now));
        column.revalidate();
        column.repaint();
    }

    private void fill(LocalDateTime now) {
        column.removeAll();
        var shown = bench.joints().stream()
                .filter(joint -> joint.state(now) != BenchJoint.State.PAST)
                .toList();
        if (shown.isEmpty()) {
            column.add(Words.quiet(Texts.BENCH_EMPTY.text()));
        }
        shown.forEach(joint -> column.add(new JointCard(room, joint, now)));
        var atWork = shown.stream()
                .filter(joint -> joint.state(now) != BenchJoint.State.READY)
                .toList();
        session(shown, now);
        if (!bench.steps().isEmpty()) {
            column.add(Look.heading(Texts.NEXT_STEPS.text(), 1));
            bench.steps().forEach(step -> column.add(new StepCard(room, step, now)));
        }
        cautions(atWork);
        earlier.show(bench.earlier(), now);
        column.add(earlier);
        count.accept(atWork.size());
    }

    private void session(List<BenchJoint> shown, LocalDateTime now) {
        if (bench.session().isPresent()) {
            column.add(Look.heading(Texts.BENCH_SESSION.text(), 1));
            column.add(new SessionCard(bench.session().get(), shown, now));
        } else if (!shown.isEmpty()) {
            column.add(Words.quiet(Texts.NO_CALENDAR.text()));
        }
    }

    private void cautions(List<BenchJoint> atWork) {
        var ofJoints = atWork.stream()
                .flatMap(joint ->
                        Stream.of(joint.joint().material(), joint.joint().name()));
        var ofSteps = bench.steps().stream()
                .map(NextStep::step)
                .flatMap(step -> Stream.concat(Stream.of(step.text()), step.materials().stream()));
        var usual = Cautions.usual(Stream.concat(ofJoints, ofSteps).toList(), Locale.getDefault());
        if (!usual.isEmpty()) {
            column.add(Look.heading(Texts.CAUTIONS.text(), 1));
            usual.forEach(caution -> column.add(Words.coloured(caution, "warn")));
        }
    }
}
