package planewright.app.print;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import planewright.app.journal.BuildFacts;
import planewright.app.journal.BuildRecord;
import planewright.app.journal.EntryWords;
import planewright.app.journal.OpenJournal;
import planewright.app.journal.SetUpNow;
import planewright.shared.quantity.QuantityText;

/**
 * What is handed over with an aircraft, on one page where it is not very much: the values it flies with and since when, its masses,
 * and cautions for whoever flies it next.
 */
public final class SetUpSheet {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    /** Common practice, no source. */
    private static final List<Sheet.Block> CAUTIONS = List.of(
            new Sheet.Remark(
                    "Propeller",
                    "Take it off, or have somebody hold the aircraft, whenever the pack is connected for setting up."),
            new Sheet.Remark(
                    "Controls",
                    "Before each flight, see that every surface moves the right way and by the throw above, receiver and"
                            + " transmitter on."),
            new Sheet.Remark(
                    "Balance",
                    "Check the balance point with everything on board as it flies, pack included; do not fly with it behind"
                            + " the value above."),
            new Sheet.Remark(
                    "Radio", "Check the range, and that the motor stops when the transmitter is switched off."),
            new Sheet.Remark(
                    "Packs",
                    "Charge lithium packs on something that does not burn, within sight, with the right charger."),
            new Sheet.Remark("Place", "Fly where the local rules allow it, away from people, roads and power lines."));

    private SetUpSheet() {}

    /** The sheet of a build as it is now. */
    public static Sheet of(OpenJournal journal, BuildRecord build) {
        var blocks = new ArrayList<Sheet.Block>();
        blocks.add(new Sheet.Heading(1, build.name()));
        Stream.of(build.layout(), build.datum().isEmpty() ? "" : "Stations are measured from: " + build.datum())
                .filter(line -> !line.isEmpty())
                .forEach(line -> blocks.add(new Sheet.Paragraph(line)));
        blocks.add(new Sheet.Table(
                List.of("Set-up", "Value", "Set on", "From"),
                List.of(false, true, false, false),
                SetUpNow.of(journal.log(build.id())).stream()
                        .map(SetUpSheet::row)
                        .toList()));
        blocks.add(new Sheet.Table(
                List.of("Of the whole", "Value"),
                List.of(false, true),
                BuildFacts.measures(journal, build).stream()
                        .map(fact -> List.of(fact.label(), fact.text()))
                        .toList()));
        var masses = masses(build);
        if (!masses.isEmpty()) {
            blocks.add(new Sheet.Table(
                    List.of("Part", "Mass", "Part", "Mass"), List.of(false, true, false, true), masses));
        }
        blocks.add(new Sheet.Heading(3, "Before it flies"));
        blocks.addAll(CAUTIONS);
        return new Sheet("Set-up sheet · " + build.name(), blocks);
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
                                        QuantityText.show(
                                                weighed.get(place).mass().orElseThrow()))
                                : Stream.of("", ""))
                        .toList())
                .toList();
    }

    private static List<String> row(SetUpNow.Value value) {
        var entry = value.now().entry();
        return List.of(
                value.name(), value.now().what().quantity().text(), DAY.format(entry.at()), EntryWords.heading(entry));
    }
}
