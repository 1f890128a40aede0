package org.coldpleat.ui.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The table of what is often heard names every answer of its page, and steps that the lesson has. */
class HeardTest {
    private static final Path PAGE = Path.of("../docs/questions.md");
    private static final int LEAST = 15;

    private record Row(String heard, String line, String step) {}

    private static List<Row> rows() throws IOException {
        return Files.readAllLines(PAGE).stream()
                .filter(line -> line.startsWith("| \""))
                .map(line -> line.split("\\|"))
                .map(cells -> new Row(cells[1].strip(), cells[2].strip(), cells[3].strip()))
                .toList();
    }

    @Test
    void everyAnswerStandsInTheTableAndTheOtherWayRound() throws IOException {
        List<String> answered = Files.readAllLines(PAGE).stream()
                .filter(line -> line.startsWith("## \""))
                .map(line -> line.substring(3))
                .toList();
        assertTrue(answered.size() >= LEAST, "answers: " + answered.size());
        assertEquals(answered, rows().stream().map(Row::heard).toList());
    }

    @Test
    void everyStepThatIsNamedIsInTheLessonAndEveryStepIsNamed() throws IOException {
        Set<String> titles = Lesson.STEPS.stream().map(Lesson::title).collect(Collectors.toSet());
        Set<String> named =
                rows().stream().map(Row::step).filter(step -> !step.equals("-")).collect(Collectors.toSet());
        assertEquals(titles, named);
    }
}
