package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.junit.jupiter.api.Test;

/** Many numbers at once: those of a table are those of the charts, and a part of a case has the numbers of the whole. */
class TableCommandTest {
    private static final String HUT = "../demo-cases/ridge-hut-generator/case.yaml";

    private String err = "";

    private String run(int expected, String... words) {
        StringWriter results = new StringWriter();
        StringWriter messages = new StringWriter();
        int code = CommandLineFace.run(
                List.of(words), CaseService.standard(), new PrintWriter(results), new PrintWriter(messages));
        err = messages.toString();
        assertEquals(expected, code, err);
        return results.toString();
    }

    private static String shown(double value) {
        return String.format(Locale.ROOT, "%.4g", value);
    }

    /** The charts of the window and the tables behind them show the curves of the comparison with four digits. */
    @Test
    void pointsAreThoseOfTheCurvesInTheWindowToTheLastDigitShown() {
        CaseService service = CaseService.standard();
        OpenedCase opened = service.open(Path.of(HUT)).opened().orElseThrow();
        int compared = 0;
        for (CandidateResult candidate : opened.compare().now().candidates()) {
            for (StateResult state : candidate.states()) {
                for (int i = 0; i < state.curve().temperature().length; i += 7) {
                    double temperature = state.curve().temperature()[i];
                    PointResult point = opened.point(candidate.name(), state.state(), temperature)
                            .now();
                    String where = candidate.name() + ", " + state.state() + ", " + temperature + " K";
                    assertEquals(
                            shown(100 * state.curve().bypassShare()[i]),
                            shown(100 * point.bypass().orElseThrow().share()),
                            where);
                    assertEquals(
                            shown(state.curve().valveDifference()[i]),
                            shown(point.bypass().orElseThrow().pressureDrop()),
                            where);
                    compared++;
                }
            }
        }
        assertTrue(compared > 100, "compared " + compared);
    }

    @Test
    void everyCandidateStandsInEveryStateAtEveryTemperature() {
        List<String> rows =
                run(ExitCode.DONE, "table", HUT, "--temperatures", "5").lines().toList();
        assertEquals(1 + 4 * 4 * 5, rows.size());
        assertTrue(rows.get(1).startsWith("Slate,engine,cranking,-30.0,"), rows.get(1));
        assertTrue(rows.get(5).startsWith("Slate,engine,cranking,120.0,"), rows.get(5));
        String us = run(ExitCode.DONE, "table", HUT, "--temperatures", "5", "--units", "us", "--state", "running");
        assertTrue(us.contains("Moss,engine,running,-22."), us);
        assertEquals(1 + 4 * 5, us.lines().count());
    }

    @Test
    void jsonKeepsToItsSchemaAndHasTheNumbersOfTheTable() throws Exception {
        String[] words = {"table", HUT, "--temperatures", "3", "--state", "running"};
        List<String> rows = run(ExitCode.DONE, words).lines().skip(1).toList();
        String json = run(ExitCode.DONE, "table", HUT, "--temperatures", "3", "--state", "running", "--format", "json");
        assertEquals(List.of(), OutputTest.faults("table-v1.schema.json", json));
        JsonNode points = new ObjectMapper().readTree(json).path("points");
        assertEquals(rows.size(), points.size());
        for (int i = 0; i < rows.size(); i++) {
            String[] cells = rows.get(i).split(",", -1);
            JsonNode point = points.get(i);
            assertEquals(cells[0], point.path("candidate").asText());
            assertEquals(
                    Double.parseDouble(cells[3]) + 273.15,
                    point.path("temperature_K").asDouble(),
                    1e-9);
            assertEquals(
                    Double.parseDouble(cells[8]),
                    point.path("bypass").path("share").asDouble(),
                    1e-12);
        }
    }

    @Test
    void someCandidatesHaveTheNumbersTheyHaveAmongAll() {
        List<String> all =
                run(ExitCode.DONE, "compare", HUT, "--format", "csv").lines().toList();
        List<String> some = run(ExitCode.DONE, "compare", HUT, "--format", "csv", "--candidates", "Moss, Copper")
                .lines()
                .toList();
        assertEquals(1 + 2 * 4, some.size());
        assertTrue(all.containsAll(some), String.join("\n", some));
        assertTrue(some.get(1).startsWith("Copper"), "in the order of the case");
    }

    @Test
    void whatIsNotThereOrCannotBeIsSaid() {
        run(ExitCode.USAGE, "compare", HUT, "--candidates", "Slate,Mos");
        assertTrue(err.contains("Moss"), err);
        run(ExitCode.USAGE, "table", HUT, "--state", "cold idel");
        assertTrue(err.contains("cold idle"), err);
        run(ExitCode.USAGE, "table", HUT, "--temperatures", "1");
        run(ExitCode.BAD_INPUT, "table", HUT, "--from", "20C", "--to", "10C");
        assertTrue(err.contains("20.0 °C") && err.contains("10.0 °C"), err);
        run(ExitCode.BAD_INPUT, "table", HUT, "--from", "cold");
    }
}
