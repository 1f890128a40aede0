package org.coldpleat.ui;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.coldpleat.ui.commandline.CommandLineFace;
import org.coldpleat.ui.desktop.view.WindowStart;
import org.coldpleat.ui.service.CaseService;

/** Start of the program. */
public final class Main {
    private Main() {}

    /** Runs the command line in UTF-8 whatever the locale says, and ends with its exit code. */
    public static void main(String[] words) {
        System.exit(run(List.of(words), utf8(FileDescriptor.out), utf8(FileDescriptor.err)));
    }

    /** Runs one command line, without a display unless it asks for the window, and gives its exit code. */
    static int run(List<String> words, PrintWriter out, PrintWriter err) {
        System.setProperty("java.awt.headless", "true");
        return CommandLineFace.run(words, CaseService.standard(), out, err, file -> WindowStart.open(file));
    }

    private static PrintWriter utf8(FileDescriptor descriptor) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8));
    }
}
