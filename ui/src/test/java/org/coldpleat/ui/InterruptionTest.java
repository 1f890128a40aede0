package org.coldpleat.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The program itself, stopped from outside while it computes. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "no signals there")
class InterruptionTest {
    private static final int ENDED_BY_TERM = 143;
    private static final String CASE = "../demo-cases/clinic-van/case.yaml";

    @TempDir
    private Path folder;

    @Test
    void aRunThatIsStoppedSaysSoInOneLineAndLeavesNothingHalfWritten() throws Exception {
        Path plots = folder.resolve("plots");
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Process run = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "confidence",
                        CASE,
                        "--draws",
                        "1000000",
                        "--plots",
                        plots.toString())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        try {
            // the draws take minutes: wherever it stands by now, it is not done
            assertTrue(!run.waitFor(3, TimeUnit.SECONDS), () -> "ended by itself: " + read(err));
            run.destroy();
            assertTrue(run.waitFor(20, TimeUnit.SECONDS), "still running");
        } finally {
            run.destroyForcibly();
        }
        assertEquals(ENDED_BY_TERM, run.exitValue());
        List<String> words = read(err).lines().filter(line -> !line.isBlank()).toList();
        assertEquals(1, words.size(), () -> String.join("\n", words));
        assertTrue(words.get(0).contains("stopped"), words.get(0));
        assertEquals("", read(out));
        try (Stream<Path> left = Files.exists(plots) ? Files.list(plots) : Stream.of()) {
            assertEquals(List.of(), left.toList());
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
