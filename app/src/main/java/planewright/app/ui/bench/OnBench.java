package planewright.app.ui.bench;

import java.util.List;
import java.util.Optional;

/**
 * What is on the bench at one time.
 *
 * @param joints of all builds, what may be touched soonest first
 * @param steps of procedures that are at work on builds on the bench, those that need not wait first
 * @param session that goes on or comes next
 * @param earlier joints of the build that is shown which are on the bench no more, the newest first, whatever their age
 */
record OnBench(List<BenchJoint> joints, List<NextStep> steps, Optional<NextSession> session, List<BenchJoint> earlier) {
    static final OnBench NOTHING = new OnBench(List.of(), List.of(), Optional.empty(), List.of());

    OnBench {
        joints = List.copyOf(joints);
        steps = List.copyOf(steps);
        earlier = List.copyOf(earlier);
    }
}
