package org.coldpleat.ui.commandline;

import org.coldpleat.ui.service.Advance;

/** Shows the advance of a run on one line of a terminal; cancels it when the thread that asked is interrupted. */
final class ProgressLine implements Advance {
    private static final double WHOLE = 100;

    private final Console console;
    private final Thread asking = Thread.currentThread();
    private long shown = -1;

    ProgressLine(Console console) {
        this.console = console;
    }

    @Override
    public synchronized void done(long evaluations, long total) {
        long percent = (long) (WHOLE * evaluations / total);
        if (percent != shown) {
            shown = percent;
            console.err().print("\r" + Texts.get("confidence.progress", percent) + (percent == WHOLE ? "\r\n" : ""));
            console.err().flush();
        }
    }

    @Override
    public boolean cancelled() {
        return asking.isInterrupted();
    }
}
