package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandPagesTest {
    @TempDir
    private Path folder;

    @Test
    void manualTellsCommandsOptionsAndTheVersionBuilt() throws IOException {
        CommandPages.manual(folder, "7.8.9");
        String program = Files.readString(folder.resolve("coldpleat.adoc"));
        String size = Files.readString(folder.resolve("coldpleat-size.adoc"));
        assertTrue(program.contains(":mansource: Coldpleat 7.8.9"), program);
        assertTrue(program.contains("coldpleat-sheets"), program);
        assertTrue(Files.exists(folder.resolve("coldpleat-sheets-import.adoc")));
        assertTrue(size.contains("--target") && size.contains("oil temperature"), size);
        assertTrue(size.contains(" +\nnever open at -20 °C in cold idle"), size);
        assertFalse(size.contains("development"), size);
    }

    @Test
    void completionKnowsCommandsAndOptions() {
        String script = CommandPages.completion();
        for (String word : List.of("coldstart", "multipass", "--candidate", "--units", "complete -F")) {
            assertTrue(script.contains(word), word);
        }
    }
}
