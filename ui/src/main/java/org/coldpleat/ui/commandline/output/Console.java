package org.coldpleat.ui.commandline.output;

import java.io.PrintWriter;
import java.util.Objects;

/**
 * Where a run of the command line writes to.
 *
 * @param out for results
 * @param err for messages
 */
public record Console(PrintWriter out, PrintWriter err) {
    public Console {
        Objects.requireNonNull(out, "out");
        Objects.requireNonNull(err, "err");
    }

    /** Writes a result, which brings its own line ends. */
    public void result(String text) {
        out.print(text);
        out.flush();
    }

    /** Writes a message on a line of its own. */
    public void message(String text) {
        err.println(text);
        err.flush();
    }

    /** True if a result could not be written, for example because the disk is full or the reader has gone. */
    public boolean isBroken() {
        return out.checkError();
    }
}
