package org.coldpleat.ui.commandline.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A new case by asking. */
class NewQuestionsTest {
    @TempDir
    private Path folder;

    private final StringWriter err = new StringWriter();

    private OpenedCase asked(String typed) {
        Path file = folder.resolve("asked.yaml");
        Console console = new Console(new PrintWriter(new StringWriter()), new PrintWriter(err));
        NewCommand command =
                new NewCommand(CaseService.standard(), console, () -> new BufferedReader(new StringReader(typed)));
        int code = new CommandLine(command).setResourceBundle(Texts.bundle()).execute(file.toString());
        assertEquals(ExitCode.DONE, code, err.toString());
        assertTrue(Files.exists(file));
        return CaseService.standard().open(file).opened().orElseThrow();
    }

    private long prompts() {
        return err.toString().split("(?m)(?<!\\d)\\d{1,2}\\. [A-Z]", -1).length - 1L;
    }

    @Test
    void tenAnswersMakeACase() {
        OpenedCase opened = asked("10W-40\nutility\n700 frogs\n725 cm3\n\nOak\n50\n0.5 in\n55 mm\ncellulose\n12 psi\n");
        assertEquals(11, prompts(), err.toString());
        assertEquals(List.of("Oak"), opened.candidates());
        assertEquals(725e-6, opened.understood().get("engine.displacement").value(), 1e-12);
        // 25.4 mm an inch, NIST SP 811 (2008), B.8
        assertEquals(
                0.0127, opened.understood().get("candidates[0].pleats.depth").value(), 1e-12);
    }

    @Test
    void everyQuestionMayBeLeftOpen() {
        OpenedCase opened = asked("\n".repeat(10));
        assertEquals(10, prompts(), err.toString());
        assertEquals(1, opened.compare().now().candidates().size());
    }

    @Test
    void anEndOfAnswersLeavesTheRestOpen() {
        OpenedCase opened = asked("0W-20\ncra\n");
        assertTrue(err.toString().contains("did you mean car?"), err.toString());
        assertEquals(
                "0W-20",
                opened.document()
                        .root()
                        .section("oil")
                        .orElseThrow()
                        .text("grade")
                        .orElseThrow());
    }
}
