package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The command {@code coldstart} as a user meets it. */
class ColdStartOutputTest {
    private static final CaseService SERVICE = CaseService.standard();

    private record Run(int code, String out, String err) {}

    private static Run run(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = CommandLineFace.run(List.of(words), SERVICE, new PrintWriter(out), new PrintWriter(err));
        return new Run(code, out.toString(), err.toString());
    }

    private static String hut() {
        return "../demo-cases/ridge-hut-generator/case.yaml";
    }

    @ParameterizedTest
    @MethodSource("org.coldpleat.ui.DemoCases#one")
    void aCaseKeepsToTheSchemas(Path file) throws Exception {
        Run start = run("coldstart", file.toString(), "--format", "json");
        assertEquals(0, start.code(), start.err());
        assertEquals(List.of(), OutputTest.faults("coldstart-v1.schema.json", start.out()));
        Run sweep = run("coldstart", file.toString(), "--sweep", "--format", "json");
        assertEquals(0, sweep.code(), sweep.err());
        assertEquals(List.of(), OutputTest.faults("coldstart-sweep-v1.schema.json", sweep.out()));
        assertFalse(
                OutputTest.faults("coldstart-v1.schema.json", start.out().replace("\"pumped_m3\"", "\"pumped\""))
                        .isEmpty(),
                "a schema that accepts anything guards nothing");
    }

    @ParameterizedTest
    @Tag("nightly")
    @MethodSource("org.coldpleat.ui.DemoCases#others")
    void theOtherCasesKeepToTheSchemas(Path file) throws Exception {
        aCaseKeepsToTheSchemas(file);
    }

    @ParameterizedTest
    @MethodSource("org.coldpleat.ui.DemoCases#one")
    void pageFitsATerminalAndLeavesNothingUnworded(Path file) {
        for (String option : List.of("--units=us", "--sweep")) {
            Run run = run("coldstart", file.toString(), option);
            assertEquals(0, run.code(), run.err());
            assertTrue(run.out().contains("INVENTED DATA"), run.out());
            for (String line : run.out().lines().toList()) {
                assertTrue(line.codePointCount(0, line.length()) <= 110, line);
                assertFalse(line.matches(".*\\{\\d}.*"), "a placeholder left open: " + line);
                assertFalse(line.contains("NaN") || line.contains("Infinity"), line);
                assertFalse(line.matches(".*\\bsafe\\b.*"), line);
            }
        }
    }

    @ParameterizedTest
    @Tag("nightly")
    @MethodSource("org.coldpleat.ui.DemoCases#others")
    void pagesOfTheOtherCasesFitATerminal(Path file) {
        pageFitsATerminalAndLeavesNothingUnworded(file);
    }

    @Test
    void samePageEveryTime() {
        String first = run("coldstart", hut(), "--candidate", "Copper").out();
        assertEquals(first, run("coldstart", hut(), "--candidate", "Copper").out());
    }

    @Test
    void tableHasARowForEveryCandidateAndMoment() {
        String[] rows = run("coldstart", hut(), "--candidate", "Slate", "--format", "csv")
                .out()
                .lines()
                .toArray(String[]::new);
        assertTrue(rows.length > 50, rows.length + " rows");
        assertTrue(rows[0].contains("time [s]"), rows[0]);
        int columns = rows[0].split(",", -1).length;
        assertEquals(columns, rows[1].split(",", -1).length);
        assertTrue(rows[1].startsWith("Slate,0.0,-20"), rows[1]);
    }

    @Test
    void picturesOfStartAndSweepAreWritten(@TempDir Path folder) throws IOException {
        run("coldstart", hut(), "--candidate", "Moss", "--plots", folder.toString());
        run("coldstart", hut(), "--candidate", "Moss", "--sweep", "--plots", folder.toString());
        for (String name : List.of("coldstart-winter-morning", "coldstart-sweep-winter-morning")) {
            assertTrue(Files.size(folder.resolve(name + ".png")) > 10_000, name);
            assertTrue(Files.readString(folder.resolve(name + ".svg")).contains("<desc"), name);
        }
    }

    @Test
    void oneCandidateAnotherScheduleAHeldStateAndAWarmerStartCanBeAskedFor() {
        Run one = run("coldstart", hut(), "--candidate", "Moss", "--schedule", "hurry");
        assertEquals(0, one.code(), one.err());
        assertFalse(one.out().contains("Fjord"), one.out());
        assertTrue(one.out().contains("\"hurry\""), one.out());
        Run held = run("coldstart", hut(), "--candidate", "Moss", "--state", "fast idle", "--from", "0 °C");
        assertEquals(0, held.code(), held.err());
        assertTrue(held.out().contains("at 0 °C before the start, air at 0 °C"), held.out());
    }

    @Test
    void wrongUseSaysWhatThereIs() {
        Run schedule = run("coldstart", hut(), "--schedule", "hurri");
        assertEquals(2, schedule.code());
        assertTrue(schedule.err().contains("did you mean \"hurry\"?"), schedule.err());
        assertEquals(2, run("coldstart", hut(), "--state", "warp").code());
        assertEquals(2, run("coldstart", hut(), "--candidate", "Slat").code());
        assertEquals(2, run("coldstart", hut(), "--sweep", "--from", "0C").code());
        assertEquals(2, run("coldstart", hut(), "--bands").code());
        assertEquals(
                2,
                run("coldstart", hut(), "--state", "cold idle", "--schedule", "hurry")
                        .code());
        Run hot = run("coldstart", hut(), "--from", "85 °C");
        assertEquals(3, hot.code());
        assertTrue(hot.err().contains("must be colder than 80 °C"), hot.err());
        assertEquals(3, run("coldstart", hut(), "--from", "-60 °C").code());
        assertEquals(3, run("coldstart", hut(), "--from", "minus ten").code());
    }

    @Test
    @Tag("nightly")
    void aSweepWithBandsKeepsToTheSchemaAndShadesItsPicture(@TempDir Path folder) throws Exception {
        Run json = run("coldstart", hut(), "--candidate", "Copper", "--sweep", "--bands", "--format", "json");
        assertEquals(0, json.code(), json.err());
        assertEquals(List.of(), OutputTest.faults("coldstart-sweep-v1.schema.json", json.out()));
        JsonNode rows = new ObjectMapper()
                .readTree(json.out())
                .path("candidates")
                .path(0)
                .path("rows");
        double low = rows.path(0).path("open_s_low").asDouble();
        assertTrue(low > 0 && low < rows.path(0).path("open_s_high").asDouble(), "band of the coldest start");
        Run page = run("coldstart", hut(), "--candidate", "Copper", "--sweep", "--bands", "--plots", folder.toString());
        assertTrue(page.out().contains("In brackets the 95 % band"), page.out());
        assertTrue(Files.readString(folder.resolve("coldstart-sweep-winter-morning.svg"))
                .contains("Shaded: 95 % bands"));
    }
}
