package org.coldpleat.shared.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.casefile.reading.CaseReading;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CaseReaderTest {
    private static final String HEAD = """
            formatVersion: 1
            title: Invented
            oil: {grade: 15W-40}
            flowStand: {states: [{name: cold, flow: 5 L/min}]}
            candidates:
              - name: Gray can
            """;

    private static CaseDocument good(String text) {
        CaseReading reading = CaseReader.read("case.yaml", text);
        assertTrue(reading.document().isPresent(), () -> all(reading));
        return reading.document().get();
    }

    private static String all(CaseReading reading) {
        return reading.problems().stream().map(CaseProblem::text).collect(Collectors.joining("\n"));
    }

    private static Section medium(String line) {
        CaseDocument document = good(HEAD + "    medium:\n      " + line + "\n");
        return document.root().sections("candidates").get(0).section("medium").orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "thickness: 0,8 mm",
                "thickness: '0.8 mm'",
                "thickness: 0.8 mm # at the rim",
                "thickness: {value: 0.8 mm}",
                "thickness: {value: \"0,8 mm\", note: wet}",
                "thickness: [0.8] mm",
                "thickness: [0.8 mm]"
            })
    void takesTheSameThicknessInManyForms(String line) {
        assertEquals(0.8e-3, medium(line).quantity("thickness").orElseThrow().value(), 1e-18);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "thickness: [0.7, 0.8, 0.9] mm",
                "thickness: [0.7, 0.8, 0.9] mm # three spots",
                "thickness: [0.7 mm, 0.8 mm, 0.9 mm]",
                "thickness: [0,7 mm, 0,8 mm, 0,9 mm]",
                "thickness: ['0.7 mm', \"0.8 mm\", 0.9 mm]",
                "thickness: {value: [0.7, 0.8, 0.9] mm, note: three spots}",
                "thickness:\n        - 0.7 mm\n        - 0.8 mm\n        - 0,9 mm"
            })
    void takesReadingsInManyForms(String line) {
        Measured thickness = medium(line).quantity("thickness").orElseThrow();
        assertEquals(3, thickness.repeats());
        assertEquals(0.8e-3, thickness.value(), 1e-18);
    }

    @Test
    void groupOfKeysCarriesSpreadProvenanceAndNote() {
        Section medium =
                medium("thickness: {value: 0.76 mm, plusMinus: 0.02 mm, provenance: published, note: from a paper}");
        Measured thickness = medium.quantity("thickness").orElseThrow();
        assertEquals(0.02e-3, thickness.halfWidth(), 1e-18);
        assertEquals(Spread.RECTANGULAR, thickness.spread());
        assertEquals(Provenance.PUBLISHED, thickness.provenance());
        assertEquals("from a paper", medium.note("thickness").orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"thickness:", "thickness: ~", "thickness: null"})
    void blankStaysUnknownAndNeverBecomesZero(String line) {
        Section medium = medium(line + "\n      family: glass");
        assertFalse(medium.has("thickness"));
        assertTrue(medium.quantity("thickness").isEmpty());
    }

    @Test
    void byteOrderMarkAndCarriageReturnsAreAccepted(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("case.yaml");
        Files.write(file, ("\ufeff" + HEAD.replace("\n", "\r\n")).getBytes(StandardCharsets.UTF_8));
        CaseReading reading = CaseReader.read(file);
        assertTrue(reading.document().isPresent(), () -> all(reading));
    }

    @ParameterizedTest
    @CsvSource({
        "Ridge hut.yaml, Ridge hut",
        "cases/hut.v2.yml, hut.v2",
        "C:\\cases\\hut.yaml, hut",
        "hut, hut",
        "'', case"
    })
    void aCaseWithoutTitleAndVersionIsCalledLikeItsFile(String file, String title) {
        String bare = HEAD.replace("formatVersion: 1\n", "").replace("title: Invented\n", "");
        CaseReading reading = CaseReader.read(file, bare);
        assertEquals(
                title,
                reading.document()
                        .orElseThrow(() -> new AssertionError(all(reading)))
                        .title());
        assertEquals("Invented", good(HEAD).title());
    }

    @Test
    void proseIsLeftAsItIs() {
        String story = "story: |\n  seen: [1] the can\n  thickness: [2, 3] mm\nnotes: see [4] there\n";
        Section root = good(story + HEAD).root();
        assertEquals(
                "seen: [1] the can\nthickness: [2, 3] mm", root.text("story").orElseThrow());
        assertEquals("see [4] there", root.text("notes").orElseThrow());
    }

    @Test
    void columnsCountInTheTextAsWritten() {
        String line = "    medium: {thickness: [0.7, 0.8] mm, basisWeight: 168}\n";
        CaseProblem problem =
                CaseReader.read("case.yaml", HEAD + line).problems().get(0);
        assertEquals("candidates[0].medium.basisWeight", problem.field());
        assertEquals(7, problem.line());
        assertEquals(line.indexOf("168") + 1, problem.column());
    }

    @Test
    void numbersThatYamlWouldBendStayAsWritten() {
        CaseDocument document = good(HEAD.replace("Invented", "12:30 on 2024-01-02"));
        assertEquals("12:30 on 2024-01-02", document.root().text("title").orElseThrow());
        assertEquals(
                "no", good(HEAD.replace("Invented", "no")).root().text("title").orElseThrow());
    }

    @Test
    void digestFollowsTheText() {
        // SHA-256 of the text, as printed by the sha256sum program for the same bytes: 64 hexadecimal digits.
        assertTrue(good(HEAD).digest().matches("[0-9a-f]{64}"));
        assertEquals(good(HEAD).digest(), good("\ufeff" + HEAD).digest());
        assertNotEquals(good(HEAD).digest(), good(HEAD + "\n").digest());
    }

    @Test
    void allProblemsComeInFileOrder() {
        String text = HEAD.replace("5 L/min", "5").replace("15W-40", "15W-40, densty: 1") + "    outsid: 4\n";
        List<Integer> lines = CaseReader.read("case.yaml", text).problems().stream()
                .map(CaseProblem::line)
                .toList();
        assertEquals(List.of(3, 4, 7), lines);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "oil: {grade: 15W-40} | oil: &a {grade: 15W-40} | yaml.anchor",
                "title: Invented | title: *bold | yaml.anchor",
                "title: Invented | title: '@home' | ''",
                "title: Invented | title: @home | yaml.startCharacter",
                "title: Invented | title: 80 % of | ''",
                "title: Invented | title: %80 | yaml.startCharacter",
                "title: Invented | title: [a] b [c] d | yaml.indent",
                "title: Invented | title: [a] b | ''",
                "title: Invented | title | yaml.colonMissing",
                "title: Invented | title: \"3/8\"\" | yaml.quoteOpen",
                "title: Invented | ? [a] : b | yaml.keyIsNoWord",
            })
    void yamlTrapsGetTheirOwnWords(String old, String now, String code) {
        String wanted = code.replace("'", "");
        CaseReading reading = CaseReader.read("case.yaml", HEAD.replace(old, now));
        List<String> codes = reading.problems().stream().map(CaseProblem::code).toList();
        assertTrue(wanted.isEmpty() ? codes.isEmpty() : codes.contains(wanted), () -> now + "\n" + all(reading));
    }

    @Test
    void neverThrowsForMutilatedFiles() throws Exception {
        mutilate(300);
    }

    @Test
    @Tag("nightly")
    void neverThrowsForManyMutilatedFiles() throws Exception {
        mutilate(1500);
    }

    private static void mutilate(int files) throws Exception {
        String sample = Files.readString(Path.of("src/test/resources/cases/ridge-hut.yaml"), StandardCharsets.UTF_8);
        Random random = new Random(11);
        String alphabet = " :,-[]{}\"'#&*!|>%@`\n\t0\u00b1\u2013";
        for (int i = 0; i < files; i++) {
            StringBuilder text = new StringBuilder(sample);
            int edits = 1 + random.nextInt(3);
            for (int k = 0; k < edits; k++) {
                int at = random.nextInt(text.length() - 10);
                if (random.nextBoolean()) {
                    text.setCharAt(at, alphabet.charAt(random.nextInt(alphabet.length())));
                } else {
                    text.delete(at, at + 1 + random.nextInt(9));
                }
            }
            CaseReading reading = CaseReader.read("case.yaml", text.toString());
            for (CaseProblem problem : reading.problems()) {
                assertTrue(CaseProblem.wording().has(problem.code()), problem::code);
                assertFalse(problem.text().matches("(?s).*\\{[0-9]}.*"), problem::text);
            }
        }
    }
}
