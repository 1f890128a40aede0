package org.coldpleat.validation.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.coldpleat.validation.benchmark.NestedBrent;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Benchmark;

/** That the page of speed is whole; what its figures are is no matter of a test. */
class SpeedPageTest {
    private static final Path PAGE = Path.of("..", "docs", "speed.md");

    @Test
    void everyPlaceOfThePageHasItsNumberAndItsWordsAreThoseOfTheTemplate() throws IOException {
        assertShape(Files.readAllLines(PAGE));
    }

    @Test
    void theTemplateCanBeFilledWithoutARest() throws IOException {
        SpeedTemplate template = SpeedTemplate.ofPage();
        Map<String, Figure> figures = new HashMap<>();
        template.names().forEach(name -> figures.put(name, new Figure(0.25 + figures.size(), 1024)));
        assertShape(template.filled(figures, "2 cores", "Short.").lines().toList());
        figures.remove(template.names().iterator().next());
        assertThrows(IllegalArgumentException.class, () -> template.filled(figures, "2 cores", "Short."));
    }

    @Test
    void everyBenchmarkOfThePageExists() throws Exception {
        Set<String> names = SpeedTemplate.ofPage().names();
        for (String name : names) {
            if (!name.startsWith(SpeedPage.COMMAND)) {
                String[] parts = name.split("[.@]", -1);
                Class<?> benchmarks = Class.forName(NestedBrent.class.getPackageName() + "." + parts[0]);
                assertTrue(benchmarks.getMethod(parts[1]).isAnnotationPresent(Benchmark.class), name);
                assertEquals(parts[2], Compilers.valueOf(parts[2]).name());
            }
        }
    }

    @Test
    void placesAreFilledByTheirForm() {
        Map<String, Figure> figures = Map.of("a@C1", new Figure(3e-6, 0.01), "b@C1", new Figure(1.5e-6, 48_300));
        assertEquals(
                List.of("3 µs", "2", "none", "48.3 kB", "1.5 µs, met", "1.5 µs, missed", "30, missed", "13.5 ms"),
                List.of(
                        filled("{{time a@C1}}", figures),
                        filled("{{ratio a@C1 / b@C1}}", figures),
                        filled("{{bytes a@C1}}", figures),
                        filled("{{bytes b@C1}}", figures),
                        filled("{{atMost 1.5 µs: b@C1}}", figures),
                        filled("{{atMost 1.5 µs: a@C1}}", figures),
                        filled("{{atLeast 30: a@C1 / b@C1}}", figures),
                        filled("{{time 9 * 1000 * b@C1}}", figures)));
        assertThrows(IllegalArgumentException.class, () -> filled("{{bytes c@C1}}", Map.of("c@C1", Figure.ofTime(1))));
    }

    private static String filled(String template, Map<String, Figure> figures) {
        return new SpeedTemplate(template).filled(figures, "", "");
    }

    private static void assertShape(List<String> page) throws IOException {
        Pattern[] shape = SpeedTemplate.ofPage().shape();
        for (int i = 0; i < shape.length && i < page.size(); i++) {
            assertTrue(shape[i].matcher(page.get(i)).matches(), page.get(i) + "\nis not like\n" + shape[i]);
        }
        assertEquals(shape.length, page.size(), () -> "lines of " + Arrays.toString(shape));
    }
}
