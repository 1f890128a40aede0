package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All results as tables. */
class ExportCommandTest {
    private static final CaseService SERVICE = CaseService.standard();

    @TempDir
    private Path folder;

    private String err = "";

    private String run(String... words) {
        StringWriter results = new StringWriter();
        StringWriter messages = new StringWriter();
        int code = CommandLineFace.run(List.of(words), SERVICE, new PrintWriter(results), new PrintWriter(messages));
        err = messages.toString();
        assertEquals(ExitCode.DONE, code, err);
        return results.toString();
    }

    @Test
    void tablesAreThoseOfTheCommandsAndNoTextIsAFormula() throws IOException {
        export("half-the-area", "Half");
    }

    @Test
    @Tag("nightly")
    void tablesOfManyFiltersAreThoseOfTheCommands() throws IOException {
        export("ridge-hut-generator", "Slate");
    }

    private void export(String demo, String name) throws IOException {
        String text = Files.readString(Path.of("../demo-cases", demo, "case.yaml"));
        Path hostile = Files.writeString(
                folder.resolve("case.yaml"), text.replaceAll("\\b" + name + "\\b(?! the)", "\"=1+" + name + "\""));
        Path out = folder.resolve("tables");
        run("export", hostile.toString(), "--out", out.toString(), "--draws", "16");
        assertEquals(
                run("compare", hostile.toString(), "--format", "csv"), Files.readString(out.resolve("compare.csv")));
        assertEquals(
                run("service", hostile.toString(), "--format", "csv"), Files.readString(out.resolve("service.csv")));
        assertTrue(Files.readString(out.resolve("compare.csv")).contains("\n'=1+" + name + ","));
        try (Stream<Path> files = Files.list(out)) {
            for (Path file :
                    files.filter(one -> one.toString().endsWith(".csv")).toList()) {
                String table = Files.readString(file);
                assertTrue(table.lines().count() > 2, file.toString());
                assertFalse(table.contains("\n=") || table.contains(",="), file.toString());
            }
        }
        String readMe = Files.readString(out.resolve("read-me.txt"));
        for (String word : List.of("INVENTED DATA", "Efficiency", "Wear", "urst", "assumed")) {
            assertTrue(readMe.contains(word), word + " in " + readMe);
        }
    }
}
