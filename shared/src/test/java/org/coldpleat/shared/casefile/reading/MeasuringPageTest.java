package org.coldpleat.shared.casefile.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Keeps the lines that {@code docs/measuring.md} tells people to write readable as a case file. */
class MeasuringPageTest {
    private static final Path PAGE = Path.of("..", "docs", "measuring.md");
    private static final Pattern LINES = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);

    @Test
    void everyExampleReadsWithoutAProblem() throws IOException {
        List<String> examples = LINES.matcher(Files.readString(PAGE))
                .results()
                .map(MatchResult::group)
                .map(fenced -> fenced.replace("```yaml\n", "").replace("```", ""))
                .toList();
        assertTrue(examples.size() > 15, "examples found: " + examples.size());
        for (String example : examples) {
            assertEquals(
                    List.of(), CaseReader.read("example.yaml", whole(example)).problems(), example);
        }
    }

    /** A fragment as part of a case that has nothing else wrong. */
    private static String whole(String example) {
        String top = "formatVersion: 1\ntitle: Example\n";
        String candidate = "candidates:\n  - name: Example\n";
        if (example.startsWith("oil:")) {
            return top + example + candidate;
        }
        String stand = "oil: {grade: 15W-40}\nflowStand: {states: [{name: stand, flow: 10 L/min}]}\n";
        return top + stand + candidate + example.indent(4);
    }
}
