package org.coldpleat.ui;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Goes once through the main commands in one virtual machine, which then can put all classes they need into an archive.
 * Run by the launcher after a build, and by nobody else.
 */
public final class Rehearsal {
    private static final String OUT = "--out=";

    private static final List<List<String>> SHORT =
            List.of(List.of("check"), List.of("compare"), List.of("compare", "--format=json"), List.of("evidence"));

    private static final List<List<String>> LONG = List.of(
            List.of("compare"),
            List.of("coldstart"),
            List.of("settings"),
            List.of("service"),
            List.of("confidence", "--draws=16"),
            List.of("report", "--draws=0", "--out=report.html"),
            List.of("pictures", "--size=480x480", "--out=pictures"));

    private Rehearsal() {}

    /**
     * Runs the commands and throws away what they print.
     *
     * @param words a case that has all kinds of data, a case that is soon worked out, and a folder for what is drawn, which
     *     is made
     */
    public static void main(String[] words) throws IOException {
        Path folder = Files.createDirectories(Path.of(words[2]));
        run(List.of("--version"));
        run(List.of("--help"));
        for (List<String> command : SHORT) {
            run(with(command, words[0], folder));
        }
        for (List<String> command : LONG) {
            run(with(command, words[1], folder));
        }
    }

    private static void run(List<String> command) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        int code = Main.run(command, nowhere, nowhere);
        if (code != 0) {
            throw new IllegalStateException("exit code " + code + " of " + command);
        }
    }

    private static List<String> with(List<String> command, String file, Path folder) {
        List<String> words = new ArrayList<>();
        for (String word : command) {
            words.add(word.startsWith(OUT) ? OUT + folder.resolve(word.substring(OUT.length())) : word);
        }
        words.add(file);
        return words;
    }
}
