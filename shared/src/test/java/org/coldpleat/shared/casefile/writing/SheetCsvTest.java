package org.coldpleat.shared.casefile.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.catalog.Field;
import org.coldpleat.shared.casefile.catalog.SheetColumns;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bench sheets as a table and back. */
class SheetCsvTest {
    private static Map<String, String> imported(String table) {
        SheetCsv.Reading reading = SheetCsv.read("sheets.csv", table);
        assertEquals(List.of(), reading.problems());
        return SheetCsv.into(CaseDraft.blank(), reading.rows()).values();
    }

    private static Map<String, String> candidates(CaseDraft draft) {
        Map<String, String> values = new LinkedHashMap<>();
        draft.values().forEach((path, value) -> {
            if (path.startsWith("candidates[")) {
                values.put(path.replaceFirst("\\.value$", ""), value);
            }
        });
        return values;
    }

    @Test
    void namesOfColumnsAreTradeWordsWithUnits() {
        String header = SheetCsv.template();
        assertTrue(header.startsWith("Name of the filter,\"Can, Outside diameter [mm]\",\"Can, Length [mm]\""), header);
        assertTrue(header.contains("\"Pleats, Number of pleats\""), header);
        assertTrue(header.contains("\"Medium, Unrolled strip, Allowance 2, By [mm]\""), header);
        assertEquals(1, header.lines().count());
    }

    @Test
    void bareNumbersGetTheUnitOfTheirColumn() {
        Map<String, String> values = imported("""
                Name of the filter;Can, Outside diameter [mm];Pleats, Number of pleats;Medium, Thickness of the sheet [in];Can, Length
                Oak;76,2;53;0,028;3.4in
                Elm;;  ;-0.5;
                """);
        assertEquals("76,2 mm", values.get("candidates[0].outside.diameter"));
        assertEquals("53", values.get("candidates[0].pleats.count"));
        assertEquals("0,028 in", values.get("candidates[0].medium.thickness"));
        assertEquals("3.4in", values.get("candidates[0].outside.length"));
        assertEquals("-0.5 in", values.get("candidates[1].medium.thickness"));
        assertFalse(values.containsKey("candidates[1].outside.diameter"));
        assertFalse(values.containsKey("candidates[1].pleats.count"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '^',
            value = {
                "76 mm|76", "76|'76", "-5 mm|-5", "-5|'-5", "+5 mm|'+5 mm", "76  mm|76  mm", "1.45in|1.45in",
                "76,5 mm|76,5", "=1+2|'=1+2", "@x|'@x", "'x|''x", "'|''", "[1, 2] mm|[1, 2] mm",
                        "76 mm ± 1 mm|76 mm ± 1 mm",
                "1e3 mm|1e3", "76 cm|76 cm", "mm| mm"
            })
    void cellsAreHarmlessAndReadBackAsTheyWere(String typed, String cell) {
        SheetColumns.Column column = SheetColumns.ofPath("outside.diameter").orElseThrow();
        assertEquals(cell.strip(), SheetCsv.cell(typed, column));
        assertEquals(typed, SheetCsv.typed(cell, column));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ridge-hut-generator", "harbour-launch", "half-the-area", "clinic-van"})
    void everyDemoCaseComesBackAsItWas(String folder) throws IOException {
        String text = Files.readString(Path.of("..", "demo-cases", folder, "case.yaml"));
        CaseDraft draft = CaseDraft.open(folder, text).draft();
        SheetCsv.Reading reading = SheetCsv.read("again.csv", SheetCsv.write(draft));
        assertEquals(List.of(), reading.problems());
        assertEquals(candidates(draft), candidates(SheetCsv.into(CaseDraft.blank(), reading.rows())));
        assertEquals(text, SheetCsv.into(draft, reading.rows()).text());
    }

    @Test
    void whateverWasTypedComesBackAsItWas() {
        typeAndReadBack(12);
    }

    @Test
    @Tag("nightly")
    void whateverWasTypedInManyTablesComesBackAsItWas() {
        typeAndReadBack(60);
    }

    private static void typeAndReadBack(int rounds) {
        String[] typed = {
            "76",
            "76 mm",
            "-5",
            "=A1",
            "'",
            "''76",
            "a,b;c",
            "two\nlines",
            "say \"x\"",
            "\"",
            "+1",
            "-",
            "76,5",
            "1e5",
            "@",
            "tab\there",
            "[1, 2] mm",
            "typical",
            "ü𝛼",
            "#",
            "5 %",
            "0",
            "0 mm",
            "\\"
        };
        Random random = new Random(11);
        for (int round = 0; round < rounds; round++) {
            CaseDraft draft = CaseDraft.blank();
            for (int i = 0; i < 3; i++) {
                draft = draft.addCandidate(typed[random.nextInt(typed.length)] + " " + i);
                List<String> paths = SheetColumns.template();
                for (int j = 0; j < 25; j++) {
                    String path =
                            paths.get(1 + random.nextInt(paths.size() - 1)).replaceFirst("\\[1]", "[0]");
                    boolean part = random.nextInt(6) == 0
                            && draft.value("candidates[" + i + "]." + path).isPresent();
                    boolean quantity =
                            SheetColumns.ofPath(path).orElseThrow().field().type() == Field.Type.QUANTITY;
                    draft = draft.set(
                            "candidates[" + i + "]." + path + (part && quantity ? ".note" : ""),
                            typed[random.nextInt(typed.length)]);
                }
            }
            SheetCsv.Reading reading = SheetCsv.read("again.csv", SheetCsv.write(draft));
            assertEquals(candidates(draft), candidates(SheetCsv.into(CaseDraft.blank(), reading.rows())));
        }
    }

    @Test
    void problemsNameFileLineAndColumn() {
        SheetCsv.Reading reading = SheetCsv.read("sheets.csv", """
                Name of the filter,"Can, Outside diameter [mm]","Pleats, Number of pleats","Bypass valve, Where it sits"
                Oak,"1,234",53.5,roof
                "Elm
                tree",76,53,dome
                Oak,76,53,dome
                ,76,,
                """);
        List<String> texts = reading.problems().stream().map(CaseProblem::text).toList();
        assertEquals(5, texts.size(), texts.toString());
        assertTrue(texts.get(0).startsWith("sheets.csv:2 column 2, Can, Outside diameter [mm]: "), texts.get(0));
        assertTrue(texts.get(1).startsWith("sheets.csv:2 column 3, Pleats, Number of pleats: "), texts.get(1));
        assertTrue(texts.get(2).startsWith("sheets.csv:2 column 4, "), texts.get(2));
        assertTrue(texts.get(3).startsWith("sheets.csv:5: "), texts.get(3));
        assertTrue(texts.get(4).startsWith("sheets.csv:6: "), texts.get(4));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '^',
            value = {
                "Name of the filter,Smell|sheet.column",
                        "Name of the filter,\"Pleats, Numbr of pleats\"|sheet.column.near",
                "Name of the filter,\"Can, Length [kPa]\"|sheet.column.near", "Notes|sheet.nameColumn",
                "Name of the filter,name|sheet.columnTwice", "\"Name of the filter|sheet.quoteOpen"
            })
    void aHeaderThatDoesNotFitIsNamed(String header, String code) {
        List<String> codes = SheetCsv.read("sheets.csv", header + "\nOak,1\n").problems().stream()
                .map(CaseProblem::code)
                .toList();
        assertTrue(codes.contains(code), codes.toString());
    }

    @Test
    void blankEntriesOfListsDoNotCount() {
        Map<String, String> values = imported("""
                name,medium.strip.allowances[0].by,medium.strip.allowances[1].on,medium.strip.allowances[1].by,medium.strip.allowances[3].by
                Oak,,width,-4,-5
                """);
        assertEquals("width", values.get("candidates[0].medium.strip.allowances[0].on"));
        assertEquals("-4 mm", values.get("candidates[0].medium.strip.allowances[0].by"));
        assertEquals("-5 mm", values.get("candidates[0].medium.strip.allowances[1].by"));
    }

    @Test
    void anEmptyTableIsAProblem() {
        assertEquals("sheet.empty", SheetCsv.read("x", "").problems().get(0).code());
        assertEquals(
                "sheet.empty",
                SheetCsv.read("x", SheetCsv.template()).problems().get(0).code());
    }
}
