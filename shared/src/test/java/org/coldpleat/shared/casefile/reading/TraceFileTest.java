package org.coldpleat.shared.casefile.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.CaseProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TraceFileTest {
    private static final Path BASE = Path.of("src/test/resources/bad-cases/start-trace-missing.yaml");

    @TempDir
    Path folder;

    private CaseReading read(String log) throws IOException {
        Files.writeString(folder.resolve("no-such-log.csv"), log, StandardCharsets.UTF_8);
        Path copy = folder.resolve("case.yaml");
        Files.copy(BASE, copy, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        return CaseReader.read(copy);
    }

    private void assertProblem(String log, String code, int line) throws IOException {
        List<CaseProblem> problems = read(log).problems();
        assertEquals(1, problems.size(), problems::toString);
        assertEquals(code, problems.get(0).code());
        assertEquals(line, problems.get(0).line());
        assertTrue(problems.get(0).file().endsWith("no-such-log.csv"));
    }

    @Test
    void readsUnitsFromTheHeaderBesideTheCase() throws IOException {
        CaseDocument document = read("# a log\ntime [min],temperature [°F]\n0,14\n2,50\n")
                .document()
                .orElseThrow();
        assertEquals(2, document.startTrace().size());
        assertEquals(120, document.startTrace().get(1).time(), 1e-12);
        assertEquals(263.15, document.startTrace().get(0).temperature(), 1e-9);
        assertEquals(283.15, document.startTrace().get(1).temperature(), 1e-9);
    }

    @Test
    void readsSemicolonsWithDecimalCommasAndColumnsInAnyOrder() throws IOException {
        CaseDocument document =
                read("temperature (°C);time (s)\n-9,5;0\n3,25;60\n").document().orElseThrow();
        assertEquals(276.4, document.startTrace().get(1).temperature(), 1e-9);
    }

    @Test
    void namesTheRowThatIsWrong() throws IOException {
        assertProblem("time [s],temperature [°C]\n0,-5\n10,warm\n20,3\n", "trace.row", 3);
        assertProblem("time [s],temperature [°C]\n0,-5\n10,0\n10,3\n", "trace.timeFalls", 4);
        assertProblem("time [s],temperature [°C]\n-1,-5\n0,-4\n10,0\n", "trace.belowZero", 2);
        assertProblem("seconds,degrees\n0,-5\n", "trace.header", 1);
        assertProblem("time [s],temperature [°C]\n0,-5\n", "trace.tooFew", 0);
        assertProblem("", "trace.tooFew", 0);
    }
}
