package org.coldpleat.ui.commandline.output;

import org.coldpleat.model.progress.Progress;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Help.Ansi;

/** Shows the progress of a run on one line of a terminal; cancels it when the thread that asked is interrupted. */
public final class ProgressLine implements Progress {
    private static final double WHOLE = 100;

    private final Console console;
    private final String words;
    private final Thread asking = Thread.currentThread();
    private long shown = -1;

    private ProgressLine(Console console, String words) {
        this.console = console;
        this.words = words;
    }

    /** A line at a terminal with words that take a percentage, nothing elsewhere. */
    public static Progress on(Console console, String words) {
        return Ansi.AUTO.enabled() ? new ProgressLine(console, words) : Progress.NONE;
    }

    @Override
    public synchronized void done(long evaluations, long total) {
        long percent = (long) (WHOLE * evaluations / total);
        if (percent != shown) {
            shown = percent;
            console.err().print("\r" + Texts.get(words, percent) + (percent == WHOLE ? "\r\n" : ""));
            console.err().flush();
        }
    }

    @Override
    public boolean cancelled() {
        return asking.isInterrupted();
    }
}
