package org.coldpleat.ui.desktop.viewmodel;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.Properties;
import org.coldpleat.shared.casefile.writing.CaseWriter;

/** What the window remembers from one start of the program to the next: place, size, looks. */
public final class WindowMemory {
    private final Path file;
    private final Properties words = new Properties();

    /** @param folder where it is kept; made when needed. A file that cannot be read is an empty one. */
    public WindowMemory(Path folder) {
        file = folder.resolve("window");
        try (Reader in = Files.newBufferedReader(file)) {
            words.load(in);
        } catch (IOException | IllegalArgumentException e) {
            words.clear();
        }
    }

    /** A remembered word, or another one if there is none. */
    public String word(String key, String otherwise) {
        return words.getProperty(key, otherwise);
    }

    /** A remembered number; empty if there is none or it is no finite number. */
    public OptionalDouble number(String key) {
        try {
            double value = Double.parseDouble(words.getProperty(key, ""));
            return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    /** Remembers a word or a number. */
    public void put(String key, Object value) {
        words.setProperty(key, value.toString());
    }

    /** Writes what is remembered. */
    public void keep() throws IOException {
        StringWriter text = new StringWriter();
        words.store(text, null);
        Files.createDirectories(file.getParent());
        CaseWriter.write(file, text.toString());
    }
}
