package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.certainty.Band;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.table.CsvWriter;
import org.coldpleat.ui.commandline.CommandLineTest.Run;
import org.coldpleat.ui.commandline.compare.CompareCsv;
import org.coldpleat.ui.commandline.compare.CompareJson;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.FixtureCase;
import org.coldpleat.ui.text.CompareText;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.ShownUnit;
import org.coldpleat.ui.text.Table;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutputTest {
    private static final CaseService SERVICE = CaseService.standard();

    static List<Error> faults(String schema, String json) throws Exception {
        try (InputStream in = CommandLineFace.class.getResourceAsStream(schema)) {
            Schema known = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(in, InputFormat.JSON);
            return known.validate(json, InputFormat.JSON);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"good.yaml", "unresolved.yaml"})
    void jsonKeepsToItsSchema(String file) throws Exception {
        Run compare = CommandLineTest.run("compare", file, "--format", "json");
        assertEquals(List.of(), faults("compare-v1.schema.json", compare.out()));
        assertFalse(compare.out().contains("NaN"), "JSON knows no NaN");
        for (String candidate : List.of("Blue can", "No valve")) {
            for (String[] drive : new String[][] {{"--flow", "5gpm"}, {"--state", "idle after start"}}) {
                Run point = CommandLineTest.run(
                        "point",
                        file,
                        "--candidate",
                        candidate,
                        "--temperature",
                        "0C",
                        "--format",
                        "json",
                        drive[0],
                        drive[1]);
                assertEquals(List.of(), faults("point-v1.schema.json", point.out()));
            }
        }
        Run map = CommandLineTest.run("map", file, "--candidate", "Blue can", "--format", "json");
        assertEquals(List.of(), faults("map-v1.schema.json", map.out()));
    }

    @Test
    void evidenceOfADemoCaseKeepsToItsSchema() throws Exception {
        String json = onDemo("ridge-hut-generator", "evidence", "--format", "json");
        assertEquals(List.of(), faults("evidence-v1.schema.json", json));
        assertTrue(json.contains("\"conflict\": true"), "the story has a conflict");
    }

    @ParameterizedTest
    @ValueSource(strings = {"flowBench", "drainTest", "airTest", "scaleTest", "bubblePoint", "fiberSizing"})
    void planOfADemoCaseKeepsToItsSchema(String test) throws Exception {
        String json = onDemo("ridge-hut-generator", "plan", test, "--candidate", "Slate", "--format", "json");
        assertEquals(List.of(), faults("plan-v1.schema.json", json));
    }

    @ParameterizedTest
    @Tag("nightly")
    @ValueSource(strings = {"ridge-hut-generator", "clinic-van", "harbour-launch"})
    void confidenceOfTheOtherCasesKeepsToItsSchema(String demo, @TempDir Path folder) throws Exception {
        confidenceOfADemoCaseKeepsToItsSchema(demo, folder);
    }

    @ParameterizedTest
    @Tag("nightly")
    @ValueSource(strings = {"ridge-hut-generator", "clinic-van", "harbour-launch"})
    void serviceOfTheOtherCasesKeepsToItsSchema(String demo) throws Exception {
        serviceOfADemoCaseKeepsToItsSchema(demo);
    }

    @ParameterizedTest
    @ValueSource(strings = "half-the-area")
    void confidenceOfADemoCaseKeepsToItsSchema(String demo, @TempDir Path folder) throws Exception {
        String json = onDemo(demo, "confidence", "--draws", "64", "--format", "json", "--plots", folder.toString());
        assertEquals(List.of(), faults("confidence-v1.schema.json", json));
        assertFalse(json.contains("NaN"), "JSON knows no NaN");
        assertTrue(Files.size(folder.resolve("chance-open.svg")) > 0);
        // a share is about 1 at most; its sampling error is of that size or not known
        json.lines()
                .filter(line -> line.contains("Error\": ") && !line.contains("null"))
                .forEach(line -> assertTrue(Double.parseDouble(line.replaceAll(".*: |,", "")) < 2, line));
    }

    @ParameterizedTest
    @ValueSource(strings = "half-the-area")
    void serviceOfADemoCaseKeepsToItsSchema(String demo) throws Exception {
        String json = onDemo(demo, "service", "--format", "json");
        assertEquals(List.of(), faults("service-v1.schema.json", json));
        assertFalse(json.contains("NaN"), "JSON knows no NaN");
        assertFalse(faults("service-v1.schema.json", json.replace("\"unfilteredShare\"", "\"unfilterdShare\""))
                .isEmpty());
        String csv = onDemo(demo, "service", "--format", "csv");
        List<String> rows = csv.lines().toList();
        List<Integer> columns = rows.stream()
                .map(row -> row.replaceAll("\"[^\"]*\"", "").split(",", -1).length)
                .distinct()
                .toList();
        assertTrue(rows.size() > 20, csv);
        assertEquals(1, columns.size(), csv);
        onDemo(demo, "service").lines().forEach(line -> assertTrue(line.codePointCount(0, line.length()) <= 110, line));
    }

    @ParameterizedTest
    @CsvSource({"ridge-hut-generator,Slate", "clinic-van,Fine", "half-the-area,Half", "harbour-launch,Gull"})
    void multiPassTestOfADemoCaseKeepsToItsSchema(String demo, String candidate) throws Exception {
        String json = onDemo(demo, "multipass", "--candidate", candidate, "--format", "json");
        assertEquals(List.of(), faults("multipass-v1.schema.json", json));
        assertFalse(json.contains("NaN"), "JSON knows no NaN");
    }

    /** Runs a command on a demo case; an argument without a dash before the first option stands before the case. */
    private static String onDemo(String demo, String command, String... rest) {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(at.resolve("demo-cases"))) {
            at = at.getParent();
        }
        List<String> arguments = new ArrayList<>(List.of(command));
        int before = rest.length > 0 && !rest[0].startsWith("-") ? 1 : 0;
        arguments.addAll(List.of(rest).subList(0, before));
        arguments.add(at.resolve("demo-cases/" + demo + "/case.yaml").toString());
        arguments.addAll(List.of(rest).subList(before, rest.length));
        StringWriter out = new StringWriter();
        CommandLineFace.run(arguments, SERVICE, new PrintWriter(out), new PrintWriter(new StringWriter()));
        return out.toString();
    }

    @Test
    void schemaRefusesAMissingOrMisspelledField() throws Exception {
        String good = CompareJson.of(FixtureCase.comparison(false));
        assertFalse(faults("compare-v1.schema.json", good.replace("\"grossArea_m2\"", "\"grosArea_m2\""))
                .isEmpty());
        assertFalse(faults(
                        "compare-v1.schema.json",
                        good.replace("\"never\"", "\"nevermore\"").replace("\"below\"", "\"beneath\""))
                .isEmpty());
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void comparePageFitsATerminalAndSaysWhatItIs(UnitSystem units) {
        String page = CompareText.of(FixtureCase.comparison(false), units);
        for (String line : page.lines().toList()) {
            assertTrue(line.codePointCount(0, line.length()) <= 110, line);
        }
        for (String expected : List.of(
                "INVENTED DATA",
                "case 3fa94c1b2d07",
                "Verdict",
                "What this rests on",
                "Cautions",
                "has no bypass valve")) {
            assertTrue(page.contains(expected), expected + "\n" + page);
        }
    }

    @Test
    void openingTemperatureIsShownInBothUnitsWithItsBand() {
        String page = CompareText.of(FixtureCase.comparison(false), UnitSystem.METRIC);
        assertTrue(page.matches("(?s).*below -?\\d+\\.\\d °C ± 3\\.1 K \\(-?\\d+\\.\\d °F\\).*"), page);
    }

    @Test
    void csvHasOneRowACandidateAndStateAndHarmlessTexts() {
        String[] rows = CompareCsv.of(FixtureCase.comparison(false), UnitSystem.METRIC)
                .lines()
                .toArray(String[]::new);
        assertEquals(1 + 5 * 2, rows.length);
        long columns = rows[0].replaceAll("\"([^\"]|\"\")*\"", "")
                .chars()
                .filter(c -> c == ',')
                .count();
        assertTrue(rows[0].contains("media area [cm²]"), rows[0]);
        assertTrue(rows[3].startsWith("\"Tall white, 1st lot\",flowStand,"), rows[3]);
        assertTrue(rows[5].startsWith("'=Gray,"), rows[5]);
        assertTrue(rows[7].startsWith("\"Old stock \"\"B\"\"\","), rows[7]);
        assertEquals(
                columns,
                rows[9].replaceAll("\"([^\"]|\"\")*\"", "")
                        .chars()
                        .filter(c -> c == ',')
                        .count());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '"',
            value = {"=1+1; '=1+1", "+1; '+1", "-1; '-1", "@x; '@x", "a=b; a=b"})
    void textThatLooksLikeAFormulaIsMadeHarmless(String text, String expected) {
        assertEquals(expected + "\n", new CsvWriter().text(text).endRow().finished());
    }

    @Test
    void negativeNumberInCsvStaysANumber() {
        assertEquals(
                "-12.5,,\n",
                new CsvWriter()
                        .number(-12.5)
                        .number(Double.NaN)
                        .number(1 / 0.0)
                        .endRow()
                        .finished());
    }

    @ParameterizedTest
    @CsvSource({
        "12.345, 1.4, 12.3 ± 2.7",
        "12.345, 0, 12.35",
        "1234.4, 30, 1234 ± 59",
        "0.000123, 0, 0.000123",
        "1.18, 0.06, 1.18 ± 0.12"
    })
    void digitsFollowTheBand(double value, double uncertainty, String expected) {
        assertEquals(expected, Figures.banded(new Band(value, uncertainty), ShownUnit.scaled("", 1)));
    }

    @Test
    void jsonTextEscapesWhatItMust() {
        String json = new JsonText()
                .element()
                .text("a", "q\" b\\ \n\u0001 °")
                .number("n", Double.NaN)
                .endObject()
                .finished();
        assertEquals("{\n  \"a\": \"q\\\" b\\\\ \\n\\u0001 °\",\n  \"n\": null\n}\n", json);
    }

    @Test
    void tableWrapsLongNamesAndLinesUp() {
        List<String> lines = new Table(new int[] {8, 6}, new boolean[] {false, true})
                .head("Name", "x")
                .row("a long name", "1.5")
                .lines();
        assertEquals(List.of("  Name      x", "  ------  ---", "  a long  1.5", "  name"), lines);
    }
}
