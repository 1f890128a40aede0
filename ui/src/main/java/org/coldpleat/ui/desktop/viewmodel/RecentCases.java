package org.coldpleat.ui.desktop.viewmodel;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.casefile.writing.CaseWriter;

/** The cases that were open last, the newest first, kept from one run of the program to the next. */
public final class RecentCases {
    /** How many are kept. */
    public static final int MOST = 12;

    private final Path list;

    /** @param folder where the list is kept; made when needed */
    public RecentCases(Path folder) {
        list = folder.resolve("recent");
    }

    /** Those that are still there. A list that cannot be read is an empty one. */
    public List<Path> files() {
        List<Path> files = new ArrayList<>();
        try {
            for (String line : Files.readAllLines(list, StandardCharsets.UTF_8)) {
                Path file = Path.of(line);
                if (!line.isBlank() && Files.isRegularFile(file) && !files.contains(file)) {
                    files.add(file);
                }
            }
        } catch (IOException | InvalidPathException e) {
            return files;
        }
        return files;
    }

    /** Puts a file in front. */
    public void opened(Path file) throws IOException {
        List<Path> files = files();
        Path whole = file.toAbsolutePath().normalize();
        files.remove(whole);
        files.add(0, whole);
        StringBuilder text = new StringBuilder();
        files.stream().limit(MOST).forEach(path -> text.append(path).append('\n'));
        Files.createDirectories(list.getParent());
        CaseWriter.write(list, text.toString());
    }
}
