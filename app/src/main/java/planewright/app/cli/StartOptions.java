package planewright.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import planewright.app.Program;
import planewright.app.journal.CarryOver;
import planewright.app.journal.CarryOver.Item;
import planewright.app.journal.TemplateRecord;

/** What a new build takes over from one that is known and from templates. */
final class StartOptions {
    @Option(names = "--from", paramLabel = "BUILD", description = "Take over from this one what it is and flies with.")
    private Optional<String> from = Optional.empty();

    @Option(names = "--template", paramLabel = "NAME", description = "Give it this template; may be repeated.")
    private List<String> templates = List.of();

    @Option(
            names = "--size",
            paramLabel = "TIMES",
            description =
                    "The new one against the old, such as 1.2: lengths in proportion, airframe masses with the third"
                            + " power, of skins and finish with the area, of rods and leads in proportion.")
    private double size = 1;

    @Option(
            names = "--without",
            paramLabel = "NAME",
            description = "Leave this out: a part, a set-up value, a template, or 'layout', 'datum', 'planform'; may be"
                    + " repeated.")
    private List<String> without = List.of();

    boolean isGiven() {
        return from.isPresent() || !templates.isEmpty();
    }

    void requireNone() {
        if (size != 1 || !without.isEmpty()) {
            throw CommandFailed.words(
                    "--size and --without are of what is taken over; accepted: with --from or --template");
        }
    }

    /** Empty where nothing is taken over. */
    Optional<CarryOver> read(Program program) {
        if (!isGiven()) {
            return Optional.empty();
        }
        var given = new ArrayList<TemplateRecord>();
        for (var name : templates) {
            given.add(Desk.template(program, name));
        }
        try {
            var all = CarryOver.of(program.journal(), from.map(name -> Desk.build(program, name)), given, size);
            for (var name : without) {
                all = without(all, name);
            }
            return Optional.of(all);
        } catch (IllegalArgumentException wrong) {
            throw CommandFailed.words("--size: " + wrong.getMessage());
        }
    }

    private static CarryOver without(CarryOver all, String name) {
        var fewer = all;
        boolean found = false;
        for (int i = 0; i < all.items().size(); i++) {
            if (called(all.items().get(i)).equalsIgnoreCase(name.strip())) {
                fewer = fewer.with(i, all.items().get(i).wanted(false));
                found = true;
            }
        }
        if (!found) {
            throw CommandFailed.words("--without '" + name + "' is nothing that is taken over; accepted: "
                    + String.join(
                            ", ",
                            all.items().stream()
                                    .map(StartOptions::called)
                                    .distinct()
                                    .toList()));
        }
        return fewer;
    }

    private static String called(Item item) {
        return item.key().isEmpty() ? item.what().word() : item.name();
    }
}
