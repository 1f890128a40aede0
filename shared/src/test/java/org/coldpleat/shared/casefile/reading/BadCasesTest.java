package org.coldpleat.shared.casefile.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coldpleat.shared.casefile.CaseProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BadCasesTest {
    private static final Path FOLDER = Path.of("src/test/resources/bad-cases");

    record Expected(String file, int line, String field, List<String> words) {}

    static List<Expected> index() throws IOException {
        List<Expected> index = new ArrayList<>();
        for (String row : Files.readAllLines(FOLDER.resolve("index.csv"), StandardCharsets.UTF_8)) {
            if (!row.startsWith("#")) {
                List<String> cells = List.of(row.split(";", -1));
                List<String> words = List.of(cells.get(3).split("\\|"));
                index.add(new Expected(cells.get(0), Integer.parseInt(cells.get(1)), cells.get(2), words));
            }
        }
        return index;
    }

    private static String all(CaseReading reading) {
        return reading.problems().stream().map(CaseProblem::text).collect(Collectors.joining("\n"));
    }

    @ParameterizedTest
    @MethodSource("index")
    void namesLineFieldFindingAndRemedy(Expected expected) {
        CaseReading reading = CaseReader.read(FOLDER.resolve(expected.file()));
        assertTrue(reading.document().isEmpty());
        List<CaseProblem> there = reading.problems().stream()
                .filter(p -> p.line() == expected.line() && p.field().equals(expected.field()))
                .toList();
        assertEquals(1, there.size(), () -> "one problem wanted at " + expected + ", found:\n" + all(reading));
        String text = there.get(0).text();
        for (String word : expected.words()) {
            assertTrue(text.contains(word), () -> word + " is not in: " + text);
        }
        assertFalse(text.matches(".*\\{[0-9].*"), () -> "a placeholder is left in: " + text);
    }

    @Test
    void reportsNothingBesidesTheIndexedProblems() throws IOException {
        for (Expected expected : index()) {
            long wanted = index().stream()
                    .filter(other -> other.file().equals(expected.file()))
                    .count();
            CaseReading reading = CaseReader.read(FOLDER.resolve(expected.file()));
            assertEquals(wanted, reading.problems().size(), () -> expected.file() + "\n" + all(reading));
        }
    }

    @Test
    void everyFileIsIndexed() throws IOException {
        Set<String> indexed = index().stream().map(Expected::file).collect(Collectors.toSet());
        Set<String> found = new HashSet<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            files.map(p -> p.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .forEach(found::add);
        }
        assertEquals(indexed, found);
    }

    @Test
    void theCaseTheyAreMadeFromIsGood() {
        CaseReading reading = CaseReader.read(Path.of("src/test/resources/cases/bench-of-invented-filters.yaml"));
        assertTrue(reading.document().isPresent(), () -> all(reading));
    }

    @Test
    void placeNamesTheCandidate() {
        CaseReading reading = CaseReader.read(FOLDER.resolve("negative-thickness.yaml"));
        assertTrue(
                all(reading).contains("negative-thickness.yaml:29 candidates[0] \"Gray can\" medium.thickness: "),
                () -> all(reading));
    }

    @Test
    void refusesHugeFileWithoutReadingIt(@TempDir Path folder) throws IOException {
        Path huge = folder.resolve("huge.yaml");
        Files.writeString(huge, "# filler\n".repeat(CaseReader.LARGEST_FILE / 9 + 1));
        String text = all(CaseReader.read(huge));
        assertTrue(text.contains("at most 2000000"), text);
    }

    @Test
    void saysWhenThereIsNoFileOrAFolder(@TempDir Path folder) {
        assertTrue(all(CaseReader.read(folder.resolve("none.yaml"))).contains("no such file"));
        assertTrue(all(CaseReader.read(folder)).contains("folder, not a case file"));
    }

    @Test
    void cutsVeryManyProblemsOffWithARemark() {
        StringBuilder text = new StringBuilder("formatVersion: 1\n");
        for (int i = 0; i < 500; i++) {
            text.append("strange").append(i).append(": 1\n");
        }
        List<CaseProblem> problems =
                CaseReader.read("many.yaml", text.toString()).problems();
        assertEquals(101, problems.size());
        assertEquals("file.moreProblems", problems.get(100).code());
    }

    @Test
    void wideFilesOfTheLargestSizeAreReadInReasonableTime() {
        StringBuilder text = new StringBuilder("formatVersion: 1\ncandidates:\n");
        while (text.length() < CaseReader.LARGEST_FILE - 100) {
            text.append("  - {name: \ud83d\udd27, pleats: [1, 2, 3]}\n");
        }
        long start = System.nanoTime();
        CaseReading reading = CaseReader.read("wide.yaml", text.toString());
        double seconds = (System.nanoTime() - start) * 1e-9;
        assertTrue(reading.problems().stream().anyMatch(p -> p.code().equals("list.tooMany")));
        // Quadratic work would take minutes; a busy machine needs a few seconds at most.
        assertTrue(seconds < 30, () -> seconds + " s");
    }
}
