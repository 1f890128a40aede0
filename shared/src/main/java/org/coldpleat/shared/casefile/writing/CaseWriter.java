package org.coldpleat.shared.casefile.writing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes texts, such as case files, so that a file is whole at every moment. */
public final class CaseWriter {
    private CaseWriter() {}

    /**
     * Writes a text in UTF-8 in place of a file.
     *
     * @param file where to; its folder must be there. Behind a link the file it names is written
     * @param text the content
     * @throws IOException if it could not be written; the old file is untouched then
     */
    public static void write(Path file, String text) throws IOException {
        WholeFile.write(file, part -> Files.writeString(part, text, StandardCharsets.UTF_8));
    }
}
