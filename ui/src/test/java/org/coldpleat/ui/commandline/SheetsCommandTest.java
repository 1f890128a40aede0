package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bench sheets on the command line. */
class SheetsCommandTest {
    private static final Path HUT = Path.of("../demo-cases/ridge-hut-generator/case.yaml");

    @TempDir
    private Path folder;

    private Path into;
    private String out = "";
    private String err = "";

    @BeforeEach
    void copyTheCase() throws IOException {
        into = Files.writeString(folder.resolve("case.yaml"), Files.readString(HUT));
    }

    private int run(String... words) {
        StringWriter results = new StringWriter();
        StringWriter messages = new StringWriter();
        int code = CommandLineFace.run(
                List.of(words), CaseService.standard(), new PrintWriter(results), new PrintWriter(messages));
        out = results.toString();
        err = messages.toString();
        return code;
    }

    private Path table(String text) throws IOException {
        return Files.writeString(folder.resolve("sheets.csv"), text);
    }

    @Test
    void exportAndImportOfAllFiltersChangesNothing() throws IOException {
        Path table = folder.resolve("out.csv");
        assertEquals(ExitCode.DONE, run("sheets", "export", into.toString(), "--out", table.toString()), err);
        assertEquals(
                ExitCode.DONE, run("sheets", "import", table.toString(), "--into", into.toString(), "--replace"), err);
        assertEquals(Files.readString(HUT), Files.readString(into));
    }

    @Test
    void aSheetWithoutThicknessRunsWithTheUsualOneMarkedAssumed() throws IOException {
        Path table = table("""
                Name of the filter;Bypass valve, Where it sits;Bypass valve, Opening pressure [kPa];Pleats, Number of pleats;\
                Pleats, Pleat height [mm];Element, Outside diameter [mm];Element, Inside diameter [mm];Element, Length [mm];\
                Medium, Kind of paper;Medium, Unrolled strip, Length of the strip [mm];\
                Medium, Unrolled strip, Width of the strip [mm];Medium, Thickness of the sheet [mm]
                Heron;dome;90 to 110 kPa;50;60,5;67;34;61;cellulose;1700;61;
                """);
        assertEquals(ExitCode.DONE, run("sheets", "import", table.toString(), "--into", into.toString()), err);
        assertTrue(err.contains("Heron: added with 10 values"), err);
        String text = Files.readString(into);
        assertTrue(text.startsWith(Files.readString(HUT)), text);
        assertTrue(text.contains("height: 60,5 mm"), text);
        assertEquals(ExitCode.DONE, run("compare", into.toString()), err);
        String flat = out.replaceAll("\\s+", " ");
        assertTrue(flat.contains("Heron: medium.thickness: 0.65 ± 0.25 mm (typical)"), flat);
    }

    @Test
    void problemsNameFileLineAndColumnAndLeaveTheCaseAlone() throws IOException {
        Path table = table("Name of the filter,\"Can, Length [mm]\"\nHeron,long\n");
        assertEquals(ExitCode.BAD_INPUT, run("sheets", "import", table.toString(), "--into", into.toString()));
        assertTrue(err.contains("sheets.csv:2 column 2, Can, Length [mm]: "), err);
        assertEquals(Files.readString(HUT), Files.readString(into));
        table("Name of the filter\nSlate\n");
        assertEquals(ExitCode.BAD_INPUT, run("sheets", "import", table.toString(), "--into", into.toString()));
        assertTrue(err.contains("Slate stands in"), err);
        assertEquals(
                ExitCode.BAD_INPUT,
                run("sheets", "import", folder.resolve("none.csv").toString(), "--into", into.toString()));
    }

    @Test
    void aTemplateIsALineOfNames() {
        assertEquals(ExitCode.DONE, run("sheets", "template"));
        assertTrue(out.startsWith("Name of the filter,"), out);
        assertEquals(ExitCode.USAGE, run("sheets"));
    }
}
