package org.coldpleat.ui.commandline.output;

/** Ends a command with an exit code and one message for the reader; never shown as a stack trace. */
public final class Stop extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int exitCode;

    public Stop(int exitCode, String message) {
        super(message, null, false, false);
        this.exitCode = exitCode;
    }

    public int exitCode() {
        return exitCode;
    }
}
