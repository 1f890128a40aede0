package org.coldpleat.ui.commandline;

import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.text.Texts;

/**
 * Says in one line that a run was stopped from outside, by Ctrl-C or by a signal to end. Files
 * are written beside their place and moved there whole, so that none is left half written.
 */
final class Interruption {
    private final Thread hook;

    private Interruption(Thread hook) {
        this.hook = hook;
    }

    static Interruption tell(Console console) {
        Thread hook = new Thread(() -> {
            // ends the line on which the advance stands
            console.err().println();
            console.message(Texts.get("error.stopped"));
            console.err().flush();
        });
        Runtime.getRuntime().addShutdownHook(hook);
        return new Interruption(hook);
    }

    /** The run is over: from now on there is nothing to say. */
    void over() {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException ending) {
            // the program is ending: the hook has its say
        }
    }
}
