package org.coldpleat.ui.commandline;

import java.io.PrintWriter;
import java.util.Objects;

/**
 * Where a run of the command line writes to.
 *
 * @param out for results
 * @param err for messages
 */
record Console(PrintWriter out, PrintWriter err) {
    Console {
        Objects.requireNonNull(out, "out");
        Objects.requireNonNull(err, "err");
    }

    /** Writes a result, which brings its own line ends. */
    void result(String text) {
        out.print(text);
        out.flush();
    }

    /** Writes a message on a line of its own. */
    void message(String text) {
        err.println(text);
        err.flush();
    }

    /** True if a result could not be written, for example because the disk is full or the reader has gone. */
    boolean isBroken() {
        return out.checkError();
    }
}
