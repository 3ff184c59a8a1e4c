package planewright.app.print;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import planewright.app.journal.BuildFacts;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.Carried;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.SetUpNow;

/**
 * What is handed over with an aircraft, on one page where it is not very much: the values it flies with and since when, its masses,
 * and cautions for whoever flies it next.
 */
public final class SetUpSheet {
    /** Common practice, no source. */
    private static final Map<String, String> CAUTIONS = cautions();

    private SetUpSheet() {}

    private static Map<String, String> cautions() {
        var cautions = new LinkedHashMap<String, String>();
        cautions.put(
                "Propeller",
                "Take it off, or have somebody hold the aircraft, whenever the pack is connected for setting up.");
        cautions.put(
                "Controls",
                "Before each flight, see that every surface moves the right way and by the throw above, receiver and"
                        + " transmitter on.");
        cautions.put(
                "Balance",
                "Check the balance point with everything on board as it flies, pack included; do not fly with it behind"
                        + " the value above.");
        cautions.put("Radio", "Check the range, and that the motor stops when the transmitter is switched off.");
        cautions.put(
                "Packs", "Charge lithium packs on something that does not burn, within sight, with the right charger.");
        cautions.put("Place", "Fly where the local rules allow it, away from people, roads and power lines.");
        return Collections.unmodifiableMap(cautions);
    }

    /** The sheet of a build as it is now. */
    public static Sheet of(OpenJournal journal, BuildRecord build) {
        var blocks = new ArrayList<Sheet.Block>();
        blocks.add(new Sheet.Heading(1, build.name()));
        Stream.of(
                        PrintWords.say(build.layout()),
                        build.datum().isEmpty() ? "" : PrintWords.say("Stations are measured from: {0}", build.datum()))
                .filter(line -> !line.isEmpty())
                .forEach(line -> blocks.add(new Sheet.Paragraph(line)));
        blocks.add(new Sheet.Table(
                List.of(
                        PrintWords.say("Set-up"),
                        PrintWords.say("Value"),
                        PrintWords.say("Set on"),
                        PrintWords.say("From")),
                List.of(false, true, false, false),
                SetUpNow.of(journal.log(build.id())).stream()
                        .map(SetUpSheet::row)
                        .toList()));
        blocks.add(new Sheet.Table(
                List.of(PrintWords.say("Of the whole"), PrintWords.say("Value")),
                List.of(false, true),
                BuildFacts.measures(journal, build).stream()
                        .map(fact -> List.of(
                                fact.words(PrintWords::say, PrintWords::day), PrintWords.quantity(fact.value())))
                        .toList()));
        var masses = masses(build);
        if (!masses.isEmpty()) {
            blocks.add(new Sheet.Table(
                    List.of(
                            PrintWords.say("Part"),
                            PrintWords.say("Mass"),
                            PrintWords.say("Part"),
                            PrintWords.say("Mass")),
                    List.of(false, true, false, true),
                    masses));
        }
        blocks.add(new Sheet.Heading(3, PrintWords.say("Before it flies")));
        CAUTIONS.forEach(
                (what, caution) -> blocks.add(new Sheet.Remark(PrintWords.say(what), PrintWords.say(caution))));
        return new Sheet(PrintWords.say("Set-up sheet · {0}", build.name()), blocks);
    }

    /** Two parts a line, so that one page is enough. */
    private static List<List<String>> masses(BuildRecord build) {
        var weighed =
                build.parts().stream().filter(part -> part.mass().isPresent()).toList();
        int lines = (weighed.size() + 1) / 2;
        return IntStream.range(0, lines)
                .mapToObj(line -> Stream.of(line, line + lines)
                        .flatMap(place -> place < weighed.size()
                                ? Stream.of(
                                        weighed.get(place).name(),
                                        PrintWords.quantity(
                                                weighed.get(place).mass().orElseThrow()))
                                : Stream.of("", ""))
                        .toList())
                .toList();
    }

    private static List<String> row(SetUpNow.Value value) {
        var entry = value.now().entry();
        return List.of(
                value.name(),
                PrintWords.quantity(value.now().what().quantity()),
                PrintWords.day(entry.at().toLocalDate()),
                Carried.isIn(entry)
                        ? PrintWords.say("{0}, carried over", Sheets.heading(entry))
                        : Sheets.heading(entry));
    }
}
