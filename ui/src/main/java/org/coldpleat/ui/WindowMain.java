package org.coldpleat.ui;

import java.util.stream.Stream;

/** Start of the program with the window, for the launcher that does nothing else. */
public final class WindowMain {
    private WindowMain() {}

    /** Opens the window on the case that is named, if one is. */
    public static void main(String[] words) {
        Main.main(Stream.concat(Stream.of("window"), Stream.of(words)).toArray(String[]::new));
    }
}
