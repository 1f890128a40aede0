package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.service.FixtureCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {
    /** What a run left behind. */
    record Run(int code, String out, String err) {}

    static Run run(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code =
                CommandLineFace.run(List.of(words), FixtureCase.service(), new PrintWriter(out), new PrintWriter(err));
        return new Run(code, out.toString(), err.toString());
    }

    @Test
    void helpAndVersionGoToStandardOutputAndEndWithZero() {
        Run help = run("--help");
        assertEquals(0, help.code());
        for (String command : List.of("compare", "point", "map", "explain", "check")) {
            assertTrue(help.out().contains("\n  " + command + " "), help.out());
            Run own = run(command, "--help");
            assertEquals(0, own.code());
            assertTrue(own.out().contains("CASE"), own.out());
            assertFalse(own.out().contains("${"), own.out());
        }
        Run version = run("--version");
        assertEquals(0, version.code());
        assertTrue(version.out().startsWith("coldpleat "), version.out());
    }

    @ParameterizedTest
    @CsvSource({
        "''",
        "frobnicate",
        "compare",
        "compare good.yaml extra",
        "compare good.yaml --format xml",
        "compare good.yaml --units imperial",
        "compare good.yaml --unknown",
        "point good.yaml --temperature -20C --flow 5gpm",
        "point good.yaml --candidate No --temperature -20C",
        "point good.yaml --candidate No --temperature -20C --flow 5gpm --state x"
    })
    void misunderstoodCommandLineIsUsage(String line) {
        Run run = run(line.isEmpty() ? new String[0] : line.split(" ", -1));
        assertAll(
                () -> assertEquals(ExitCode.USAGE, run.code(), run.err()),
                () -> assertEquals("", run.out()),
                () -> assertTrue(run.err().contains("--help"), run.err()),
                () -> assertFalse(run.err().contains("\tat "), run.err()));
    }

    @Test
    void unknownNamesAreUsageAndNameTheNearestOne() {
        Run candidate = run("map", "good.yaml", "--candidate", "blue cam");
        assertEquals(ExitCode.USAGE, candidate.code());
        assertTrue(candidate.err().contains("did you mean \"Blue can\"?"), candidate.err());
        Run state = run(
                "point", "good.yaml", "--candidate", "Blue can", "--temperature", "0C", "--state", "idle afterstart");
        assertEquals(ExitCode.USAGE, state.code());
        assertTrue(state.err().contains("did you mean \"idle after start\"?"), state.err());
        Run far = run("map", "good.yaml", "--candidate", "xyzzyxyzzy");
        assertTrue(far.err().contains("there is: Blue can, "), far.err());
    }

    @ParameterizedTest
    @CsvSource({
        "-20, 5gpm",
        "-20 kPa, 5gpm",
        "warm, 5gpm",
        "-20C, 5",
        "-20C, -5 gpm",
        "-20C, 0 gpm",
        "-300C, 5gpm",
        "200 C, 5gpm",
        "-20C, 5 psi"
    })
    void unusableValueIsBadInputAndIsEchoed(String temperature, String flow) {
        Run run = run("point", "good.yaml", "--candidate", "Blue can", "--temperature", temperature, "--flow", flow);
        assertAll(
                () -> assertEquals(ExitCode.BAD_INPUT, run.code(), run.err()),
                () -> assertEquals("", run.out()),
                () -> assertTrue(run.err().contains(temperature) || run.err().contains(flow), run.err()),
                () -> assertFalse(run.err().contains("Exception"), run.err()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"-20C", "-20 °C", "-4F", "-4 °F", "253.15 K"})
    void temperaturesAreReadAsPeopleWriteThem(String written) {
        Run run = run(
                "point",
                "good.yaml",
                "--candidate",
                "Blue can",
                "--temperature",
                written,
                "--flow",
                "9.5 L/min",
                "--format",
                "json");
        assertEquals(ExitCode.DONE, run.code(), run.err());
        String number = run.out().replaceAll("(?s).*\"temperature_K\": ([0-9.]+),.*", "$1");
        assertEquals(253.15, Double.parseDouble(number), 1e-9);
    }

    @Test
    void flowInGallonsIsReadAsFlow() {
        Run run = run(
                "point",
                "good.yaml",
                "--candidate",
                "Blue can",
                "--temperature",
                "14 °F",
                "--flow",
                "5gpm",
                "--format",
                "json");
        String number = run.out().replaceAll("(?s).*?\"flow_m3_s\": ([0-9.E-]+),.*", "$1");
        // 231 cubic inches a gallon, NIST SP 811 (2008), B.8
        assertEquals(5 * 231 * Math.pow(0.0254, 3) / 60, Double.parseDouble(number), 1e-12);
    }

    @Test
    void problemsOfACaseAreListedWithFileAndLine() {
        for (String command : List.of("compare", "check")) {
            Run run = run(command, "bad.yaml");
            assertEquals(ExitCode.BAD_INPUT, run.code());
            String listed = command.equals("check") ? run.out() : run.err();
            assertTrue(listed.contains("bad.yaml:12: candidates[0].pleats.count: must be"), listed);
            assertTrue(listed.contains("bad.yaml: the file has no oil"), listed);
        }
        assertEquals("", run("compare", "bad.yaml").out());
        assertEquals(ExitCode.DONE, run("check", "good.yaml").code());
    }

    @Test
    void noConvergedAnswerIsFourAndTheRestIsStillShown() {
        Run compare = run("compare", "unresolved.yaml");
        assertEquals(ExitCode.NO_ANSWER, compare.code());
        assertTrue(compare.out().contains("no converged answer"), compare.out());
        Run point = run("point", "unresolved.yaml", "--candidate", "Blue can", "--temperature", "0C", "--flow", "5gpm");
        assertEquals(ExitCode.NO_ANSWER, point.code());
        Run map = run("map", "unresolved.yaml", "--candidate", "Blue can");
        assertEquals(ExitCode.NO_ANSWER, map.code());
    }

    @Test
    void mapWithSomeGapsIsDoneWithAMessage() {
        Run map = run("map", "good.yaml", "--candidate", "Blue can");
        assertEquals(ExitCode.DONE, map.code());
        assertTrue(map.err().contains("15"), map.err());
    }

    @Test
    void plotsAreWrittenIntoTheFolder(@TempDir Path folder) throws Exception {
        Path target = folder.resolve("new folder/plots");
        Run run = run("compare", "good.yaml", "--plots", target.toString());
        assertEquals(ExitCode.DONE, run.code(), run.err());
        assertEquals(
                ExitCode.DONE,
                run("map", "good.yaml", "--candidate", "=Gray", "--plots", target.toString())
                        .code());
        try (Stream<Path> files = Files.list(target)) {
            assertEquals(
                    List.of(
                            "map-gray.png",
                            "map-gray.svg",
                            "pressure-1-stand-20-l-min.png",
                            "pressure-1-stand-20-l-min.svg",
                            "pressure-2-idle-after-start.png",
                            "pressure-2-idle-after-start.svg",
                            "share-1-stand-20-l-min.png",
                            "share-1-stand-20-l-min.svg",
                            "share-2-idle-after-start.png",
                            "share-2-idle-after-start.svg",
                            "what-pictures-cannot-tell.txt"),
                    files.map(f -> f.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void plotsThatCannotBeWrittenAreAFailure(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("taken"), "x");
        Run run = run("compare", "good.yaml", "--plots", file.toString());
        assertEquals(ExitCode.FAILURE, run.code());
        assertFalse(run.err().contains("\tat "), run.err());
    }

    @Test
    void explanationIsIndentedAndHasValueOriginAndUnit() {
        Run run = run("explain", "good.yaml", "--candidate", "Blue can", "--units", "us");
        assertEquals(ExitCode.DONE, run.code(), run.err());
        assertTrue(run.out().contains("[Blue can] = 9.68 °F"), run.out());
        assertTrue(run.out().contains("\n    written: candidates[0].medium.strip, line 31, measured"), run.out());
    }
}
