package org.coldpleat.ui.commandline.output;

/** Exit codes of the program, as promised in the help text. */
public final class ExitCode {
    /** Done. */
    public static final int DONE = 0;
    /** A failure of the program or of the machine, such as a full disk. */
    public static final int FAILURE = 1;
    /** The command line was not understood. */
    public static final int USAGE = 2;
    /** The case file or a value cannot be used as it stands. */
    public static final int BAD_INPUT = 3;
    /** The case was understood, but no converged answer was found, or no value meets the target. */
    public static final int NO_ANSWER = 4;

    private ExitCode() {}
}
