package planewright.app.ui.bench;

import java.awt.Font;
import java.time.LocalDateTime;
import java.util.List;
import javax.swing.JPanel;
import planewright.app.ui.common.Buttons;
import planewright.app.ui.common.Look;
import planewright.app.ui.common.Stack;
import planewright.app.ui.common.Texts;
import planewright.app.ui.common.Words;
import planewright.app.ui.common.Workroom;
import planewright.app.ui.common.Wrapping;

/** The way to joints of the build that is shown which are on the bench no more, or of which nobody wrote an end. */
final class EarlierJoints extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int AT_ONCE = 10;

    private final transient Workroom room;
    private String build = "";
    private int wanted;

    EarlierJoints(Workroom room) {
        super(new Stack(8));
        this.room = room;
        setName("earlier-joints");
        setOpaque(false);
    }

    void show(List<BenchJoint> joints, LocalDateTime now) {
        removeAll();
        if (!joints.isEmpty()) {
            var of = joints.get(0).build();
            wanted = of.id().equals(build) ? wanted : 0;
            build = of.id();
            add(Look.sized(Words.of(Texts.EARLIER_JOINTS.text(of.name())), 1, Font.BOLD));
            joints.stream().limit(wanted).forEach(joint -> add(new JointCard(room, joint, now)));
            if (wanted < joints.size()) {
                add(more(joints, now));
            }
        }
        revalidate();
        repaint();
    }

    private JPanel more(List<BenchJoint> joints, LocalDateTime now) {
        var more = new JPanel(new Wrapping(6));
        more.setOpaque(false);
        more.add(Buttons.of("show-earlier-joints", Texts.SHOW_EARLIER.text(joints.size() - wanted), () -> {
            wanted += AT_ONCE;
            show(joints, now);
        }));
        return more;
    }
}
