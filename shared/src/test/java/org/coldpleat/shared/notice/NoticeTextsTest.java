package org.coldpleat.shared.notice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Compares the codes in the sources of all modules with the texts in the bundle. */
class NoticeTextsTest {
    private static final Pattern NOTICE = Pattern.compile("(?:Notice\\.of|new Notice)\\(\\s*\"([a-zA-Z.]+)\"");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-zA-Z]*(?:\\.[a-zA-Z]*)*)\"");

    private static Set<String> find(Pattern pattern) throws IOException {
        Set<String> found = new TreeSet<>();
        for (String module : List.of("shared", "model", "ui")) {
            Path sources = Path.of("..", module, "src", "main", "java");
            if (!Files.isDirectory(sources)) {
                continue;
            }
            try (Stream<Path> files = Files.walk(sources)) {
                for (Path file :
                        files.filter(p -> p.toString().endsWith(".java")).toList()) {
                    Matcher code = pattern.matcher(Files.readString(file, StandardCharsets.UTF_8));
                    while (code.find()) {
                        found.add(code.group(1));
                    }
                }
            }
        }
        return found;
    }

    @Test
    void everyNoticeHasAText() throws IOException {
        Set<String> withoutText = find(NOTICE);
        withoutText.removeAll(NoticeText.codes());
        assertEquals(Set.of(), withoutText);
    }

    @Test
    void everyTextHasANotice() throws IOException {
        Set<String> literals = find(LITERAL);
        assertFalse(literals.isEmpty());
        Set<String> dead = new TreeSet<>();
        for (String code : NoticeText.codes()) {
            // A code may be put together from a stem and a last word.
            int point = code.lastIndexOf('.');
            boolean composed =
                    literals.contains(code.substring(0, point + 1)) || literals.contains(code.substring(point + 1));
            if (!literals.contains(code) && !composed) {
                dead.add(code);
            }
        }
        assertEquals(Set.of(), dead);
    }
}
