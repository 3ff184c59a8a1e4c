package planewright.app.cli;

import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** What is wrong with a command line, in a line that also tells what is accepted. */
final class Misread {
    private Misread() {}

    static String words(CommandLine.ParameterException wrong) {
        var spec = wrong.getCommandLine().getCommandSpec();
        var name = spec.qualifiedName();
        if (wrong instanceof CommandLine.UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            var word = unmatched.getUnmatched().get(0);
            if (unmatched.isUnknownOption()) {
                return "'" + word + "' is no option of '" + name + "'; accepted: "
                        + spec.options().stream().map(OptionSpec::longestName).collect(Collectors.joining(", "));
            }
            return spec.subcommands().isEmpty()
                    ? "'" + word + "' is a word too many; see '" + name + " --help'"
                    : "'" + word + "' is no command; accepted: "
                            + String.join(", ", spec.subcommands().keySet());
        }
        return wrong.getMessage().replaceFirst("\\.$", "") + "; see '" + name + " --help'";
    }
}
