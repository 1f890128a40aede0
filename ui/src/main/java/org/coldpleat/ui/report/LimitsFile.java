package org.coldpleat.ui.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.coldpleat.shared.casefile.writing.CaseWriter;
import org.coldpleat.ui.report.section.LimitsBox;

/** What no picture can tell, as a text that lies beside pictures. */
public final class LimitsFile {
    private static final String NAME = "what-pictures-cannot-tell.txt";

    private LimitsFile() {}

    /**
     * Writes the text into a folder of pictures, unless it is there already.
     *
     * @throws IOException if that fails
     */
    public static void in(Path folder) throws IOException {
        Path file = folder.resolve(NAME);
        String words = String.join("\n", LimitsBox.words()) + "\n";
        if (!Files.exists(file) || !Files.readString(file).equals(words)) {
            CaseWriter.write(file, words);
        }
    }
}
