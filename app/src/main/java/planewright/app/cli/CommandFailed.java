package planewright.app.cli;

/** A command that could not do its work; the message is the one line that the user sees. */
final class CommandFailed extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int code;

    private CommandFailed(int code, String message) {
        super(message);
        this.code = code;
    }

    /** The work failed: exit code 1. */
    static CommandFailed work(String message) {
        return new CommandFailed(1, message);
    }

    /** The command line is wrong: exit code 2. */
    static CommandFailed words(String message) {
        return new CommandFailed(2, message);
    }

    int code() {
        return code;
    }
}
