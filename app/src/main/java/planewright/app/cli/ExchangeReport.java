package planewright.app.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import planewright.app.exchange.Brought;
import planewright.app.exchange.LeftOut;
import planewright.app.exchange.Taken;
import planewright.app.exchange.Unpacked;
import planewright.app.store.JsonFiles;

/** Tells what came in or went out, and what did not and why. */
record ExchangeReport(Desk desk, boolean json) {
    private static final int KNOWN_SHOWN = 5;

    /** The exit code: 1 where nothing came in because all was refused. */
    int brought(Brought brought, String one, String more) {
        if (json) {
            var node = JsonFiles.object().put("brought", brought.things()).put("entries", brought.entries());
            list(node, "known", brought.known());
            list(node, "leftOut", brought.leftOut());
            desk.json(node);
        } else {
            desk.out()
                    .println("Brought in " + Desk.count(brought.things(), one, more) + ", "
                            + Desk.count(brought.entries(), "entry", "entries") + " written");
            brought.known().stream()
                    .limit(KNOWN_SHOWN)
                    .forEach(each -> desk.out().println("  known     " + each.what() + " " + each.reason()));
            if (brought.known().size() > KNOWN_SHOWN) {
                desk.out().println("  known     and " + (brought.known().size() - KNOWN_SHOWN) + " more");
            }
            leftOut(brought.leftOut());
        }
        return brought.things() == 0
                        && brought.known().isEmpty()
                        && !brought.leftOut().isEmpty()
                ? 1
                : 0;
    }

    void unpacked(Unpacked unpacked, Path folder) {
        if (json) {
            var node = JsonFiles.object()
                    .put("journal", folder.toString())
                    .put("name", unpacked.name())
                    .put("builds", unpacked.builds())
                    .put("entries", unpacked.entries());
            list(node, "wrong", unpacked.wrong());
            list(node, "leftOut", unpacked.leftOut());
            desk.json(node);
        } else {
            desk.out()
                    .println("Brought in journal '" + unpacked.name() + "' with "
                            + Desk.count(unpacked.builds(), "build", "builds") + " and "
                            + Desk.count(unpacked.entries(), "entry", "entries") + ", to " + folder);
            unpacked.wrong().forEach(each -> desk.out().println("  wrong     " + each.what() + ": " + each.reason()));
            leftOut(unpacked.leftOut());
        }
    }

    /**
     * @param what such as {@code 12 files}
     * @param place what those of its pictures that say where they were taken mean for others; empty where it does not matter
     */
    void taken(Taken taken, String what, Path to, String place) {
        if (json) {
            var node = JsonFiles.object().put("file", to.toString()).put("taken", taken.things());
            node.put("picturesThatTellPlace", taken.tellPlace());
            list(node, "leftOut", taken.leftOut());
            desk.json(node);
        } else {
            desk.out().println("Wrote " + what + " to " + to);
            if (taken.tellPlace() > 0) {
                desk.out().println(Desk.count(taken.tellPlace(), "picture says", "pictures say") + " " + place);
            }
            leftOut(taken.leftOut());
        }
    }

    private void leftOut(List<LeftOut> leftOut) {
        leftOut.forEach(each -> desk.out().println("  left out  " + each.what() + ": " + each.reason()));
    }

    private static void list(ObjectNode node, String name, List<LeftOut> list) {
        var array = node.putArray(name);
        list.forEach(each -> array.addObject().put("what", each.what()).put("reason", each.reason()));
    }
}
