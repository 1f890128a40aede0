package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** An engine of which kind and size are known, on the command line. */
class EngineCommandTest {
    private String out = "";
    private String err = "";

    private int run(String... words) {
        StringWriter results = new StringWriter();
        StringWriter messages = new StringWriter();
        int code = CommandLineFace.run(
                List.of(words), CaseService.standard(), new PrintWriter(results), new PrintWriter(messages));
        out = results.toString();
        err = messages.toString();
        return code;
    }

    private JsonNode json(String... more) throws Exception {
        List<String> words = new ArrayList<>(List.of("engine", "car", "--displacement=2.0L", "--format=json"));
        words.addAll(List.of(more));
        assertEquals(ExitCode.DONE, run(words.toArray(String[]::new)), err);
        assertEquals(List.of(), OutputTest.faults("engine-v1.schema.json", out));
        return new ObjectMapper().readTree(out);
    }

    private static JsonNode value(JsonNode profile, String path) {
        for (JsonNode one : profile.path("values")) {
            if (one.path("path").asText().equals(path)) {
                return one;
            }
        }
        throw new AssertionError("no " + path);
    }

    private static List<String> asked(JsonNode profile) {
        List<String> asked = new ArrayList<>();
        profile.path("questions").forEach(one -> asked.add(one.path("about").asText()));
        return asked;
    }

    @Test
    void showsWhatACaseWithTheSameWordsGets(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("case.yaml"), """
                oil: {grade: 5W-30}
                engine: {kind: car, displacement: 2.0 L}
                candidates:
                  - name: Any
                    bypass: {position: dome, openingPressure: 12 psi}
                    medium: {family: glass, statedArea: 800 cm2}
                """);
        OpenedCase opened = CaseService.standard().open(file).opened().orElseThrow();
        JsonNode profile = json();
        assertTrue(profile.path("values").size() > 30, out);
        profile.path("values")
                .forEach(one -> assertEquals(
                        opened.understood().get(one.path("path").asText()).value(),
                        one.path("value").asDouble(),
                        one.toString()));
    }

    @Test
    void asksForFourThingsAndNotForWhatWasTold() throws Exception {
        JsonNode bare = json();
        assertEquals(4, asked(bare).size());
        JsonNode told = json("--relief=65 psi", "--hot-idle", "20 psi");
        assertFalse(asked(told).contains("relief") || asked(told).contains("hotIdle"), out);
        assertTrue(value(told, "engine.reliefValves[0].openingPressure")
                .path("stated")
                .asBoolean());
        // NIST SP 811 (2008), B.8: 6894.757 Pa a psi
        assertEquals(
                20 * 6894.757,
                value(told, "engine.gallery.hotReading.pressure").path("value").asDouble(),
                0.1);
        assertTrue(told.path("coldAnswer").path("engineFactor95").asDouble()
                < bare.path("coldAnswer").path("engineFactor95").asDouble());
        JsonNode all = json(
                "--relief=65 psi", "--hot-idle=20 psi", "--jet-bore=1.5 mm", "--jet-length=4 mm", "--pump=9 cm3/rev");
        assertEquals(List.of(), asked(all));
    }

    @Test
    void pageSaysHowSureWhereFromAndWhatToAsk() {
        assertEquals(ExitCode.DONE, run("engine", "heavy", "--displacement", "12 L", "--oil", "15W-40"), err);
        assertTrue(out.contains("several sources agree") && out.contains("a guess"), out);
        assertTrue(out.contains("as you say"), out);
        assertTrue(out.contains("What to ask the owner"), out);
        assertTrue(out.lines().allMatch(line -> line.codePointCount(0, line.length()) <= 120), out);
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void pageHasTheUnitsAskedFor(UnitSystem units) {
        String name = units.name().toLowerCase(Locale.ROOT);
        assertEquals(ExitCode.DONE, run("engine", "car", "--displacement=2.0L", "--units", name), err);
        // sources are told in the units they were read in
        String own = out.replaceAll("(?s)Where it comes from.*What to ask the owner", "");
        assertEquals(List.of(), new UnitPage(own).foreign(units));
    }

    @Test
    void whatIsNotUnderstoodIsToldWithItsRemedy() {
        assertEquals(ExitCode.BAD_INPUT, run("engine", "cra", "--displacement", "2 L", "--relief", "4 frogs"));
        assertEquals("", out);
        assertTrue(err.contains("did you mean car?") && err.contains("The unit frogs is not known"), err);
        assertEquals(ExitCode.USAGE, run("engine", "car"));
        assertTrue(err.contains("--displacement"), err);
        assertEquals(ExitCode.USAGE, run("engine"));
    }
}
