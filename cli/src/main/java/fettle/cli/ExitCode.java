package fettle.cli;

/** What Fettle tells the shell when it ends. */
final class ExitCode {
    /** Done as asked. */
    static final int DONE = 0;

    /** What was asked for cannot be done: bad readings, an unknown tag, a book in use. */
    static final int CANNOT = 1;

    /** The command line was not understood. */
    static final int USAGE = 2;

    /** A fault of Fettle itself; the code is {@code EX_SOFTWARE} of sysexits(3). */
    static final int FAULT = 70;

    private ExitCode() {}
}
