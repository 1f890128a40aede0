package org.coldpleat.validation.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/** Keeps {@code docs/validation.md} the same as what the tests before it recorded; runs last. */
@Order(Integer.MAX_VALUE)
class ValidationPageTest {
    private static final Path PAGE = Path.of("..", "docs", "validation.md");
    private static final String HOW = "docs/validation.md is not what the tests recorded; look at the difference, then"
            + " write it anew with mvn -B test -pl validation -am -DargLine=-Dcoldpleat.writeReference=true";

    @Test
    void pageSaysWhatTheRunRecorded() throws IOException, URISyntaxException {
        Set<String> missing = testClasses();
        missing.removeAll(CheckBook.testsThatRan());
        assumeTrue(missing.isEmpty(), () -> "only part of the tests ran; without " + missing);
        String wanted = ValidationPage.of(CheckBook.rows());
        if (Boolean.getBoolean("coldpleat.writeReference")) {
            Files.writeString(PAGE, wanted);
        }
        List<String> want = wanted.lines().toList();
        List<String> have = Files.readString(PAGE).lines().toList();
        List<String> different = new ArrayList<>();
        for (int i = 0; i < Math.max(want.size(), have.size()); i++) {
            String now = i < want.size() ? want.get(i) : "(nothing)";
            String page = i < have.size() ? have.get(i) : "(nothing)";
            if (!ValidationPage.sameLine(now, page)) {
                different.add("page: " + page + "\nrun:  " + now);
            }
        }
        assertTrue(
                different.isEmpty(),
                () -> HOW + "\n" + different.stream().limit(5).collect(Collectors.joining("\n")));
    }

    @Test
    void linesAreTheSameButForTheLastDigitsOfComputedValues() {
        String line = "| a | b | 1.5 Pa | 1.501 Pa | 0.0011 Pa | ± 1 Pa | why | holds | 3 | T |";
        assertTrue(ValidationPage.sameLine(line, line.replace("1.501 Pa", "1.502 Pa")));
        assertFalse(ValidationPage.sameLine(line, line.replace("1.501 Pa", "1.504 Pa")));
        assertFalse(ValidationPage.sameLine(line, line.replace("1.501 Pa", "1.501 kPa")));
        assertFalse(ValidationPage.sameLine(line, line.replace("1.5 Pa", "1.6 Pa")));
        assertFalse(ValidationPage.sameLine(line, line.replace("holds", "known miss")));
    }

    @Test
    void numbersAreShort() {
        assertEquals("1.234", CheckNumbers.computed(1.23449));
        assertEquals("6.54e-8", CheckNumbers.computed(6.54e-8));
        assertEquals("450000", CheckNumbers.given(450e3));
        assertEquals("4.5e8", CheckNumbers.given(450e6));
        assertEquals("-0.5 %", CheckNumbers.percent(-0.005, 2));
    }

    private static Set<String> testClasses() throws IOException, URISyntaxException {
        Path root = Path.of(ValidationPageTest.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        try (Stream<Path> files = Files.walk(root)) {
            return files.map(file ->
                            root.relativize(file).toString().replace('/', '.').replace('\\', '.'))
                    .filter(name -> name.endsWith("Test.class") && !name.contains("$"))
                    .map(name -> name.substring(0, name.length() - ".class".length()))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
