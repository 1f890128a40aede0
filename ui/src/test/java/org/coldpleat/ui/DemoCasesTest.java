package org.coldpleat.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.ui.commandline.CommandLineFace;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every demo case goes through every command, and says that its data are invented. */
class DemoCasesTest {
    private static final CaseService SERVICE = CaseService.standard();

    /** What a run left behind. */
    private record Run(int code, String out, String err) {}

    private static Run run(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = CommandLineFace.run(List.of(words), SERVICE, new PrintWriter(out), new PrintWriter(err));
        return new Run(code, out.toString(), err.toString());
    }

    @Test
    void thereAreDemoCases() throws IOException {
        assertFalse(DemoCases.all().isEmpty());
    }

    /** Our own earlier answers: they guard the story of a case, they prove nothing. */
    @ParameterizedTest
    @MethodSource("org.coldpleat.ui.DemoCases#all")
    void answersTellTheStoryOfTheCase(Path file) throws IOException {
        List<String> answers = new ArrayList<>();
        for (CandidateResult candidate :
                SERVICE.open(file).opened().orElseThrow().compare().now().candidates()) {
            for (StateResult state : candidate.states()) {
                answers.add(String.join(
                        ",",
                        candidate.name(),
                        state.setting(),
                        state.state(),
                        state.answer().name().toLowerCase(Locale.ROOT)));
            }
        }
        List<String> expected = Files.readAllLines(file.resolveSibling("expected.csv"));
        assertEquals(expected.subList(2, expected.size()), answers);
        assertTrue(Files.readString(file.resolveSibling("story.md")).contains("Invented"));
    }

    @ParameterizedTest
    @Tag("nightly")
    @MethodSource("org.coldpleat.ui.DemoCases#all")
    void everyCommandAnswers(Path file) {
        String name = file.toString();
        Run check = run("check", name);
        assertEquals(0, check.code(), check.out());
        OpenedCase opened = SERVICE.open(file).opened().orElseThrow();
        assertTrue(opened.invented(), name);
        List<String[]> lines = new ArrayList<>();
        lines.add(new String[] {"compare", name, "--format", "csv"});
        lines.add(new String[] {"evidence", name});
        for (String test : List.of("flowBench", "drainTest", "airTest", "fiberSizing")) {
            lines.add(new String[] {
                "plan", test, name, "--candidate", opened.candidates().get(0)
            });
        }
        lines.add(new String[] {
            "evidence",
            name,
            "--format",
            "json",
            "--candidate",
            opened.candidates().get(0)
        });
        for (String candidate : opened.candidates()) {
            lines.add(new String[] {"explain", name, "--candidate", candidate});
            for (String quantity : SERVICE.explainable()) {
                lines.add(new String[] {"explain", name, "--candidate", candidate, "--quantity", quantity});
            }
            for (String state : opened.states()) {
                lines.add(new String[] {
                    "point", name, "--candidate", candidate, "--temperature", "-10 °C", "--state", state
                });
            }
        }
        lines.add(new String[] {
            "point", name, "--candidate", opened.candidates().get(0), "--temperature", "14 °F", "--flow", "2 gpm"
        });
        lines.add(new String[] {"map", name, "--candidate", opened.candidates().get(0)});
        for (String[] line : lines) {
            Run run = run(line);
            assertEquals(0, run.code(), String.join(" ", line) + ": " + run.err());
        }
    }

    @Test
    void samePageEveryTime() throws IOException {
        String file = DemoCases.one().get(0).toString();
        assertEquals(run("compare", file).out(), run("compare", file).out());
    }

    @ParameterizedTest
    @Tag("nightly")
    @MethodSource("org.coldpleat.ui.DemoCases#others")
    void samePageOfTheOtherCasesEveryTime(Path file) {
        assertEquals(
                run("compare", file.toString()).out(),
                run("compare", file.toString()).out());
    }

    @ParameterizedTest
    @MethodSource("org.coldpleat.ui.DemoCases#all")
    void nothingIsLeftUnworded(Path file) {
        Run first = run("compare", file.toString());
        assertEquals(0, first.code(), first.err());
        assertTrue(first.out().contains("INVENTED DATA"), first.out());
        for (String line : first.out().lines().toList()) {
            assertTrue(line.codePointCount(0, line.length()) <= 110, line);
            assertFalse(line.matches(".*\\b[a-z]+\\.[a-z]+[A-Z][A-Za-z]* \\[.*"), "a code without words: " + line);
            assertFalse(line.matches(".*\\{\\d}.*"), "a placeholder left open: " + line);
        }
    }

    /** Shape of every story: resistance and opening temperature never fall, and all dirt is accounted for. */
    @ParameterizedTest
    @MethodSource("org.coldpleat.ui.DemoCases#one")
    void serviceLifeReadsWell(Path file) {
        var result = SERVICE.open(file)
                .opened()
                .orElseThrow()
                .service(java.util.OptionalDouble.empty())
                .map(asked -> asked.now())
                .orElseThrow();
        for (var candidate : result.candidates()) {
            assertTrue(candidate.isComputed(), candidate.name());
            assertTrue(candidate.massClosure() < 1e-9, candidate.name());
            for (int i = 1; i < candidate.moments().size(); i++) {
                var before = candidate.moments().get(i - 1);
                var after = candidate.moments().get(i);
                assertTrue(after.resistanceRatio() >= before.resistanceRatio(), candidate.name());
                // the search ends within 0.01 K
                assertFalse(after.openingTemperature() < before.openingTemperature() - 0.02, candidate.name());
            }
            // curves of starts against full ones: within half a percent of the oil of a start
            assertTrue(candidate.startError() < 5e-3, candidate.name() + " " + candidate.startError());
        }
        Run json = run("service", file.toString(), "--format", "json");
        assertEquals(0, json.code(), json.err());
        Run test = run(
                "multipass",
                file.toString(),
                "--candidate",
                result.candidates().get(0).name());
        assertEquals(0, test.code(), test.err());
    }

    @ParameterizedTest
    @Tag("nightly")
    @MethodSource("org.coldpleat.ui.DemoCases#others")
    void serviceLifeOfTheOtherCasesReadsWell(Path file) {
        serviceLifeReadsWell(file);
    }

    /** The test that a sheet states comes out again: retained dust at the terminal pressure drop. */
    @Test
    void multiPassGivesTheStatedCapacityBack() throws IOException {
        Path file = DemoCases.all().stream()
                .filter(one -> one.toString().contains("half-the-area"))
                .findFirst()
                .orElseThrow();
        var report = SERVICE.open(file)
                .opened()
                .orElseThrow()
                .multiPass("Full", 0)
                .map(asked -> asked.now())
                .orElseThrow();
        // 9.4 g stated; the end is found to rounding
        assertEquals(9.4e-3, report.retainedMass(), 1e-6);
    }
}
