package org.coldpleat.ui;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RehearsalTest {
    @Test
    @Tag("nightly")
    void everyCommandIsOneTheProgramKnowsAndEndsWell(@TempDir Path folder) throws IOException {
        Path cases = Path.of("../demo-cases");
        Rehearsal.main(new String[] {
            cases.resolve("ridge-hut-generator/case.yaml").toString(),
            cases.resolve("half-the-area/case.yaml").toString(),
            folder.toString()
        });
        assertTrue(Files.size(folder.resolve("report.html")) > 0);
    }
}
