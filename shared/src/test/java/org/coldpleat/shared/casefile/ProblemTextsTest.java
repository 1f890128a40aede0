package org.coldpleat.shared.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.coldpleat.shared.notice.Wording;
import org.junit.jupiter.api.Test;

class ProblemTextsTest {
    private static final Pattern CODE = Pattern.compile(
            "\"((?:file|yaml|version|key|list|text|flag|choice|typical|spread|range|quantity|case|start|trace|duty|sheet)"
                    + "\\.[a-zA-Z0-9]+(?:\\.near)?)\"");

    /** Codes put together in the code from a stem and an ending. */
    private static final Set<String> COMPOSED = Set.of(
            "type.keys.foundText",
            "type.keys.foundList",
            "type.list.foundText",
            "type.list.foundKeys",
            "type.text.foundList",
            "type.text.foundKeys",
            "range.from.to",
            "range.above.to",
            "range.above",
            "range.from",
            "range.to");

    private static Set<String> codesInSource() throws IOException {
        Set<String> codes = new TreeSet<>(COMPOSED);
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(p -> p.toString().endsWith(".java")).toList()) {
                Matcher code = CODE.matcher(Files.readString(file, StandardCharsets.UTF_8));
                while (code.find()) {
                    codes.add(code.group(1));
                }
            }
        }
        return codes;
    }

    @Test
    void everyCodeHasATextAndEveryTextACode() throws IOException {
        assertEquals(codesInSource(), new TreeSet<>(CaseProblem.wording().codes()));
    }

    @Test
    void patternsHaveNoPlainApostrophe() {
        Wording wording = CaseProblem.wording();
        for (String code : wording.codes()) {
            assertFalse(wording.pattern(code).contains("'"), code);
        }
    }
}
