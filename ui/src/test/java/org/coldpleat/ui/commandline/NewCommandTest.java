package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A new case from options; the questions are tested beside the command. */
class NewCommandTest {
    private static final Pattern EXAMPLE = Pattern.compile("(?m)^( *\\w+:) # such as (.*)$");

    @TempDir
    private Path folder;

    private String err = "";

    private int run(String... words) {
        StringWriter messages = new StringWriter();
        int code = CommandLineFace.run(
                List.of(words), CaseService.standard(), new PrintWriter(new StringWriter()), new PrintWriter(messages));
        err = messages.toString();
        return code;
    }

    private OpenedCase written(Path file) {
        return CaseService.standard()
                .open(file)
                .opened()
                .orElseThrow(() -> new AssertionError(
                        CaseService.standard().open(file).problems().toString()));
    }

    @Test
    void whatWasToldStandsInTheFileAndComputes() throws Exception {
        Path file = folder.resolve("mine/my car.yaml");
        assertEquals(
                ExitCode.DONE,
                run(
                        "new",
                        file.toString(),
                        "--oil=5W-30",
                        "--engine=car",
                        "--displacement=2.0L",
                        "--relief=65 psi",
                        "--filter=Birch; 55 pleats; 14 mm; 60 mm; cellulose; 12 psi; base",
                        "--filter=Elm: 2nd; 540 cm2; glass; 14 to 18 psi; dome"),
                err);
        OpenedCase opened = written(file);
        assertEquals("my car", opened.title());
        assertEquals(List.of("Birch", "Elm: 2nd"), opened.candidates());
        assertEquals(
                0.014, opened.understood().get("candidates[0].pleats.depth").value(), 1e-12);
        assertEquals(
                0.060, opened.understood().get("candidates[0].pleats.height").value(), 1e-12);
        assertFalse(err.contains("Not told"), err);
        assertEquals(2, opened.compare().now().candidates().size());
        assertTrue(Files.readString(file).contains("# Where the bypass valve sits"), Files.readString(file));
    }

    @Test
    void whatWasNotToldStandsInMarkedAsGuessed() throws Exception {
        Path file = folder.resolve("bare.yaml");
        assertEquals(ExitCode.DONE, run("new", file.toString(), "--engine=motorcycle"), err);
        String text = Files.readString(file);
        assertTrue(text.contains("0.65 L (guessed)") && text.contains("psi (guessed)"), text);
        assertTrue(text.contains("notes: 'Not told") && err.contains("Not told"), text);
        assertEquals(List.of("Filter 1"), written(file).candidates());
        assertEquals(ExitCode.DONE, run("compare", file.toString()), err);
    }

    @Test
    void aFileThatIsThereStaysUnlessForced() throws Exception {
        Path file = Files.writeString(folder.resolve("there.yaml"), "mine");
        assertEquals(ExitCode.BAD_INPUT, run("new", file.toString(), "--oil=5W-30"));
        assertTrue(err.contains("--force"), err);
        assertEquals("mine", Files.readString(file));
        assertEquals(ExitCode.DONE, run("new", file.toString(), "--oil=5W-30", "--force"), err);
        assertTrue(written(file).title().equals("there"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--displacement=2",
                "--oil=thick",
                "--engine=cra",
                "--filter=A; 12 frogs",
                "--filter=A; 14 mm; 60 mm; 3 mm",
                "--filter=A; 2 pleats",
                "--hot-idle=20 mm"
            })
    void whatIsNotUnderstoodLeavesNoFile(String option) throws Exception {
        Path file = folder.resolve("bad.yaml");
        assertEquals(ExitCode.BAD_INPUT, run("new", file.toString(), option));
        assertFalse(err.isBlank() || err.contains("Exception"), err);
        assertFalse(Files.exists(file));
    }

    @Test
    void everyExampleInTheCommentsIsRight() throws Exception {
        Path file = folder.resolve("all.yaml");
        assertEquals(ExitCode.DONE, run("new", file.toString(), "--filter=A; 55 pleats; 14 mm; 60 mm"), err);
        Matcher example = EXAMPLE.matcher(Files.readString(file));
        assertTrue(example.results().count() >= 9, "examples");
        Files.writeString(file, example.replaceAll("$1 $2"));
        assertEquals(
                "",
                CaseReader.read(file).problems().stream()
                        .map(problem -> problem.text())
                        .collect(Collectors.joining("\n")));
        assertEquals(
                "January",
                written(file)
                        .document()
                        .root()
                        .section("temperatures")
                        .orElseThrow()
                        .sections("named")
                        .get(0)
                        .text("name")
                        .orElseThrow());
    }
}
